import { expect, test } from 'vitest';
import type { KeptPart } from '../../../../src/fit/pileOf.ts';
import { mattersOnBike } from '../../../../src/practice/release/mattersOnBike.ts';

const kept = (partId: string, kind: string, drive?: string): KeptPart => ({
  ...{ partId, kind, name: partId },
  faces: drive
    ? [
        {
          faceId: 'd',
          kind: 'driver-mount',
          standard: 'three-lug',
          nominal: {},
          measured: {},
          traits: { drive },
        },
      ]
    : [],
});
const bike = [
  kept('hub', 'rear-hub', 'back-pedal'),
  kept('chain', 'chain'),
  kept('fork', 'fork'),
  kept('rack', 'other'),
];

test('example', () =>
  expect(mattersOnBike({ kind: 'bar-clamp', partIds: [] }, [])).toEqual({ matters: true }));

test('a chain of a back-pedal bike brakes it, though the hub is in no joint with it', () =>
  expect(mattersOnBike({ kind: 'chain', partIds: ['chain'] }, bike).because).toBe('chain-brakes'));

test('only the parts of the rack’s own joint tell its end', () => {
  expect(mattersOnBike({ kind: 'rack', partIds: ['rack', 'fork'] }, bike).because).toBe(
    'over-the-front-wheel',
  );
  expect(mattersOnBike({ kind: 'rack', partIds: ['rack'] }, bike).because).toBe('end-not-known');
});
