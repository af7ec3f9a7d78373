import type { Circumstances } from '../journal/decide/ruling.ts';
import { DEMO, isDemo } from '../journal/demoIds.ts';
import { ENTRY_VERSION, type Entry, type EntryHead, type Id } from '../journal/entries.ts';
import { phoneName } from '../journal/phoneName.ts';
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
  if (row.is === 'joint') return row.state !== 'apart' && row.partIds.some(isDemo);
  return row.is === 'part' && isDemo(row.partId);
}

/**
 * Whether a line is of the person's own: of a part that has been on a bike of the demo, of a wheel that once had a part
 * of it, of a bike that was worked on with a tool of it.
 * @param gone wheels that leave with the demo
 */
function staysHere({ places }: JournalLine, gone: ReadonlySet<Id>): boolean {
  const idsAfter = (start: string) =>
    places.flatMap((place) =>
      place.startsWith(start) ? (place.slice(start.length).split(':')[0] ?? []) : [],
    );
  const [parts, wheels] = [idsAfter('part/'), idsAfter('wheel/')];
  if (parts.length > 0) return !parts.every(isDemo);
  if (wheels.length > 0) return !wheels.every((wheelId) => gone.has(wheelId));
  return !idsAfter('b:').every(isDemo);
}

/** How many lines went, or which bikes stand in the way: the person's, with parts of the demo, or the other way. */
export type DemoRemoval = { removed: number } | { inUseBy: string[] } | { holdOwn: string[] };

/**
 * Takes the demo out again, lines and all: it was never the person's record. Nothing is removed while a bike or a wheel
 * of the person's own holds a part of it, or a bike of it a part of the person's own.
 * @param now when and where: the line that says it was done is headed with it
 */
export async function removeDemo(
  db: Database,
  { nowMs, zone, phone: typed, newId }: Pick<Circumstances, 'nowMs' | 'zone' | 'phone' | 'newId'>,
): Promise<DemoRemoval> {
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
  const built = await Promise.all(['wheel', 'wheel-apart'].map((name) => views.index('group').getAll(name)));
  const wheels = built
    .flat()
    .flatMap((row) => (row.is === 'wheel' && row.parts.some(({ partId }) => isDemo(partId)) ? row : []));
  const ofDemo = wheels.filter(({ parts }) => parts.every(({ partId }) => isDemo(partId)));
  for (const { name, apart, parts } of wheels)
    if (apart === undefined && !parts.every(({ partId }) => isDemo(partId))) inUseBy.push(name);
  if (inUseBy.length > 0 || holdOwn.length > 0) {
    await tx.done;
    return inUseBy.length > 0 ? { inUseBy } : { holdOwn };
  }
  const demoBikes = bikes.flatMap((bike) => (bike.is === 'bike' && isDemo(bike.bikeId) ? [bike.bikeId] : []));
  const lines = new Map<number, { entryId: Id; photoIds: Id[] }>();
  const gone = new Set(ofDemo.map(({ wheelId }) => wheelId));
  for (const range of [...histories(), ...ofDemo.map(({ key }) => key)]) {
    for (const line of await journal.index('places').getAll(range)) {
      if (staysHere(line, gone)) continue;
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
  for (const { key } of ofDemo) await views.delete(key);
  for (const kind of ['bike', 'part', 'tool']) {
    const range = IDBKeyRange.bound(`${kind}/${DEMO}`, `${kind}/${DEMO}\uffff`);
    await views.delete(range);
  }
  // Further lines take the number after this one, so that a tab that remembers rows of the demo notices.
  const last = await journal.openKeyCursor(null, 'prev');
  const highest = Math.max(last?.key ?? 0, ...lines.keys());
  const phone = phoneName(typed);
  const head: EntryHead = {
    ...{ id: newId(), v: ENTRY_VERSION, writtenAtMs: nowMs, happenedAtMs: nowMs, zone },
    ...(phone ? { phone } : {}),
  };
  const entry: Entry = { ...head, type: 'demo-removed', lines: lines.size };
  await journal.add({ seq: highest + 1, entry, places: [] });
  tx.commit();
  await tx.done;
  return { removed: lines.size };
}
