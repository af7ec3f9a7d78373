import { inRange } from '../range.ts';

/** A hub as it sits in the frame; null where the wheel has no rotor or it was not measured. */
export interface HubSeat {
  /** width over the locknuts, mm */
  overLocknutMm: number;
  /** middle plane to the middle of the sprocket teeth, mm, positive to the drive side */
  chainlineMm: number | null;
  /** outer rotor face to the left end's inner face, mm */
  rotorGapMm: number | null;
  /** middle plane to the middle of each flange, mm; a flange may lie beyond the middle (negative) */
  leftFlangeMm: number;
  driveFlangeMm: number;
}

/** What comes off each end, mm; washers put on are negative. */
export interface HubCut {
  leftMm: number;
  driveMm: number;
}

export interface ShortenedHub extends HubSeat {
  /** how far the rim must move toward the drive side of the hub to stand in the middle again, mm; the other way when negative */
  rimToDriveMm: number;
  /** the rotor would touch the frame: gap 0 or less; null when the gap is not known */
  rotorTouches: boolean | null;
}

/**
 * A hub whose axle and locknuts were shortened, seen from the new middle. Flanges keep their distance; what
 * changes is where the middle lies between them, so the wheel needs a new dish.
 * @param hub over-locknut width 70 to 250 mm, other lengths −125 to 125 mm
 * @param cut −60 to 60 mm at each end, leaving at least 60 mm
 * @throws RangeError when an argument is out of range
 * Source: arithmetic of the shifted middle plane; derived here. Cutting cannot be undone.
 * @example shortenHub({ overLocknutMm: 135, chainlineMm: 30, rotorGapMm: 15.3, leftFlangeMm: 34, driveFlangeMm: 20 }, { leftMm: 0, driveMm: 15 }) //=> chainline 37.5, rotor gap 15.3, flanges 26.5 and 27.5
 */
export function shortenHub(hub: HubSeat, cut: HubCut): ShortenedHub {
  for (const [name, mm] of Object.entries(cut)) inRange(name, mm, -60, 60);
  inRange('overLocknutMm', hub.overLocknutMm, 70, 250);
  inRange('leftFlangeMm', hub.leftFlangeMm, -125, 125);
  inRange('driveFlangeMm', hub.driveFlangeMm, -125, 125);
  const shiftMm = (cut.driveMm - cut.leftMm) / 2;
  const chainlineMm =
    hub.chainlineMm === null ? null : inRange('chainlineMm', hub.chainlineMm, -125, 125) + shiftMm;
  const rotorGapMm =
    hub.rotorGapMm === null ? null : inRange('rotorGapMm', hub.rotorGapMm, -125, 125) - cut.leftMm;
  return {
    overLocknutMm: inRange('width left', hub.overLocknutMm - cut.leftMm - cut.driveMm, 60, 370),
    chainlineMm,
    rotorGapMm,
    leftFlangeMm: hub.leftFlangeMm - shiftMm,
    driveFlangeMm: hub.driveFlangeMm + shiftMm,
    // The hub moved toward the drive side, so the rim must go the other way on it.
    rimToDriveMm: shiftMm === 0 ? 0 : -shiftMm,
    rotorTouches: rotorGapMm === null ? null : rotorGapMm <= 0,
  };
}

/**
 * The split of a given total cut that leaves a wanted drive-side flange distance, chainline or dish.
 * @param totalMm taken off in all, mm, −120 to 120
 * @param shiftMm how far the hub is to move toward the drive side, mm, −60 to 60
 * @returns what to take off each end; one of them may be negative, which means washers there
 * @throws RangeError when an argument is out of range
 * Source: `shortenHub` solved for the cut.
 * @example splitCut(15, 7) //=> { leftMm: 0.5, driveMm: 14.5 }
 */
export function splitCut(totalMm: number, shiftMm: number): HubCut {
  inRange('totalMm', totalMm, -120, 120);
  inRange('shiftMm', shiftMm, -60, 60);
  return { leftMm: totalMm / 2 - shiftMm, driveMm: totalMm / 2 + shiftMm };
}

/**
 * The split after which both flanges stand equally far from the middle: a wheel without dish.
 * @example dishlessCut({ leftFlangeMm: 34, driveFlangeMm: 20 }, 15) //=> { leftMm: 0.5, driveMm: 14.5 }
 */
export function dishlessCut(hub: Pick<HubSeat, 'leftFlangeMm' | 'driveFlangeMm'>, totalMm: number): HubCut {
  return splitCut(totalMm, (hub.leftFlangeMm - hub.driveFlangeMm) / 2);
}
