import { positive, wholeInRange } from '../range.ts';

/** Angle between two bolts that are `steps` holes apart, halved, radians. */
function halfAngle(boltsCount: number, steps: number): number {
  wholeInRange('boltsCount', boltsCount, 3, 12);
  wholeInRange('steps', steps, 1, Math.floor(boltsCount / 2));
  return (Math.PI * steps) / boltsCount;
}

/**
 * Distance between two bolts of a circle, centre to centre.
 * @param circleMm bolt circle, mm, > 0
 * @param boltsCount 3 to 12
 * @param steps how many holes on; 1 is the neighbour
 * @throws RangeError when an argument is out of range
 * Source: chord of a circle.
 * @example holeChordMm(110, 5) //=> 64.656…
 */
export function holeChordMm(circleMm: number, boltsCount: number, steps = 1): number {
  positive({ circleMm });
  return circleMm * Math.sin(halfAngle(boltsCount, steps));
}

/**
 * Bolt circle from what a caliper reads between two holes; with an odd number nothing lies opposite.
 * @param chordMm centre to centre, mm, > 0
 * @throws RangeError when an argument is out of range
 * @example boltCircleMm(73.54, 4) //=> 104.0…
 */
export function boltCircleMm(chordMm: number, boltsCount: number, steps = 1): number {
  positive({ chordMm });
  return chordMm / Math.sin(halfAngle(boltsCount, steps));
}
