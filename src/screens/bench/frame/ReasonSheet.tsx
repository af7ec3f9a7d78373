import { useState } from 'preact/hooks';
import { Button } from '../../../controls/Button.tsx';
import { TextField } from '../../../controls/fields/TextField.tsx';
import { Sheet } from '../../../controls/frames/Sheet.tsx';
import type { SaveState } from '../../door.tsx';
import { SaveLine } from './SaveLine.tsx';

export interface ReasonSheetProps {
  title: string;
  /** Reasons to tap; each is enough by itself. */
  presets: readonly string[];
  /** What the button under the written reason says. */
  act: string;
  save: SaveState;
  onReason: (why: string) => void;
  onClose: () => void;
}

/** Asks why, with a tap; words are optional. */
export function ReasonSheet({ title, presets, act, save, onReason, onClose }: ReasonSheetProps) {
  const [words, setWords] = useState('');
  return (
    <Sheet open title={title} onClose={onClose}>
      <div class="stack">
        <SaveLine save={save} />
        <div class="button-presets">
          {presets.map((preset) => (
            <Button key={preset} size="greasy" onPress={() => onReason(preset)}>
              {preset}
            </Button>
          ))}
        </div>
        <TextField label="Another reason" value={words} onInput={setWords} maxLength={200} />
        <Button wide size="greasy" disabled={words.trim() === ''} onPress={() => onReason(words.trim())}>
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
