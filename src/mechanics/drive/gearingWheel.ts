import { inRange } from '../range.ts';
import { overallDiameterMm } from '../tyres/tyreFit.ts';

/** What is known about the wheel, best first: a rollout under the rider beats a tape, a tape beats a sidewall. */
export type WheelSize =
  | { known: 'rollout'; rolloutMm: number; turns?: number }
  | { known: 'diameter'; diameterMm: number }
  | { known: 'designation'; widthMm: number; beadSeatMm: number };

/**
 * Outer diameter of the tyre that gearing asks for.
 * A rollout counts the squash under the rider; the designation gives the unloaded nominal wheel, a few
 * millimetres larger than what rolls.
 * @param size rollout in mm over `turns` wheel turns (1 to 20), or the diameter in mm, or the two figures of
 *   a designation such as 47-584 (width 15 to 130 mm, bead seat 100 to 700 mm)
 * @returns mm
 * @throws RangeError when a figure is out of range
 * Source: circle geometry; nominal outer diameter as in `overallDiameterMm`.
 * @example wheelDiameterMm({ known: 'designation', widthMm: 32, beadSeatMm: 597 }) //=> 661
 */
export function wheelDiameterMm(size: WheelSize): number {
  switch (size.known) {
    case 'rollout':
      return (
        inRange('rolloutMm', size.rolloutMm, 250, 130_000) /
        inRange('turns', size.turns ?? 1, 1, 20) /
        Math.PI
      );
    case 'diameter':
      return inRange('diameterMm', size.diameterMm, 80, 2000);
    case 'designation':
      return overallDiameterMm(
        inRange('widthMm', size.widthMm, 15, 130),
        inRange('beadSeatMm', size.beadSeatMm, 100, 700),
      );
  }
}
