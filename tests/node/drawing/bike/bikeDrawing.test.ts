import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { bikeDrawing } from '../../../../src/drawing/bike/bikeDrawing.ts';
import { type BikeFigures, barShapes } from '../../../../src/drawing/bike/figures.ts';
import type { PencilLine } from '../../../../src/drawing/bike/shape.ts';

test('example of the docstring', () => {
  expect(bikeDrawing({ frontWheelMm: 678, rearWheelMm: 678 }).rows[1]).toEqual([
    'rear-wheel',
    'cranks',
    'front-wheel',
  ]);
});

const folding: BikeFigures = {
  frontWheelMm: 506,
  rearWheelMm: 506,
  frontTyreMm: 50,
  rearTyreMm: 50,
  ringTeeth: 52,
  toFrontAxleMm: 600,
};
/** A front wheel of 20 inches far ahead of a rear one of 26. */
const cargo: BikeFigures = { frontWheelMm: 506, rearWheelMm: 660, toFrontAxleMm: 1450, toRearAxleMm: 440 };
const trials: BikeFigures = {
  frontWheelMm: 500,
  rearWheelMm: 510,
  withoutSaddle: true,
  spindleHeightMm: 330,
  toRearAxleMm: 350,
  toFrontAxleMm: 640,
  seatTubeMm: 130,
};
const roadster: BikeFigures = { frontWheelMm: 700, rearWheelMm: 700, toFrontAxleMm: 600, toRearAxleMm: 440 };

const strokeOf = (drawing: { strokes: PencilLine[] }, part: string) => {
  const found = drawing.strokes.find((stroke) => stroke.part === part);
  if (!found) throw new Error(`no ${part}`);
  return found;
};
/** Every point that a path names. */
const pointsOf = ({ path }: PencilLine) =>
  [...path.matchAll(/[MLQ ](-?\d+) (-?\d+)/g)].map(([, x, y]) => ({ x: Number(x), y: Number(y) }));
/** Middle and radius of a circle drawn as M…a. */
function circleOf({ path }: PencilLine) {
  const [, x = 0, y = 0, r = 0] = (/^M(-?\d+) (-?\d+)a(\d+)/.exec(path) ?? []).map(Number);
  return { x: x + r, y, r };
}

/** Ground and wheelbase, mm. */
function seen(figures: BikeFigures) {
  const drawing = bikeDrawing(figures);
  const front = circleOf(strokeOf(drawing, 'front tyre'));
  const rear = circleOf(strokeOf(drawing, 'rear tyre'));
  const ground = rear.y + (figures.rearWheelMm ?? 0) / 2;
  return { drawing, front, rear, ground, wheelbase: front.x - rear.x };
}

describe('bikes look like themselves', () => {
  test('both wheels stand on the ground, the front one to the right, as large as they are', () => {
    for (const figures of [folding, cargo, trials, roadster]) {
      const { front, rear, ground } = seen(figures);
      expect(front.x).toBeGreaterThan(rear.x);
      expect(front.y + (figures.frontWheelMm ?? 0) / 2).toBeCloseTo(ground, -1);
      // The stroke of a tyre lies in the middle of the rubber.
      expect(2 * front.r).toBeLessThan(figures.frontWheelMm ?? 0);
      expect(2 * front.r).toBeGreaterThan((figures.frontWheelMm ?? 0) - 60);
      expect(front.r / rear.r).toBeCloseTo((figures.frontWheelMm ?? 0) / (figures.rearWheelMm ?? 1), 1);
    }
  });

  test('a folding bike: small wheels under a saddle as high as any, one low beam, a long post and a tall stem', () => {
    const { drawing, ground } = seen(folding);
    const other = seen(roadster);
    const heightOf = ({ drawing: of, ground: y }: ReturnType<typeof seen>, part: string) =>
      y - Math.min(...pointsOf(strokeOf(of, part)).map((point) => point.y));
    expect(heightOf({ ...seen(folding) }, 'saddle') / heightOf(other, 'saddle')).toBeCloseTo(1, 1);
    const lengthOf = (of: ReturnType<typeof seen>, part: string) => {
      const [a, b] = pointsOf(strokeOf(of.drawing, part));
      return Math.hypot((a?.x ?? 0) - (b?.x ?? 0), (a?.y ?? 0) - (b?.y ?? 0));
    };
    expect(lengthOf(seen(folding), 'seatpost')).toBeGreaterThan(1.8 * lengthOf(other, 'seatpost'));
    expect(lengthOf(seen(folding), 'stem')).toBeGreaterThan(1.5 * lengthOf(other, 'stem'));
    expect(drawing.strokes.some(({ part }) => part === 'beam')).toBe(true);
    expect(drawing.strokes.some(({ part }) => part === 'top tube')).toBe(false);
    const beam = Math.min(...pointsOf(strokeOf(drawing, 'beam')).map((point) => point.y));
    expect(ground - beam).toBeLessThan(700);
  });

  test('a cargo bike: wheels of two sizes, a long floor between them and a rod to the front wheel', () => {
    const { drawing, front, rear, wheelbase, ground } = seen(cargo);
    expect(front.r / rear.r).toBeCloseTo(506 / 660, 1);
    expect(wheelbase).toBeGreaterThan(1.8 * seen(roadster).wheelbase - 100);
    const floor = pointsOf(strokeOf(drawing, 'bed'));
    expect(Math.max(...floor.map(({ y }) => y))).toBeGreaterThan(ground - 330);
    expect(drawing.strokes.some(({ part }) => part === 'steering rod')).toBe(true);
    // The rider sits over the rear wheel's half.
    const [clamp] = pointsOf(strokeOf(drawing, 'bar'));
    expect((clamp?.x ?? 0) - rear.x).toBeLessThan(wheelbase / 2);
    expect(drawing.rows[0]).toEqual(['saddle', 'fork-and-bars', 'brakes']);
  });

  test('a 20-inch trials frame: no saddle, the frame below the tops of the wheels, the bar high above it', () => {
    const { drawing, rear, ground } = seen(trials);
    expect(drawing.strokes.some(({ part }) => part === 'saddle' || part === 'seatpost')).toBe(false);
    const seatTop = Math.min(...pointsOf(strokeOf(drawing, 'seat tube')).map(({ y }) => y));
    expect(seatTop).toBeGreaterThan(rear.y - rear.r - 25);
    const bar = Math.min(...pointsOf(strokeOf(drawing, 'bar')).map(({ y }) => y));
    expect(ground - bar).toBeGreaterThan(2 * (ground - seatTop));
  });
});

