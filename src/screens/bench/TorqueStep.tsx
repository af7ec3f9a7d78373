import { useState } from 'preact/hooks';
import { Button } from '../../controls/Button.tsx';
import { StepCard } from '../../controls/StepCard.tsx';
import { Tally } from '../../controls/Tally.tsx';
import type { JointRow } from '../../journal/rows.ts';
import { type TorqueUnit, type Typed, torqueNm, unitLabel } from '../../mechanics/units.ts';
import { whenText } from '../dayText.ts';
import { useRun, useView } from '../door.tsx';
import { type AppliedDoubt, appliedDoubt } from './appliedDoubt.ts';
import { BenchFrame } from './BenchFrame.tsx';
import { useBenchKeys } from './benchKeys.ts';
import { anyCounted, boltBack, boltTight, nextPass } from './boltCount.ts';
import { DoubtSheet } from './DoubtSheet.tsx';
import { NumberPad } from './NumberPad.tsx';
import { mostNm, rulingTarget } from './rulingTarget.ts';
import { StepFoot } from './StepFoot.tsx';
import { useSteadyTap } from './steadyTap.ts';
import { useStepDraft } from './stepDraft.ts';
import type { StepProps } from './stepProps.ts';
import { stepMark } from './stepWords.ts';
import { TorqueExtras } from './TorqueExtras.tsx';
import { TorqueTarget } from './TorqueTarget.tsx';
import { threadDiameterMm } from './threadDiameter.ts';

const UNITS: readonly TorqueUnit[] = ['N.m', '[in_i].[lbf_av]', '[ft_i].[lbf_av]', 'kgf.cm'];
/** More bolt heads than this are told by number alone. */
const MOST_DRAWN = 16;

const say = ({ typed, unit }: Typed<TorqueUnit>) => `${typed}\u00a0${unitLabel[unit]}`;

