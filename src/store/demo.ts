import type { Entry, EntryHead, Id } from '../journal/entries.ts';
import { DEMO } from '../journal/facts.ts';
import type { Row } from '../journal/rows.ts';
import type { Database } from './database.ts';

const GROUPS = [
  'part',
  'joint',
  'step',
  'wait',
  'wait-over',
  'recheck',
  'recheck-over',
  'seal',
  'defect',
  'defect-closed',
  'rides',
  'ridecheck',
  'release',
  'finding',
];

/** Every history of the demo: its bikes, parts and tools all carry the prefix. */
const HISTORIES = () =>
  ['b', 'p', 't'].map((kind) => IDBKeyRange.bound(`${kind}:${DEMO}`, `${kind}:${DEMO}\uffff`));

function holdsDemo(row: Row): boolean {
  if (row.is === 'joint') return row.partIds.some((id) => id.startsWith(DEMO));
  return row.is === 'part' && row.partId.startsWith(DEMO);
}

/**
 * Takes the demo out again, lines and all: it was never the person's record. Nothing is removed while a
 * bike of the person's own holds a part of it.
 * @param head of the line that says it was done
 */
export async function removeDemo(
  db: Database,
  head: EntryHead,
): Promise<{ removed: number } | { inUseBy: string[] }> {
  const tx = db.transaction(['journal', 'views', 'photos'], 'readwrite', { durability: 'strict' });
  const views = tx.objectStore('views');
  const journal = tx.objectStore('journal');
  const bikes = await views.index('group').getAll('bike');
  const inUseBy: string[] = [];
  for (const bike of bikes) {
    if (bike.is !== 'bike' || bike.bikeId.startsWith(DEMO)) continue;
    const held = [
      ...(await views.index('group').getAll(`joint@${bike.bikeId}`)),
      ...(await views.index('group').getAll(`part@${bike.bikeId}`)),
    ];
    if (held.some(holdsDemo)) inUseBy.push(bike.name);
  }
  if (inUseBy.length > 0) {
    await tx.done;
    return { inUseBy };
  }
  const demoBikes = bikes.flatMap((bike) =>
    bike.is === 'bike' && bike.bikeId.startsWith(DEMO) ? [bike.bikeId] : [],
  );
  const lines = new Map<number, { entryId: Id; photoIds: Id[] }>();
  for (const range of HISTORIES()) {
    for (const { seq, entry } of await journal.index('places').getAll(range)) {
      lines.set(seq, { entryId: entry.id, photoIds: (entry as { photoIds?: Id[] }).photoIds ?? [] });
    }
  }
  for (const [seq, { entryId, photoIds }] of lines) {
    await journal.delete(seq);
    await views.delete(`fix/${entryId}`);
    for (const photoId of photoIds) await tx.objectStore('photos').delete(photoId);
  }
  const keys = demoBikes.flatMap((bikeId) => GROUPS.map((kind) => `${kind}@${bikeId}`));
  for (const name of keys) {
    for (const key of await views.index('group').getAllKeys(name)) await views.delete(key);
  }
  for (const kind of ['bike', 'part', 'tool']) {
    const range = IDBKeyRange.bound(`${kind}/${DEMO}`, `${kind}/${DEMO}\uffff`);
    await views.delete(range);
  }
  // Further lines take the number after this one, so that a tab that remembers rows of the demo notices.
  const last = await journal.openKeyCursor(null, 'prev');
  const highest = Math.max(last?.key ?? 0, ...lines.keys());
  const entry: Entry = { ...head, type: 'demo-removed', lines: lines.size };
  await journal.add({ seq: highest + 1, entry, places: [] });
  tx.commit();
  await tx.done;
  return { removed: lines.size };
}
