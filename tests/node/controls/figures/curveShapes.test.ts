import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import { curveShapes } from '../../../../src/controls/figures/curveShapes.ts';
import { pumpedSet, steadySet } from '../../../fixtures/leaks.ts';

const plain = { lookHours: undefined, ceilingBar: undefined, ridingBar: undefined, unit: 'bar' } as const;

test('one reading draws nothing', () => {
  expect(curveShapes({ ...plain, readings: steadySet.slice(0, 1), steady: true })).toBeUndefined();
});

test('a lower pressure stands lower, a later one further right, and a pump-up is cut', () => {
  const shapes = curveShapes({ ...plain, readings: pumpedSet, steady: true })!;
  expect(shapes.points[2]!.y).toBeGreaterThan(shapes.points[0]!.y);
  expect(shapes.points[1]!.x).toBeGreaterThan(shapes.points[0]!.x);
  expect(shapes.cuts).toEqual([shapes.points[3]!.x]);
  expect(shapes.course).toMatch(/^M[\d. L]+$/);
});

test('limit and riding pressure are lines in order, also above all readings', () => {
  const shapes = curveShapes({
    ...plain,
    readings: steadySet,
    steady: false,
    ceilingBar: 4,
    ridingBar: 1.2,
  })!;
  const [ceiling, riding] = shapes.lines;
  expect(ceiling!.y).toBeLessThan(Math.min(...shapes.points.map(({ high }) => high)));
  expect(riding!.y).toBeGreaterThan(Math.max(...shapes.points.map(({ y }) => y)));
  expect(shapes.course).toBeUndefined();
});

test('whatever is read, everything stands on the paper', () => {
  const reading = fc.record({
    hours: fc.integer({ min: 0, max: 180_000 }),
    bar: fc.double({ min: 0.3, max: 12, noNaN: true }),
    sigmaBar: fc.double({ min: 0.01, max: 0.2, noNaN: true }),
    segment: fc.integer({ min: 0, max: 2 }),
  });
  fc.assert(
    fc.property(fc.array(reading, { minLength: 2, maxLength: 12 }), fc.boolean(), (some, steady) => {
      const hours = some.map((one) => one.hours / 60).toSorted((a, b) => a - b);
      const readings = some
        .toSorted((a, b) => a.segment - b.segment)
        .map((one, i) => ({ ...one, hours: hours[i]! - hours[0]! }));
      const shapes = curveShapes({ ...plain, readings, steady, lookHours: 9 })!;
      for (const { x, y, low, high } of shapes.points)
        for (const value of [x, y, low, high]) {
          expect(value).toBeGreaterThanOrEqual(0);
          expect(value).toBeLessThanOrEqual(shapes.width);
        }
      for (const drawn of [shapes.course, shapes.spread])
        if (drawn) expect(drawn).not.toMatch(/NaN|Infinity/);
    }),
  );
});
