import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { chainPath } from '../../../../src/mechanics/drive/chainDrive.ts';
import { axleFromPitches } from '../../../../src/mechanics/drive/chainLength.ts';
import { axleForLiftMm, axleSettingMm, chainSlack } from '../../../../src/mechanics/drive/chainSlack.ts';

const town = { ringTeeth: 36, sprocketTeeth: 15 };

test('36 × 15, 86 pitches, axle at 381.7 mm: lifts 6.53 mm', () =>
  expect(chainSlack(town, 86, 381.7).liftMm).toBeCloseTo(6.53, 2));

// [computed] regression rows: how far short of taut the axle stands.
test.each([
  [6.35, 0.107],
  [10, 0.265],
  [12.7, 0.428],
])('a lift of %s mm needs the axle %s mm short of taut', (liftMm, shortMm) =>
  expect(axleFromPitches(town, 86) - axleForLiftMm(town, 86, liftMm)).toBeCloseTo(shortMm, 3),
);

test('half an inch of movement, cycling forum advice, is the least slack of the setting', () => {
  const setting = axleSettingMm(town, 86);
  expect(2 * chainSlack(town, 86, setting.hi).liftMm).toBeCloseTo(12.7, 6);
  expect(setting.lo).toBeLessThan(setting.mid);
});

test('a chain that is too short has no lift and says by how much it is short', () => {
  const { slackMm, liftMm } = chainSlack(town, 86, 382.5);
  expect(slackMm).toBeLessThan(-1.3);
  expect(liftMm).toBe(0);
});

describe('properties', () => {
  const pitches = fc.integer({ min: 60, max: 120 });
  const lift = fc.double({ min: 0, max: 40, noNaN: true });
  test('the lifted run, measured as two straight halves, is longer by just the slack', () => {
    fc.assert(
      fc.property(pitches, lift, (links, liftMm) => {
        const axleMm = axleForLiftMm(town, links, liftMm);
        const { spanMm } = chainPath(town, axleMm);
        const { slackMm } = chainSlack(town, links, axleMm);
        expect(2 * Math.hypot(spanMm / 2, liftMm) - spanMm).toBeCloseTo(slackMm, 5);
      }),
    );
  });
  test('more lift wants the axle further forward, never beyond taut', () => {
    fc.assert(
      fc.property(pitches, lift, (links, liftMm) => {
        const axleMm = axleForLiftMm(town, links, liftMm);
        expect(axleMm).toBeLessThanOrEqual(axleFromPitches(town, links));
        expect(axleForLiftMm(town, links, liftMm + 1)).toBeLessThan(axleMm);
      }),
    );
  });
});

test.each([
  ['a lift downwards', () => axleForLiftMm(town, 86, -1)],
  ['no lift at all', () => axleForLiftMm(town, 86, Number.NaN)],
  ['more slack than the chain has', () => axleForLiftMm(town, 44, 60)],
  ['no chain', () => chainSlack(town, 0, 380)],
])('%s is refused', (_, call) => expect(call).toThrow(RangeError));
