import { Button } from '../../controls/Button.tsx';
import { Choice } from '../../controls/fields/Choice.tsx';
import { TextField } from '../../controls/fields/TextField.tsx';
import { Sheet } from '../../controls/frames/Sheet.tsx';
import type { StepKind } from '../../journal/entries.ts';
import type { StepRow } from '../../journal/rows.ts';
import { SaveLine } from '../bench/frame/SaveLine.tsx';
import { stepKinds, stepWords } from '../bench/stepWords.ts';
import type { SaveState } from '../door.tsx';
import { useEdit } from '../draft.ts';
import { Meanwhile } from '../Meanwhile.tsx';

export interface RenameSheetProps {
  step: StepRow;
  save: SaveState;
  /** Resolves to whether the words were saved. */
  onRename: (changed: { title?: string; detail?: string; kind?: StepKind }) => Promise<boolean>;
  onClose: () => void;
}

const labels = { title: 'Title', detail: 'Notes', kind: 'Type of step' };

/** Under which the new words of a step are kept until they are saved. */
export const renameDraft = (stepId: string): string => `step-words:${stepId}`;

/** Other words for a step, or another kind of it. */
export function RenameSheet({ step, save, onRename, onClose }: RenameSheetProps) {
  const { draft, change, clear, meanwhile } = useEdit(renameDraft(step.stepId), {
    title: step.title,
    detail: step.detail ?? '',
    kind: step.kind,
  });
  const { title, detail, kind } = draft;
  // A torque is logged on a joint.
  const kinds = stepKinds.filter((one) => one !== 'torque' || step.jointId !== undefined);
  const rename = async () => {
    const typed = { title: title.trim(), detail: detail.trim() };
    const changed = {
      ...(typed.title === step.title ? {} : { title: typed.title }),
      ...(typed.detail === (step.detail ?? '') ? {} : { detail: typed.detail }),
      ...(kind === step.kind ? {} : { kind }),
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
        <Choice
          label="Type of step"
          value={kind}
          onChoose={(chosen) => change({ kind: chosen })}
          options={kinds.map((value) => ({
            value,
            label: stepWords(value).work,
            icon: stepWords(value).icon,
          }))}
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
