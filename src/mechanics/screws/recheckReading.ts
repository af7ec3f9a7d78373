import { type Band, band } from '../band.ts';
import { notNegative, positive } from '../range.ts';
import { given, type Working } from '../working.ts';

/** What a re-check met. Torques in N·m. */
export type RecheckFound =
  /** Pulled towards the target; `movedAtNm` null when the target came without any movement. */
  | { way: 'tightening'; installedNm: number; movedAtNm: number | null; turnsFreely?: boolean }
  /** Read where it first gave in the loosening direction. */
  | { way: 'loosening'; installedNm: number; movedAtNm: number; finePitch?: boolean; turnsFreely?: boolean }
  /** Only looked at: the paint line across bolt and part. */
  | { way: 'mark'; linesUp: boolean };

export type RecheckVerdict = 'held' | 'settled' | 'loosened' | 'failed';

export type RecheckReason =
  | 'reached-without-moving'
  | 'moved-close-to-target'
  | 'moved-well-short'
  | 'moved-at-less-than-half'
  | 'turns-freely'
  | 'loosening-torque-sound'
  | 'loosening-torque-low'
  | 'loosening-torque-less-than-half'
  | 'mark-lines-up'
  | 'mark-has-moved';

export interface RecheckReading {
  verdict: RecheckVerdict;
  reason: RecheckReason;
  /** Share of the preload that seems to be left; null where the reading says nothing of it. */
  preloadLeft: Band | null;
  /** How the share was worked out; null where nothing was. */
  working: Working | null;
}

/** Tightening direction: bedding in explains a fifth, hardly a half. Own judgement, no published scale. */
const SETTLED_FROM = 0.8;
const LOOSENED_FROM = 0.5;
/**
 * A sound joint gives at less than it was pulled to, since the pitch helps it open. Wheel nuts must show 70 %
 * of the recommended torque (EN 15194 and EN 14766, public copies); fine axle threads read higher, own figure.
 */
export const SOUND_LOOSENING = 0.7;
const SOUND_LOOSENING_FINE = 0.8;
/** Breaking away takes up to 15 % more than running; from memory. */
const BREAKAWAY: Band = band(1, 1.07, 1.15);

const plain = (verdict: RecheckVerdict, reason: RecheckReason): RecheckReading => ({
  verdict,
  reason,
  preloadLeft: null,
  working: null,
});

/** A reading below the torque a sound joint shows: what it leaves of the preload. */
function short(
  verdict: RecheckVerdict,
  reason: RecheckReason,
  movedAtNm: number,
  soundNm: number,
): RecheckReading {
  const share = movedAtNm / soundNm;
  const at = (breakaway: number) => Math.min(1, share / breakaway);
  const preloadLeft = band(at(BREAKAWAY.hi), at(BREAKAWAY.mid), at(BREAKAWAY.lo));
  return {
    verdict,
    reason,
    preloadLeft,
    working: {
      result: preloadLeft,
      unit: '1',
      formula: 'F / F0 = (T moved / T sound) / breakaway',
      inputs: [
        given('torque at the first movement', movedAtNm, 'N·m'),
        given('torque a sound joint shows', soundNm, 'N·m'),
        given('breakaway over running friction', BREAKAWAY, '1'),
      ],
      source: 'torque and preload in proportion; breakaway from memory',
      known: 'memory',
    },
  };
}

/**
 * Reads a re-check. A bolt that reaches its target without moving shows only that it takes at least that much
 * to move it: a stuck or glued one does the same, so no preload is claimed for it.
 * @returns 'held' leave it; 'settled' pulled up and well; 'loosened' pulled up, look again soon; 'failed' take
 *   it apart, look at it, make it afresh
 * @throws RangeError when a torque is out of range
 * Source: 70 % removal torque from EN 15194 and EN 14766; the other limits are a judgement.
 * @example readRecheck({ way: 'tightening', installedNm: 5, movedAtNm: 4.5 }).verdict //=> 'settled'
 */
export function readRecheck(found: RecheckFound): RecheckReading {
  if (found.way === 'mark')
    return found.linesUp ? plain('held', 'mark-lines-up') : plain('failed', 'mark-has-moved');

  const { installedNm, movedAtNm } = found;
  positive({ installedNm });
  if (found.turnsFreely) return short('failed', 'turns-freely', 0, installedNm);
  if (movedAtNm === null) return plain('held', 'reached-without-moving');
  notNegative({ movedAtNm });
  const share = movedAtNm / installedNm;

  if (found.way === 'tightening') {
    if (share >= 1) return plain('held', 'reached-without-moving');
    if (share >= SETTLED_FROM) return short('settled', 'moved-close-to-target', movedAtNm, installedNm);
    if (share >= LOOSENED_FROM) return short('loosened', 'moved-well-short', movedAtNm, installedNm);
    return short('failed', 'moved-at-less-than-half', movedAtNm, installedNm);
  }

  const sound = found.finePitch ? SOUND_LOOSENING_FINE : SOUND_LOOSENING;
  if (share >= sound) return plain('held', 'loosening-torque-sound');
  const soundNm = sound * installedNm;
  if (share >= LOOSENED_FROM) return short('settled', 'loosening-torque-low', movedAtNm, soundNm);
  return short('loosened', 'loosening-torque-less-than-half', movedAtNm, soundNm);
}
