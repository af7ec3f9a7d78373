import { expect, test } from 'vitest';
import { checkPile } from '../../../../src/fit/checkPile.ts';
import { nearMisses } from '../../../../src/practice/pile/nearMisses.ts';
import { magpie } from '../../../fixtures/magpie.ts';

test('an adapter for a caliper is judged with the rotor of its wheel: the one for 200 does not serve 180', () => {
  const caliper = checkPile(magpie).findings.find(({ topic }) => topic === 'caliper-on-mount');
  if (!caliper) throw new Error('no finding about the caliper');
  const misses = nearMisses(caliper, magpie);
  expect(misses.map(({ adapterId }) => adapterId)).not.toContain('is-post-160-180');
  expect(misses.find(({ adapterId }) => adapterId === 'is-post-160-200')?.sentence).toMatch(
    /^At caliper: .*200 mm/,
  );
});
