import { describe, expect, test } from 'vitest';
import { spokeLayout } from '../../../../src/mechanics/wheels/spokeLayout.ts';
import { tensionRing } from '../../../../src/practice/wheel/tensionRing.ts';
import { wheelBalance } from '../../../../src/practice/wheel/wheelBalance.ts';
import { evenSpokesN, oddSpokesN } from '../../../fixtures/spokeTensions.ts';

const layout = spokeLayout({
  ...{
    drilling: 'even',
    leftSpokes: 18,
    driveSpokes: 18,
    leftCrosses: 3,
    driveCrosses: 3,
    firstSide: 'left',
  },
});

/** In the order of the rim: odd and even in turn. */
const allSpokesN = oddSpokesN.flatMap((odd, at) => [odd, evenSpokesN[at] as number]);

// Published: 36 measured spokes, open data of a dissertation on bicycle wheels; odd and even are the two sides.
describe('36 measured tensions of a research wheel', () => {
  const balance = wheelBalance(layout, allSpokesN, 1100);
  test('the example: each side by itself, 1060.2 and 1072.9 N', () => {
    expect(balance.sides.left?.spread.meanN).toBeCloseTo(1060.23, 1);
    expect(balance.sides.drive?.spread.meanN).toBeCloseTo(1072.85, 1);
    expect(balance.sides.left?.balance).toBe('even');
  });
  test('the maximum counts for every single spoke, not for the mean', () => {
    expect(balance.over.length).toBe(allSpokesN.filter((n) => n > 1100).length);
    expect(balance.over.length).toBeGreaterThan(0);
    expect(wheelBalance(layout, allSpokesN, 1147).over).toEqual([]);
  });
});

test('a dished wheel is even on each side, though both together are not', () => {
  const tensionsN = layout.map(({ side }, at) => (side === 'left' ? 600 : 1000) * (at % 4 < 2 ? 1.03 : 0.97));
  const { sides } = wheelBalance(layout, tensionsN, undefined);
  expect([sides.left?.balance, sides.drive?.balance]).toEqual(['very-even', 'very-even']);
});

test('a spoke that was not read is left out, and a side without readings too', () => {
  const oneSide = layout.map(({ side, spoke }) => (side === 'left' && spoke !== 3 ? 700 : null));
  const { sides, spokes } = wheelBalance(layout, oneSide, undefined);
  expect(sides.drive).toBeUndefined();
  expect(spokes.map(({ spoke }) => spoke)).not.toContain(3);
  expect(spokes.length).toBe(17);
});

describe('the plot round the wheel', () => {
  const { spokes, sides } = wheelBalance(layout, allSpokesN, 1100);
  const means = { left: sides.left?.spread.meanN ?? 0, drive: sides.drive?.spread.meanN ?? 0 };
  const ring = tensionRing(layout, spokes, means, 1200, 10);
  test('the example: a bar for each spoke, as long as it is tight, within the drawing', () => {
    expect(ring.bars.length).toBe(36);
    const length = (spoke: number) => {
      const bar = ring.bars.find((one) => one.spoke === spoke)!;
      return Math.hypot(bar.x2 - bar.x1, bar.y2 - bar.y1);
    };
    expect(length(2) / length(1)).toBeCloseTo((allSpokesN[1] ?? 0) / (allSpokesN[0] ?? 1), 6);
    for (const { x2, y2 } of ring.bars)
      for (const at of [x2, y2]) expect(at > 0 && at < ring.size).toBe(true);
  });
  test('spokes above the maximum stand out', () =>
    expect(ring.bars.filter(({ out }) => out).length).toBe(
      spokes.filter(({ overLimit }) => overLimit).length,
    ));
});
