import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import type { Face } from '../../../../src/fit/faces/face.ts';
import type { PilePart } from '../../../../src/fit/pile.ts';
import { leastRingTeeth, ringBossMm, teethFindings } from '../../../../src/fit/wholes/leastTeeth.ts';
import { ringMounts } from '../../../../src/standards/interfaces/ringMounts.ts';

test('example of the docstring', () => {
  expect(leastRingTeeth(104, 4)).toEqual({ teethCount: 32, listed: true, rareTeethCount: 30 });
  expect(ringBossMm(32, 104)).toBeCloseTo(8.9, 1);
});

test.each(ringMounts.filter(({ leastTeethCount }) => leastTeethCount !== null))(
  'bolt circle pages: $id from $leastTeethCount teeth; geometry alone comes within one',
  ({ id, leastTeethCount }) => {
    const [circle = 0] = id.split('/').map(Number);
    // Seven bolts: no such row, so the answer comes from geometry.
    const reckoned = leastRingTeeth(circle, 7);
    expect(reckoned.listed).toBe(false);
    expect(Math.abs(reckoned.teethCount - (leastTeethCount ?? 0))).toBeLessThanOrEqual(1);
  },
);

const face = (kind: Face['kind'], nominal: Record<string, number>, standard: string | null = null): Face => ({
  ...{ faceId: kind, kind, standard, nominal, measured: {} },
});
const part = (kind: PilePart['kind'], ...faces: Face[]): PilePart => ({
  partId: kind,
  kind,
  name: kind,
  faces,
});

// A cycling FAQ has 33 on 110; 30 on 104 with bolts threaded into the ring, and 9 on a splined body, from memory;
// 10 in an archive of compatibility notes.
test.each([
  [104, 4, 30, 'fits', 1],
  [104, 4, 32, 'fits', 0],
  [104, 4, 29, 'does-not-fit', 0],
  [110, 5, 33, 'fits', 1],
  [110, 5, 32, 'does-not-fit', 0],
  [130, 5, 37, 'does-not-fit', 0],
])('%d/%d with %d teeth: %s, %d remark', (boltCircleMm, boltsCount, teethCount, outcome, remarks) => {
  const ring = part(
    'chainring',
    face('ring-mount', { boltCircleMm, boltsCount }),
    face('ring-teeth', { teethCount }),
  );
  const [found] = teethFindings([ring]);
  expect(found?.outcome).toBe(outcome);
  expect(found?.notes?.filter((note) => /^Unusual/.test(note)).length ?? 0).toBe(remarks);
});

test.each([
  [11, 'fits', 0],
  [10, 'fits', 1],
  [9, 'fits', 1],
  [8, 'does-not-fit', 0],
])('%d teeth on a splined body: %s, %d remark', (teethCount, outcome, remarks) => {
  const sprocket = part(
    'sprocket',
    face('sprocket-mount', {}, 'spline-freehub'),
    face('sprocket-teeth', { teethCount }),
  );
  const [found] = teethFindings([sprocket]);
  expect(found?.outcome).toBe(outcome);
  expect(found?.notes?.filter((note) => /^Unusual/.test(note)).length ?? 0).toBe(remarks);
});

test('a bigger circle never allows a smaller ring', () => {
  fc.assert(
    fc.property(fc.integer({ min: 30, max: 199 }), (circle) => {
      expect(leastRingTeeth(circle + 1, 7).teethCount).toBeGreaterThanOrEqual(
        leastRingTeeth(circle, 7).teethCount,
      );
    }),
  );
});

test.each([
  [5, 104],
  [32, 0],
  [Number.NaN, 104],
])('%f teeth on %f is refused', (teethCount, circle) => {
  expect(() => ringBossMm(teethCount, circle)).toThrow(RangeError);
});

test('no bolt circle of 10 or of a metre', () => {
  expect(() => leastRingTeeth(10, 4)).toThrow(RangeError);
  expect(() => leastRingTeeth(1000, 4)).toThrow(RangeError);
});
