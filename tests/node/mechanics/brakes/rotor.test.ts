import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { padWear, rotorWear } from '../../../../src/mechanics/brakes/rotor.ts';
import { rotorMinimums, rotorSizes } from '../../../../src/standards/interfaces/rotors.ts';

describe('examples of the docstrings', () => {
  test('rotor at its mark', () =>
    expect(rotorWear({ thicknessMm: 1.5, printedMinimumMm: 1.5 }).wear).toBe('replace'));
  test('pad', () => expect(padWear(0.8, false).wear).toBe('watch'));
});

describe('rotor wear', () => {
  test.each([
    [1.51, 1.55, 'replace', 'at-printed-minimum'],
    [1.6, 1.55, 'watch', 'near-printed-minimum'],
    [1.6, 1.5, 'watch', 'near-printed-minimum'],
    [1.8, 1.5, 'good', 'within-limits'],
  ])('%s mm, marked %s: %s (the mark goes first)', (thicknessMm, printedMinimumMm, wear, reason) =>
    expect(rotorWear({ thicknessMm, printedMinimumMm })).toMatchObject({ wear, reason }),
  );

  test.each([
    [1.6, 1.8, 'replace'],
    [1.55, 1.8, 'replace'],
    [1.65, 1.8, 'good'],
  ])('%s mm beside %s unused, no mark: %s (rotor guide: 0.2 to 0.3 mm)', (thicknessMm, unusedMm, wear) =>
    expect(rotorWear({ thicknessMm, unusedMm }).wear).toBe(wear),
  );

  test('nothing to compare with is not called good', () =>
    expect(rotorWear({ thicknessMm: 1.8 })).toEqual({
      wear: 'watch',
      reason: 'nothing-to-compare',
      leftMm: null,
    }));
});

describe('pad wear (repair blog 0.5 mm; other pages 1 mm)', () => {
  test.each([
    [0.5, false, 'replace', 'at-limit'],
    [0, false, 'replace', 'at-limit'],
    [1, false, 'watch', 'near-limit'],
    [1.01, false, 'good', 'within-limits'],
    [2, true, 'replace', 'contaminated'],
  ])('%s mm, contaminated %s: %s', (compoundMm, contaminated, wear, reason) =>
    expect(padWear(compoundMm, contaminated)).toMatchObject({ wear, reason }),
  );
});

test('thinner is never judged better', () => {
  const rank = { replace: 0, watch: 1, good: 2 } as const;
  const thickness = fc.double({ min: 0.1, max: 3, noNaN: true });
  fc.assert(
    fc.property(thickness, thickness, (a, b) => {
      const [thin, thick] = [Math.min(a, b), Math.max(a, b)];
      const of = (thicknessMm: number) => rank[rotorWear({ thicknessMm, printedMinimumMm: 1.5 }).wear];
      expect(of(thin)).toBeLessThanOrEqual(of(thick));
      expect(rank[padWear(thin, false).wear]).toBeLessThanOrEqual(rank[padWear(thick, false).wear]);
    }),
  );
});

test('the tables name their sources, and marks are thinner than any new rotor', () => {
  for (const row of [...rotorSizes, ...rotorMinimums]) expect(row.source).toMatch(/\S{4}/);
  expect(rotorMinimums.map((row) => row.minimumMm)).toEqual([1.5, 1.52, 1.55]);
});

test.each([
  () => rotorWear({ thicknessMm: 0 }),
  () => rotorWear({ thicknessMm: 1.8, printedMinimumMm: Number.NaN }),
  () => padWear(-0.1, false),
])('programmer error %#', (call) => expect(call).toThrow(RangeError));
