import { expect, test } from 'vitest';
import { mates } from '../../../../src/fit/bridges/mates.ts';
import type { Face } from '../../../../src/fit/faces/face.ts';
import { caliper, face, named } from '../../../fixtures/pileParts.ts';

const spokeHoles = (kind: 'hub-holes' | 'rim-holes', holesCount?: number) =>
  face(kind as Face['kind'], holesCount === undefined ? {} : { holesCount });

// A sentence names each size beside the part it belongs to; either order of the faces says the same.
test.each<[what: string, one: Face, other: Face, says: RegExp]>([
  [
    'a ring beside a spider',
    face('ring-mount', { boltCircleMm: 104, boltsCount: 4 }),
    face('spider', { boltCircleMm: 110, boltsCount: 5 }),
    /ring has 4 bolts on 104.*, the spider 5 on 110/,
  ],
  [
    'one of its circle but not of its bolts',
    face('ring-mount', { boltCircleMm: 110, boltsCount: 4 }),
    face('spider', { boltCircleMm: 110, boltsCount: 5 }),
    /ring has 4 bolts on 110.*, the spider 5 on 110/,
  ],
  [
    'a ring on its spider',
    face('ring-mount', { boltCircleMm: 110, boltsCount: 5 }),
    face('spider', { boltCircleMm: 110, boltsCount: 5 }),
    /both have 5 bolts on 110/,
  ],
  [
    'a post too thick',
    face('seat-tube', { boreMm: 27.2 }),
    face('post', { diameterMm: 30.9 }),
    /3\.7 mm too thick/,
  ],
  [
    'a JIS crank on an ISO square',
    named('taper-hole', 'jis-taper'),
    named('taper', 'iso-taper'),
    /same angle but different sizes/,
  ],
])('%s', (_what, one, other, says) => {
  for (const verdict of [mates(one, other), mates(other, one)]) expect(verdict?.because).toMatch(says);
});

test('a square of one name is judged by its name, of two by their slide, of none it is asked', () => {
  const slide = mates(named('taper-hole', 'jis-taper'), named('taper', 'iso-taper'));
  const same = mates(named('taper-hole', 'jis-taper'), named('taper', 'jis-taper'));
  expect(slide?.notes.join()).toMatch(/4\.5 mm further in/);
  expect(mates(named('taper-hole', 'iso-taper'), named('taper', 'jis-taper'))?.notes.join()).toMatch(
    /further out/,
  );
  expect(same?.notes.join()).not.toMatch(/further/);
  expect(mates(face('taper-hole', {}), named('taper', 'iso-taper'))?.outcome).toBe('not-known');
});

test('a shell of which only one side is known asks for the other alone', () => {
  const asked = (one: Face, other: Face) => mates(one, other)?.asks.map(({ kind }) => kind);
  expect(asked(face('shell', {}), face('bb-cup', { diameterMm: 41 }))).toEqual(['shell']);
  expect(asked(face('shell', { boreMm: 41 }), face('bb-cup', {}))).toEqual(['bb-cup']);
  expect(asked(face('shell', {}), face('bb-cup', {}))).toEqual(['shell', 'bb-cup']);
});

test('spoke holes are counted on both, and a difference names both counts', () => {
  const verdict = (hub?: number, rim?: number) =>
    mates(spokeHoles('hub-holes', hub), spokeHoles('rim-holes', rim));
  expect(verdict(32, 36)?.because).toMatch(/hub has 32 spoke holes, the rim 36/);
  expect(verdict(36, 36)?.because).toMatch(/have 36 spoke holes each/);
  expect(verdict(undefined, 36)?.asks.map(({ kind }) => kind)).toEqual(['hub-holes']);
  expect(verdict(32)?.asks.map(({ kind }) => kind)).toEqual(['rim-holes']);
});

test('bars of 25.8 and 26.0 share clamps by their print alone: once measured, the size counts', () => {
  const printed = mates(face('bar-clamp', { boreMm: 25.8 }), face('bar-centre', { diameterMm: 26 }));
  expect(printed?.outcome).toBe('fits');
  const measured = { measured: { diameterMm: caliper(26.4, 0.05) } };
  expect(
    mates(face('bar-clamp', { boreMm: 25.8 }), face('bar-centre', { diameterMm: 26 }, measured))?.outcome,
  ).not.toBe('fits');
});
