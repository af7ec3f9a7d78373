import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type RecheckFound, readRecheck } from '../../../../src/mechanics/screws/recheckReading.ts';
import { looseningRatio } from '../../../../src/mechanics/screws/torqueLongForm.ts';

const pulled = (movedAtNm: number | null): RecheckFound => ({ way: 'tightening', installedNm: 5, movedAtNm });
const loosened = (movedAtNm: number, finePitch = false): RecheckFound => ({
  way: 'loosening',
  installedNm: 30,
  movedAtNm,
  finePitch,
});

describe('example of the docstring', () => {
  test('moved at 4.5 of 5', () => expect(readRecheck(pulled(4.5)).verdict).toBe('settled'));
});

describe('pulled in the tightening direction (own scale, no published one)', () => {
  test.each([
    [null, 'held', 'reached-without-moving'],
    [5, 'held', 'reached-without-moving'],
    [5.4, 'held', 'reached-without-moving'],
    [4.999, 'settled', 'moved-close-to-target'],
    [4, 'settled', 'moved-close-to-target'],
    [3.999, 'loosened', 'moved-well-short'],
    [2.5, 'loosened', 'moved-well-short'],
    [2.499, 'failed', 'moved-at-less-than-half'],
    [0, 'failed', 'moved-at-less-than-half'],
  ] as const)('moved at %s of 5 N·m: %s', (movedAtNm, verdict, reason) =>
    expect(readRecheck(pulled(movedAtNm))).toMatchObject({ verdict, reason }),
  );

  test('a bolt that turns freely has failed, whatever the wrench read', () =>
    expect(
      readRecheck({ way: 'tightening', installedNm: 5, movedAtNm: 4.9, turnsFreely: true }),
    ).toMatchObject({
      verdict: 'failed',
      reason: 'turns-freely',
      preloadLeft: { lo: 0, mid: 0, hi: 0 },
    }));
  test('moving at 4.5 of 5 leaves 78 to 90 % of the preload (breakaway up to 15 % above running, from memory)', () => {
    const { preloadLeft } = readRecheck(pulled(4.5));
    expect(preloadLeft?.lo).toBeCloseTo(0.7826, 4);
    expect(preloadLeft?.hi).toBeCloseTo(0.9, 12);
    expect(readRecheck(pulled(4.5)).working?.result).toEqual(preloadLeft);
  });
  test('reaching the target proves nothing of the preload (a stuck bolt clicks too)', () =>
    expect(readRecheck(pulled(null)).preloadLeft).toBeNull());
});

describe('read in the loosening direction', () => {
  test.each([
    ['EN 15194 and EN 14766: 70 % of the recommended torque', 21, false, 'held'],
    ['just below', 20.9, false, 'settled'],
    ['fine axle thread, own figure of 80 %', 23.9, true, 'settled'],
    ['fine axle thread, own figure of 80 %', 24, true, 'held'],
    ['less than half, own figure', 14.9, false, 'loosened'],
  ] as const)('%s: %s of 30 N·m', (_, movedAtNm, finePitch, verdict) =>
    expect(readRecheck(loosened(movedAtNm, finePitch)).verdict).toBe(verdict),
  );

  // The sound ratio of the long-form torque equation at a friction of 0.14; computed, no outside witness.
  test.each([
    ['M5', 5, 0.8, 7, false],
    ['M8', 8, 1.25, 11, false],
    ['M10×1 axle', 10, 1, 13.5, true],
  ] as const)('an intact %s is not called loose', (_, diameterMm, pitchMm, bearingDiameterMm, finePitch) => {
    const ratio = looseningRatio({
      thread: { diameterMm, pitchMm, form: 'iso' },
      threadFriction: 0.14,
      bearingFriction: 0.14,
      bearingDiameterMm,
    });
    expect(readRecheck(loosened(30 * ratio, finePitch)).verdict).toBe('held');
  });
});

describe('looked at only', () => {
  test('the line still meets', () =>
    expect(readRecheck({ way: 'mark', linesUp: true })).toEqual({
      verdict: 'held',
      reason: 'mark-lines-up',
      preloadLeft: null,
      working: null,
    }));
  test('a moved mark means a broken bond: made afresh, not pulled up', () =>
    expect(readRecheck({ way: 'mark', linesUp: false }).verdict).toBe('failed'));
});

describe('properties', () => {
  const torque = fc.double({ min: 0.1, max: 100, noNaN: true });
  const share = fc.double({ min: 0, max: 2, noNaN: true });
  const rank = { failed: 0, loosened: 1, settled: 2, held: 3 } as const;
  test.each(['tightening', 'loosening'] as const)('%s: a higher reading is never judged worse', (way) => {
    fc.assert(
      fc.property(torque, share, share, (installedNm, a, b) => {
        const verdict = (of: number) =>
          rank[readRecheck({ way, installedNm, movedAtNm: installedNm * of }).verdict];
        expect(verdict(Math.max(a, b))).toBeGreaterThanOrEqual(verdict(Math.min(a, b)));
      }),
    );
  });
  test('the preload left is a share', () => {
    fc.assert(
      fc.property(torque, share, (installedNm, of) => {
        const { preloadLeft } = readRecheck({ way: 'loosening', installedNm, movedAtNm: installedNm * of });
        if (!preloadLeft) return;
        expect(preloadLeft.lo).toBeGreaterThanOrEqual(0);
        expect(preloadLeft.hi).toBeLessThanOrEqual(1);
      }),
    );
  });
});

test.each<RecheckFound>([
  { way: 'tightening', installedNm: 0, movedAtNm: 1 },
  { way: 'tightening', installedNm: 5, movedAtNm: -1 },
  { way: 'loosening', installedNm: Number.NaN, movedAtNm: 1 },
])('programmer error %o', (found) => expect(() => readRecheck(found)).toThrow(RangeError));
