import { expect, test } from 'vitest';
import type { Command } from '../../../src/journal/commands.ts';
import { decide } from '../../../src/journal/decide.ts';
import { foldAll } from '../../../src/journal/fold.ts';
import { MemoryRows } from '../../../src/journal/memoryRows.ts';
import { phoneName } from '../../../src/journal/phoneName.ts';

test.each([
  // Example of the docstring.
  ['  Bench phone ', 'Bench phone'],
  [undefined, undefined],
  ['', undefined],
  [' \t\n', undefined],
  ['\u200b\u200b', undefined],
  ['x'.repeat(41), 'x'.repeat(40)],
  ['🔧'.repeat(41), '🔧'.repeat(40)],
])('%j is kept as %j', (typed, kept) => {
  expect(phoneName(typed)).toBe(kept);
});

test.each([
  ['Bench phone', { phone: 'Bench phone' }],
  [' ', {}],
  [undefined, {}],
])('[K7] an entry of the phone %j carries %j', (phone, carried) => {
  let ids = 0;
  const now = { nowMs: Date.UTC(2026, 4, 3), zone: 'UTC', newId: () => `e${++ids}`, phone };
  const entries = decide(new MemoryRows(), { type: 'start-bike', name: 'Magpie' }, now);
  if (!Array.isArray(entries)) throw new Error(entries.refused);
  expect(entries.map((entry) => ('phone' in entry ? { phone: entry.phone } : {}))).toEqual([carried]);
});

test('[K7] an entry of a phone with a name can be corrected like any other', () => {
  let ids = 0;
  const rows = new MemoryRows();
  const now = { nowMs: Date.UTC(2026, 4, 3), zone: 'UTC', newId: () => `e${++ids}`, phone: 'Bench phone' };
  const given = (command: Command) => {
    const entries = decide(rows, command, now);
    if (!Array.isArray(entries)) throw new Error(entries.refused);
    foldAll(rows, entries);
    return entries;
  };
  const [started] = given({ type: 'start-bike', bikeId: 'b1', name: 'Magpie' });
  given({ type: 'correct', entryId: started?.id ?? '', reason: 'misspelt', becomes: { name: 'Jackdaw' } });
  expect(rows.get('bike', 'b1')?.name).toBe('Jackdaw');
});
