import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import { toneFinder } from '../../../../src/mechanics/sound/tone.ts';

const sine = (sampleRate: number, tones: readonly (readonly [hz: number, loud: number])[], count = 20_000) =>
  Float32Array.from({ length: count }, (_, at) =>
    tones.reduce((sum, [hz, loud]) => sum + loud * Math.sin((2 * Math.PI * hz * at) / sampleRate + hz), 0),
  );

test('440 Hz between 400 and 750 Hz', () => {
  const tone = toneFinder(48_000, 400, 750).find(sine(48_000, [[440, 0.5]]), 0)!;
  expect(Math.abs(1200 * Math.log2(tone.hz / 440))).toBeLessThan(0.01);
  expect(tone.clarity).toBeGreaterThan(0.99);
  expect(tone.other).toBeNull();
  expect(tone.power).toBeCloseTo(0.25, 2);
});

test('any tone at any usual sample rate comes out within a hundredth of a cent', () => {
  const throws = fc.tuple(
    fc.constantFrom(8000, 16_000, 22_050, 44_100, 48_000, 96_000, 192_000),
    fc.double({ min: 0.1, max: 0.9, noNaN: true }),
    fc.double({ min: 150, max: 750, noNaN: true }),
  );
  fc.assert(
    fc.property(throws, ([rate, share, lowHz]) => {
      const hz = lowHz * 2 ** share;
      const finder = toneFinder(rate, lowHz, 2 * lowHz);
      const tone = finder.find(sine(rate, [[hz, 0.5]], finder.length + 5), 5)!;
      expect(Math.abs(1200 * Math.log2(tone.hz / hz))).toBeLessThan(0.02);
    }),
    { numRuns: 60 },
  );
});

test('a second tone is named with its distance in loudness', () => {
  const two = sine(48_000, [
    [500, 0.4],
    [600, 0.2],
  ]);
  const { hz, other } = toneFinder(48_000, 400, 750).find(two, 0)!;
  expect(hz).toBeCloseTo(500, 0);
  expect(Math.abs(other!.hz - 600)).toBeLessThan(12);
  // To the nearest place of the spectrum, which costs up to 1.4 dB.
  expect(Math.abs(other!.belowDb - 6.02)).toBeLessThan(1.5);
});

test('a loud tone beside the window is not taken for one inside', () => {
  for (const hz of [60, 250, 380, 790, 1500, 4500, 7400, 7900]) {
    const tone = toneFinder(48_000, 400, 750).find(sine(48_000, [[hz, 0.9]]), 0);
    // What is left of it is 60 dB and more below.
    expect(tone?.power ?? 0, `${hz}`).toBeLessThan(1e-6);
  }
});

test('silence has no tone', () => {
  expect(toneFinder(48_000, 400, 750).find(new Float32Array(20_000), 0)).toBeNull();
});

test.each([
  ['no window', 48_000, 750, 400],
  ['no window', 48_000, 30, 60],
  ['highHz', 8000, 1200, 2400],
  ['sampleRate', 4000, 400, 750],
  ['sampleRate', Number.NaN, 400, 750],
])('%s at %d samples a second, %d to %d Hz', (words, rate, low, high) =>
  expect(() => toneFinder(rate, low, high)).toThrow(words),
);