describe('what is not known is dashed', () => {
  test('with nothing known every tube and wheel is, and the picture is whole', () => {
    const { strokes } = bikeDrawing({});
    const own = strokes.filter(({ part }) => !/hub|pedal|lever|cable/.test(part));
    expect(own.filter(({ dashed }) => !dashed)).toEqual([]);
    expect(own.length).toBeGreaterThan(12);
  });

  test.each([
    [{ rearWheelMm: 700 }, 'rear tyre'],
    [{ toRearAxleMm: 430 }, 'chain stay'],
    [{ toFrontAxleMm: 600 }, 'down tube'],
    [{ seatTubeMm: 520 }, 'seat tube'],
    [{ postOutMm: 120 }, 'seatpost'],
    [{ crankMm: 170 }, 'crank'],
    [{ ringTeeth: 42 }, 'chainring'],
    [{ sprocketTeeth: 16 }, 'sprocket'],
    [{ bar: 'drop' as const }, 'bar'],
    [{ barHeightMm: 1000 }, 'stem'],
  ])('%j draws the %s through', (figures, part) => {
    expect(strokeOf(bikeDrawing({}), part).dashed).toBe(true);
    expect(strokeOf(bikeDrawing(figures), part).dashed).toBe(false);
  });

  test('a crank of another length ends elsewhere, a larger ring is larger', () => {
    const reach = (crankMm: number) => {
      const [from, to] = pointsOf(strokeOf(bikeDrawing({ crankMm }), 'crank'));
      return Math.hypot((to?.x ?? 0) - (from?.x ?? 0), (to?.y ?? 0) - (from?.y ?? 0));
    };
    expect(reach(175) / reach(140)).toBeCloseTo(175 / 140, 1);
    const ring = (ringTeeth: number) => circleOf(strokeOf(bikeDrawing({ ringTeeth }), 'chainring')).r;
    expect(ring(52) / ring(26)).toBeCloseTo(2, 1);
  });
});

test('whatever a bike measures, every mark lies in its third, inside the picture, and no figure is not a number', () => {
  const length = (min: number, max: number) => fc.option(fc.integer({ min, max }), { nil: undefined });
  fc.assert(
    fc.property(
      fc.record({
        frontWheelMm: length(200, 900),
        rearWheelMm: length(200, 900),
        frontTyreMm: length(18, 130),
        toFrontAxleMm: length(350, 2500),
        toRearAxleMm: length(250, 1200),
        seatTubeMm: length(60, 750),
        postOutMm: length(20, 650),
        crankMm: length(60, 230),
        ringTeeth: length(8, 70),
        sprocketTeeth: length(8, 60),
        bar: fc.option(fc.constantFrom(...barShapes), { nil: undefined }),
        withoutSaddle: fc.option(fc.boolean(), { nil: undefined }),
      }),
      (record) => {
        const known = Object.fromEntries(Object.entries(record).filter(([, value]) => value !== undefined));
        const { width, height, marks, rows, strokes } = bikeDrawing(known);
        expect(rows.flat().toSorted()).toEqual([
          'brakes',
          'cranks',
          'fork-and-bars',
          'front-wheel',
          'rear-wheel',
          'saddle',
        ]);
        for (const row of rows)
          row.forEach((zone, third) => {
            expect(marks[zone].x).toBeGreaterThanOrEqual((third / 3) * width);
            expect(marks[zone].x).toBeLessThanOrEqual(((third + 1) / 3) * width);
            expect(marks[zone].y).toBeGreaterThan(0);
            expect(marks[zone].y).toBeLessThan(height);
          });
        for (const { path } of strokes) expect(path).not.toMatch(/NaN|Infinity|undefined/);
      },
    ),
  );
});
