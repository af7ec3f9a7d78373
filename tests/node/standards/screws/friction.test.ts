import { expect, test } from 'vitest';
import { clampFriction } from '../../../../src/standards/screws/friction.ts';
import { publishedFriction } from '../../../fixtures/publishedFriction.ts';

const clean = publishedFriction.filter((row) => row.neverForClamps);

test('no clamp is reckoned with laboratory-clean metal', () => {
  expect(clean.length).toBeGreaterThan(0);
  for (const { friction } of Object.values(clampFriction))
    for (const { lo } of clean) expect(friction.hi).toBeLessThan(lo);
});

// Printed sample run of a shaft–hub program: 0.16 for a dry shaft in a hub. Tribology database: 0.15 lubricated metal, 0.1 to 0.5 carbon on itself.
test('the metal and carbon bands hold the published design values', () => {
  expect(clampFriction['metal-dry'].friction.mid).toBe(0.16);
  expect(clampFriction['metal-greased'].friction.hi).toBeGreaterThanOrEqual(0.15);
  expect(clampFriction['carbon-dry'].friction.lo).toBeGreaterThanOrEqual(0.1);
  expect(clampFriction['carbon-paste'].friction.hi).toBeLessThanOrEqual(0.5);
});

test('grease grips less than dry metal, paste more than dry carbon', () => {
  expect(clampFriction['metal-greased'].friction.mid).toBeLessThan(clampFriction['metal-dry'].friction.mid);
  expect(clampFriction['carbon-paste'].friction.mid).toBeGreaterThan(
    clampFriction['carbon-dry'].friction.mid,
  );
});

test.each(publishedFriction)('$pair, $condition: $lo to $hi with a source', ({ lo, hi, source }) => {
  expect(lo).toBeGreaterThan(0);
  expect(hi).toBeGreaterThanOrEqual(lo);
  expect(source.length).toBeGreaterThan(10);
});
