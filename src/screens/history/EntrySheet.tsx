import { useState } from 'preact/hooks';
import { Button } from '../../controls/Button.tsx';
import { Ruler } from '../../controls/figures/Ruler.tsx';
import { Sheet } from '../../controls/frames/Sheet.tsx';
import { Facts } from '../../controls/lists/Facts.tsx';
import { ListRow } from '../../controls/lists/ListRow.tsx';
import { isAnswered } from '../../drafts/correctable.ts';
import type { Entry, Id } from '../../journal/entries.ts';
import type { HistoryLine } from '../../logbook.ts';
import { clockText, dayText, whenText } from '../../words/dayText.ts';
import { entryAbout } from '../../words/history/entryAbout.ts';
import { entryFields, fieldText } from '../../words/history/entryFields.ts';
import { fieldLabels } from '../../words/history/fieldLabels.ts';
import type { Names } from '../../words/history/names.ts';
import { Photos } from '../bike/sheets/Photos.tsx';
import { hrefOf } from '../route.ts';
import { CorrectForm } from './CorrectForm.tsx';
import { EntryWords } from './EntryRow.tsx';
import { entryHead, isKnownKind } from './entryHeads.ts';

function photoIdsOf(entry: Entry): readonly Id[] {
  const { photoIds = [], photoId } = entry as { photoIds?: Id[]; photoId?: Id };
  return photoId === undefined ? photoIds : [...photoIds, photoId];
}

/** What later entries made of this one, oldest first. */
function Fixes({ line, names }: { line: HistoryLine; names: Names }) {
  if (line.fixes.length === 0) return null;
  return (
    <section>
      <Ruler label="Later changes" end={line.fixes.length} />
      {line.fixes.map(({ by, atMs, reason, undo, becomes }) => (
        <Facts
          key={by}
          of={[
            [undo ? 'Undone' : becomes === null ? 'Struck out' : 'Corrected', whenText(atMs)],
            ['Why', undo ? '' : reason],
            ...Object.entries(becomes ?? {}).map(
              ([field, value]) =>
                [
                  (fieldLabels as Record<string, string>)[field] ?? field,
                  field === 'happenedAtMs'
                    ? whenText(value as number, line.entry.zone)
                    : fieldText(field, value, names, line.entry.zone),
                ] as const,
            ),
          ]}
        />
      ))}
    </section>
  );
}

export interface EntrySheetProps {
  line: HistoryLine;
  names: Names;
  /** Whether it is said which phone wrote it. */
  saysPhone: boolean;
  onClose: () => void;
}

/** An entry in full: when it happened and when it was written, every field, its photos, and the way to correct it. */
export function EntrySheet({ line, names, saysPhone, onClose }: EntrySheetProps) {
  const [correcting, setCorrecting] = useState(false);
  const { entry } = line;
  const now = line.now;
  const { joints, parts } = entryAbout(entry);
  const photoIds = photoIdsOf(entry);
  const leave = () => {
    // The sheet closes on the way, or it would lie over the next screen.
    onClose();
  };
  return (
    <Sheet open title={entryHead(entry.type).word} onClose={onClose}>
      <div class="stack">
        <p>
          <EntryWords line={line} names={names} />
        </p>
        <Facts
          of={[
            [
              'Happened',
              `${dayText(entry.happenedAtMs, entry.zone)}, ${clockText(entry.happenedAtMs, entry.zone)}`,
            ],
            [
              'Written',
              `${dayText(entry.writtenAtMs, entry.zone)}, ${clockText(entry.writtenAtMs, entry.zone)}`,
            ],
            ['Time zone', entry.zone],
            ...(saysPhone && entry.phone !== undefined ? [['Phone', entry.phone] as const] : []),
          ]}
        />
        {photoIds.length > 0 && <Photos photoIds={photoIds} alt={entryHead(entry.type).word} />}
        <Ruler label="As it was written" />
        <Facts of={entryFields(entry, names).map(({ label, text }) => [label, text])} />
        <Fixes line={line} names={names} />
        {joints.slice(0, 1).map((jointId) => (
          <ListRow
            key={jointId}
            title={names.joint(jointId) ?? 'The joint'}
            icon="bolt"
            href={hrefOf({ at: 'joint', jointId })}
            onPress={leave}
          />
        ))}
        {parts.slice(0, 6).map((partId) => (
          <ListRow
            key={partId}
            title={names.part(partId) ?? 'The part'}
            icon="part"
            href={hrefOf({ at: 'part', partId })}
            onPress={leave}
          />
        ))}
        {now === undefined || isAnswered(entry) || !isKnownKind(entry.type) ? (
          <p class="small">
            {now === undefined
              ? 'It no longer counts. To log something else, add a new entry.'
              : 'This entry cannot be edited. Add a new one.'}
          </p>
        ) : correcting ? (
          <CorrectForm line={line} entry={now} onDone={onClose} />
        ) : (
          <Button icon="pencil" wide onPress={() => setCorrecting(true)}>
            Correct or strike out
          </Button>
        )}
      </div>
    </Sheet>
  );
}
