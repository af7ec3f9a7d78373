import { useState } from 'preact/hooks';
import { Button } from '../../../controls/Button.tsx';
import { TextField } from '../../../controls/fields/TextField.tsx';
import { Sheet } from '../../../controls/frames/Sheet.tsx';
import type { SaveState } from '../../door.tsx';
import { SaveNotice } from './SaveNotice.tsx';

export interface AskSheetProps {
  title: string;
  /** Caption of the line to write on. */
  label: string;
  hint?: string | undefined;
  first?: string;
  /** Several ruled lines, for a text that may have them already. */
  lines?: number;
  maxLength?: number;
  /** Words to tap instead of writing. */
  offers?: readonly string[];
  /** What the button says. */
  act: string;
  danger?: boolean;
  save: SaveState;
  onWords: (words: string) => void;
  onClose: () => void;
}

/** Asks for a word or two before something is written: a reason, a name, how it was mended. */
export function AskSheet({
  title,
  label,
  hint,
  first = '',
  lines,
  maxLength = 300,
  offers = [],
  act,
  danger,
  save,
  onWords,
  onClose,
}: AskSheetProps) {
  const [words, setWords] = useState(first);
  const tell = () => onWords(words.trim());
  return (
    <Sheet
      open
      title={title}
      onClose={onClose}
      actions={
        <Button kind={danger ? 'danger' : 'main'} wide disabled={save.is === 'saving'} onPress={tell}>
          {act}
        </Button>
      }
    >
      <form
        class="stack"
        onSubmit={(event) => {
          event.preventDefault();
          tell();
        }}
      >
        <SaveNotice save={save} />
        <TextField
          label={label}
          hint={hint}
          value={words}
          onInput={setWords}
          maxLength={maxLength}
          {...(lines ? { lines } : {})}
        />
        {offers.map((offer) => (
          <Button key={offer} wide onPress={() => setWords(offer)}>
            {offer}
          </Button>
        ))}
      </form>
    </Sheet>
  );
}
