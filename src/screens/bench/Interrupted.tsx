import './frame/acts.css';
import { Button } from '../../controls/Button.tsx';
import { StepCard } from '../../controls/frames/StepCard.tsx';
import type { StepRow } from '../../journal/rows.ts';
import { anyCounted, uncounted } from '../../practice/bench/boltCount.ts';
import { useRun } from '../door.tsx';
import { BenchFrame, type BenchView } from './frame/BenchFrame.tsx';
import { SaveLine } from './frame/SaveLine.tsx';
import type { StepProps } from './stepProps.ts';
import { stepWords } from './stepWords.ts';
import { useStepDraft } from './useStepDraft.ts';

/** Kinds whose doing is logged by a bare tick; the others want a number or a choice, so they are never logged from here. */
const TICKED: readonly StepRow['kind'][] = ['fit', 'press', 'seat', 'adjust', 'check'];

export interface InterruptedProps extends Pick<StepProps, 'step' | 'index' | 'onShow' | 'onLogged'> {
  view: BenchView;
  /** On to the step. */
  onStep: () => void;
}

/** After a break: asks what became of the step that was open. */
export function Interrupted({ view, step, index, onShow, onLogged, onStep }: InterruptedProps) {
  const { run, save } = useRun();
  const gathered = useStepDraft(step.stepId, undefined);
  const { draft, change } = gathered;
  const words = stepWords(step.kind);
  const ticked = TICKED.includes(step.kind);
  const yes = async () => {
    if (!ticked) return onStep();
    if (save.is === 'saving') return;
    const command = { type: 'finish-step', stepId: step.stepId, ...gathered.noteAndPhotos() } as const;
    const entries = await run(command, { undo: `Done: ${step.title}` });
    if (!entries) return;
    gathered.clear();
    onLogged(entries);
  };
  const anew = () => {
    if (anyCounted(draft)) change(uncounted);
    onStep();
  };
  return (
    <BenchFrame
      view={view}
      index={index}
      onShow={onShow}
      actions={
        <div class="acts">
          <SaveLine save={save} />
          <Button
            wide
            size="greasy"
            icon="check"
            under={ticked ? 'Logs it now' : 'Opens the step, to log it there'}
            onPress={() => void yes()}
          >
            Yes, it is done
          </Button>
          <Button wide size="greasy" icon={words.icon} onPress={onStep}>
            No, do it now
          </Button>
          <Button wide size="greasy" icon="question" under="Do it again from the start" onPress={anew}>
            Not sure
          </Button>
        </div>
      }
    >
      <StepCard title={step.title} icon={words.icon} state="open" caption={words.order}>
        <p class="bench-ask">Was this step finished before you stopped?</p>
        {anyCounted(draft) && <p class="far">Some bolts were counted off. The count is still there.</p>}
        {step.detail && <p class="far">{step.detail}</p>}
      </StepCard>
    </BenchFrame>
  );
}
