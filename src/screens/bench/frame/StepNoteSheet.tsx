import { Button } from '../../../controls/Button.tsx';
import { TextField } from '../../../controls/fields/TextField.tsx';
import { Sheet } from '../../../controls/frames/Sheet.tsx';

export interface StepNoteSheetProps {
  note: string;
  onNote: (note: string) => void;
  onClose: () => void;
}

/** A remark that is logged with the step; the phone's own keyboard also takes it down by voice. */
export function StepNoteSheet({ note, onNote, onClose }: StepNoteSheetProps) {
  return (
    <Sheet
      open
      title="Note for this step"
      onClose={onClose}
      actions={
        <Button wide size="greasy" icon="check" onPress={onClose}>
          Keep it with the step
        </Button>
      }
    >
      <TextField
        label="Note"
        hint="It is logged together with the step."
        lines={4}
        value={note}
        onInput={onNote}
        maxLength={2000}
      />
    </Sheet>
  );
}
