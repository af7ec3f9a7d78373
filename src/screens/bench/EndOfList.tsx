import { Button } from '../../controls/Button.tsx';
import { ListRow } from '../../controls/lists/ListRow.tsx';
import type { StepRow } from '../../journal/rows.ts';
import { hrefOf } from '../route.ts';
import { useBenchKeys } from './benchKeys.ts';
import { BenchFrame, type BenchView } from './frame/BenchFrame.tsx';
import { StepFoot } from './frame/StepFoot.tsx';
import { stepMark, stepWords } from './stepWords.ts';

export interface EndOfListProps {
  view: BenchView;
  onShow: (stepId: string) => void;
  onBack: () => void;
  onUndo: () => boolean;
}

/** The end of the list. What is not done comes first and loud; what is done is a line. */
export function EndOfList({ view, onShow, onBack, onUndo }: EndOfListProps) {
  const { bike, steps, joints, waits } = view;
  const left = steps.filter(({ state }) => state === 'open' || state === 'skipped');
  const done = steps.length - left.length;
  const handTight = joints.filter(({ state }) => state === 'hand-tight').length;
  const running = waits.filter(({ endedAtMs }) => endedAtMs === undefined);
  const nameOf = ({ title, jointId }: (typeof waits)[number]) =>
    joints.find((joint) => joint.jointId === jointId)?.name ?? title;
  const release = hrefOf({ at: 'release', bikeId: bike.bikeId });
  const nothingLeft = left.length === 0 && handTight === 0;
  useBenchKeys({ back: onBack, undo: () => void onUndo() });
  const row = (step: StepRow) => (
    <li key={step.stepId}>
      <ListRow
        title={step.title}
        detail={step.state === 'skipped' ? step.why : stepWords(step.kind).work}
        state={stepMark[step.state].state}
        stateWord={stepMark[step.state].word}
        onPress={() => onShow(step.stepId)}
      />
    </li>
  );
  return (
    <BenchFrame
      view={view}
      index={steps.length}
      onShow={onShow}
      actions={
        <StepFoot
          save={{ is: 'idle' }}
          main={
            <Button
              kind={nothingLeft ? 'main' : 'plain'}
              size="greasy"
              wide
              icon="flag"
              href={release}
              under={nothingLeft ? 'Pre-ride check, then sign-off' : 'What is open is listed there too'}
            >
              Go to the release
            </Button>
          }
          onBack={onBack}
        />
      }
    >
      <h2 class={left.length > 0 ? 'bench-left' : 'bench-ask'}>
        {left.length > 0 ? `${left.length} of ${steps.length} steps not done` : 'All steps are logged'}
      </h2>
      {left.length > 0 && <ul class="bench-list">{left.map(row)}</ul>}
      {running.length > 0 && (
        <p class="far">Timers running: {running.map(nameOf).join(', ')}. Check them before you ride.</p>
      )}
      {left.length > 0 && done > 0 && <p class="small">{done} logged.</p>}
      <p class="far">Logged does not mean safe. Check by eye and hand before you release it.</p>
    </BenchFrame>
  );
}
