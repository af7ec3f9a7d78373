import { Button } from '../../controls/Button.tsx';
import { TextField } from '../../controls/fields/TextField.tsx';
import { Sheet } from '../../controls/frames/Sheet.tsx';
import type { StepRow } from '../../journal/rows.ts';
import { SaveLine } from '../bench/frame/SaveLine.tsx';
import type { SaveState } from '../door.tsx';
import { useEdit } from '../draft.ts';
import { Meanwhile } from '../Meanwhile.tsx';

export interface RenameSheetProps {
  step: StepRow;
  save: SaveState;
  /** Resolves to whether the words were saved. */
  onRename: (changed: { title?: string; detail?: string }) => Promise<boolean>;
  onClose: () => void;
}

const labels = { title: 'Title', detail: 'Notes' };

/** Under which the new words of a step are kept until they are saved. */
export const renameDraft = (stepId: string): string => `step-words:${stepId}`;

/** Other words for a step. */
export function RenameSheet({ step, save, onRename, onClose }: RenameSheetProps) {
  const { draft, change, clear, meanwhile } = useEdit(renameDraft(step.stepId), {
    title: step.title,
    detail: step.detail ?? '',
  });
  const { title, detail } = draft;
  const rename = async () => {
    const typed = { title: title.trim(), detail: detail.trim() };
    const changed = {
      ...(typed.title === step.title ? {} : { title: typed.title }),
      ...(typed.detail === (step.detail ?? '') ? {} : { detail: typed.detail }),
    };
    if (await onRename(changed)) clear();
  };
  return (
    <Sheet
      open
      title="Edit"
      onClose={onClose}
      actions={
        <>
          <SaveLine save={save} />
          <Button kind="main" wide icon="check" disabled={title.trim() === ''} onPress={rename}>
            Save
          </Button>
        </>
      }
    >
      <div class="stack">
        <Meanwhile changed={meanwhile} labels={labels} onTake={change} />
        <TextField
          label="Title"
          value={title}
          onInput={(typed) => change({ title: typed })}
          maxLength={120}
        />
        <TextField
          label="Notes"
          lines={3}
          value={detail}
          onInput={(typed) => change({ detail: typed })}
          maxLength={1000}
        />
      </div>
    </Sheet>
  );
}
