import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { closestAxleMm } from '../../../../src/mechanics/drive/chainDrive.ts';
import {
  axleFromPitches,
  chainPitches,
  longestPitches,
  shortestPitches,
} from '../../../../src/mechanics/drive/chainLength.ts';
import { rollerCircleMm } from '../../../../src/mechanics/drive/pitchDiameter.ts';
import { rigidAxlePositionsMm } from '../../../fixtures/rigidChain.ts';

const town = { ringTeeth: 36, sprocketTeeth: 15 };

// [computed] regression rows; the published values stand in tests/fixtures/outside/chain.ts.
test.each([
  [380, 85.716],
  [350, 81.024],
  [370, 84.152],
  [375, 84.934],
  [390, 87.281],
  [400, 88.847],
])('36 × 15 at %s mm: %s pitches', (axleMm, pitches) =>
  expect(chainPitches(town, axleMm)).toBeCloseTo(pitches, 3),
);

test('the longest chain of use on 36 × 15: 340.53 pitches', () =>
  expect(longestPitches(town)).toBeCloseTo(340.53, 2));

test.each([
  [36, 15, 86, 381.813],
  [36, 15, 80, 343.449],
  [36, 15, 89, 400.976],
  [36, 15, 99, 464.785],
  [25, 9, 76, 373.248],
  [28, 10, 80, 385.633],
  [32, 16, 86, 392.366],
  [44, 16, 98, 428.053],
  [42, 15, 100, 450.717],
])('%s × %s with %s pitches: axle at %s mm', (ringTeeth, sprocketTeeth, pitches, axleMm) =>
  expect(axleFromPitches({ ringTeeth, sprocketTeeth }, pitches)).toBeCloseTo(axleMm, 3),
);

describe('rigid links on two toothed wheels, solved on their own (tests/fixtures/rigidChain.ts)', () => {
  test.each([
    [36, 15, 86, 0.005],
    [36, 15, 88, 0.005],
    [36, 15, 89, 0.01],
    [25, 9, 76, 0.1],
    [44, 16, 98, 0.05],
    [18, 18, 70, 0.1],
  ])('%s × %s, %s links: mean of the phases within 0.005 mm', (ring, sprocket, links, spreadMm) => {
    const positions = rigidAxlePositionsMm(ring, sprocket, links);
    const mean = positions.reduce((sum, mm) => sum + mm, 0) / positions.length;
    const ours = axleFromPitches({ ringTeeth: ring, sprocketTeeth: sprocket }, links);
    expect(Math.abs(mean - ours)).toBeLessThan(0.005);
    expect(Math.max(...positions) - Math.min(...positions)).toBeLessThan(spreadMm);
  });
});

test('taking arcs for the wrapped links is a known mistake: the axle comes half a millimetre short', () => {
  const axleMm = axleFromPitches(town, 86);
  const [ringMm, sprocketMm] = [rollerCircleMm(36) / 2, rollerCircleMm(15) / 2];
  const slope = Math.asin((ringMm - sprocketMm) / axleMm);
  const belt =
    2 * Math.sqrt(axleMm ** 2 - (ringMm - sprocketMm) ** 2) +
    ringMm * (Math.PI + 2 * slope) +
    sprocketMm * (Math.PI - 2 * slope);
  const errorMm = (belt - 86 * 12.7) / 2;
  expect(errorMm).toBeGreaterThan(0.4);
  expect(errorMm).toBeLessThan(0.7);
});

const teeth = fc.integer({ min: 6, max: 120 });
const drive = fc.record({ ringTeeth: teeth, sprocketTeeth: teeth });
const share = fc.double({ min: 0, max: 1, noNaN: true });

describe('properties', () => {
  test('length from position and position from length undo each other', () => {
    fc.assert(
      fc.property(drive, share, (d, s) => {
        const nearMm = closestAxleMm(d);
        const axleMm = nearMm + s * (2000 - nearMm);
        expect(axleFromPitches(d, chainPitches(d, axleMm))).toBeCloseTo(axleMm, 6);
      }),
    );
  });
  test('a longer chain sets the axle further back', () => {
    fc.assert(
      fc.property(drive, share, (d, s) => {
        const least = shortestPitches(d);
        const pitches = least + s * (longestPitches(d) - least - 1);
        expect(axleFromPitches(d, pitches + 1)).toBeGreaterThan(axleFromPitches(d, pitches) + 6);
      }),
    );
  });
  test('a further axle takes a longer chain, two pitches an inch at most', () => {
    fc.assert(
      fc.property(drive, share, (d, s) => {
        const axleMm = closestAxleMm(d) + s * (1990 - closestAxleMm(d));
        const grown = chainPitches(d, axleMm + 6.35) - chainPitches(d, axleMm);
        expect(grown).toBeGreaterThan(0);
        expect(grown).toBeLessThanOrEqual(1.0001);
      }),
    );
  });
});

test.each([
  ['too short to close', 40],
  ['endless', Number.POSITIVE_INFINITY],
  ['no number', Number.NaN],
  ['longer than any bicycle', 500],
])('a chain %s is refused', (_, pitches) => expect(() => axleFromPitches(town, pitches)).toThrow(RangeError));
