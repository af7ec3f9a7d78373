import { PitchDetector } from 'pitchy';
import { describe, expect, test } from 'vitest';
import { type Pluck, pluckEar } from '../../../../src/mechanics/sound/pluck.ts';
import { pitchWindow } from '../../../../src/mechanics/wheels/spokePitch.ts';
import { knock, noiseOnly, steadyTone, together, vowel } from '../../../fixtures/wheels/otherSounds.ts';
import {
  anyPluck,
  type Chance,
  chance,
  type PluckSound,
  partialsHz,
} from '../../../fixtures/wheels/pluckedSpoke.ts';

const windowOf = (lengthMm: number, diameterMm: number, expectedN: number) =>
  pitchWindow({ pieces: [{ lengthMm, diameterMm }] }, expectedN);
const cents = (hz: number, true_: number) => Math.abs(1200 * Math.log2(hz / true_));
const share = (list: readonly number[], part: number) =>
  [...list].sort((a, b) => a - b)[Math.min(list.length - 1, Math.floor(list.length * part))]!;

/** Our ear on the whole sound, and a general pitch library on the 4096 samples from 15 ms after the true stroke. */
function heardSideBySide(
  [lengthMm, diameterMm, sampleRate, snrDb]: readonly [number, number, number, number],
  count: number,
) {
  const throwOne = chance(7 * lengthMm + 10 * diameterMm + snrDb + sampleRate);
  const library = PitchDetector.forFloat32Array(4096);
  const ours: number[] = [];
  const theirs: number[] = [];
  for (let at = 0; at < count; at += 1) {
    const tensionN = 450 + 900 * throwOne();
    const { lowHz, highHz } = windowOf(lengthMm, diameterMm, Math.min(1800, tensionN / (0.5 + throwOne())));
    const hz = partialsHz(lengthMm, diameterMm, tensionN, 6);
    const sound = anyPluck(sampleRate, hz, throwOne, { snrDb, atS: 0.1 });
    const [pluck, ...more] = pluckEar(sampleRate, lowHz, highHz).plucks(sound);
    ours.push(pluck?.ok && more.length === 0 ? cents(pluck.hz, hz[0]!) : Number.POSITIVE_INFINITY);
    const from = Math.round(0.115 * sampleRate);
    const [found] = library.findPitch(sound.subarray(from, from + 4096), sampleRate);
    theirs.push(found > 0 ? cents(found, hz[0]!) : Number.POSITIVE_INFINITY);
  }
  return { ours, theirs };
}

const spokes = [
  [290, 2],
  [260, 1.8],
  [184, 2],
  [120, 2],
] as const;

test('184 mm of 2 mm at 1000 N, window 406 to 739 Hz: a pluck of 597.5 Hz, clear', () => {
  const throwOne = chance(11);
  const [first, second] = partialsHz(184, 2, 1000, 2) as [number, number];
  expect([first, second / first].map((figure) => figure.toFixed(2))).toEqual(['597.45', '2.12']);
  const [pluck] = pluckEar(48_000, 406, 739).plucks(anyPluck(48_000, partialsHz(184, 2, 1000, 6), throwOne));
  expect(pluck).toMatchObject({ ok: true });
  expect(cents(pluck!.ok ? pluck!.hz : 0, 597.45)).toBeLessThan(1);
});

describe('synthetic plucks: inharmonic partials, decay, click of the nail, tones of rim and hub, white noise', () => {
  // Limits of the task; beside it a general pitch library (McLeod's method) on the same samples.
  describe.each([
    [15, 1, 3],
    [5, 1, 5],
  ])('%d dB', (snrDb, median, most) => {
    test.each([...spokes.map((spoke) => [...spoke, 48_000] as const), [184, 2, 44_100] as const])(
      '%d mm of %d mm at %d samples a second',
      (mm, thick, rate) => {
        const { ours, theirs } = heardSideBySide([mm, thick, rate, snrDb], 30);
        expect(share(ours, 0.5)).toBeLessThanOrEqual(median);
        expect(share(ours, 0.95)).toBeLessThanOrEqual(most);
        expect(share(theirs, 0.5)).toBeGreaterThan(10 * share(ours, 0.5));
      },
    );
  });
});

