import { DEMO, isDemo } from '../journal/demoIds.ts';
import type { Entry, EntryHead, Id } from '../journal/entries.ts';
import type { Row } from '../journal/rows.ts';
import type { Database, JournalLine } from './database.ts';

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
const histories = () =>
  ['b', 'p', 't'].map((kind) => IDBKeyRange.bound(`${kind}:${DEMO}`, `${kind}:${DEMO}\uffff`));

function holdsDemo(row: Row): boolean {
  if (row.is === 'joint') return row.partIds.some(isDemo);
  return row.is === 'part' && isDemo(row.partId);
}

/** Whether a line tells of a part of the person's own, which has been on a bike of the demo. */
const ofOwnPart = ({ places }: JournalLine): boolean =>
  places.some((place) => place.startsWith('part/') && !isDemo(place.slice('part/'.length)));

/** How many lines went, or which bikes stand in the way: the person's, with parts of the demo, or the other way. */
export type DemoRemoval = { removed: number } | { inUseBy: string[] } | { holdOwn: string[] };

/**
 * Takes the demo out again, lines and all: it was never the person's record. Nothing is removed while a
 * bike of the person's own holds a part of it, or a bike of it a part of the person's own.
 * @param head of the line that says it was done
 */
export async function removeDemo(db: Database, head: EntryHead): Promise<DemoRemoval> {
  const tx = db.transaction(['journal', 'views', 'photos'], 'readwrite', { durability: 'strict' });
  const views = tx.objectStore('views');
  const journal = tx.objectStore('journal');
  const bikes = await views.index('group').getAll('bike');
  const inUseBy: string[] = [];
  const holdOwn: string[] = [];
  for (const bike of bikes) {
    if (bike.is !== 'bike') continue;
    const parts = await views.index('group').getAll(`part@${bike.bikeId}`);
    if (isDemo(bike.bikeId)) {
      if (!parts.every(holdsDemo)) holdOwn.push(bike.name);
      continue;
    }
    const joints = await views.index('group').getAll(`joint@${bike.bikeId}`);
    if ([...joints, ...parts].some(holdsDemo)) inUseBy.push(bike.name);
  }
  const wheels = (
    await Promise.all(['wheel', 'wheel-apart'].map((name) => views.index('group').getAll(name)))
  ).flat();
  for (const wheel of wheels) {
    if (wheel.is !== 'wheel' || !wheel.parts.some(({ partId }) => isDemo(partId))) continue;
    if (!wheel.parts.every(({ partId }) => isDemo(partId))) inUseBy.push(wheel.name);
  }
  if (inUseBy.length > 0 || holdOwn.length > 0) {
    await tx.done;
    return inUseBy.length > 0 ? { inUseBy } : { holdOwn };
  }
  const demoBikes = bikes.flatMap((bike) => (bike.is === 'bike' && isDemo(bike.bikeId) ? [bike.bikeId] : []));
  const lines = new Map<number, { entryId: Id; photoIds: Id[] }>();
  for (const range of histories()) {
    for (const line of await journal.index('places').getAll(range)) {
      if (ofOwnPart(line)) continue;
      const { seq, entry } = line;
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
  // A wheel built of the demo's parts alone goes with them, also under another name.
  for (const wheel of wheels) {
    if (wheel.is === 'wheel' && wheel.parts.some(({ partId }) => isDemo(partId)))
      await views.delete(wheel.key);
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
