import type { Command } from '../../src/journal/commands.ts';
import { decide } from '../../src/journal/decide.ts';
import type { Entry, Id } from '../../src/journal/entries.ts';
import { foldAll } from '../../src/journal/fold.ts';
import { MemoryRows } from '../../src/journal/memoryRows.ts';
import { type Logbook, logbookFor } from '../../src/logbook.ts';
import { openDatabase } from '../../src/store/database.ts';
import * as writer from '../../src/store/writer.ts';

/** Runs in the page: fills a store as the product would have filled it, only all at once. */

const JOINTS = 12;
const DAY_MS = 86_400_000;
const nm = (value: number) => ({ value, unit: 'N.m' as const, typed: String(value) });

interface Pen {
  write(command: Command): Entry[];
}

function pen(rows: MemoryRows, startMs: number, newId: () => Id, lines: Line[]): Pen {
  let nowMs = startMs;
  return {
    write(command) {
      nowMs += 61_000;
      const decided = decide(rows, command, { nowMs, zone: 'UTC', newId });
      if (!Array.isArray(decided))
        throw new Error(`${command.type}: ${decided.refused} ${decided.about ?? ''}`);
      lines.push(...foldAll(rows, decided));
      return decided;
    },
  };
}

interface Line {
  entry: Entry;
  places: string[];
}

/** A bike with parts, joints and steps, and its journal filled up with torques, notes and rides. */
function fillBike(
  bikeId: Id,
  entries: number,
  newId: () => Id,
  startMs: number,
): { lines: Line[]; rows: MemoryRows } {
  const rows = new MemoryRows();
  const lines: Line[] = [];
  const { write } = pen(rows, startMs, newId, lines);
  write({ type: 'start-bike', bikeId, name: `Bike ${bikeId}` });
  for (let at = 0; at <= JOINTS; at += 1) {
    const place = { on: 'bike' as const, bikeId };
    write({
      type: 'add-part',
      partId: `${bikeId}-p${at}`,
      place,
      label: `P-${at}`,
      name: `Part ${at}`,
      kind: 'other',
      origin: 'found',
    });
  }
  for (let at = 0; at < JOINTS; at += 1) {
    write({
      type: 'make-joint',
      jointId: `${bikeId}-j${at}`,
      bikeId,
      name: `Joint ${at}`,
      kind: 'stem-steerer',
      partIds: [`${bikeId}-p${at}`, `${bikeId}-p${at + 1}`],
      between: [{ kind: 'grease' }],
      fasteners: [{ thread: 'M5', count: 2, hand: 'right' }],
      targets: [{ source: 'printed-on-the-part', torque: nm(5), partId: `${bikeId}-p${at}` }],
    });
  }
  write({ type: 'plan-steps', bikeId });
  let count = 0;
  while (lines.length < entries) {
    const jointId = `${bikeId}-j${count % JOINTS}`;
    if (count % 3 === 0) write({ type: 'add-note', bikeId, jointId, words: `Looked at it, ${count}` });
    else
      write({
        type: 'apply-torque',
        jointId,
        applied: nm(5),
        entered: 'tap',
        bolts: 2,
        passes: 2,
        marked: true,
      });
    count += 1;
  }
  return { lines, rows };
}

/** Fills the store; returns how many lines it holds afterwards. */
export async function fill(name: string, sizes: Record<string, number>): Promise<number> {
  const book = logbookFor({ name, zone: () => 'UTC', loadWriter: async () => writer });
  await book.opened;
  const { newId } = book;
  const db = await openDatabase(name);
  const startMs = Date.now() - 200 * DAY_MS;
  let seq = await db.count('journal');
  for (const [bikeId, entries] of Object.entries(sizes)) {
    const { lines, rows } = fillBike(bikeId, entries, newId, startMs);
    const tx = db.transaction(['journal', 'views'], 'readwrite', { durability: 'relaxed' });
    const journal = tx.objectStore('journal');
    const views = tx.objectStore('views');
    for (const line of lines) journal.add({ seq: ++seq, ...line });
    for (const row of rows.rows.values()) views.put(row);
    await tx.done;
  }
  const total = await db.count('journal');
  db.close();
  book.close();
  return total;
}

interface Taps {
  tapMs: number[];
  putMs: number[];
  bytes: number;
}

const REST_MS = 30;
/** What a commit sets going on the page is over before the next is measured; a hand takes longer between two taps. */
const rest = () => new Promise((over) => setTimeout(over, REST_MS));

/**
 * Taps a torque and, turn by turn, puts the same bytes bare into a store of the same database engine in the
 * same page, both strict, and both after the same rest.
 */
export async function taps(name: string, bikeId: Id, rounds: number): Promise<Taps> {
  const book = logbookFor({ name, zone: () => 'UTC', loadWriter: async () => writer });
  await book.opened;
  const bytes = await bytesOfATap(name, book, bikeId);
  const bare = await bareStore();
  const tapMs: number[] = [];
  const putMs: number[] = [];
  for (let at = 0; at < rounds; at += 1) {
    const jointId = `${bikeId}-j${at % JOINTS}`;
    // No two equal torques on one joint within the double-tap span.
    const applied = nm(4 + (Math.floor(at / JOINTS) % 2));
    await rest();
    const start = performance.now();
    const result = await book.run({
      type: 'apply-torque',
      jointId,
      applied,
      entered: 'tap',
      bolts: 2,
      passes: 2,
      marked: true,
    });
    tapMs.push(performance.now() - start);
    if (!('entries' in result)) throw new Error(result.refused);
    const payload = { key: at, text: 'x'.repeat(bytes) };
    await rest();
    const again = performance.now();
    await bare.put(payload);
    putMs.push(performance.now() - again);
  }
  bare.close();
  book.close();
  return { tapMs, putMs, bytes };
}

async function bytesOfATap(name: string, book: Logbook, bikeId: Id): Promise<number> {
  const jointId = `${bikeId}-j0`;
  const result = await book.run({
    type: 'apply-torque',
    jointId,
    applied: nm(6),
    entered: 'tap',
    bolts: 2,
    passes: 2,
    marked: true,
  });
  if (!('entries' in result)) throw new Error(result.refused);
  const db = await openDatabase(name);
  const [entry] = result.entries;
  const line = await db.getFromIndex('journal', 'id', entry?.id ?? '');
  const rows = await Promise.all([db.get('views', `joint/${jointId}`), db.get('views', `bike/${bikeId}`)]);
  db.close();
  return JSON.stringify([line, ...rows]).length;
}

async function bareStore(): Promise<{ put(value: unknown): Promise<void>; close(): void }> {
  const db = await new Promise<IDBDatabase>((resolve, reject) => {
    const request = indexedDB.open('bare', 1);
    request.onupgradeneeded = () => request.result.createObjectStore('bare', { keyPath: 'key' });
    request.onsuccess = () => resolve(request.result);
    request.onerror = () => reject(request.error);
  });
  return {
    put: (value) =>
      new Promise((resolve, reject) => {
        const tx = db.transaction('bare', 'readwrite', { durability: 'strict' });
        tx.objectStore('bare').put(value);
        tx.oncomplete = () => resolve();
        tx.onabort = () => reject(tx.error);
        tx.commit();
      }),
    close: () => db.close(),
  };
}
