const MINUTE_MS = 60_000;
const HOUR_MS = 60 * MINUTE_MS;
const DAY_MS = 24 * HOUR_MS;

export type SpanUnit = 'min' | 'h' | 'd';
const inMs: Readonly<Record<SpanUnit, number>> = { min: MINUTE_MS, h: HOUR_MS, d: DAY_MS };

/** The longest timer the journal takes. */
const LONGEST_MS = 60 * DAY_MS;

/** What a timer is most often set to. Common practice, no source. */
export const usualSpans: readonly { words: string; waitMs: number }[] = [
  { words: '10 min', waitMs: 10 * MINUTE_MS },
  { words: '20 min', waitMs: 20 * MINUTE_MS },
  { words: '30 min', waitMs: 30 * MINUTE_MS },
  { words: '1 h', waitMs: HOUR_MS },
  { words: '24 h', waitMs: DAY_MS },
];

const unitOf = (word: string): SpanUnit | undefined =>
  /^m/.test(word) ? 'min' : /^h/.test(word) ? 'h' : /^d/.test(word) ? 'd' : undefined;

const piece = /^(\d+(?:[.,]\d+)?)\s*(m|min|mins|minutes?|h|hrs?|hours?|d|days?)?\.?(?:\s+|$)/i;

/**
 * A span as a person types it: minutes, hours, days, or several of them.
 * @param unit meant where none is typed
 * @returns ms, above 0 and at most 60 days; undefined where it is no span
 * @example spanTyped('20 min', 'h') //=> 1_200_000
 */
export function spanTyped(text: string, unit: SpanUnit): number | undefined {
  // "1h30" is one hour and thirty minutes.
  let rest = text
    .trim()
    .toLowerCase()
    .replace(/([a-z])(\d)/g, '$1 $2');
  if (rest === '') return undefined;
  let sumMs = 0;
  let last: SpanUnit | undefined;
  while (rest !== '') {
    const found = piece.exec(rest);
    if (!found) return undefined;
    const [whole, figure = '', word] = found;
    const meant =
      word === undefined ? (last === 'h' ? 'min' : last === undefined ? unit : undefined) : unitOf(word);
    if (!meant) return undefined;
    sumMs += Number(figure.replace(',', '.')) * inMs[meant];
    last = meant;
    rest = rest.slice(whole.length);
  }
  const ms = Math.round(sumMs);
  return ms > 0 && ms <= LONGEST_MS ? ms : undefined;
}