describe('what is no pluck of one spoke in its window', () => {
  const ear = pluckEar(48_000, 406, 739);
  const pluck = (throwOne: Chance, tensionN: number, more: Partial<PluckSound> = {}) =>
    anyPluck(48_000, partialsHz(184, 2, tensionN, 6), throwOne, more);
  const what = (plucks: Pluck[]) => plucks.map((one) => (one.ok ? 'pitch' : one.reason)).join();
  const heard = (seed: number, make: (throwOne: Chance) => Float32Array, count = 40) => {
    const throwOne = chance(seed);
    return Array.from({ length: count }, () => what(ear.plucks(make(throwOne))));
  };

  test('noise: nothing begins', () => {
    expect(new Set(heard(1, (throwOne) => noiseOnly(48_000, throwOne)))).toEqual(new Set(['']));
    expect(ear.plucks(new Float32Array(16_384))).toEqual([]);
  });
  test('speech gives no pitch', () => {
    const answers = heard(2, (throwOne) => vowel(48_000, throwOne));
    expect(answers.filter((answer) => answer.includes('pitch'))).toEqual([]);
    expect(answers.filter((answer) => answer !== '').length).toBeGreaterThan(30);
  });
  test('a tool laid down gives no pitch', () => {
    const answers = heard(3, (throwOne) => knock(48_000, throwOne));
    expect(answers.filter((answer) => answer.includes('pitch'))).toEqual([]);
  });
  test('a horn goes on', () => {
    const answers = heard(4, (throwOne) => steadyTone(48_000, 430 + 280 * throwOne(), throwOne));
    expect(new Set(answers)).toEqual(new Set(['steady']));
  });
  test('two spokes at once, 700 and 1000 N, are two', () => {
    const both = (throwOne: Chance) =>
      together(pluck(throwOne, 1000, { atS: 0.1 }), pluck(throwOne, 700, { atS: 0.1 }));
    expect(heard(5, both).filter((answer) => answer !== 'two-tones').length).toBeLessThanOrEqual(2);
  });
  test('900 and 1000 N: nine of ten give no pitch, the others lie between the two', () => {
    const throwOne = chance(6);
    let pitches = 0;
    for (let at = 0; at < 40; at += 1) {
      const both = together(pluck(throwOne, 1000, { atS: 0.1 }), pluck(throwOne, 900, { atS: 0.1 }));
      for (const one of ear.plucks(both)) {
        if (!one.ok) continue;
        pitches += 1;
        expect(one.hz).toBeGreaterThan(partialsHz(184, 2, 880, 1)[0]!);
        expect(one.hz).toBeLessThan(partialsHz(184, 2, 1020, 1)[0]!);
      }
    }
    expect(pitches).toBeLessThanOrEqual(4);
  });
  test('a slack spoke sounds lower, a tight one higher than its window', () => {
    expect(new Set(heard(7, (throwOne) => pluck(throwOne, 250), 20))).toEqual(new Set(['lower']));
    expect(new Set(heard(8, (throwOne) => pluck(throwOne, 1950), 20))).toEqual(new Set(['higher']));
  });
  test('trap: the second partial of a slack long spoke, inside the window, is not taken for its pitch', () => {
    const throwOne = chance(9);
    const { lowHz, highHz } = windowOf(290, 2, 1000);
    const long = pluckEar(48_000, lowHz, highHz);
    const hz = partialsHz(290, 2, 240, 6);
    expect(hz[0]).toBeLessThan(lowHz);
    expect(hz[1]).toBeGreaterThan(lowHz);
    expect(hz[1]).toBeLessThan(highHz);
    for (let at = 0; at < 40; at += 1) {
      const answer = what(long.plucks(anyPluck(48_000, hz, throwOne)));
      expect(answer).not.toContain('pitch');
    }
  });
  test('trap: read at 44.1 kHz, a sound of 48 kHz comes out 147 cents flat', () => {
    const sound = pluck(chance(10), 1000);
    const [right] = ear.plucks(sound);
    const [wrong] = pluckEar(44_100, 406, 739).plucks(sound);
    if (!right?.ok || !wrong?.ok) throw new Error('not heard');
    expect(1200 * Math.log2(right.hz / wrong.hz)).toBeCloseTo(146.7, 0);
  });
  test('a window of more than an octave is refused', () => {
    expect(() => pluckEar(48_000, 300, 601)).toThrow('octave');
  });
});

test('mains hum below does not hide a pluck', () => {
  const throwOne = chance(12);
  const hum = Float32Array.from(
    { length: 17_280 },
    (_, at) =>
      0.2 * Math.sin((2 * Math.PI * 100 * at) / 48_000) + 0.03 * Math.sin((2 * Math.PI * 300 * at) / 48_000),
  );
  for (let at = 0; at < 20; at += 1) {
    const [pluck] = pluckEar(48_000, 406, 739).plucks(
      together(anyPluck(48_000, partialsHz(184, 2, 1000, 6), throwOne), hum),
    );
    expect(pluck).toMatchObject({ ok: true });
  }
});
