import { inRange } from '../range.ts';
import { decimator } from './decimation.ts';

/** One tone within a window of frequencies. */
export interface Tone {
  hz: number;
  /** square of its amplitude, about: 1 is as loud as samples can be */
  power: number;
  /** share of the window's power that lies in this tone, 0 to 1 */
  clarity: number;
  /** the strongest other tone of the window, how far it lies below in dB, and its share; null where there is none */
  other: { hz: number; belowDb: number; share: number } | null;
}

/** Half the width of a tone in a faded spectrum, in places. */
const LOBE = 2;
/** Distance of the three fine steps about a peak, in places. */
const FINE = 0.25;

/** Powers at four places of the spectrum, a step apart, summed in one go; `unit` is one place in radians per sample. */
function fourPowers(
  samples: Float64Array,
  unit: number,
  place: number,
  step: number,
): [number, number, number, number] {
  const a = 2 * Math.cos(unit * place);
  const b = 2 * Math.cos(unit * (place + step));
  const c = 2 * Math.cos(unit * (place + 2 * step));
  const d = 2 * Math.cos(unit * (place + 3 * step));
  let [a1, a2, b1, b2, c1, c2, d1, d2] = [0, 0, 0, 0, 0, 0, 0, 0];
  for (let at = 0; at < samples.length; at += 1) {
    const sample = samples[at]!;
    const a0 = sample + a * a1 - a2;
    const b0 = sample + b * b1 - b2;
    const c0 = sample + c * c1 - c2;
    const d0 = sample + d * d1 - d2;
    a2 = a1;
    a1 = a0;
    b2 = b1;
    b1 = b0;
    c2 = c1;
    c1 = c0;
    d2 = d1;
    d1 = d0;
  }
  return [
    a1 * a1 + a2 * a2 - a * a1 * a2,
    b1 * b1 + b2 * b2 - b * b1 * b2,
    c1 * c1 + c2 * c2 - c * c1 * c2,
    d1 * d1 + d2 * d2 - d * d1 * d2,
  ];
}

/** Top of the parabola through three logarithms one step apart, in steps from the middle one. */
function vertex(before: number, middle: number, after: number): number {
  const [left, right] = [Math.log(before), Math.log(after)];
  return (left - right) / (2 * (left - 2 * Math.log(middle) + right));
}

/** The highest peak, away from one that is taken; null where nothing stands above its sides. */
function peakOf(powers: Float64Array, taken: number): number | null {
  let best: number | null = null;
  for (let at = 1; at < powers.length - 1; at += 1) {
    const own = powers[at]!;
    if (Math.abs(at - taken) <= LOBE || !(own > powers[at - 1]!) || !(own >= powers[at + 1]!)) continue;
    if (best === null || own > powers[best]!) best = at;
  }
  return best;
}

/** Power within a lobe about a place, and of everything. */
function lobeOf(powers: Float64Array, place: number): number {
  let sum = 0;
  const last = Math.min(powers.length - 2, place + LOBE);
  for (let at = Math.max(1, place - LOBE); at <= last; at += 1) sum += powers[at]!;
  return sum;
}

/** Finds the tone of a piece of sound within a window of frequencies. */
export interface ToneFinder {
  /** samples it looks at, about 90 ms */
  readonly length: number;
  /** @param from place of the first sample @returns null where no peak stands inside the window */
  find(samples: ArrayLike<number>, from: number): Tone | null;
}

/** How long a look is, s: a plucked spoke still rings, and what is 30 Hz apart comes out as two. */
const LOOK_S = 4096 / 48_000;

/** Below this a look holds too few swings. */
export const LOWEST_HZ = 50;

/**
 * Looks for one tone between two frequencies: the highest peak of the spectrum there, and its top by a parabola through
 * three finer steps. Partials that are no multiples do not disturb it, which they do where a period is looked for.
 * @param sampleRate of the sound as it really is, 8000 to 192 000 a second
 * @param lowHz at least 50 Hz
 * @param highHz at least 24 Hz above, up to a fifth of the sample rate
 * @param looks how many usual looks long a look is, 1 to 4
 * @throws RangeError when a figure is out of range
 * Source: parabola through the logarithms of a Hann spectrum, common practice in measuring tones.
 * @example toneFinder(48_000, 400, 750).find(samples, 0)?.hz //=> 440
 */
export function toneFinder(sampleRate: number, lowHz: number, highHz: number, looks = 1): ToneFinder {
  const thin = decimator(sampleRate, highHz);
  const count = Math.floor((inRange('looks', looks, 1, 4) * LOOK_S * sampleRate) / thin.every);
  const placeHz = sampleRate / (thin.every * count);
  if (!(lowHz >= LOWEST_HZ && highHz >= lowHz + 2 * placeHz))
    throw new RangeError(`no window between ${lowHz} and ${highHz} Hz`);
  const [first, last] = [Math.ceil(lowHz / placeHz), Math.floor(highHz / placeHz)];
  const fade = Float64Array.from(
    { length: count },
    (_, at) => 0.5 - 0.5 * Math.cos((2 * Math.PI * (at + 0.5)) / count),
  );
  const samplesOf = new Float64Array(count);
  // One place more at either end, so that a peak can be told from a slope.
  const powers = new Float64Array(last - first + 3);
  const unit = (2 * Math.PI) / count;
  return {
    length: thin.span(count),
    find(samples, from) {
      thin.into(samplesOf, samples, from);
      for (let at = 0; at < count; at += 1) samplesOf[at]! *= fade[at]!;
      const lowest = first - 1;
      for (let at = 0; at < powers.length; at += 4) {
        const four = fourPowers(samplesOf, unit, lowest + at, 1);
        for (let more = 0; more < 4 && at + more < powers.length; more += 1) powers[at + more] = four[more]!;
      }
      const place = peakOf(powers, Number.NEGATIVE_INFINITY);
      if (place === null) return null;
      let whole = 0;
      for (let at = 1; at < powers.length - 1; at += 1) whole += powers[at]!;
      const rough = lowest + place + vertex(powers[place - 1]!, powers[place]!, powers[place + 1]!);
      const [before, middle, after] = fourPowers(samplesOf, unit, rough - FINE, FINE);
      const second = peakOf(powers, place);
      return {
        hz: (rough + FINE * vertex(before, middle, after)) * placeHz,
        power: middle * (4 / count) ** 2,
        clarity: lobeOf(powers, place) / whole,
        other:
          second === null
            ? null
            : {
                hz: (lowest + second) * placeHz,
                belowDb: 10 * Math.log10(powers[place]! / powers[second]!),
                share: lobeOf(powers, second) / whole,
              },
      };
    },
  };
}
