import { describe, expect, test } from 'vitest';
import { lacingOrder } from '../../../../src/mechanics/wheels/lacingOrder.ts';
import { type LacingPlan, spokeLayout } from '../../../../src/mechanics/wheels/spokeLayout.ts';
import { lacingDrawing } from '../../../../src/practice/wheel/lacingDrawing.ts';
import { lacingWords } from '../../../../src/words/wheel/lacingWords.ts';

const plan = (spokes: number, crosses: number): LacingPlan => ({
  ...{ drilling: 'even', leftSpokes: spokes / 2, driveSpokes: spokes / 2 },
  ...{ leftCrosses: crosses, driveCrosses: crosses, firstSide: 'left' },
});
const orderOf = (spokes: number, crosses: number) =>
  lacingOrder(spokeLayout(plan(spokes, crosses)), { left: crosses, drive: crosses });

describe('the order of lacing', () => {
  test('the example: the key spoke first, beside the valve', () =>
    expect(orderOf(36, 3)[0]).toMatchObject({
      spoke: { spoke: 1, side: 'left' },
      hubHole: 1,
      opensRound: true,
    }));

  test.each([
    [20, 1],
    [24, 2],
    [28, 3],
    [32, 3],
    [36, 3],
    [36, 4],
    [32, 0],
  ])(
    '%i spokes, %i crossings: every rim hole and every flange hole once, one side and way at a time',
    (spokes, crosses) => {
      const order = orderOf(spokes, crosses);
      expect(new Set(order.map(({ spoke }) => spoke.spoke)).size).toBe(spokes);
      for (const side of ['left', 'drive'] as const) {
        const holes = order.filter(({ spoke }) => spoke.side === side).map(({ hubHole }) => hubHole);
        expect(holes.toSorted((a, b) => a - b)).toEqual(
          Array.from({ length: spokes / 2 }, (_, at) => at + 1),
        );
      }
      for (const round of [1, 2, 3, 4]) {
        const inIt = order.filter(({ spoke }) => spoke.round === round);
        expect(inIt.filter(({ opensRound }) => opensRound).length).toBe(1);
        expect(new Set(inIt.map(({ spoke }) => `${spoke.side} ${spoke.lean}`)).size).toBe(1);
      }
    },
  );

  test('the words say the same: spoke, side, holes, and the round at its first spoke', () => {
    const order = orderOf(36, 3);
    const [first, second] = order.map(lacingWords);
    expect(first?.title).toBe('Spoke 1, left');
    expect(first?.detail).toContain('Rim hole 1');
    expect(first?.detail).toContain('60° clockwise of its rim hole');
    expect(first?.round).toContain('key spoke');
    expect(second?.round).toBeUndefined();
    expect(lacingWords(order[18]!).round).toContain('over the first 2 spokes and under the last');
  });
});

describe('the picture of the lacing', () => {
  const layout = spokeLayout(plan(36, 3));
  const of = { erdMm: 384, pcdMm: { left: 45, drive: 45 } };
  const drawn = lacingDrawing(layout, of, 'drive', new Set([1, 3]), 5);

  test('the example: 36 spokes to scale, the one at hand drawn last', () => {
    expect(drawn.spokes.length).toBe(36);
    expect(drawn.spokes.at(-1)).toMatchObject({ spoke: 5, state: 'now' });
    expect(drawn.nearRadius / drawn.rimRadius).toBeCloseTo(45 / 384, 6);
    // Seen along the axle the law of cosines gives the length of each line.
    const flat = Math.sqrt(192 ** 2 + 22.5 ** 2 - 2 * 192 * 22.5 * Math.cos(Math.PI / 3));
    for (const { x1, y1, x2, y2 } of drawn.spokes)
      expect((Math.hypot(x2 - x1, y2 - y1) / drawn.rimRadius) * 192).toBeCloseTo(flat, 6);
  });

  test('the other side is the mirror of it', () => {
    const other = lacingDrawing(layout, of, 'left', new Set([1, 3]), 5);
    for (const spoke of drawn.spokes) {
      const mirrored = other.spokes.find((one) => one.spoke === spoke.spoke)!;
      expect([mirrored.x1 + spoke.x1, mirrored.y1 - spoke.y1]).toEqual([
        expect.closeTo(drawn.size, 6),
        expect.closeTo(0, 6),
      ]);
      expect(mirrored.near).toBe(!spoke.near);
    }
  });

  test('each spoke crosses as many of its own side as it is said to', () => {
    const cross = (a: (typeof drawn.spokes)[number], b: (typeof drawn.spokes)[number]) => {
      const turn = (px: number, py: number, qx: number, qy: number, rx: number, ry: number) =>
        Math.sign((qx - px) * (ry - py) - (qy - py) * (rx - px));
      return (
        turn(a.x1, a.y1, a.x2, a.y2, b.x1, b.y1) !== turn(a.x1, a.y1, a.x2, a.y2, b.x2, b.y2) &&
        turn(b.x1, b.y1, b.x2, b.y2, a.x1, a.y1) !== turn(b.x1, b.y1, b.x2, b.y2, a.x2, a.y2)
      );
    };
    const near = drawn.spokes.filter((one) => one.near);
    for (const spoke of near)
      expect(near.filter((other) => other !== spoke && cross(spoke, other)).length).toBe(3);
  });
});
