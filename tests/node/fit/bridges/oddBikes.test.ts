import { expect, test } from 'vitest';
import { mates } from '../../../../src/fit/bridges/mates.ts';
import type { Face } from '../../../../src/fit/faces/face.ts';
import { chainlines } from '../../../../src/standards/interfaces/chainlines.ts';
import { spacings } from '../../../../src/standards/interfaces/spacings.ts';
import { face, named } from '../../../fixtures/pileParts.ts';

const steelRear = { material: 'steel', end: 'rear' };
const ends = (spacingMm: number) => face('end-spacing', { spacingMm }, { traits: steelRear });
const hub = (spacingMm: number) => face('hub-spacing', { spacingMm });

// What bikes built from leftovers ask most: each has a way, and none is refused for being rare.
test.each<[what: string, one: Face, other: Face, bridgeId: string]>([
  ['ISO cups in a PF30 shell', named('shell', 'pf30'), named('bb-cup', 'iso'), 'shell-pf30-iso'],
  [
    'ISO cups in a wide 46 mm shell',
    named('shell', 'pf46-wide'),
    named('bb-cup', 'iso'),
    'shell-pf46-wide-iso',
  ],
  ['ISO cups in a 41 mm press shell', named('shell', 'pf41'), named('bb-cup', 'iso'), 'shell-pf41-iso'],
  [
    '10 mm bolts of a female axle in 14 mm slots',
    face('axle-slot', { widthMm: 14 }),
    face('axle', { diameterMm: 10 }, { traits: { type: 'bolts' } }),
    'axle-bush-14-10',
  ],
  [
    'a 3/8 in axle in 14 mm slots',
    face('axle-slot', { widthMm: 14 }),
    face('axle', { diameterMm: 9.525 }),
    'axle-bush-14-9.525',
  ],
  ['a hub of 135 in a frame for 120', ends(120), hub(135), 'one-way:cut-hub'],
  ['a hub of 130 in a frame for 110', ends(110), hub(130), 'one-way:cut-hub'],
])('%s', (_what, one, other, bridgeId) => {
  const verdict = mates(one, other);
  expect(verdict?.outcome).not.toBe('does-not-fit');
  expect(verdict?.bridges.map((bridge) => bridge.bridgeId)).toContain(bridgeId);
});

test.each([110, 112, 114, 117, 118, 127, 132])(
  'a gear or back-pedal hub of %d fits ends of its width',
  (mm) => {
    expect(spacings.some(({ faces }) => faces['hub-spacing']?.['spacingMm'] === mm)).toBe(true);
    expect(mates(ends(mm), hub(mm))?.outcome).toBe('fits');
  },
);

test('a hub-gear chainline is 40 to 48 as a rule, and 54 to 58 belongs to one kind alone', () => {
  const gears = chainlines.filter(({ use }) => use.startsWith('hub gears'));
  expect(gears.map(({ use, chainlineMm }) => [use, ...chainlineMm])).toEqual([
    ['hub gears, older', 40.5, 43],
    ['hub gears, most', 40, 48],
    ['hub gears, one wide kind of fourteen gears', 54, 58],
  ]);
});
