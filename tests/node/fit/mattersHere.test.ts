import { describe, expect, test } from 'vitest';
import { mattersHere, rearDrive } from '../../../src/fit/mattersHere.ts';
import type { PilePart } from '../../../src/fit/pile.ts';

const part = (kind: PilePart['kind'], rest: Partial<PilePart> = {}): PilePart => ({
  partId: kind,
  kind,
  name: kind,
  faces: [],
  ...rest,
});
const hub = (standard: string | null, drive?: string): PilePart =>
  part('rear-hub', {
    faces: [
      {
        faceId: 'd',
        kind: 'driver-mount',
        standard,
        nominal: {},
        measured: {},
        traits: drive ? { drive } : {},
      },
    ],
  });

test('examples', () => {
  expect(rearDrive([])).toBeUndefined();
  expect(mattersHere('chain', [], [hub('fixed-1.37x24')])).toEqual({
    matters: true,
    because: 'chain-brakes',
  });
});

// 16 CFR 1512.5 counts a foot brake as a brake; on a fixed wheel or a back-pedal hub the chain carries it.
describe('the chain', () => {
  test.each(['chain', 'chainring', 'sprocket'] as const)(
    '%s is part of the brake where it brakes',
    (kind) => {
      for (const brakes of [hub('fixed-1.37x24'), hub('three-lug', 'back-pedal'), hub('1.375x24', 'fixed')])
        expect(mattersHere(kind, [], [brakes])).toEqual({ matters: true, because: 'chain-brakes' });
    },
  );

  test.each([
    ['a freehub', hub('spline-freehub')],
    ['a hub gear that runs free', hub('three-lug', 'freewheels')],
    ['a hub of which it is not known', hub('1.375x24')],
  ])('is lesser behind %s', (_what, rear) => expect(mattersHere('chain', [], [rear]).matters).toBe(false));

  test('what was looked at goes before what the mount suggests', () =>
    expect(rearDrive([hub('fixed-1.37x24', 'freewheels')])).toBe('freewheels'));
});

// Common practice, no source: what comes loose over the front wheel goes into it.
describe('a rack', () => {
  const rack = part('other');
  test.each([
    ['on the fork', [rack, part('fork')], true, 'over-the-front-wheel'],
    ['on the bar', [rack, part('bar')], true, 'over-the-front-wheel'],
    ['at the front by its own word', [part('other', { position: 'front' })], true, 'over-the-front-wheel'],
    ['on the frame', [rack, part('frame')], false, undefined],
    ['of which nothing tells the end', [rack], true, 'end-not-known'],
  ] as const)('%s', (_what, parts, matters, because) => {
    const here = mattersHere('rack', parts, []);
    expect(here.matters).toBe(matters);
    expect(here.because).toBe(because);
  });
});

test('what matters on every bike matters whatever its hub', () =>
  expect(mattersHere('bar-clamp', [], [hub('spline-freehub')])).toEqual({ matters: true }));
test('another joint stays as its kind says', () =>
  expect(mattersHere('bottom-bracket', [], [hub('fixed-1.37x24')]).matters).toBe(false));
