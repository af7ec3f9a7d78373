import { inRange } from '../range.ts';

/** Where the spoke holes lie in the rim, seen across its width. */
export type RimDrilling =
  /** all on the middle line */
  | { holes: 'middle' }
  /** all on one line beside the middle; positive to the drive side */
  | { holes: 'offset'; toDriveMm: number }
  /** in turn left and right of the middle, each toward its own flange or, crossed, toward the other */
  | { holes: 'staggered'; eachSideMm: number; toward: 'own-flange' | 'other-flange' };

/** Distance of each flange from the plane of its own rim holes, mm. */
export interface FlangePair {
  leftMm: number;
  driveMm: number;
}

/**
 * Flange distances as spoke length and tension want them: from the rim holes, not from the middle of the bike.
 * An offset rim the right way round evens out the tensions; the wrong way round it makes them worse.
 * @param flanges each flange from the middle plane, mm, −150 to 150
 * @param drilling offset −20 to 20 mm, stagger 0 to 20 mm
 * @throws RangeError when a figure is out of range
 * Source: shift along the axle; derived here.
 * @example flangesFromRimHoles({ leftMm: 35, driveMm: 21 }, { holes: 'offset', toDriveMm: -3 }) //=> { leftMm: 32, driveMm: 24 }
 */
export function flangesFromRimHoles(flanges: FlangePair, drilling: RimDrilling): FlangePair {
  const leftMm = inRange('leftMm', flanges.leftMm, -150, 150);
  const driveMm = inRange('driveMm', flanges.driveMm, -150, 150);
  switch (drilling.holes) {
    case 'middle':
      return { leftMm, driveMm };
    case 'offset': {
      const mm = inRange('toDriveMm', drilling.toDriveMm, -20, 20);
      return { leftMm: leftMm + mm, driveMm: driveMm - mm };
    }
    case 'staggered': {
      const mm = inRange('eachSideMm', drilling.eachSideMm, 0, 20);
      const nearerMm = drilling.toward === 'own-flange' ? mm : -mm;
      return { leftMm: leftMm - nearerMm, driveMm: driveMm - nearerMm };
    }
  }
}
