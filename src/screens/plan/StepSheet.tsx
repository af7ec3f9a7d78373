import { useState } from 'preact/hooks';
import { Button } from '../../controls/Button.tsx';
import { Mark } from '../../controls/figures/Mark.tsx';
import { Sheet } from '../../controls/frames/Sheet.tsx';
import type { Command } from '../../journal/commands.ts';
import type { StepRow } from '../../journal/rows.ts';
import { ReasonSheet, reopenReasons, skipReasons } from '../bench/frame/ReasonSheet.tsx';
import { SaveLine } from '../bench/frame/SaveLine.tsx';
import { stepMark, stepWords } from '../bench/stepWords.ts';
import { useRun } from '../door.tsx';
import { forgetDraft } from '../draft.ts';
import { RenameSheet, renameDraft } from './RenameSheet.tsx';
import { SplitSheet } from './SplitSheet.tsx';

const dropReasons = ['Not needed on this bike', 'In the plan twice', 'Joint removed'] as const;

export interface StepSheetProps {
  step: StepRow;
  steps: readonly StepRow[];
  onBench: () => void;
  onMove: () => void;
  onAddBehind: () => void;
  onClose: () => void;
}

/** What can be done with one step of the plan: its words, and whether it stays. */
export function StepSheet({ step, steps, onBench, onMove, onAddBehind, onClose }: StepSheetProps) {
  const [asking, setAsking] = useState<'skip' | 'drop' | 'reopen' | 'split' | 'rename'>();
  const { run, save, clear } = useRun();
  const { stepId, title, state } = step;
  const index = steps.findIndex((each) => each.stepId === stepId);
  const before = steps[index - 1];
  const after = steps[index + 1];
  const busy = save.is === 'saving';
  const ask = (what: typeof asking) => {
    clear();
    setAsking(what);
  };
  /** Carries it out and comes back to the list. */
  const and = async (command: Command, undo: string) => {
    if (busy || !(await run(command, { undo }))) return false;
    onClose();
    return true;
  };
  const reason = { save, onClose: () => setAsking(undefined) };
  if (asking === 'skip')
    return (
      <ReasonSheet
        {...reason}
        about={`skip:${stepId}`}
        title={`Skip: ${title}`}
        presets={skipReasons}
        act="Skip for this reason"
        onReason={(why) => and({ type: 'skip-step', stepId, why }, `Skipped: ${title}`)}
      />
    );
  if (asking === 'drop')
    return (
      <ReasonSheet
        {...reason}
        about={`drop:${stepId}`}
        title={`Remove: ${title}`}
        presets={dropReasons}
        act="Remove for this reason"
        onReason={(why) => {
          forgetDraft(`bench:${stepId}`);
          forgetDraft(renameDraft(stepId));
          return and({ type: 'drop-step', stepId, why }, `Removed: ${title}`);
        }}
      />
    );
  if (asking === 'reopen')
    return (
      <ReasonSheet
        {...reason}
        about={`reopen:${stepId}`}
        title={`Open again: ${title}`}
        presets={reopenReasons}
        act="Open it for this reason"
        onReason={(why) => and({ type: 'reopen-step', stepId, why }, `Open again: ${title}`)}
      />
    );
  if (asking === 'split')
    return (
      <SplitSheet
        {...reason}
        step={step}
        onSplit={(titles) => and({ type: 'split-step', stepId, titles }, `Split: ${title}`)}
      />
    );
  if (asking === 'rename')
    return (
      <RenameSheet
        {...reason}
        step={step}
        onRename={async (changed) => {
          if (Object.keys(changed).length > 0)
            return and({ type: 'describe-step', stepId, ...changed }, `Changed: ${title}`);
          onClose();
          return true;
        }}
      />
    );
  return (
    <Sheet
      open
      title={title}
      onClose={onClose}
      actions={
        <Button kind="main" wide icon={stepWords(step.kind).icon} onPress={onBench}>
          Do this step
        </Button>
      }
    >
      <div class="stack">
        <p class="plan-state">
          <Mark {...stepMark[state]} />
          <span>{step.why ? `${stepWords(step.kind).work}; ${step.why}` : stepWords(step.kind).work}</span>
        </p>
        <p role="status">
          Step {index + 1} of {steps.length}
          {before ? `, after “${before.title}”` : ', the first'}
          {after ? `, before “${after.title}”` : ', the last'}
        </p>
        <SaveLine save={save} />
        <div class="plan-acts">
          <Button size="greasy" icon="up" onPress={onMove}>
            Move
          </Button>
          <Button size="greasy" icon="plus" onPress={onAddBehind}>
            Add after
          </Button>
          <Button size="greasy" icon="pencil" onPress={() => ask('rename')}>
            Edit
          </Button>
          {state === 'open' && (
            <>
              <Button size="greasy" icon="saw" onPress={() => ask('split')}>
                Split
              </Button>
              <Button size="greasy" icon="flag" onPress={() => ask('skip')}>
                Skip
              </Button>
            </>
          )}
          {state !== 'open' && (
            <Button size="greasy" icon="undo" onPress={() => ask('reopen')}>
              Open again
            </Button>
          )}
          {state !== 'done' && (
            <Button size="greasy" icon="cross" onPress={() => ask('drop')}>
              Remove
            </Button>
          )}
        </div>
      </div>
    </Sheet>
  );
}
