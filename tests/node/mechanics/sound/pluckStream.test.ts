import { expect, test } from 'vitest';
import { type Heard, pluckStream } from '../../../../src/mechanics/sound/pluckStream.ts';
import { vowel } from '../../../fixtures/wheels/otherSounds.ts';
import { anyPluck, chance, partialsHz } from '../../../fixtures/wheels/pluckedSpoke.ts';

const RATE = 48_000;
const BLOCK = 16_384;
const hzOf = (tensionN: number) => partialsHz(184, 2, tensionN, 6);

/** A recording with a faint rustle, and sounds laid into it. */
function recording(seconds: number, sounds: readonly (readonly [atS: number, sound: Float32Array])[]) {
  const throwOne = chance(99);
  const whole = Float32Array.from({ length: seconds * RATE }, () => 0.0005 * (throwOne() - 0.5));
  for (const [atS, sound] of sounds)
    for (const [at, sample] of sound.entries()) {
      const place = Math.round(atS * RATE) + at;
      if (place < whole.length) whole[place]! += sample;
    }
  return whole;
}

/** The recording as the phone gives it: overlapping blocks, at odd moments. */
function listened(
  whole: Float32Array,
  stream = pluckStream(RATE, 406, 739),
  each?: (heard: Heard, endS: number) => void,
) {
  const all: Heard[] = [];
  const throwOne = chance(3);
  for (let end = BLOCK; end <= whole.length; end += Math.round((0.03 + 0.05 * throwOne()) * RATE))
    for (const heard of stream.hear(whole.subarray(end - BLOCK, end), end / RATE)) {
      all.push(heard);
      each?.(heard, end / RATE);
    }
  return all;
}

const pluck = (seed: number, tensionN: number) =>
  anyPluck(RATE, hzOf(tensionN), chance(seed), { atS: 0, seconds: 0.8 });

test('one pluck of 597.4 Hz is heard once, however the blocks overlap', () => {
  const heard = listened(recording(2, [[0.7, pluck(1, 1000)]]));
  expect(heard).toHaveLength(1);
  expect(heard[0]).toMatchObject({ is: 'pluck' });
  expect(heard[0]?.is === 'pluck' && heard[0].hz).toBeCloseTo(597.4, 0);
});

test('three plucks in two seconds, and a voice between them', () => {
  const sounds = [
    [0.5, pluck(1, 1000)],
    [1.3, pluck(2, 1000)],
    [2.0, vowel(RATE, chance(5))],
    [2.7, pluck(3, 1000)],
  ] as const;
  const heard = listened(recording(3.6, sounds));
  expect(heard.filter(({ is }) => is === 'pluck')).toHaveLength(3);
  expect(heard.filter(({ is }) => is === 'no-pitch')).toHaveLength(1);
});

test('turned to another window, the next spoke is heard in it', () => {
  const stream = pluckStream(RATE, 406, 739);
  const both = recording(3, [
    [0.6, pluck(1, 1000)],
    [1.8, anyPluck(RATE, partialsHz(120, 2, 1000, 6), chance(4), { atS: 0, seconds: 0.8 })],
  ]);
  const heard = listened(both, stream, () => stream.turnTo(640, 1200));
  expect(heard.map((one) => (one.is === 'pluck' ? Math.round(one.hz) : one.is))).toEqual([
    597,
    Math.round(partialsHz(120, 2, 1000, 1)[0]!),
  ]);
});

test('what the phone itself sounds is not heard', () => {
  const stream = pluckStream(RATE, 406, 739);
  stream.deafUntil(1.5);
  const heard = listened(
    recording(3, [
      [0.7, pluck(1, 1000)],
      [2, pluck(2, 1000)],
    ]),
    stream,
  );
  expect(heard.filter(({ is }) => is === 'pluck')).toHaveLength(1);
});

test('eight seconds without a sound are told, and a microphone that gives nothing at all after three', () => {
  expect(listened(recording(9, [])).map(({ is }) => is)).toEqual(['quiet']);
  expect(listened(new Float32Array(4 * RATE)).map(({ is }) => is)).toEqual(['dead']);
});
