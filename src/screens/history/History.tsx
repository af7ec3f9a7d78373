import './history.css';
import { useCallback, useEffect, useMemo, useState } from 'preact/hooks';
import { Button } from '../../controls/Button.tsx';
import { Notice } from '../../controls/frames/Notice.tsx';
import { Screen } from '../../controls/frames/Screen.tsx';
import { WindowedList } from '../../controls/lists/WindowedList.tsx';
import type { Entry, Id } from '../../journal/entries.ts';
import { readPhoneName } from '../../sensing/thisPhone.ts';
import { entrySentence } from '../../words/history/entrySentence.ts';
import { countWords } from '../../words/phrases.ts';
import { Absent } from '../Absent.tsx';
import { useView } from '../door.tsx';
import { go, hrefOf, type Route } from '../route.ts';
import { Waits } from '../Waits.tsx';
import { EntryRow } from './EntryRow.tsx';
import { EntrySheet } from './EntrySheet.tsx';
import { Finder } from './finder.ts';
import { Narrow, seenIn } from './Narrow.tsx';
import { isOfSeveralPhones, type Narrowing } from './timeline.ts';
import { useNames } from './useNames.ts';
import { usePages } from './usePages.ts';

interface Subject {
  name: string | undefined;
  back: Route;
  /** What it would be, where nothing of that id was ever written down. */
  what?: 'bike' | 'part' | 'joint';
}

/** What a history is of, by its place: `b:`, `p:`, `j:` or `t:` and the id. */
function useSubject(place: string): Subject {
  const id = place.slice(2);
  const of = place.charAt(0);
  const bike = useView('bikes');
  const part = useView('part', { partId: of === 'p' ? id : '' });
  const joint = useView('joint', { jointId: of === 'j' ? id : '' });
  const tools = useView('tools');
  if (of === 'b') {
    const row = bike.is === 'there' ? bike.value.find(({ bikeId }) => bikeId === id) : undefined;
    const gone = bike.is === 'there' && !row;
    return { name: row?.name, back: gone ? { at: 'home' } : { at: 'bike', bikeId: id }, what: 'bike' };
  }
  if (of === 'p') {
    const name = part.is === 'there' ? part.value?.part.name : undefined;
    return { name, back: { at: 'part', partId: id }, what: 'part' };
  }
  if (of === 'j') {
    const name = joint.is === 'there' ? joint.value?.joint.name : undefined;
    return { name, back: { at: 'joint', jointId: id }, what: 'joint' };
  }
  const name = tools.is === 'there' ? tools.value.find(({ toolId }) => toolId === id)?.name : undefined;
  return { name, back: { at: 'tools' } };
}

const everything: Narrowing = { sought: '' };

/** Everything that was written down about a bike, a part, a joint or a tool, newest first. */
export function History({ place }: { place: string }) {
  const { name, back, what } = useSubject(place);
  const [narrowing, setNarrowing] = useState(everything);
  const narrowed = JSON.stringify(narrowing) !== JSON.stringify(everything);
  const { lines, whole, reading, failed, more } = usePages(place, narrowed);
  const entries = useMemo(() => lines.map(({ entry }) => entry), [lines]);
  const names = useNames(entries);
  const [phoneNow] = useState(readPhoneName);
  const [openId, setOpenId] = useState<Id>();
  const partsOf = useMemo(() => {
    const made = new Map<Id, readonly Id[]>();
    for (const entry of entries) {
      if (entry.type === 'joint-made' || (entry.type === 'joint-described' && entry.partIds))
        if (!made.has(entry.jointId)) made.set(entry.jointId, entry.partIds ?? []);
    }
    return (jointId: Id) => made.get(jointId) ?? [];
  }, [entries]);
  const sentenceOf = useMemo(() => {
    const made = new WeakMap<Entry, string>();
    return (entry: Entry) => {
      const sentence = made.get(entry) ?? entrySentence(entry, names);
      made.set(entry, sentence);
      return sentence;
    };
  }, [names]);
  const finder = useMemo(() => new Finder(narrowing, sentenceOf), [narrowing, sentenceOf]);
  const rows = useMemo(() => finder.in(lines, partsOf), [finder, lines, partsOf]);
  const found = useMemo(() => rows.filter(({ is }) => is === 'entry').length, [rows]);
  const seen = useMemo(() => seenIn(lines), [lines]);
  const saysPhone = useMemo(() => isOfSeveralPhones(lines, phoneNow), [lines, phoneNow]);
  const open = openId === undefined ? undefined : lines.find(({ entry }) => entry.id === openId);
  // A new function after each page: the list then looks again whether its end is still near.
  const next = useCallback(() => more(), [more, lines]);
  // What is looked for may stand anywhere: reading goes on by itself, not only where the list is near its end.
  useEffect(() => {
    if (narrowed && !whole && !reading && !failed) more();
  }, [narrowed, whole, reading, failed, more]);
  const readSoFar = countWords(lines.length, 'entry', 'entries');
  return (
    <Screen
      title={name === undefined ? 'History' : `History: ${name}`}
      route={`history ${place}`}
      back={hrefOf(back)}
      waits={<Waits />}
    >
      {failed && (
        <Notice
          kind="error"
          title="The history could not be read"
          action={<Button onPress={() => go({ at: 'home' })}>Home</Button>}
        >
          Reload the page and open it again. What is recorded is safe.
        </Notice>
      )}
      {whole && lines.length === 0 && !failed && what && <Absent what={what} seen={[]} />}
      {whole && lines.length === 0 && !failed && !what && (
        <Notice kind="empty" title="Nothing logged yet">
          Everything you log appears here.
        </Notice>
      )}
      {lines.length > 0 && (
        <Narrow
          narrowing={narrowing}
          seen={seen}
          names={names}
          change={(changed) => setNarrowing({ ...narrowing, ...changed })}
        />
      )}
      {narrowed && (
        <p class="small" role="status">
          {whole
            ? `${found} found in ${readSoFar}.`
            : `${found} found so far; ${readSoFar} searched, searching on…`}
        </p>
      )}
      <WindowedList
        label="Entries, newest first"
        count={rows.length}
        estimatePx={104}
        rowKey={(at) => {
          const row = rows[at];
          return row?.is === 'entry' ? row.line.entry.id : `${row?.day}${at}`;
        }}
        renderRow={(at) => {
          const row = rows[at];
          if (!row) return null;
          if (row.is === 'day') return <h2 class="day">{row.day}</h2>;
          return (
            <EntryRow {...{ line: row.line, names, saysPhone }} onOpen={() => setOpenId(row.line.entry.id)} />
          );
        }}
        onNearEnd={whole ? undefined : next}
      />
      <p class="history-end small" role="status">
        {reading && !whole
          ? `Reading… ${readSoFar}`
          : whole && lines.length > 0 && !narrowed
            ? 'Start of history.'
            : ''}
      </p>
      {narrowed && whole && rows.length === 0 && (
        <Notice
          kind="note"
          title="No entry like that"
          action={<Button onPress={() => setNarrowing(everything)}>Show everything</Button>}
        >
          The whole history was searched.
        </Notice>
      )}
      {open && <EntrySheet {...{ line: open, names, saysPhone }} onClose={() => setOpenId(undefined)} />}
    </Screen>
  );
}
