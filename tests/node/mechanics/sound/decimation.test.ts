import { expect, test } from 'vitest';
import { decimator } from '../../../../src/mechanics/sound/decimation.ts';

test('up to 760 Hz, every twelfth sample of 48 000 is enough', () => {
  const thin = decimator(48_000, 760);
  expect(thin.every).toBe(12);
  expect(thin.span(1)).toBe(96);
});

/** How loud a tone is afterwards. */
function left(hz: number): number {
  const thin = decimator(48_000, 760);
  const out = new Float64Array(400);
  const samples = Float64Array.from({ length: thin.span(400) }, (_, at) =>
    Math.sin((2 * Math.PI * hz * at) / 48_000),
  );
  thin.into(out, samples, 0);
  return Math.sqrt((2 * out.reduce((sum, sample) => sum + sample * sample, 0)) / 400);
}

test('what is asked for passes, and what would fold onto it is 60 dB down', () => {
  for (const hz of [100, 300, 760]) expect(20 * Math.log10(left(hz))).toBeGreaterThan(-1.5);
  for (const hz of [3300, 3600, 4000, 4700, 7600, 12_000, 23_000])
    expect(20 * Math.log10(left(hz)), `${hz}`).toBeLessThan(-60);
});

test('nothing beyond a fifth of the sample rate', () => {
  expect(() => decimator(48_000, 9601)).toThrow('highHz');
  expect(decimator(48_000, 9600).every).toBe(1);
});
