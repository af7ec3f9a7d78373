import { numberText } from '../mechanics/numberText.ts';
import { convert, type DistanceUnit, unitLabel } from '../mechanics/units.ts';
import type { Left } from '../planning/recheckSpan.ts';

/**
 * What is left, as it stands under a re-check to come.
 * @example leftText({ rides: 1, km: 10, days: 29.2 }, 'km') //=> 'In 1 ride, 10 km or 30 days'
 */
export function leftText({ rides, km, days }: Left, unit: DistanceUnit): string {
  const wholeDays = days === undefined ? undefined : Math.max(0, Math.ceil(days));
  const spans = [
    rides === undefined ? undefined : `${rides} ${rides === 1 ? 'ride' : 'rides'}`,
    km === undefined ? undefined : `${numberText(convert(km, 'km', unit), 0)} ${unitLabel[unit]}`,
    wholeDays === undefined ? undefined : `${wholeDays} ${wholeDays === 1 ? 'day' : 'days'}`,
  ].filter((span) => span !== undefined);
  if (rides === 0) return 'Before the next ride';
  if (spans.length === 0) return 'No interval set';
  const last = spans.pop();
  return spans.length === 0 ? `In ${last}` : `In ${spans.join(', ')} or ${last}`;
}
