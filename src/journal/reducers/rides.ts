import type { Entry } from '../entries.ts';
import type { RidesRow } from '../rows.ts';

/** How often, how far and how long a bike has been ridden. */
export function reduceRides(row: RidesRow | undefined, entry: Entry): RidesRow | undefined {
  if (entry.type !== 'ride-logged') return row;
  const base: RidesRow = row ?? {
    key: `rides/${entry.bikeId}`,
    is: 'rides',
    group: `rides@${entry.bikeId}`,
    bikeId: entry.bikeId,
    count: 0,
    km: 0,
    minutes: 0,
    lastMs: entry.happenedAtMs,
  };
  return {
    ...base,
    count: base.count + 1,
    km: base.km + (entry.km ?? 0),
    minutes: base.minutes + (entry.minutes ?? 0),
    firstAtMs: base.firstAtMs ?? entry.happenedAtMs,
    lastAtMs: entry.happenedAtMs,
  };
}
