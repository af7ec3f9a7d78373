const SECOND_MS = 1000;
const MINUTE_MS = 60 * SECOND_MS;
const HOUR_MS = 60 * MINUTE_MS;
const DAY_MS = 24 * HOUR_MS;

/** A span written out for reading from afar. */
export interface SpanText {
  /** The figure: "4:10", "1 h 05", "2 d 4 h". */
  value: string;
  /** Unit to stand beside it, where the figure does not carry its own. */
  unit?: 'min' | undefined;
}

const two = (count: number) => String(count).padStart(2, '0');

/**
 * Writes a span: days and hours, hours and minutes, or minutes and seconds. Started seconds count, so 0 means over.
 * @param spanMs length, ms, >= 0
 * @throws RangeError when the span is negative or not finite
 * @example timeLeftText(250_000) //=> { value: '4:10', unit: 'min' }
 */
export function timeLeftText(spanMs: number): SpanText {
  if (!(spanMs >= 0) || spanMs === Number.POSITIVE_INFINITY)
    throw new RangeError('timeLeftText: span must be 0 or more');
  const ms = Math.ceil(spanMs / SECOND_MS) * SECOND_MS;
  if (ms >= DAY_MS) return { value: `${Math.floor(ms / DAY_MS)} d ${Math.floor((ms % DAY_MS) / HOUR_MS)} h` };
  if (ms >= HOUR_MS)
    return { value: `${Math.floor(ms / HOUR_MS)} h ${two(Math.floor((ms % HOUR_MS) / MINUTE_MS))}` };
  return { value: `${Math.floor(ms / MINUTE_MS)}:${two((ms % MINUTE_MS) / SECOND_MS)}`, unit: 'min' };
}

/**
 * Writes a span in few signs, in minutes where it is under an hour: never to be taken for a clock time.
 * @param spanMs length, ms, >= 0
 * @throws RangeError when the span is negative or not finite
 * @example spanShort(250_000) //=> '5 min'
 */
export function spanShort(spanMs: number): string {
  const { value, unit } = timeLeftText(spanMs);
  return unit ? `${Math.ceil(spanMs / MINUTE_MS)} min` : value;
}

/**
 * The clock time of an instant, with its day where that is not today. In English as the words around it, whatever the
 * language of the phone.
 * @param atMs instant, ms since 1970 UTC
 * @param nowMs the present, ms since 1970 UTC
 * @param timeZone IANA name; the phone's own when left out
 * @example clockOrDayText(0, 0, 'UTC') //=> '00:00'
 */
export function clockOrDayText(atMs: number, nowMs: number, timeZone?: string): string {
  const day = (ms: number) => new Intl.DateTimeFormat('en-CA', { timeZone, dateStyle: 'short' }).format(ms);
  const clock = { hour: '2-digit', minute: '2-digit', timeZone } as const;
  const dated = { weekday: 'short', day: 'numeric', month: 'short', ...clock } as const;
  return new Intl.DateTimeFormat('en-GB', day(atMs) === day(nowMs) ? clock : dated).format(atMs);
}
