import { describe, expect, test } from 'vitest';
import { stressAreaMm2 } from '../../../../src/mechanics/screws/threadGeometry.ts';
import { handOf, threadNamed, threadRow, threads } from '../../../../src/standards/screws/threads.ts';

test('examples: M5 has a pitch of 0.8, the non-drive pedal tightens to the left', () => {
  expect(threadRow('M5').pitchMm).toBe(0.8);
  expect(handOf(threadRow('9/16-20'), 'non-drive')).toBe('left');
});

// Hands: pedals by a workshop list and a thread page; ISO cups by the scope of ISO 6696; others by thread pages.
describe('hands by side of the bike', () => {
  test.each([
    ['9/16-20', 'drive', 'right'],
    ['9/16-20', 'non-drive', 'left'],
    ['1/2-20', 'drive', 'right'],
    ['1/2-20', 'non-drive', 'left'],
    ['1.37-24', 'drive', 'left'],
    ['1.37-24', 'non-drive', 'right'],
    ['M47x1', 'drive', 'left'],
    ['M36-24', 'drive', 'right'],
    ['M35x1', 'non-drive', 'right'],
    ['1.375-24', 'drive', 'right'],
    ['M5', 'non-drive', 'right'],
  ] as const)('%s, %s side: %s', (id, side, hand) => expect(handOf(threadRow(id), side)).toBe(hand));
});

// Sizes as thread pages print them in millimetres.
test.each([
  ['9/16-20', 14.288, 1.27],
  ['1/2-20', 12.7, 1.27],
  ['3/8-26', 9.525, 0.977],
  ['5/16-24', 7.938, 1.058],
  ['1.37-24', 34.798, 1.0583],
  ['M36-24', 36, 1.0583],
])('%s is %d × %d mm', (id, diameterMm, pitchMm) => {
  expect(Math.abs(threadRow(id).diameterMm - diameterMm)).toBeLessThanOrEqual(0.0005001);
  expect(Math.abs(threadRow(id).pitchMm - pitchMm)).toBeLessThanOrEqual(0.0005);
});

test('every thread has an id of its own, a core and a source', () => {
  expect(new Set(threads.map((row) => row.id)).size).toBe(threads.length);
  for (const row of threads) {
    expect(stressAreaMm2(row), row.id).toBeGreaterThan(0);
    expect(row.source.length, row.id).toBeGreaterThan(5);
  }
});
test('an unlisted thread is a programmer error', () => expect(() => threadRow('M7')).toThrow(RangeError));

describe('a thread as people write it', () => {
  test.each([
    ['M8 × 1,25', 'M8'],
    ['M5', 'M5'],
    ['m 5', 'M5'],
    ['M5x0.8', 'M5'],
    ['M8×1', 'M8x1'],
    ['M8-1', 'M8x1'],
    ['9/16', '9/16-20'],
    ['9/16 in × 20', '9/16-20'],
    ['9/16"-20', '9/16-20'],
    ['3/8 inch x 26', '3/8-26'],
    ['M36', 'M36-24'],
    ['3/8', undefined],
    ['M7', undefined],
    ['', undefined],
  ])('%j is %s', (words, id) => expect(threadNamed(words)?.id).toBe(id));
  test('every row answers to its own id and to its own size', () => {
    for (const row of threads) expect(threadNamed(row.id)).toBe(row);
  });
});
