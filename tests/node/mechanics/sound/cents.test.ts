import { expect, test } from 'vitest';
import { centsBetween } from '../../../../src/mechanics/sound/cents.ts';

test('an octave is 1200 cents, and so many below the other way round', () => {
  expect(centsBetween(440, 880)).toBe(1200);
  expect(centsBetween(880, 440)).toBe(-1200);
});

// Handbook: 44.1 kHz taken for 48 kHz.
test('44.1 kHz taken for 48 kHz is 147 cents', () =>
  expect(centsBetween(44_100, 48_000)).toBeCloseTo(146.7, 1));
