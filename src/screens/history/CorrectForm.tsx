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
import { useEdit } from '../draft.ts';
import { useFirstWrong } from '../firstWrong.ts';
import { Meanwhile } from '../Meanwhile.tsx';

/** The two fields every correction has; no field of an entry is called like that. */
const WHEN = '@when';
const WHY = '@why';

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
  const items = correctableOf(entry);
  const { draft, change, clear, meanwhile } = useEdit<Record<string, CorrectDraft>>(
    `correct:${entry.id}`,
    Object.fromEntries([
      ...items.map((item) => [item.field, draftAt(entry, item)] as const),
      [WHEN, { typed: String(entry.happenedAtMs) }],
      [WHY, { typed: '' }],
    ]),
  );
  const reason = draft[WHY]?.typed ?? '';
  const when = draft[WHEN]?.typed ?? '';
  const happenedAtMs = when === '' ? undefined : Number(when);
  const [wrong, setWrong] = useState<Record<string, string>>({});
  const form = useFirstWrong<HTMLDivElement>(wrong);
  const labels = Object.fromEntries([
    ...items.map(({ field, label }) => [field, label] as const),
    [WHEN, 'When it happened'],
  ]);
  const wantReason = () => {
    if (reason.trim() !== '') return true;
    setWrong({ reason: 'Say why; the reason stays beside it.' });
    return false;
  };
  const correct = async (besides: { overLimit?: true } = {}) => {
    if (save.is === 'saving') return;
    const read = readCorrection(entry, draft);
    if (!read.ok) {
      setWrong({
        [read.field]:
          read.reason === 'empty'
            ? 'Cannot be empty. Strike out the entry instead.'
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
      becomes: { ...before, ...changed, ...besides },
    });
    if (!entries) return;
    clear();
    onDone();
  };
  const strike = async () => {
    if (save.is === 'saving' || !wantReason()) return;
    setWrong({});
    const entries = await run({ type: 'correct', entryId: entry.id, reason, becomes: null });
    if (!entries) return;
    clear();
    onDone();
  };
  return (
    <div class="stack" ref={form}>
      <Ruler label="Correct it" />
      <Meanwhile changed={meanwhile} labels={labels} onTake={change} />
      {items.map((item) => {
        const { field, label, how } = item;
        const typed = draft[field] ?? draftAt(entry, item);
        const put = (next: CorrectDraft) => {
          change({ [field]: next });
          setWrong({});
        };
        if (how.as === 'words') {
          return (
            <TextField
              key={field}
              label={label}
              value={typed.typed}
              onInput={(words) => put({ ...typed, typed: words })}
              error={wrong[field]}
              maxLength={600}
            />
          );
        }
        return (
          <NumberField
            key={field}
            label={label}
            typed={typed.typed}
            unit={typed.unit}
            units={how.as === 'quantity' ? how.units : []}
            onTyped={(figure, unit) => put({ typed: figure, unit })}
            error={wrong[field]}
          />
        );
      })}
      <DateTimeField
        label="When it happened"
        atMs={happenedAtMs}
        onAt={(atMs) => change({ [WHEN]: { typed: atMs === undefined ? '' : String(atMs) } })}
        latestMs={entry.writtenAtMs}
      />
      <TextField
        label="Why"
        hint="Kept with the entry."
        value={reason}
        onInput={(words) => change({ [WHY]: { typed: words } })}
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
      {save.is === 'refused' && save.refused === 'above-the-limit' && (
        <Button wide icon="warning" onPress={() => void correct({ overLimit: true })}>
          Confirm the figure
        </Button>
      )}
      <Button kind="main" wide disabled={save.is === 'saving'} onPress={() => void correct()}>
        Correct the entry
      </Button>
      <HoldButton
        kind="plain"
        icon="cross"
        disabled={save.is === 'saving'}
        onHeld={strike}
        explain="Press and hold: it stays readable, struck through"
      >
        Strike it out
      </HoldButton>
    </div>
  );
}
