import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { fitTogether, limits } from '../../../../src/mechanics/clamps/limitsAndFits.ts';
import { isoFits } from '../../../../src/standards/interfaces/isoFits.ts';

const deviations = (sizeMm: number, toleranceClass: string) => {
  const result = limits(isoFits, sizeMm, toleranceClass);
  if (!result.ok) throw new Error(result.reason);
  return result;
};

describe('examples of the docstrings', () => {
  test('44 H7', () =>
    expect(limits(isoFits, 44, 'H7')).toEqual({ ok: true, upperUm: 25, lowerUm: 0, known: 'seen' }));
  test('H7/p6', () =>
    expect(fitTogether({ upperUm: 25, lowerUm: 0 }, { upperUm: 42, lowerUm: 26 })).toEqual({
      mostUm: 42,
      leastUm: 1,
      kind: 'interference',
    }));
});

// ISO 286-2, over 30 to 50 mm, from memory.
test.each([
  ['k6', 18, 2],
  ['m6', 25, 9],
  ['n6', 33, 17],
  ['p6', 42, 26],
  ['r6', 50, 34],
  ['s6', 59, 43],
  ['g6', -9, -25],
  ['f7', -25, -50],
  ['K7', 7, -18],
  ['P7', -17, -42],
])('37 %s is %s/%s µm (ISO 286-2, from memory)', (toleranceClass, upperUm, lowerUm) =>
  expect(deviations(37, toleranceClass)).toMatchObject({ upperUm, lowerUm, known: 'memory' }),
);

// Where the rule changes: k leaves the zero line only in grades 4 to 7; holes up to 3 mm are not lifted.
test.each([
  [37, 'k8', 39, 0],
  [37, 'k5', 13, 2],
  [3, 'P7', -6, -16],
  [3, 'N7', -4, -14],
  [3.01, 'N7', -4, -16],
])('%s %s is %s/%s µm (ISO 286-2, from memory)', (size, toleranceClass, upperUm, lowerUm) =>
  expect(deviations(size, toleranceClass)).toMatchObject({ upperUm, lowerUm }),
);

// Worked out from the rows above; no outside witness.
test.each([
  ['H7', 'p6', 42, 1, 'interference'],
  ['H7', 'r6', 50, 9, 'interference'],
  ['H7', 's6', 59, 18, 'interference'],
  ['H8', 'p6', 42, -13, 'transition'],
  ['H7', 'n6', 33, -8, 'transition'],
  ['H7', 'k6', 18, -23, 'transition'],
  ['H7', 'g6', -9, -50, 'clearance'],
])('37 %s/%s: %s to %s µm, %s (computed)', (hole, shaft, mostUm, leastUm, kind) =>
  expect(fitTogether(deviations(37, hole), deviations(37, shaft))).toEqual({ mostUm, leastUm, kind }),
);

describe('the table', () => {
  test('steps follow one another without a hole, and sizes at the edge belong below', () => {
    isoFits.slice(1).forEach((step, at) => {
      expect(step.overMm).toBe(isoFits[at]!.upToMm);
    });
    expect(deviations(50, 'H7').upperUm).toBe(25);
    expect(deviations(50.01, 'H7').upperUm).toBe(30);
  });

  // ISO 286-1: i = 0.45·∛D + 0.001·D µm, D the geometric mean of the step; IT6 10i, IT7 16i, IT8 25i (from memory).
  test.each([
    [6, 10],
    [7, 16],
    [8, 25],
    [9, 40],
    [10, 64],
    [11, 100],
  ])('IT%s follows %s i within the rounding of the standard (from memory)', (grade, units) => {
    // The standard rounds the steps 50 to 65 and 65 to 80 as one step.
    for (const { overMm, upToMm, gradeUm } of isoFits.filter(
      (step) => step.upToMm <= 50 && step.overMm > 0,
    )) {
      const size = Math.sqrt(overMm * upToMm);
      const expected = units * (0.45 * Math.cbrt(size) + 0.001 * size);
      expect(Math.abs(gradeUm[grade]! - expected)).toBeLessThanOrEqual(Math.max(1, 0.04 * expected));
    }
  });

  test('heavier letters sit higher, coarser grades are wider', () => {
    for (const { shaftUm, gradeUm } of isoFits) {
      const heights = ['e', 'f', 'g', 'h', 'k', 'm', 'n', 'p', 'r', 's'].map((letter) => shaftUm[letter]!);
      expect(heights).toEqual([...heights].sort((a, b) => a - b));
      const widths = Object.values(gradeUm);
      expect(widths).toEqual([...widths].sort((a, b) => a - b));
    }
  });
});

