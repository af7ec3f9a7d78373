import { expect, test } from 'vitest';
import { checkPile } from '../../../src/fit/checkPile.ts';
import { contradictions } from '../../../src/fit/contradictions.ts';
import { caliper, face, named, part } from '../../fixtures/pileParts.ts';

test('an ISO shell that measures 41 is not one (bottom bracket thread table: 33.6 to 33.9)', () => {
  const shell = named('shell', 'iso', { measured: { boreMm: caliper(41.2) } });
  expect(contradictions(shell)).toEqual([
    { reason: 'measured-beside-standard', key: 'boreMm', measuredMm: 41.2, standardMm: [33.6, 33.9] },
  ]);
  const check = checkPile([part('frame', 'frame', [shell])]);
  expect(check.toMeasure.map(({ because }) => because)).toEqual([
    'The bore measures 41.2 mm, but iso has 33.6 mm to 33.9 mm: one of the two is wrong.',
  ]);
});

test.each([33.5, 33.6, 33.75, 33.9, 34])('%f mm passes as an ISO shell', (boreMm) => {
  expect(contradictions(named('shell', 'iso', { measured: { boreMm: caliper(boreMm) } }))).toEqual([]);
});

test('printed 31.8, measured 26.0', () => {
  const bar = face('bar-centre', { diameterMm: 31.8 }, { measured: { diameterMm: caliper(26) } });
  expect(contradictions(bar)).toEqual([
    { reason: 'measured-beside-printed', key: 'diameterMm', measuredMm: 26, printedMm: 31.8 },
  ]);
});

test('a slot whose front lies behind its back', () => {
  const slot = face('axle-slot', { widthMm: 10, nearestMm: 420, farthestMm: 398 });
  expect(contradictions(slot)).toEqual([{ reason: 'order', key: 'nearestMm', beforeKey: 'farthestMm' }]);
  expect(contradictions(face('axle-slot', { widthMm: 10, nearestMm: 398, farthestMm: 420 }))).toEqual([]);
});
