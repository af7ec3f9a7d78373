import { expect, test } from 'vitest';
import { toolClasses } from '../../../../src/standards/screws/toolClasses.ts';
import { toolClassRow } from '../../../fixtures/rows.ts';

// ISO 6789 (from memory): ±4 % above 10 N·m of full scale, ±6 % below; from 20 % of the scale.
test('a click wrench promises 4 % above 10 N·m and 6 % up to it', () => {
  expect(toolClassRow('click').tolerance).toEqual({ upTo10Nm: 0.06, above10Nm: 0.04, usableFrom: 0.2 });
});
test('a hand promises nothing and scatters more than any tool', () => {
  const hand = toolClassRow('by-hand');
  expect(hand.tolerance).toBeUndefined();
  expect(hand.check).toBeUndefined();
  for (const { tolerance } of toolClasses) expect(tolerance?.upTo10Nm ?? 0).toBeLessThan(hand.scatter!);
});
