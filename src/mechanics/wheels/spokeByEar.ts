import { type Band, band } from '../band.ts';
import { outerPieces } from './spokeCrossing.ts';
import type { SpokePiece } from './spokeLengthCorrections.ts';
import { type PitchWindow, pitchWindow, tensionBandByPitch, tensionByPitch } from './spokePitch.ts';
import { calibrateByEar, calibratedTension, type KnownPitch } from './spokePitchCalibration.ts';
import type { SoundingSpoke, SpokeEnds } from './spokeVibration.ts';

/** How a wheel is listened to; chosen once for all its spokes, so that they compare. */
export interface SpokeEar {
  ends: SpokeEnds;
  /** the free spoke, the touching pair, or the outer piece up to the crossing */
  sounds: 'free' | 'pair' | 'outer';
  known?: readonly KnownPitch[];
}

/** Unless something else is chosen. */
export const USUAL_EAR: SpokeEar = { ends: 'clamped-pinned', sounds: 'free' };

/** One spoke as it is built in. */
export interface SpokeAsLaced {
  /** whole, from the hub to the nipple */
  pieces: readonly SpokePiece[];
  /** share of its outermost crossing from the hub end; null for one that crosses nothing */
  crossing: number | null;
}

/**
 * What swings when the spoke is plucked: all of it, or the piece beyond its outermost crossing. A touching pair swings as
 * one, over the whole length.
 * @throws RangeError when a figure is out of range
 * @example soundingSpoke({ ends: 'clamped-pinned', sounds: 'outer' }, { pieces: [{ lengthMm: 180, diameterMm: 2 }], crossing: 0.34 }).pieces //=> 118.8 mm
 */
export function soundingSpoke({ ends, sounds }: SpokeEar, { pieces, crossing }: SpokeAsLaced): SoundingSpoke {
  return { ends, pieces: sounds === 'outer' && crossing !== null ? outerPieces(pieces, crossing) : pieces };
}

/**
 * Where the pitch of a spoke is looked for.
 * @param expectedN 20 to 1800 N; beyond that the end of it
 * @returns Hz, an octave at most
 * @throws RangeError when a figure of the spoke is out of range
 * @example listeningWindow(USUAL_EAR, { pieces: [{ lengthMm: 180, diameterMm: 2 }], crossing: null }, 1000) //=> about 417 to 756 Hz
 */
export const listeningWindow = (ear: SpokeEar, spoke: SpokeAsLaced, expectedN: number): PitchWindow =>
  pitchWindow(soundingSpoke(ear, spoke), Math.min(1800, Math.max(20, expectedN)));

export type ReadPitch =
  | { ok: true; tensionN: number; band: Band; calibrated: boolean }
  | { ok: false; reason: 'too-low-for-spoke' | 'too-high-for-spoke' };

/**
 * Tension of a spoke from its pitch: by the wheel's own calibration where two known tensions make one, else by what is
 * known of the spoke.
 * @param hz 1 to 20 000 Hz
 * @returns N with its honest band; of a pair it is the mean of the two
 * @throws RangeError when a figure is out of range
 * @example readPitch(USUAL_EAR, { pieces: [{ lengthMm: 180, diameterMm: 2 }], crossing: null }, 612.29) //=> 1000 N, not calibrated
 */
export function readPitch(ear: SpokeEar, spoke: SpokeAsLaced, hz: number): ReadPitch {
  const calibration = calibrateByEar(ear.known ?? []);
  if (calibration.ok) {
    const known = calibratedTension(calibration.calibration, hz);
    if (!known) return { ok: false, reason: 'too-low-for-spoke' };
    return { ok: true, tensionN: known.mid, band: known, calibrated: true };
  }
  const sounding = soundingSpoke(ear, spoke);
  const answer = tensionByPitch(sounding, hz);
  if (!answer.ok) return answer;
  const { tensionN } = answer;
  const honest = tensionBandByPitch(sounding, hz) ?? band(tensionN, tensionN, tensionN);
  return { ok: true, tensionN, band: honest, calibrated: false };
}
