import { describe, expect, test } from 'vitest';
import { Acknowledged } from '../../faults/acknowledged.ts';
import { diceOf } from '../../faults/dice.ts';
import { rowDifferences } from '../../faults/judge.ts';
import { plainFaults } from '../../faults/plainChecks.ts';
import type { Stored, StoredEntry, StoredRow } from '../../faults/stored.ts';

let ids = 0;
const entry = (type: string, atMs: number, more: Partial<StoredEntry> = {}): StoredEntry => {
  ids += 1;
  return { id: `e${ids}`, type, happenedAtMs: atMs, writtenAtMs: atMs, ...more };
};
const on = { bikeId: 'b', jointId: 'j' };
const nm = (value: number) => ({ value, unit: 'N.m' });

/** A bike with one joint, its two steps, a torque that was corrected, a ride, a wait and a photo; rows by hand. */
function sound(): Stored {
  const torque = entry('torque-applied', 50, { ...on, stepId: 's2', applied: nm(5) });
  const entries = [
    entry('bike-started', 1, { bikeId: 'b', name: 'Bike' }),
    entry('part-added', 2, { partId: 'p', place: { on: 'shelf' } }),
    entry('part-moved', 3, { partId: 'p', to: { on: 'bike', bikeId: 'b' } }),
    entry('joint-made', 4, on),
    entry('step-added', 5, { bikeId: 'b', stepId: 's1', kind: 'fit', jointId: 'j' }),
    entry('step-added', 5, { bikeId: 'b', stepId: 's2', kind: 'torque', jointId: 'j' }),
    entry('step-done', 6, { bikeId: 'b', stepId: 's1' }),
    torque,
    entry('entry-corrected', 60, { corrects: torque.id, becomes: { applied: nm(6) } }),
    entry('ride-logged', 70, { bikeId: 'b', rideId: 'r', km: 12 }),
    entry('wait-started', 80, { bikeId: 'b', waitId: 'w' }),
    entry('wait-ended', 81, { bikeId: 'b', waitId: 'w' }),
    entry('note-added', 90, { bikeId: 'b', noteId: 'n', words: 'Looked', photoIds: ['photo'] }),
  ];
  const rows: StoredRow[] = [
    { key: 'bike/b', is: 'bike', steps: 2, stepsDone: 2, stepsSkipped: 0 },
    { key: 'part/p', is: 'part', place: { on: 'bike', bikeId: 'b' } },
    { key: 'joint/j', is: 'joint', state: 'torqued', appliedTimes: 1, applied: { applied: nm(6) } },
    { key: 'step/s1', is: 'step', kind: 'fit', state: 'done' },
    { key: 'step/s2', is: 'step', kind: 'torque', state: 'done' },
    { key: 'rides/b', is: 'rides', count: 1, km: 12 },
    { key: 'wait/w', is: 'wait', endedAtMs: 81 },
  ];
  return { there: true, lines: entries.map((one) => ({ entry: one })), rows, photoIds: ['photo'], meta: [] };
}

const rowOf = (stored: Stored, key: string): StoredRow => {
  const row = stored.rows.find((one) => one.key === key);
  if (!row) throw new Error(`no row ${key}`);
  return row;
};
/** Makes a row read differently. */
const reads = (key: string, fields: Record<string, unknown>) => (stored: Stored) =>
  void Object.assign(rowOf(stored, key), fields);
const without = (stored: Stored, type: string): Stored => ({
  ...stored,
  lines: stored.lines.filter((line) => line.entry.type !== type),
});

