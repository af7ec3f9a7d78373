import { useState } from 'preact/hooks';
import { Button } from '../../controls/Button.tsx';
import { TextField } from '../../controls/fields/TextField.tsx';
import { Sheet } from '../../controls/frames/Sheet.tsx';
import type { StepRow } from '../../journal/rows.ts';
import { SaveLine } from '../bench/frame/SaveLine.tsx';
import type { SaveState } from '../door.tsx';

export interface RenameSheetProps {
  step: StepRow;
  save: SaveState;
  onRename: (changed: { title: string; detail: string }) => void;
  onClose: () => void;
}

/** Other words for a step. */
export function RenameSheet({ step, save, onRename, onClose }: RenameSheetProps) {
  const [title, setTitle] = useState(step.title);
  const [detail, setDetail] = useState(step.detail ?? '');
  return (
    <Sheet
      open
      title="Change the words"
      onClose={onClose}
      actions={
        <>
          <SaveLine save={save} />
          <Button
            kind="main"
            wide
            icon="check"
            disabled={title.trim() === ''}
            onPress={() => onRename({ title: title.trim(), detail: detail.trim() })}
          >
            Save
          </Button>
        </>
      }
    >
      <div class="stack">
        <TextField label="Title" value={title} onInput={setTitle} maxLength={120} />
        <TextField
          label="What to keep in mind"
          lines={3}
          value={detail}
          onInput={setDetail}
          maxLength={1000}
        />
      </div>
    </Sheet>
  );
}
