import { inRange } from '../range.ts';

/** Takes every so-manieth sample of a sound, after what is too quick for that has been filtered out. */
export interface Decimator {
  /** samples taken in for one that comes out */
  readonly every: number;
  /** samples that it has to look at for `count` that come out */
  span(count: number): number;
  /** Writes as many as `out` holds. */
  into(out: Float64Array, samples: ArrayLike<number>, from: number): void;
}

/** The rate left has to be this many times the highest frequency of interest: what folds back then misses it. */
export const RATE_OVER_TONE = 5;
/** Taps of the filter for each sample left out. */
const TAPS = 8;

/**
 * A decimator that keeps everything up to a frequency.
 * @param sampleRate 8000 to 192 000 a second
 * @param highHz highest frequency of interest, up to a fifth of the sample rate
 * @throws RangeError when a figure is out of range
 * Source: windowed sine filter with a Blackman window, textbook.
 * @example decimator(48_000, 760).every //=> 12
 */
export function decimator(sampleRate: number, highHz: number): Decimator {
  inRange('sampleRate', sampleRate, 8000, 192_000);
  inRange('highHz', highHz, 20, sampleRate / RATE_OVER_TONE);
  const every = Math.floor(sampleRate / (RATE_OVER_TONE * highHz));
  const taps = TAPS * every;
  const filter = Float64Array.from({ length: taps }, (_, at) => {
    const [phase, away] = [(2 * Math.PI * (at + 0.5)) / taps, (at + 0.5 - taps / 2) / every];
    const sine = away === 0 ? 1 : Math.sin(Math.PI * away) / (Math.PI * away);
    return ((0.42 - 0.5 * Math.cos(phase) + 0.08 * Math.cos(2 * phase)) * sine) / every;
  });
  // The filter is the same forward and backward: two samples share a factor.
  const half = taps >> 1;
  return {
    every,
    span: (count) => (count - 1) * every + taps,
    into(out, samples, from) {
      for (let at = 0; at < out.length; at += 1) {
        const start = from + at * every;
        const end = start + taps - 1;
        let sum = 0;
        for (let tap = 0; tap < half; tap += 1)
          sum += filter[tap]! * (samples[start + tap]! + samples[end - tap]!);
        out[at] = sum;
      }
    },
  };
}
