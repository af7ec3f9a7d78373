import { describe, expect, test } from 'vitest';
import { fittedHere, lackingHere, type WrittenBike } from '../../../src/fit/fittedHere.ts';
import type { KeptPart } from '../../../src/fit/pileOf.ts';
import { notFitted } from '../../../src/standards/checks/notFitted.ts';
import { rideCheck } from '../../../src/standards/checks/rideCheck.ts';

const part = (kind: string, position?: 'front' | 'rear'): KeptPart => ({
  ...{ partId: `${kind}${position ?? ''}`, kind, name: kind },
  ...(position ? { position } : {}),
});
const whole = ['frame', 'fork', 'front-hub', 'rear-hub', 'bar', 'cranks'].map((kind) => part(kind));
const bike = (...parts: KeptPart[]): WrittenBike => ({ parts: [...whole, ...parts], joints: [] });

// Common practice, no source: what of a bike shows what it has.
describe('what a bike has by its parts', () => {
  test('nothing written down shows nothing', () => {
    expect(fittedHere('front-brake', { parts: [], joints: [] })).toBe(false);
    expect(lackingHere('front-brake', { parts: [], joints: [] })).toBe(false);
  });

  test('[L8] a bike written down whole, without a brake part at an end, is known to lack that brake', () => {
    const racer = bike(part('caliper', 'rear'), part('lever'));
    expect(lackingHere('front-brake', racer)).toBe(true);
    expect(lackingHere('rear-brake', racer)).toBe(false);
    expect(lackingHere('levers', racer)).toBe(false);
    expect(fittedHere('rear-brake', racer)).toBe(true);
  });

  test('[L8] a caliper whose end is not told leaves both ends open', () => {
    const racer = bike(part('caliper'));
    for (const id of ['front-brake', 'rear-brake']) {
      expect(fittedHere(id, racer)).toBe(false);
      expect(lackingHere(id, racer)).toBe(false);
    }
  });

  test('a joint tells the end by the part it is on, as long as it is together', () => {
    const rotor = (state: string): WrittenBike => ({
      parts: whole,
      joints: [{ kind: 'rotor', partIds: ['front-hub'], state }],
    });
    expect(fittedHere('front-brake', rotor('torqued'))).toBe(true);
    expect(fittedHere('front-brake', rotor('apart'))).toBe(false);
    expect(fittedHere('rear-brake', rotor('torqued'))).toBe(false);
  });

  test('[L8] a back-pedal hub is a rear brake without rotor, lever or cable', () => {
    const face = { faceId: 'f', kind: 'driver-mount' as const, standard: null, nominal: {}, measured: {} };
    const hub = { ...part('rear-hub'), faces: [{ ...face, traits: { drive: 'back-pedal' } }] };
    const parts = [...whole.filter(({ kind }) => kind !== 'rear-hub'), hub];
    const racer: WrittenBike = { parts, joints: [] };
    expect(fittedHere('rear-brake', racer)).toBe(true);
    for (const id of ['rear-rotor', 'front-brake', 'front-rotor', 'levers'])
      expect(lackingHere(id, racer), id).toBe(true);
  });
});

test('[L8] every item of the check is a thing with a name or one of the two acts', () => {
  const ids = rideCheck.flatMap(({ items }) => items.map(({ id }) => id));
  expect(Object.keys(notFitted).filter((id) => !ids.includes(id))).toEqual([]);
  expect(ids.filter((id) => !notFitted[id])).toEqual(['drop', 'short-ride']);
  for (const id of ids.filter((one) => /brake|lever/.test(one)))
    expect(notFitted[id]?.caution, id).toContain('law');
});