describe('the plain counts', () => {
  test('find nothing in a sound store', () => {
    expect(plainFaults(sound())).toEqual([]);
  });

  test.each<[name: string, plant: (stored: Stored) => void]>([
    ['a step counted twice', reads('bike/b', { stepsDone: 3 })],
    ['a step that stays open in its row', reads('step/s1', { state: 'open' })],
    ['a torque counted twice', reads('joint/j', { appliedTimes: 2 })],
    ['a figure from before its correction', reads('joint/j', { applied: { applied: nm(5) } })],
    ['a part shown where it was', reads('part/p', { place: { on: 'shelf' } })],
    ['a ride counted twice', reads('rides/b', { km: 24 })],
    ['a wait that runs on', reads('wait/w', { endedAtMs: undefined })],
    [
      'a row that is gone',
      ({ rows }) =>
        void rows.splice(
          rows.findIndex(({ is }) => is === 'step'),
          1,
        ),
    ],
    ['a photo that is gone', ({ photoIds }) => void photoIds.pop()],
    ['a photo that no entry names', (stored) => void stored.photoIds.push('another')],
    [
      'a bike begun twice',
      ({ lines }) => void lines.push({ entry: entry('bike-started', 9, { bikeId: 'b' }) }),
    ],
    [
      'a split step without its piece',
      ({ lines }) =>
        void lines.push({ entry: entry('step-dropped', 9, { bikeId: 'x', stepId: 'y', splitInto: ['z'] }) }),
    ],
  ])('notice %s', (_name, plant) => {
    const stored = sound();
    plant(stored);
    expect(plainFaults(stored)).not.toEqual([]);
  });

  test('two events of one instant are not put in an order of their own', () => {
    const stored = sound();
    stored.lines.push({ entry: entry('torque-applied', 50, { ...on, applied: nm(7) }) });
    rowOf(stored, 'joint/j')['appliedTimes'] = 2;
    expect(plainFaults(stored)).toEqual([]);
  });
});

describe('the list of what was acknowledged', () => {
  const listed = () => {
    const stored = sound();
    const kept = new Acknowledged();
    kept.entries(stored.lines.map((line) => structuredClone(line.entry)));
    kept.promise({ type: 'bike-started', name: 'Bike' });
    kept.whole({
      what: 'a note and its photo',
      parts: [{ type: 'note-added', words: 'Looked' }, { photoId: 'photo' }],
    });
    return { stored, kept };
  };

  test('is met by a sound store', () => {
    const { stored, kept } = listed();
    expect(kept.check(stored)).toEqual({ lost: [], wrong: [] });
  });

  test('notices an entry that is gone, one that reads differently, and what a screen had said', () => {
    const { stored, kept } = listed();
    expect(kept.check(without(stored, 'ride-logged')).lost).toHaveLength(1);
    expect(kept.check(without(stored, 'bike-started')).lost).toHaveLength(2);
    const [first] = stored.lines;
    if (first) first.entry.name = 'Another';
    expect(kept.check(stored).lost).toHaveLength(2);
  });

  test('notices half of what belongs together, and lets all or none of it pass', () => {
    const { stored, kept } = listed();
    expect(kept.check({ ...stored, photoIds: [] }).wrong).toHaveLength(1);
    const fresh = new Acknowledged();
    fresh.whole({
      what: 'a note and its photo',
      parts: [{ type: 'note-added', words: 'Never' }, { photoId: 'none' }],
    });
    expect(fresh.check(stored)).toEqual({ lost: [], wrong: [] });
  });

  test('notices everything gone', () => {
    const { kept } = listed();
    const none: Stored = { there: false, lines: [], rows: [], photoIds: [], meta: [] };
    expect(kept.check(none).lost).toHaveLength(kept.size);
  });
});

test('a row that is missing, too many or different is told', () => {
  const { rows } = sound();
  expect(rowDifferences(rows, rows)).toEqual([]);
  const [first, ...others] = rows;
  expect(rowDifferences(others, rows)).toHaveLength(1);
  expect(rowDifferences(rows, others)).toHaveLength(1);
  expect(rowDifferences([{ ...first, steps: 9 } as StoredRow, ...others], rows)).toHaveLength(1);
});

test('the same seed throws the same dice, another one others', () => {
  const throws = (seed: string) =>
    Array.from(
      { length: 20 },
      (
        (dice) => () =>
          dice.whole(1, 6)
      )(diceOf(seed)),
    );
  expect(throws('1')).toEqual(throws('1'));
  expect(throws('1')).not.toEqual(throws('2'));
  expect(throws('1').every((pips) => pips >= 1 && pips <= 6)).toBe(true);
});
