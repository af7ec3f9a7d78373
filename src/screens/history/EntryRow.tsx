import { Icon } from '../../controls/Icon.tsx';
import type { HistoryLine } from '../../logbook.ts';
import { clockText, whenText } from '../../words/dayText.ts';
import { entrySentence } from '../../words/history/entrySentence.ts';
import type { Names } from '../../words/history/names.ts';
import { entryHead } from './entryHeads.ts';
import { isWrittenLate } from './timeline.ts';

/** Struck through as it was, with the reason and what it reads now beside it; untouched ones as they are. */
export function EntryWords({ line, names }: { line: HistoryLine; names: Names }) {
  const { entry, fixes } = line;
  const last = fixes.at(-1);
  const before = entrySentence(entry, names);
  if (!last) return <span class="entry-words">{before}</span>;
  const now = line.now;
  return (
    <span class="entry-words">
      <span class="entry-fixed">
        <Icon name={now ? 'pencil' : last.undo ? 'undo' : 'cross'} sizePx={20} />
        {now ? 'Corrected' : last.undo ? 'Undone' : 'Struck out'}
      </span>
      <s class="entry-old">{before}</s>
      {now && <span class="entry-now">{entrySentence(now, names)}</span>}
      {!last.undo && <span>{`Why: ${last.reason}`}</span>}
    </span>
  );
}

export interface EntryRowProps {
  line: HistoryLine;
  names: Names;
  /** Whether it is said which phone wrote it. */
  saysPhone: boolean;
  onOpen: () => void;
}

/** One line of the history; a tap opens it in full. */
export function EntryRow({ line, names, saysPhone, onOpen }: EntryRowProps) {
  const { entry } = line;
  const { word, icon } = entryHead(entry.type);
  return (
    <button type="button" class="entry" onClick={onOpen}>
      <span class="entry-clock">{clockText(entry.happenedAtMs, entry.zone)}</span>
      <span class="entry-head">
        <Icon name={icon} sizePx={20} />
        {word}
      </span>
      <span>
        <EntryWords line={line} names={names} />
        {isWrittenLate(entry) && (
          <span class="small">{`Logged later, ${whenText(entry.writtenAtMs, entry.zone)}`}</span>
        )}
        {saysPhone && entry.phone !== undefined && <span class="small">{`Written on ${entry.phone}`}</span>}
      </span>
    </button>
  );
}
