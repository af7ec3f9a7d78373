import { describe, expect, test } from 'vitest';
import { nutFactorDefaults, nutFactorFor } from '../../../../src/standards/screws/nutFactors.ts';
import { publishedNutFactors } from '../../../fixtures/publishedFriction.ts';

test('example: plain and dry is 0.2', () => expect(nutFactorFor('plain', 'none').nutFactor.mid).toBe(0.2));

// Tension test by a locknut maker: 0.18 dry, 0.17 and 0.15 with anti-seize.
test.each([
  ['none', 0.18],
  ['anti-seize', 0.17],
  ['anti-seize', 0.15],
] as const)('the band for %s holds the measured %d', (lubricant, measured) => {
  const { lo, hi } = nutFactorFor('plain', lubricant).nutFactor;
  expect(measured).toBeGreaterThanOrEqual(lo);
  expect(measured).toBeLessThanOrEqual(hi);
});

describe('our bands against the published ones', () => {
  test.each(publishedNutFactors)(
    '$surface, $lubricant: $lo to $hi overlaps ours',
    ({ surface, lubricant, lo, hi }) => {
      const ours = nutFactorFor(surface, lubricant).nutFactor;
      expect(ours.lo).toBeLessThanOrEqual(hi);
      expect(ours.hi).toBeGreaterThanOrEqual(lo);
    },
  );
});

test.each(nutFactorDefaults)('$surface, $lubricant: a band that is one', ({ nutFactor, known }) => {
  expect(nutFactor.lo).toBeLessThan(nutFactor.mid);
  expect(nutFactor.mid).toBeLessThan(nutFactor.hi);
  expect(known).toBe('proposal');
});

test('every lubricant falls back to a row for any surface', () => {
  for (const { lubricant } of nutFactorDefaults)
    expect(nutFactorFor('unknown', lubricant).surface).toBe('any');
  expect(nutFactorFor('zinc', 'grease')).toBe(nutFactorFor('plain', 'grease'));
});
test('not knowing what is on the thread widens the band', () => {
  const unknown = nutFactorFor('unknown', 'unknown').nutFactor;
  const greased = nutFactorFor('unknown', 'grease').nutFactor;
  expect(unknown.hi / unknown.lo).toBeGreaterThan(greased.hi / greased.lo);
});
