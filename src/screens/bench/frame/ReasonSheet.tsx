import { Button } from '../../../controls/Button.tsx';
import { TextField } from '../../../controls/fields/TextField.tsx';
import { Sheet } from '../../../controls/frames/Sheet.tsx';
import type { SaveState } from '../../door.tsx';
import { useDraft } from '../../draft.ts';
import { SaveLine } from './SaveLine.tsx';

export interface ReasonSheetProps {
  /** What the reason is for, as `skip:` and the id of the step: under this it is kept until it is given. */
  about: string;
  title: string;
  /** Reasons to tap; each is enough by itself. */
  presets: readonly string[];
  /** What the button under the written reason says. */
  act: string;
  save: SaveState;
  /** Resolves to whether it was carried out. */
  onReason: (why: string) => Promise<boolean>;
  onClose: () => void;
}

/** Asks why, with a tap; words are optional. */
export function ReasonSheet(props: ReasonSheetProps) {
  const { about, title, presets, act, save, onReason, onClose } = props;
  const [{ words }, change, clear] = useDraft(`reason:${about}`, { words: '' });
  const give = async (why: string) => {
    if (await onReason(why)) clear();
  };
  // Shut by hand it is given up: nothing half said is left to wait for.
  const shut = () => {
    clear();
    onClose();
  };
  return (
    <Sheet open title={title} onClose={shut}>
      <div class="stack">
        <SaveLine save={save} />
        <div class="button-presets">
          {presets.map((preset) => (
            <Button key={preset} size="greasy" onPress={() => void give(preset)}>
              {preset}
            </Button>
          ))}
        </div>
        <TextField
          label="Another reason"
          value={words}
          onInput={(typed) => change({ words: typed })}
          maxLength={200}
        />
        <Button wide size="greasy" disabled={words.trim() === ''} onPress={() => void give(words.trim())}>
          {act}
        </Button>
      </div>
    </Sheet>
  );
}

export const skipReasons = [
  'Part not here yet',
  'Tool not here',
  'Another day',
  'Not needed on this bike',
  'Something does not fit',
] as const;

export const reopenReasons = ['Doing it again', 'Was not done after all', 'Wrong step was marked'] as const;
