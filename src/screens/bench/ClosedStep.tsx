import { useState } from 'preact/hooks';
import { Button } from '../../controls/Button.tsx';
import { Stamp } from '../../controls/figures/Stamp.tsx';
import { StepCard } from '../../controls/frames/StepCard.tsx';
import { Tile } from '../../controls/Tile.tsx';
import type { AnyUnit, Typed } from '../../mechanics/units.ts';
import { cardTitle } from '../../practice/bench/cardTitle.ts';
import { countedAs } from '../../standards/jointKinds.ts';
import { whenText } from '../../words/dayText.ts';
import { countWords } from '../../words/phrases.ts';
import { quantityText } from '../../words/quantityText.ts';
import { useNow, useRun, useView } from '../door.tsx';
import { useReminders } from '../reminders/useReminders.ts';
import { hrefOf } from '../route.ts';
import { useBenchKeys } from './benchKeys.ts';
import { BenchFrame } from './frame/BenchFrame.tsx';
import { ReasonSheet, reopenReasons } from './frame/ReasonSheet.tsx';
import { StepFoot } from './frame/StepFoot.tsx';
import type { StepProps } from './stepProps.ts';
import { stepMark, stepWords } from './stepWords.ts';

/** What was logged at the step, in a few lines under the stamp. */
function logged(
  { step, joint, view, settings }: StepProps,
  measured: Typed<AnyUnit> | undefined,
): { word?: string; lines: string[] } {
  const when = step.doneAtMs === undefined ? [] : [whenText(step.doneAtMs)];
  const applied = joint?.applied;
  if (step.kind === 'torque' && applied && applied.entryId === step.doneBy) {
    const { bolts, passes, tool, marked, between } = applied;
    const counted = `${countWords(bolts, countedAs(joint.kind))}, ${passes === 1 ? '1 pass' : `${passes} passes`}`;
    const with_ = [
      tool ? tool.name : 'No tool named',
      between?.replace('-', ' '),
      marked ? 'paint mark' : undefined,
    ];
    return {
      lines: [
        quantityText(applied.applied, settings.torqueUnit),
        ...when,
        counted,
        with_.filter((word) => word !== undefined).join(', '),
      ],
    };
  }
  const locked = joint?.locked;
  if (step.kind === 'lock' && locked && locked.entryId === step.doneBy) {
    const wait = view.waits.find(({ waitId }) => waitId === locked.waitId);
    const due = wait?.endedAtMs === undefined ? (wait?.dueAtMs ?? locked.curedAtMs) : undefined;
    return {
      word: 'Applied',
      lines: [...when, ...(due === undefined ? [] : [`Leave alone until ${whenText(due)}`])],
    };
  }
  if (measured) return { word: 'Measured', lines: [quantityText(measured), ...when] };
  return { word: 'Done', lines: when };
}

/** The measure logged with a step, as it reads after its corrections. */
function useMeasured(entryId: string | undefined): Typed<AnyUnit> | undefined {
  const seen = useView('entry', { entryId: entryId ?? '' });
  const line = seen.is === 'there' ? seen.value : undefined;
  if (line?.entry.type !== 'step-done') return undefined;
  const corrected = line.fixes.at(-1)?.becomes?.['measured'] as Typed<AnyUnit> | undefined;
  return corrected ?? line.entry.measured;
}

/** A step that is done or skipped: what was logged, the way to correct it, and the way to do it again. */
export function ClosedStep(props: StepProps & { justSaved: boolean }) {
  const { view, step, index, joint, justSaved, onShow, onBack, onNext, onUndo } = props;
  const [asking, setAsking] = useState(false);
  const nowMs = useNow(60_000);
  const reminders = useReminders();
  const { run, save, clear } = useRun();
  const curing = view.waits.find(
    ({ waitId, dueAtMs = 0 }) => waitId === joint?.locked?.waitId && dueAtMs > nowMs,
  );
  const words = stepWords(step.kind);
  const mark = stepMark[step.state];
  const skipped = step.state === 'skipped';
  const { word, lines } = logged(props, useMeasured(step.doneBy));
  const place = step.jointId ? `j:${step.jointId}` : `b:${view.bike.bikeId}`;
  const reopen = async (why: string) => {
    const command = { type: 'reopen-step', stepId: step.stepId, why } as const;
    if (!(await run(command, { undo: `Open again: ${step.title}` }))) return false;
    setAsking(false);
    return true;
  };
  useBenchKeys({ next: onNext, back: onBack, undo: () => void onUndo() });
  return (
    <BenchFrame
      view={view}
      index={index}
      onShow={onShow}
      actions={
        <StepFoot
          save={justSaved ? { is: 'saved', entries: [] } : save.is === 'saved' ? { is: 'idle' } : save}
          main={
            skipped ? (
              <Button kind="main" size="greasy" icon="undo" onPress={() => void reopen('Doing it after all')}>
                Do it now
              </Button>
            ) : undefined
          }
          onBack={onBack}
          onNext={onNext}
        />
      }
    >
      <StepCard
        title={cardTitle(step, joint)}
        icon={words.icon}
        state={mark.state}
        stateWord={mark.word}
        caption={words.order}
      >
        {skipped ? (
          <div>
            <Stamp kind="held" word="Skipped" line={step.why} />
          </div>
        ) : (
          <div>
            <Stamp kind="applied" {...(word ? { word } : {})} line={lines[0]} />
            {lines.slice(1).map((line) => (
              <p key={line} class="far">
                {line}
              </p>
            ))}
          </div>
        )}
        {curing && reminders && <reminders.WhenOver wait={curing} size="greasy" />}
        {joint?.state === 'hand-tight' && <p class="loud">The joint is hand-tight now.</p>}
        <div class="tiles">
          {!skipped && (
            <Tile icon="pencil" href={hrefOf({ at: 'history', place })}>
              Correct it
            </Tile>
          )}
          {!skipped && (
            <Tile
              icon="undo"
              onPress={() => {
                clear();
                setAsking(true);
              }}
            >
              Open again
            </Tile>
          )}
          {joint && (
            <Tile icon="lookup" href={hrefOf({ at: 'joint', jointId: joint.jointId })}>
              Joint
            </Tile>
          )}
        </div>
      </StepCard>
      {asking && (
        <ReasonSheet
          about={`reopen:${step.stepId}`}
          title={`Open again: ${step.title}`}
          presets={reopenReasons}
          act="Open it for this reason"
          save={save}
          onReason={reopen}
          onClose={() => setAsking(false)}
        />
      )}
    </BenchFrame>
  );
}
