import { describe, expect, test } from 'vitest';
import { pairedCrossingAnglesDeg } from '../../../../src/mechanics/wheels/lacing.ts';
import {
  type LacingPlan,
  type LaidSpoke,
  spokeLayout,
} from '../../../../src/mechanics/wheels/spokeLayout.ts';

const even = (half: number, crosses: number, firstSide: 'left' | 'drive' = 'left'): LacingPlan => ({
  ...{ drilling: 'even', firstSide, leftSpokes: half, driveSpokes: half },
  ...{ leftCrosses: crosses, driveCrosses: crosses },
});

const at = (deg: number, radius: number) => [
  radius * Math.cos((deg * Math.PI) / 180),
  radius * Math.sin((deg * Math.PI) / 180),
];

/** Whether two spokes cut each other between their ends, seen along the axle. */
function cuts(a: LaidSpoke, b: LaidSpoke, rim: number, hub: number): boolean {
  const [[ax, ay], [bx, by], [cx, cy], [dx, dy]] = [
    at(a.rimDeg, rim),
    at(a.hubDeg, hub),
    at(b.rimDeg, rim),
    at(b.hubDeg, hub),
  ] as [number, number][] as [[number, number], [number, number], [number, number], [number, number]];
  const side = (px: number, py: number, qx: number, qy: number, rx: number, ry: number) =>
    (qx - px) * (ry - py) - (qy - py) * (rx - px);
  const apart = (one: number, other: number) => one * other < -1e-6;
  return (
    apart(side(ax, ay, bx, by, cx, cy), side(ax, ay, bx, by, dx, dy)) &&
    apart(side(cx, cy, dx, dy, ax, ay), side(cx, cy, dx, dy, bx, by))
  );
}

const turned = (deg: number) => ((Math.round(deg * 1e6) % 360e6) + 360e6) % 360e6;

describe('every spoke of a wheel', () => {
  test('the example: spoke 1 of 36, 3-cross', () => {
    expect(spokeLayout(even(18, 3))[0]).toEqual({
      ...{ spoke: 1, side: 'left', rimDeg: 5, hubDeg: 65, crossingDeg: 60, lean: 1, round: 1 },
    });
  });

  const plans: [string, LacingPlan][] = [
    ...([10, 12, 14, 16, 18, 20, 24] as const).flatMap((half) =>
      [0, 1, 2, 3, 4]
        .filter((crosses) => (crosses * 360) / half <= 90)
        .map((crosses): [string, LacingPlan] => [
          `${2 * half} spokes, ${crosses} crosses`,
          even(half, crosses),
        ]),
    ),
    [
      'two to one, 24',
      {
        ...{ drilling: 'two-to-one', leftSpokes: 8, driveSpokes: 16, leftCrosses: 0, driveCrosses: 2 },
        ...{ firstSide: 'left' },
      },
    ],
    [
      'paired, 24',
      {
        ...{ drilling: 'paired', leftSpokes: 12, driveSpokes: 12, leftCrosses: 2, driveCrosses: 2 },
        ...{ firstSide: 'drive', pairGapDeg: 15 },
      },
    ],
  ];

  test.each(plans)('%s: each hole once, and each spoke crosses exactly as many of its flange', (_, plan) => {
    const layout = spokeLayout(plan);
    expect(new Set(layout.map(({ rimDeg }) => turned(rimDeg))).size).toBe(layout.length);
    for (const side of ['left', 'drive'] as const) {
      const own = layout.filter((one) => one.side === side);
      const [holes, crosses] =
        side === 'left' ? [plan.leftSpokes, plan.leftCrosses] : [plan.driveSpokes, plan.driveCrosses];
      expect(own).toHaveLength(holes);
      const hub = own.map(({ hubDeg }) => turned(hubDeg)).sort((a, b) => a - b);
      const gaps = hub.slice(1).map((deg, index) => deg - (hub[index] as number));
      for (const gap of gaps) expect(gap / 1e6).toBeCloseTo(360 / holes, 4);
      for (const spoke of own)
        expect(own.filter((other) => other !== spoke && cuts(spoke, other, 300, 22.5))).toHaveLength(crosses);
    }
  });

  test('the spokes beside the valve lean away from it', () => {
    const layout = spokeLayout(even(16, 3));
    expect([layout[0]?.lean, layout.at(-1)?.lean]).toEqual([1, -1]);
  });

  test.each([
    ['together', 'narrowDeg'],
    ['apart', 'wideDeg'],
  ] as const)('pairs that lean %s have the angle that the formula gives', (pairsLean, angle) => {
    const plan = plans.at(-1)?.[1] as LacingPlan;
    for (const { crossingDeg } of spokeLayout({ ...plan, pairsLean }))
      expect(crossingDeg).toBeCloseTo(pairedCrossingAnglesDeg(2, 12, 15)[angle], 9);
  });

  test.each([
    ['two to one of 20', { ...even(10, 2), drilling: 'two-to-one' as const }],
    ['an odd crossed side', even(15, 2)],
    ['more crossings than the flange has holes', even(6, 7)],
  ])('%s cannot be laid', (_, plan) => {
    expect(() => spokeLayout(plan)).toThrow(RangeError);
  });

  test('the four rounds of lacing take a quarter of the spokes each', () => {
    const rounds = spokeLayout(even(18, 3)).map(({ round }) => round);
    for (const round of [1, 2, 3, 4] as const) expect(rounds.filter((one) => one === round)).toHaveLength(9);
  });
});
