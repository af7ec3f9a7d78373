import { expect, test } from 'vitest';
import { onsets } from '../../../../src/mechanics/sound/onset.ts';
import { noiseOnly, steadyTone } from '../../../fixtures/wheels/otherSounds.ts';
import { anyPluck, chance, partialsHz } from '../../../fixtures/wheels/pluckedSpoke.ts';

const hz = partialsHz(184, 2, 1000, 6);

test('a pluck a tenth of a second in begins at sample 4800, within 8 ms', () => {
  const throwOne = chance(1);
  for (let at = 0; at < 40; at += 1) {
    const [begin, ...more] = onsets(
      anyPluck(48_000, hz, throwOne, { atS: 0.1, snrDb: 15 }),
      48_000,
      406,
      739,
    );
    expect(Math.abs(begin! - 4800)).toBeLessThanOrEqual(0.008 * 48_000);
    expect(more).toEqual([]);
  }
});

test('two plucks one after the other are two', () => {
  const throwOne = chance(2);
  const one = anyPluck(48_000, hz, throwOne, { atS: 0.1, seconds: 0.8 });
  const two = anyPluck(48_000, hz, throwOne, { atS: 0.5, seconds: 0.8, loud: 0.5 });
  const both = one.map((sample, at) => sample + two[at]!);
  expect(onsets(both, 48_000, 406, 739).map((at) => Math.round(at / 4800))).toEqual([1, 5]);
});

test('noise and a tone that goes on begin nothing', () => {
  const throwOne = chance(3);
  for (let at = 0; at < 100; at += 1)
    expect(onsets(noiseOnly(48_000, throwOne), 48_000, 406, 739)).toEqual([]);
  const hum = steadyTone(48_000, 500, throwOne).subarray(6000);
  expect(onsets(hum, 48_000, 406, 739)).toEqual([]);
  expect(onsets(new Float32Array(16_384), 48_000, 406, 739)).toEqual([]);
});
