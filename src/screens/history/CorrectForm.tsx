import { useState } from 'preact/hooks';
import { Button } from '../../controls/Button.tsx';
import { DateTimeField } from '../../controls/fields/DateTimeField.tsx';
import { NumberField } from '../../controls/fields/NumberField.tsx';
import { TextField } from '../../controls/fields/TextField.tsx';
import { Ruler } from '../../controls/figures/Ruler.tsx';
import { HoldButton } from '../../controls/HoldButton.tsx';
import { type CorrectDraft, correctableOf, draftAt, readCorrection } from '../../drafts/correctable.ts';
import type { Entry } from '../../journal/entries.ts';
import type { HistoryLine } from '../../logbook.ts';
import { SaveNotice } from '../bike/sheets/SaveNotice.tsx';
import { useRun } from '../door.tsx';
import { useFirstWrong } from '../firstWrong.ts';

export interface CorrectFormProps {
  line: HistoryLine;
  /** The entry as it reads now. */
  entry: Entry;
  onDone: () => void;
}

/**
 * Corrects an entry or strikes it out, always with a reason. The old reading stays beside the new one; a
 * second correction keeps what the first one changed.
 */
export function CorrectForm({ line, entry, onDone }: CorrectFormProps) {
  const { run, save } = useRun();
  const [reason, setReason] = useState('');
  const [drafts, setDrafts] = useState<Record<string, CorrectDraft>>({});
  const [happenedAtMs, setHappened] = useState<number | undefined>(entry.happenedAtMs);
  const [wrong, setWrong] = useState<Record<string, string>>({});
  const form = useFirstWrong<HTMLDivElement>(wrong);
  const items = correctableOf(entry);
  const draftOf = (field: string) => drafts[field];
  const wantReason = () => {
    if (reason.trim() !== '') return true;
    setWrong({ reason: 'Say why; the reason stays beside it.' });
    return false;
  };
  const correct = async () => {
    if (save.is === 'saving') return;
    const read = readCorrection(entry, drafts);
    if (!read.ok) {
      setWrong({
        [read.field]:
          read.reason === 'empty'
            ? 'It cannot be nothing. Strike the entry out instead.'
            : 'That is not a number.',
      });
      return;
    }
    const moved = happenedAtMs !== undefined && happenedAtMs !== entry.happenedAtMs;
    const changed = { ...read.becomes, ...(moved ? { happenedAtMs } : {}) };
    if (Object.keys(changed).length === 0) {
      setWrong({ nothing: 'Nothing is different yet. Change a value, or strike the entry out.' });
      return;
    }
    if (!wantReason()) return;
    setWrong({});
    const before = line.fixes.at(-1)?.becomes ?? {};
    const entries = await run({
      type: 'correct',
      entryId: entry.id,
      reason,
      becomes: { ...before, ...changed },
    });
    if (entries) onDone();
  };
  const strike = async () => {
    if (save.is === 'saving' || !wantReason()) return;
    setWrong({});
    const entries = await run({ type: 'correct', entryId: entry.id, reason, becomes: null });
    if (entries) onDone();
  };
  return (
    <div class="stack" ref={form}>
      <Ruler label="Correct it" />
      {items.map((item) => {
        const { field, label, how } = item;
        const draft = draftOf(field) ?? draftAt(entry, item);
        const put = (next: CorrectDraft) => {
          setDrafts({ ...drafts, [field]: next });
          setWrong({});
        };
        if (how.as === 'words') {
          return (
            <TextField
              key={field}
              label={label}
              value={draft.typed}
              onInput={(typed) => put({ ...draft, typed })}
              error={wrong[field]}
              maxLength={600}
            />
          );
        }
        return (
          <NumberField
            key={field}
            label={label}
            typed={draft.typed}
            unit={draft.unit}
            units={how.as === 'quantity' ? how.units : []}
            onTyped={(typed, unit) => put({ typed, unit })}
            error={wrong[field]}
          />
        );
      })}
      <DateTimeField
        label="When it happened"
        atMs={happenedAtMs}
        onAt={setHappened}
        latestMs={entry.writtenAtMs}
      />
      <TextField
        label="Why"
        hint="Stays beside the entry for ever."
        value={reason}
        onInput={setReason}
        error={wrong['reason']}
        offers={['misread', 'wrong joint', 'wrong unit', 'typed wrong', 'logged twice']}
        maxLength={300}
      />
      {wrong['nothing'] && (
        <p class="field-error" role="alert">
          {wrong['nothing']}
        </p>
      )}
      <SaveNotice save={save} />
      <Button kind="main" wide disabled={save.is === 'saving'} onPress={correct}>
        Correct the entry
      </Button>
      <HoldButton
        kind="danger"
        icon="cross"
        disabled={save.is === 'saving'}
        onHeld={strike}
        explain="Hold: it stays readable, struck through"
      >
        Strike it out
      </HoldButton>
    </div>
  );
}
