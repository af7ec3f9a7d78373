import type { WheelRow } from '../../journal/rows.ts';

/**
 * The last set of readings that speaks of the spokes the wheel has today: with another number of spokes it was laced
 * anew, or its record was put right.
 * @param wheel its readings in the order they were taken
 * @example lastSet(wheel)?.moment //=> 'after'
 */
export const lastSet = ({
  leftSide,
  driveSide,
  readings,
}: Pick<WheelRow, 'leftSide' | 'driveSide' | 'readings'>): WheelRow['readings'][number] | undefined =>
  readings.findLast(({ tensionsN }) => tensionsN.length === leftSide.spokes + driveSide.spokes);
