import { inRange } from './inRange.ts';

/** What is known about the wheel, best first: a rollout under the rider beats a tape, a tape beats a sidewall. */
export type WheelSize =
  | { known: 'rollout'; rolloutMm: number; turns?: number }
  | { known: 'diameter'; diameterMm: number }
  | { known: 'designation'; sectionMm: number; beadSeatMm: number };

/**
 * Outer diameter of the tyre that gearing asks for.
 * A rollout counts the squash under the rider; the designation gives the unloaded nominal wheel, a few
 * millimetres larger than what rolls.
 * @param size rollout in mm over `turns` wheel turns (1 to 20), or the diameter in mm, or the two figures of
 *   a designation such as 47-584 (section 15 to 130 mm, bead seat 100 to 700 mm)
 * @returns mm
 * @throws RangeError when a figure is out of range
 * Source: circle geometry; ISO 5775-1 rule for the nominal outer diameter, public copy (section height is the
 * width, plus 2.5 mm below a width of 28).
 * @example wheelDiameterMm({ known: 'designation', sectionMm: 32, beadSeatMm: 597 }) //=> 661
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
    case 'designation': {
      const width = inRange('sectionMm', size.sectionMm, 15, 130);
      const heightMm = width < 28 ? width + 2.5 : width;
      return inRange('beadSeatMm', size.beadSeatMm, 100, 700) + 2 * heightMm;
    }
  }
}
