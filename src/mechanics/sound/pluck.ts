import { centsBetween } from './cents.ts';
import { RATE_OVER_TONE } from './decimation.ts';
import { FAINT, onsets } from './onset.ts';
import { LOWEST_HZ, type Tone, toneFinder } from './tone.ts';

/** Why a sound that began like a pluck gives no pitch. */
export type PluckFault =
  /** no tone stands out, or none that lasts: speech, a knock, a scrape */
  | 'unclear'
  /** a clear tone, but in the octave below or above the window */
  | 'lower'
  | 'higher'
  /** two tones, nearly as loud as each other */
  | 'two-tones'
  /** a stronger tone about an octave below: this one is a partial of it */
  | 'partial'
  /** it does not die away: a hum, a whistle, a horn */
  | 'steady'
  /** the pitch moves while it sounds: a voice, two spokes that beat */
  | 'sliding';

/** A sound that began within the samples, at a place of theirs. */
export type Pluck =
  | { at: number; ok: true; hz: number; clarity: number; power: number }
  | { at: number; ok: false; reason: PluckFault };

/** Time from the stroke to the look, s: the click of the nail is over by then. */
const CLICK_S = 0.015;
/** A tone is clear with this share of the window. */
const CLEAR = 0.8;
/** Two tones count as two up to this difference, dB. */
const SECOND_DB = 10;
/** A pitch may move by this much from the first look to the second, cents; a spoke struck hard begins a little sharp. */
const STILL_CENTS = 15;
/** What is left of a spoke's power at the second look, 43 ms on: a hum keeps more, a knock less. */
const LEFT = { most: 0.9, least: 0.01 } as const;
/** A partial is told by a tone this far below it, and at least this share as strong. */
const BELOW = [0.4, 0.54] as const;
const BELOW_SHARE = 0.25;

/** Hears plucks within a window of frequencies. */
export interface PluckEar {
  /** samples that have to follow the stroke */
  readonly after: number;
  /** What began within the samples, as far as enough of it is there. */
  plucks(samples: ArrayLike<number>): Pluck[];
}

/** How strong a tone came in with a stroke about an octave below a pitch; what hummed there before does not count. */
function toneBelow(
  sampleRate: number,
  hz: number,
  samples: ArrayLike<number>,
  at: number,
  from: number,
): number {
  const [lowHz, highHz] = [hz * BELOW[0], hz * BELOW[1]];
  if (lowHz < LOWEST_HZ) return 0;
  const finder = toneFinder(sampleRate, lowHz, highHz);
  if (from + finder.length > samples.length) return 0;
  const before = at >= finder.length ? (finder.find(samples, at - finder.length)?.power ?? 0) : 0;
  return (finder.find(samples, from)?.power ?? 0) - before;
}

/**
 * An ear for plucked spokes.
 * @param sampleRate of the sound as it really is, 8000 to 192 000 a second
 * @param lowHz and highHz the window, at most an octave wide, else the second partial could lie in it; see `pitchWindow`
 * @throws RangeError when a figure is out of range
 * Source: own choice, from the handbook's simulation.
 * @example pluckEar(48_000, 400, 750).plucks(samples) //=> [{ at: 4800, ok: true, hz: 612.3, clarity: 0.99, power }]
 */
export function pluckEar(sampleRate: number, lowHz: number, highHz: number): PluckEar {
  if (highHz > 2 * lowHz) throw new RangeError(`${lowHz} to ${highHz} Hz is more than an octave`);
  const finder = toneFinder(sampleRate, lowHz, highHz);
  // Twice as long tells apart what lies half as far from each other.
  const longer = toneFinder(sampleRate, lowHz, highHz, 2);
  const click = Math.round(CLICK_S * sampleRate);
  const later = finder.length >> 1;
  const after = click + Math.max(later + finder.length, longer.length);
  const octaves = (['lower', 'higher'] as const).map((reason) => {
    const [from, to] = reason === 'lower' ? [lowHz / 2, lowHz] : [highHz, 2 * highHz];
    const possible = from >= LOWEST_HZ && to <= sampleRate / RATE_OVER_TONE;
    return { reason, octave: possible ? toneFinder(sampleRate, from, to) : null };
  });
  /** Why no tone of the window was clear. */
  const outside = (samples: ArrayLike<number>, from: number): PluckFault => {
    for (const { reason, octave } of octaves) {
      if (!octave || from + later + octave.length > samples.length) continue;
      const [tone, left] = [octave.find(samples, from), octave.find(samples, from + later)];
      if (tone && left && tone.clarity > CLEAR && tone.power > FAINT && left.power > LEFT.least * tone.power)
        return reason;
    }
    return 'unclear';
  };
  const judge = (samples: ArrayLike<number>, at: number): Pluck => {
    const first = finder.find(samples, at + click);
    const fault = (reason: PluckFault): Pluck => ({ at, ok: false, reason });
    if (!first) return fault(outside(samples, at + click));
    const long = longer.find(samples, at + click);
    const [near, far] = [secondShare(first), secondShare(long)];
    if (first.clarity + near < CLEAR) return fault(outside(samples, at + click));
    if (near > 0 || far > 0) return fault('two-tones');
    const second = finder.find(samples, at + click + later);
    if (!second || moved(first, second) > STILL_CENTS) return fault('sliding');
    if (second.power > LEFT.most * first.power) return fault('steady');
    if (second.power < LEFT.least * first.power) return fault('unclear');
    const below = toneBelow(sampleRate, first.hz, samples, at, at + click);
    if (below > BELOW_SHARE * first.power) return fault('partial');
    return { at, ok: true, hz: first.hz, clarity: first.clarity, power: first.power };
  };
  return {
    after,
    plucks: (samples) =>
      onsets(samples, sampleRate, lowHz, highHz)
        .filter((at) => at + after <= samples.length)
        .map((at) => judge(samples, at)),
  };
}

/** Share of a second tone that is nearly as loud; 0 without one. */
const secondShare = (tone: Tone | null): number =>
  tone?.other && tone.other.belowDb < SECOND_DB ? tone.other.share : 0;

const moved = (one: Tone, other: Tone): number => Math.abs(centsBetween(one.hz, other.hz));