/** Tightening a joint: the figure, the bolts counted off pass by pass, and then what was really applied. */
export function TorqueStep(props: StepProps & { joint: JointRow }) {
  const { view, step, index, joint, settings, onShow, onBack, onNext, onLogged, onUndo } = props;
  const gathered = useStepDraft(step.stepId, props.toolId);
  const { draft, change } = gathered;
  const [typing, setTyping] = useState(false);
  const [doubted, setDoubted] = useState<{
    applied: Typed<TorqueUnit>;
    entered: 'tap' | 'keypad';
    doubt: AppliedDoubt;
  }>();
  const { run, save } = useRun();
  const steady = useSteadyTap();
  const seen = useView('joint', { jointId: joint.jointId });
  const parts = (seen.is === 'there' && seen.value?.parts) || [];

  const of = Math.max(
    1,
    joint.fasteners.reduce((sum, { count }) => sum + count, 0),
  );
  const all = draft.tight >= of;
  const ruling = rulingTarget(joint.targets);
  const ends = ruling.ok ? [ruling.target.torque, ...(ruling.target.upTo ? [ruling.target.upTo] : [])] : [];

  const write = async (applied: Typed<TorqueUnit>, entered: 'tap' | 'keypad') => {
    const { between, toolId, marked, pass } = draft;
    setDoubted(undefined);
    const entries = await run(
      {
        type: 'apply-torque',
        ...{ jointId: joint.jointId, stepId: step.stepId, applied, entered, bolts: of, passes: pass },
        ...(toolId ? { toolId } : {}),
        ...(between ? { between } : {}),
        ...(marked ? { marked } : {}),
        ...gathered.said(),
      },
      { photos: gathered.photos, undo: `${say(applied)} applied: ${joint.name}` },
    );
    if (!entries) return;
    setTyping(false);
    gathered.clear();
    onLogged(entries);
  };
  const apply = (applied: Typed<TorqueUnit>, entered: 'tap' | 'keypad') => {
    if (save.is === 'saving') return;
    const doubt = appliedDoubt(torqueNm(applied.value, applied.unit), {
      diameterMm: threadDiameterMm(joint.fasteners),
      mostNm: ruling.ok ? mostNm(ruling.target) : undefined,
    });
    if (doubt) setDoubted({ applied, entered, doubt });
    else void write(applied, entered);
  };
  const handTighten = async () => {
    if (save.is === 'saving') return;
    const { jointId, name } = joint;
    const command = { type: 'hand-tighten', jointId, stepId: step.stepId, bolts: of } as const;
    const note = gathered.said().note;
    const entries = await run({ ...command, ...(note ? { note } : {}) }, { undo: `Hand-tight: ${name}` });
    if (!entries) return;
    gathered.clear();
    onLogged(entries);
  };

  const count = steady(() => change(boltTight(draft, of)));
  const single = ends.length === 1 ? ends[0] : undefined;
  const applied = single && steady(() => apply(single, 'tap'));
  useBenchKeys({
    next: typing ? undefined : onNext,
    back: typing ? undefined : onBack,
    applied: typing ? undefined : all ? (applied ?? (() => setTyping(true))) : count,
    undo: () => {
      if (typing || onUndo()) return;
      change(boltBack(draft, of));
    },
  });

  const doubtSheet = doubted && (
    <DoubtSheet
      {...doubted}
      onLog={() => void write(doubted.applied, doubted.entered)}
      onClose={() => setDoubted(undefined)}
    />
  );
  if (typing)
    return (
      <>
        <NumberPad<TorqueUnit>
          title={joint.name}
          label="Torque applied"
          typed={draft.typed}
          unit={(draft.unit as TorqueUnit | undefined) ?? ends[0]?.unit ?? settings.torqueUnit}
          units={UNITS}
          onTyped={(typed, unit) => change({ typed, unit })}
          save={save}
          onLog={(value) => apply(value, 'keypad')}
          onClose={() => setTyping(false)}
        />
        {doubtSheet}
      </>
    );

  const counted = of === 1 ? 'bolt' : 'bolts';
  const pass = draft.pass === 1 ? '' : `, pass ${draft.pass}`;
  const passes = `${of} ${counted}, ${draft.pass === 1 ? '1 pass' : `${draft.pass} passes`}`;
  const main = !all ? (
    <Button
      kind="main"
      size="greasy"
      icon="bolt"
      under={`${draft.tight} of ${of} counted${pass}`}
      onPress={count}
    >
      Bolt tight
    </Button>
  ) : single ? (
    <Button kind="main" size="greasy" icon="spanner" under={`Logs ${passes}`} onPress={applied}>
      Applied {say(single)}
    </Button>
  ) : ends.length > 1 ? (
    <div class="bench-pair">
      {ends.map((end) => (
        <Button key={end.value} size="greasy" under="Applied" onPress={steady(() => apply(end, 'tap'))}>
          {say(end)}
        </Button>
      ))}
    </div>
  ) : (
    <Button kind="main" size="greasy" icon="pencil" under={`Logs ${passes}`} onPress={() => setTyping(true)}>
      Type what was applied
    </Button>
  );
  const mark =
    joint.state === 'hand-tight' ? { state: 'open' as const, word: 'Hand-tight only' } : stepMark[step.state];
  return (
    <BenchFrame
      view={view}
      index={index}
      onShow={onShow}
      actions={
        <StepFoot
          save={save}
          main={main}
          middle={
            all ? (
              <Button size="greasy" onPress={() => setTyping(true)}>
                Other value
              </Button>
            ) : (
              <Button size="greasy" onPress={steady(() => void handTighten())}>
                Hand-tight
              </Button>
            )
          }
          onBack={onBack}
          onNext={onNext}
        />
      }
    >
      <StepCard title={step.title} icon="spanner" state={mark.state} stateWord={mark.word} caption="Tighten">
        <TorqueTarget ruling={ruling} parts={parts} torqueUnit={settings.torqueUnit} />
        <div class="bench-count">
          {of <= MOST_DRAWN ? (
            <Tally of={of} done={draft.tight} noun={`${counted}${pass}`} />
          ) : (
            <p class="bench-read">{`${draft.tight} of ${of} ${counted}${pass}`}</p>
          )}
          {anyCounted(draft) && (
            <div class="bench-pair">
              <Button size="greasy" icon="minus" onPress={() => change(boltBack(draft, of))}>
                One back
              </Button>
              {all && of > 1 && (
                <Button size="greasy" icon="undo" onPress={() => change(nextPass(draft))}>
                  Pass {draft.pass + 1}
                </Button>
              )}
            </div>
          )}
        </div>
        {step.detail && <p class="bench-read">{step.detail}</p>}
        {joint.applied && (
          <p class="bench-read">
            Logged before: {say(joint.applied.applied)}, {whenText(joint.applied.atMs)}.
          </p>
        )}
        <TorqueExtras {...props} gathered={gathered} nm={ends.at(-1)} />
      </StepCard>
      {doubtSheet}
    </BenchFrame>
  );
}
