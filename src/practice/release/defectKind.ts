import type { RideCheckItem } from '../../standards/checks/rideCheck.ts';

/** Things of which the check says more than the area they lie in. */
const byItem: Record<string, string> = {
  'front-axle': 'wheel-retention',
  'rear-axle': 'wheel-retention',
  'front-spokes': 'spokes',
  'rear-spokes': 'spokes',
  'front-rim': 'tyre-or-rim',
  'rear-rim': 'tyre-or-rim',
  'front-tyre': 'tyre-or-rim',
  'rear-tyre': 'tyre-or-rim',
  fork: 'crack',
  'head-tube': 'crack',
  frame: 'crack',
  dropouts: 'crack',
};

const byArea: Partial<Record<RideCheckItem['area'], string>> = {
  brakes: 'brake',
  steering: 'steering',
  drive: 'crank-or-pedal',
  saddle: 'seat',
};

/**
 * The kind of defect a finding of the check before riding is, as the list of what is never put off names it.
 * @returns `other` where that list has no name for it, or where it may wait
 * @example defectKind({ id: 'walk-brakes', area: 'brakes', neverDefer: true }) //=> 'brake'
 */
export function defectKind({
  id,
  area,
  neverDefer,
}: Pick<RideCheckItem, 'id' | 'area' | 'neverDefer'>): string {
  return (neverDefer && (byItem[id] ?? byArea[area])) || 'other';
}
