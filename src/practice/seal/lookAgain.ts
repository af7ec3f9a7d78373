const MINUTE_MS = 60_000;
const HOUR_MS = 60 * MINUTE_MS;

/** Spans to tap; the longest is a night and a day. */
export const lookPresets: readonly { label: string; ms: number }[] = [
  { label: '10 min', ms: 10 * MINUTE_MS },
  { label: '20 min', ms: 20 * MINUTE_MS },
  { label: '30 min', ms: 30 * MINUTE_MS },
  { label: '1 h', ms: HOUR_MS },
  { label: '2 h', ms: 2 * HOUR_MS },
  { label: '6 h', ms: 6 * HOUR_MS },
  { label: '12 h', ms: 12 * HOUR_MS },
  { label: '24 h', ms: 24 * HOUR_MS },
];

/** How long a wheel lies on one side when a single tap logs it together with its look. Own proposal. */
export const LIE_MS = 30 * MINUTE_MS;

/** A span typed in hours, ms. @example hoursMs(1.5) //=> 5_400_000 */
export const hoursMs = (hours: number): number => Math.round(hours * HOUR_MS);

/** How long until the next look when it is asked for from a notice. Own proposal. */
export const AGAIN_MS = 30 * MINUTE_MS;