// ISO 286-2 rows, from memory; js is half the grade each way by its definition (ISO 286-1).
describe('letters that straddle the nominal size, and the easy running e', () => {
  test.each([
    [37, 'j6', 11, -5],
    [37, 'j7', 15, -10],
    [10, 'j5', 4, -2],
    [37, 'js6', 8, -8],
    [37, 'JS7', 12.5, -12.5],
    [37, 'J7', 14, -11],
    [60, 'J6', 13, -6],
    [37, 'e8', -50, -89],
    [60, 'e7', -60, -90],
    [37, 'E8', 89, 50],
  ])('%s %s: %f to %f µm', (size, toleranceClass, upperUm, lowerUm) =>
    expect(limits(isoFits, size, toleranceClass)).toEqual({ ok: true, upperUm, lowerUm, known: 'memory' }),
  );
  test.each(['j8', 'J9', 'j4'])('%s is no class of the table', (toleranceClass) =>
    expect(limits(isoFits, 37, toleranceClass)).toEqual({ ok: false, reason: 'grade-not-in-table' }),
  );
  test('H7/j6 and H7/js6 are transition fits, H8/e8 is a running one', () => {
    expect(fitTogether(deviations(37, 'H7'), deviations(37, 'j6')).kind).toBe('transition');
    expect(fitTogether(deviations(37, 'H7'), deviations(37, 'js6')).kind).toBe('transition');
    expect(fitTogether(deviations(37, 'H8'), deviations(37, 'e8')).kind).toBe('clearance');
  });
});

describe('what it refuses', () => {
  test.each([
    [44, 'H', 'not-a-class'],
    [44, '7H', 'not-a-class'],
    [44, 'z6', 'letter-not-in-table'],
    [44, 'H12', 'grade-not-in-table'],
    [44, 'M9', 'grade-not-in-table'],
    [81, 'H7', 'size-outside-table'],
    [0, 'H7', 'size-outside-table'],
    [-5, 'H7', 'size-outside-table'],
  ])('%s %s: %s', (size, toleranceClass, reason) =>
    expect(limits(isoFits, size, toleranceClass)).toEqual({ ok: false, reason }),
  );
  test('a size that is no number is a programmer error', () =>
    expect(() => limits(isoFits, Number.NaN, 'H7')).toThrow(RangeError));
});

describe('properties', () => {
  const size = fc.double({ min: 0.01, max: 80, noNaN: true });
  test('a hole and the mirrored shaft fit alike (ISO 286 rule: H7/p6 as P7/h6)', () => {
    fc.assert(
      fc.property(
        size.filter((mm) => mm > 3),
        fc.constantFrom('k', 'm', 'n', 'p', 'r', 's'),
        (mm, letter) => {
          const shaftSide = fitTogether(deviations(mm, 'H7'), deviations(mm, `${letter}6`));
          const holeSide = fitTogether(deviations(mm, `${letter.toUpperCase()}7`), deviations(mm, 'h6'));
          expect(holeSide).toEqual(shaftSide);
        },
      ),
    );
  });
  test('upper is above lower by the grade, holes and shafts alike', () => {
    fc.assert(
      fc.property(size, fc.constantFrom('h', 'H', 'p', 'P', 'g', 'G', 'k', 'K'), (mm, letter) => {
        const { upperUm, lowerUm } = deviations(mm, `${letter}7`);
        const step = isoFits.find((row) => mm > row.overMm && mm <= row.upToMm);
        expect(upperUm - lowerUm).toBe(step?.gradeUm[7]);
      }),
    );
  });
});
