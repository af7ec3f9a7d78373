import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  partResilienceMmPerN,
  type Stack,
  screwResilienceMmPerN,
  settlingLoss,
} from '../../../../src/mechanics/screws/settling.ts';
import { embedment } from '../../../../src/standards/screws/embedment.ts';

const m5: Stack = {
  thread: { diameterMm: 5, pitchMm: 0.8, form: 'iso' },
  gripMm: 10,
  headMm: 8.5,
  holeMm: 5.3,
  screwModulusGpa: 205,
  partModulusGpa: 70,
  heads: 1,
  innerJoints: 1,
  softLayer: false,
};
const m8: Stack = {
  ...m5,
  thread: { diameterMm: 8, pitchMm: 1.25, form: 'iso' },
  gripMm: 20,
  headMm: 13,
  holeMm: 8.4,
};
const mediumShear = embedment.find((row) => row.roughness === 'medium' && row.load === 'shear')!;

describe('examples of the docstrings', () => {
  test('screw', () => expect(screwResilienceMmPerN(m5) * 1e6).toBeCloseTo(5.7, 1));
  test('parts', () => expect(partResilienceMmPerN(m5) * 1e6).toBeCloseTo(2.0, 1));
  test('a quarter of an M5 preload', () =>
    expect(settlingLoss(m5, mediumShear, 5000).lostShare.mid).toBeCloseTo(0.26, 2));
});

// Regression: computed with guide values from memory; no outside witness.
test.each([
  ['M5, 10 mm grip in aluminium', m5, 1250],
  ['M8, 20 mm grip in aluminium', m8, 1780],
])('%s loses about %3$s N (computed)', (_, stack, lost) => {
  const { embeddedUm, lostN } = settlingLoss(stack, mediumShear, 20000);
  expect(embeddedUm).toBe(10);
  expect(Math.abs(lostN.mid / lost - 1)).toBeLessThanOrEqual(0.04);
});

describe('who loses more (trade site on embedded loss: small bolts lose the larger share)', () => {
  const share = (change: Partial<Stack>) =>
    settlingLoss({ ...m8, ...change }, mediumShear, 20000).lostShare.mid;
  test.each<[string, Partial<Stack>]>([
    ['a shorter grip', { gripMm: 8 }],
    ['two more faces for a shim', { innerJoints: 3 }],
    ['a nut in place of a tapped hole', { heads: 2 }],
  ])('%s', (_, change) => expect(share(change)).toBeGreaterThan(share({})));
  test('paint or carbon raises the upper end only', () => {
    const plain = settlingLoss(m8, mediumShear, 20000).lostN;
    const soft = settlingLoss({ ...m8, softLayer: true }, mediumShear, 20000).lostN;
    expect(soft.hi).toBeGreaterThan(plain.hi);
    expect(soft.mid).toBe(plain.mid);
  });
});

test('never more is lost than there was, and what is lost and left adds up', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 10, max: 30000, noNaN: true }),
      fc.integer({ min: 0, max: 12 }),
      fc.double({ min: 1, max: 60, noNaN: true }),
      fc.constantFrom(...embedment),
      (preloadN, innerJoints, gripMm, row) => {
        const { lostN, leftN, lostShare } = settlingLoss({ ...m5, innerJoints, gripMm }, row, preloadN);
        expect(lostN.hi).toBeLessThanOrEqual(preloadN);
        expect(leftN.lo).toBeGreaterThanOrEqual(0);
        expect(lostN.mid + leftN.mid).toBeCloseTo(preloadN, 6);
        expect(lostShare.hi).toBeLessThanOrEqual(1 + 1e-12);
      },
    ),
  );
});

test('rougher faces give more, shear more than tension (VDI 2230-1, from memory)', () => {
  const sum = (at: number) => embedment[at]!.threadUm + embedment[at]!.perHeadUm + embedment[at]!.perInnerUm;
  for (const at of [0, 2, 4]) expect(sum(at + 1)).toBeGreaterThan(sum(at));
  for (const at of [0, 1, 2, 3]) expect(sum(at + 2)).toBeGreaterThan(sum(at));
});

test.each<Partial<Stack>>([{ gripMm: 0 }, { holeMm: 9 }, { innerJoints: -1 }, { partModulusGpa: 0 }])(
  'programmer error %o',
  (change) => expect(() => settlingLoss({ ...m5, ...change }, mediumShear, 5000)).toThrow(RangeError),
);
test('no preload is a programmer error', () =>
  expect(() => settlingLoss(m5, mediumShear, 0)).toThrow(RangeError));
