import { expect, test } from 'vitest';
import { decide } from '../../../src/journal/decide.ts';
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
])('an entry of the phone %j carries %j', (phone, carried) => {
  let ids = 0;
  const now = { nowMs: Date.UTC(2026, 4, 3), zone: 'UTC', newId: () => `e${++ids}`, phone };
  const entries = decide(new MemoryRows(), { type: 'start-bike', name: 'Magpie' }, now);
  if (!Array.isArray(entries)) throw new Error(entries.refused);
  expect(entries.map((entry) => ('phone' in entry ? { phone: entry.phone } : {}))).toEqual([carried]);
});
