import { expect, test } from 'vitest';
import { dayLine } from '../../../../src/drawing/day/dayLine.ts';

test('the example of the description', () =>
  expect(dayLine([{ fromMin: 0, toMin: 60 }], [], 0).ticks.map(({ x }) => x)).toEqual([
    0, 90, 180, 270, 360,
  ]));

test('[B6] hands follow each other, waits beside each other lie in lanes, and what is far off is cut', () => {
  const { hands, waits, lanes, endMin } = dayLine(
    [
      { fromMin: 0, toMin: 40 },
      { fromMin: 40, toMin: 100 },
    ],
    [
      { fromMin: 40, toMin: 1480 },
      { fromMin: 50, toMin: 80 },
      { fromMin: 90, toMin: 120 },
    ],
    0,
  );
  expect(endMin).toBe(150);
  expect(hands.map(({ x, width }) => [x, width])).toEqual([
    [0, 96],
    [96, 144],
  ]);
  expect(waits.map(({ lane, cut }) => [lane, cut])).toEqual([
    [0, true],
    [1, false],
    [1, false],
  ]);
  expect(lanes).toBe(2);
});

test('marks stand at round times of the clock, few enough to read', () => {
  for (const minutes of [1, 7, 50, 130, 400, 3000]) {
    const { ticks, width } = dayLine([{ fromMin: 0, toMin: minutes }], [], 613);
    expect(ticks.length).toBeLessThanOrEqual(6);
    for (const { x, atMin } of ticks) {
      expect((613 + atMin) % 15).toBe(0);
      expect(x).toBeGreaterThanOrEqual(0);
      expect(x).toBeLessThanOrEqual(width);
    }
  }
});
