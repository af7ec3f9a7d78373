import { type Band, band } from '../band.ts';
import { inRange } from '../range.ts';
import { belowFirstMode, type SoundingSpoke, vibratingSpoke } from './spokeVibration.ts';

/** No spoke of a bicycle is tighter than this, N. */
const TIGHTEST_N = 3000;
/** Halvings that bring any bracket below a millionth of itself. */
const HALVINGS = 60;

/** The value at which a test turns from true to false. */
function turningPoint(holds: (value: number) => boolean, from: number, to: number): number {
  let [below, above] = [from, to];
  for (let at = 0; at < HALVINGS; at += 1) {
    const middle = (below + above) / 2;
    if (holds(middle)) below = middle;
    else above = middle;
  }
  return (below + above) / 2;
}

/**
 * Pitch of a plucked spoke: its first mode, as a stiff string of any number of pieces.
 * @param spoke pieces from the hub to the nipple; see `vibratingSpoke` for ranges
 * @param tensionN 1 to 3000 N
 * @returns Hz
 * @throws RangeError when a figure is out of range
 * Source: a beam under tension, see `belowFirstMode`.
 * @example pitchHz({ pieces: [{ lengthMm: 180, diameterMm: 2 }] }, 1000) //=> 612.29
 */
export function pitchHz(spoke: SoundingSpoke, tensionN: number): number {
  inRange('tensionN', tensionN, 1, TIGHTEST_N);
  const vibrating = vibratingSpoke(spoke);
  // A limp string of its heaviest piece sounds lower than any spoke.
  let high = Math.sqrt(tensionN / vibrating.heaviest) / (2 * vibrating.metres);
  const below = (hz: number) => belowFirstMode(vibrating, tensionN, hz);
  while (below(high)) high *= 2;
  return turningPoint(below, high / 4, high);
}

export type TensionByPitch =
  | { ok: true; tensionN: number }
  /** lower than the spoke sounds with no tension at all, or higher than any spoke is tightened */
  | { ok: false; reason: 'too-low-for-spoke' | 'too-high-for-spoke' };

/**
 * Tension of a spoke from its pitch.
 * @param spoke pieces from the hub to the nipple; see `vibratingSpoke` for ranges
 * @param hz pitch of its first mode, 1 to 20 000 Hz
 * @returns N, 0 to 3000, or a named reason
 * @throws RangeError when a figure is out of range
 * Source: the inverse of `pitchHz`.
 * @example tensionByPitch({ pieces: [{ lengthMm: 180, diameterMm: 2 }] }, 612.29) //=> 1000 N
 */
export function tensionByPitch(spoke: SoundingSpoke, hz: number): TensionByPitch {
  inRange('hz', hz, 1, 20_000);
  const vibrating = vibratingSpoke(spoke);
  const slacker = (tensionN: number) => !belowFirstMode(vibrating, tensionN, hz);
  if (!slacker(0)) return { ok: false, reason: 'too-low-for-spoke' };
  if (slacker(TIGHTEST_N)) return { ok: false, reason: 'too-high-for-spoke' };
  return { ok: true, tensionN: turningPoint(slacker, 0, TIGHTEST_N) };
}

/** A reading is never better than this, however long the spoke: wire, steel and length are known no closer. */
const LEAST_PERCENT = 5;

/**
 * What a pitch says of the tension itself, honestly: between both ends pinned, which needs the most tension for the
 * pitch, and both clamped. About 7 % either way on long thin spokes, 15 % on a 184 mm spoke, more on an outer piece.
 * Two spokes of one side compare far better: see `COMPARED_PERCENT`.
 * @param spoke see `vibratingSpoke`
 * @param hz 1 to 20 000 Hz
 * @returns N, or null where the pitch is outside of what such a spoke can sound
 * @throws RangeError when a figure is out of range
 * Source: the end conditions of `tensionByPitch`; at least 5 %, own estimate.
 * @example tensionBandByPitch({ pieces: [{ lengthMm: 184, diameterMm: 2 }] }, 600) //=> about 839, 1010, 1166 N
 */
export function tensionBandByPitch(spoke: SoundingSpoke, hz: number): Band | null {
  const heldSo = (ends: SoundingSpoke['ends']): number | null => {
    const answer = tensionByPitch(ends ? { ...spoke, ends } : spoke, hz);
    return answer.ok ? answer.tensionN : null;
  };
  const mid = heldSo(spoke.ends);
  if (mid === null) return null;
  const least = (mid * LEAST_PERCENT) / 100;
  const [clamped, pinned] = [heldSo('clamped-clamped') ?? 0, heldSo('pinned-pinned') ?? TIGHTEST_N];
  return band(Math.min(clamped, mid - least), mid, Math.max(pinned, mid + least));
}

/** How well two spokes of one side compare by ear, percent either way. Source: own estimate, 1 to 2 %. */
export const COMPARED_PERCENT = 2;

/** Where a pitch is looked for, Hz. */
export interface PitchWindow {
  lowHz: number;
  highHz: number;
}

/** Least and most of the expected tension that is looked for. Wider, and the second partial would come in. */
const SHARES = [0.4, 1.6] as const;

/**
 * Where to look for the pitch: a spoke of 0.4 to 1.6 times the expected tension, which is at most an octave, so that
 * its second partial lies outside.
 * @param expectedN 20 to 1800 N
 * @returns Hz; the upper end is below twice the lower one
 * @throws RangeError when a figure is out of range
 * Source: own choice, from the handbook's simulation.
 * @example pitchWindow({ pieces: [{ lengthMm: 180, diameterMm: 2 }] }, 1000) //=> about 417 to 756 Hz
 */
export function pitchWindow(spoke: SoundingSpoke, expectedN: number): PitchWindow {
  inRange('expectedN', expectedN, 20, TIGHTEST_N / SHARES[1]);
  const [lowHz, highHz] = [pitchHz(spoke, expectedN * SHARES[0]), pitchHz(spoke, expectedN * SHARES[1])];
  return { lowHz, highHz: Math.min(highHz, 1.999 * lowHz) };
}
