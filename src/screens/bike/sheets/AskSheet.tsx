import { Button } from '../../../controls/Button.tsx';
import { TextField } from '../../../controls/fields/TextField.tsx';
import { Sheet } from '../../../controls/frames/Sheet.tsx';
import type { SaveState } from '../../door.tsx';
import { useEdit } from '../../draft.ts';
import { Meanwhile } from '../../Meanwhile.tsx';
import { SaveNotice } from './SaveNotice.tsx';

export interface AskSheetProps {
  /** Names what is asked and about which thing: under it the words are kept until they are saved. */
  draft: string;
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
  /** Resolves to whether the words were saved. */
  onWords: (words: string) => Promise<boolean>;
  onClose: () => void;
}

/** Asks for a word or two before something is written: a reason, a name, how it was mended. */
export function AskSheet({
  draft: key,
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
  const { draft, change, clear, meanwhile } = useEdit(key, { words: first });
  const { words } = draft;
  const setWords = (typed: string) => change({ words: typed });
  const tell = async () => {
    if (await onWords(words.trim())) clear();
  };
  return (
    <Sheet
      open
      title={title}
      onClose={onClose}
      actions={
        <Button kind={danger ? 'plain' : 'main'} wide disabled={save.is === 'saving'} onPress={tell}>
          {act}
        </Button>
      }
    >
      <form
        class="stack"
        onSubmit={(event) => {
          event.preventDefault();
          void tell();
        }}
      >
        <SaveNotice save={save} />
        <Meanwhile changed={meanwhile} labels={{ words: label }} onTake={change} />
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
