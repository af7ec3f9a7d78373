import { useState } from 'preact/hooks';
import { Button } from '../../../controls/Button.tsx';
import { StepCard } from '../../../controls/frames/StepCard.tsx';
import type { JointRow } from '../../../journal/rows.ts';
import { boltCount } from '../../../mechanics/screws/boltCount.ts';
import { type TorqueUnit, unitsOf } from '../../../mechanics/units.ts';
import { rulingTarget } from '../../../planning/rulingTarget.ts';
import { boltBack, boltTight } from '../../../practice/bench/boltCount.ts';
import { cardTitle } from '../../../practice/bench/cardTitle.ts';
import { countedAs } from '../../../standards/jointKinds.ts';
import { whenText } from '../../../words/dayText.ts';
import { BondSheet, UnsetBonds } from '../BondSheet.tsx';
import { useBenchKeys } from '../benchKeys.ts';
import { BenchFrame } from '../frame/BenchFrame.tsx';
import { StepFoot } from '../frame/StepFoot.tsx';
import { LeftHand } from '../LeftHand.tsx';
import { useSteadyTap } from '../steadyTap.ts';
import type { StepProps } from '../stepProps.ts';
import { stepMark } from '../stepWords.ts';
import { useStepDraft } from '../useStepDraft.ts';
import { DoubtSheet } from './DoubtSheet.tsx';
import { NumberPad } from './NumberPad.tsx';
import { TargetTorque } from './TargetTorque.tsx';
import { TorqueCount } from './TorqueCount.tsx';
import { TorqueExtras } from './TorqueExtras.tsx';
import { TorqueMain } from './TorqueMain.tsx';
import { torqueSaid, useTorqueLog } from './useTorqueLog.ts';

/** Tightening a joint: the figure, the bolts counted off pass by pass, and then what was really applied. */
export function TorqueStep(props: StepProps & { joint: JointRow }) {
  const { view, step, index, joint, settings, onShow, onBack, onNext, onLogged, onUndo } = props;
  const gathered = useStepDraft(step.stepId, props.toolId);
  const { draft, change } = gathered;
  const [typing, setTyping] = useState(false);
  const steady = useSteadyTap();

  const bolts = boltCount(joint.fasteners);
  const of = Math.max(1, bolts);
  const noun = countedAs(joint.kind);
  const all = draft.tight >= of;
  const ruling = rulingTarget(joint.targets);
  const ends = ruling.ok ? [ruling.target.torque, ...(ruling.target.upTo ? [ruling.target.upTo] : [])] : [];
  const log = useTorqueLog({ step, joint, ruling, of, gathered, onLogged });
  const { apply, doubted, save } = log;

  const bolt = steady(() => change(boltTight(draft, of)));
  const [single] = ends;
  useBenchKeys(
    typing
      ? {}
      : {
          next: onNext,
          back: onBack,
          // A range, or no figure, has no one number that a pedal could mean.
          applied: !all
            ? bolt
            : single && ends.length === 1
              ? steady(() => apply(single, 'tap'))
              : () => setTyping(true),
          undo: () => {
            if (!onUndo()) change(boltBack(draft, of));
          },
        },
  );

  const doubtSheet = (
    <>
      {doubted && <DoubtSheet {...doubted} onLog={log.confirm} onClose={log.dismiss} />}
      <BondSheet jointId={joint.jointId} save={save} onWord={log.goOn} />
    </>
  );
  if (typing)
    return (
      <>
        <NumberPad<TorqueUnit>
          title={joint.name}
          label="Torque applied"
          typed={draft.typed}
          unit={(draft.unit as TorqueUnit | undefined) ?? single?.unit ?? settings.torqueUnit}
          units={unitsOf.torque}
          onTyped={(typed, unit) => change({ typed, unit })}
          save={save}
          onLog={(value) => apply(value, 'keypad')}
          onClose={() => setTyping(false)}
        />
        {doubtSheet}
      </>
    );

  const loose = joint.state === 'hand-tight';
  return (
    <BenchFrame
      view={view}
      index={index}
      onShow={onShow}
      actions={
        <StepFoot
          save={save}
          main={
            <TorqueMain
              count={draft}
              of={of}
              noun={noun}
              ends={ends}
              onBolt={bolt}
              onApplied={(applied) => steady(() => apply(applied, 'tap'))()}
              onType={() => setTyping(true)}
            />
          }
          middle={
            // Without a figure the main button opens the keypad by itself: a second way there says nothing.
            all && ends.length > 0 ? (
              <Button size="greasy" onPress={() => setTyping(true)}>
                Other value
              </Button>
            ) : (
              <Button size="greasy" onPress={steady(() => void log.handTighten())}>
                Hand-tight
              </Button>
            )
          }
          onBack={onBack}
          onNext={onNext}
        />
      }
    >
      <StepCard
        title={cardTitle(step, joint)}
        icon="spanner"
        state={stepMark[step.state].state}
        stateWord={loose ? 'Hand-tight only' : step.state === 'open' ? undefined : stepMark[step.state].word}
        caption="Tighten"
        figure={
          <>
            <LeftHand joint={joint} />
            <TargetTorque ruling={ruling} parts={view.parts} torqueUnit={settings.torqueUnit} />
          </>
        }
      >
        <UnsetBonds view={view} joint={joint} />
        <TorqueCount count={draft} of={of} noun={noun} onCount={change} />
        {step.detail && <p class="far">{step.detail}</p>}
        {joint.applied && (
          <p class="far">
            Logged before: {torqueSaid(joint.applied.applied)}, {whenText(joint.applied.atMs)}.
          </p>
        )}
        <TorqueExtras {...props} gathered={gathered} nm={ends.at(-1)} />
      </StepCard>
      {doubtSheet}
    </BenchFrame>
  );
}
