import { expect, test } from 'vitest';
import { endDrawn, zoneOfJoint, zoneOfPart } from '../../../../src/drawing/bike/zoneOf.ts';
import { jointKinds } from '../../../../src/standards/jointKinds.ts';

test('examples of the docstrings', () => {
  expect(endDrawn({ kind: 'tyre', name: 'Rear tyre, 50-406' })).toBe('rear');
  expect(zoneOfPart({ kind: 'stem', name: 'Stem' })).toBe('fork-and-bars');
  expect(zoneOfJoint({ kind: 'rotor', name: 'Rotor on front hub' }, [])).toBe('brakes');
});

test('what a part was given goes before its name', () => {
  expect(endDrawn({ kind: 'rim', name: 'Rear rim of the old bike', position: 'front' })).toBe('front');
  expect(endDrawn({ kind: 'rim', name: 'Rim, front or rear' })).toBeUndefined();
});

test.each([
  ['bead', 'Front tyre on rim', 'front-wheel'],
  ['bead', 'Tyre on rim', 'rear-wheel'],
  ['spokes', 'Spokes', 'rear-wheel'],
  ['front-axle', 'Axle nuts', 'front-wheel'],
  ['rear-axle', 'Axle nuts', 'rear-wheel'],
  ['freewheel', 'Freewheel', 'rear-wheel'],
  ['crank', 'Crank', 'cranks'],
  ['seatpost', 'Post', 'saddle'],
  ['mudguard', 'Front mudguard', 'front-wheel'],
] as const)('%s, %s: %s', (kind, name, zone) => {
  expect(zoneOfJoint({ kind, name }, [])).toBe(zone);
});

test('every kind of joint has a zone', () => {
  for (const { kind, label } of jointKinds) expect(zoneOfJoint({ kind, name: label }, [])).toBeTruthy();
});

test('a wheel joint goes by its parts before its name', () => {
  const hub = { kind: 'front-hub', name: 'Hub' } as const;
  expect(zoneOfJoint({ kind: 'spokes', name: 'Rear wheel, now at the front' }, [hub])).toBe('front-wheel');
});
