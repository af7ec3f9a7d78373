import type { DayPlan, TimedWork } from '../planning/day/dayPlan.ts';
import { spanText } from './dayText.ts';
import { clockOrDayText } from './timeLeft.ts';

const MINUTE_MS = 60_000;
/** Times are told to five minutes: the spans are no surer than that. */
const ROUND_MS = 5 * MINUTE_MS;

const span = (min: number): string => spanText(Math.round(min) * MINUTE_MS);

/** An instant of a day's plan, told to five minutes. */
const instant = (nowMs: number, min: number, zone?: string): string =>
  clockOrDayText(Math.round((nowMs + min * MINUTE_MS) / ROUND_MS) * ROUND_MS, nowMs, zone);

/**
 * When the bike is ready, with the band, and the last turn of the hands where waits go on after it.
 * @example readyWords({ readyMin: 60, likelyMin: [50, 80], handsMin: 60, … }, 0, 'UTC')
 *   //=> 'Ready about 01:00, between 00:50 and 01:20.'
 */
export function readyWords({ readyMin, likelyMin, handsMin }: DayPlan, nowMs: number, zone?: string): string {
  const [early, late] = likelyMin;
  const at = (min: number) => instant(nowMs, min, zone);
  const band = at(early) === at(late) ? '' : `, between ${at(early)} and ${at(late)}`;
  const hands = readyMin - handsMin >= 5 ? ` Your work ends about ${at(handsMin)}; the rest is waiting.` : '';
  return `Ready about ${at(readyMin)}${band}.${hands}`;
}

const waitsWords = { cures: 'cures', settles: 'settles' } as const;

/**
 * Why to begin with the first work of a plan.
 * @example whyFirst({ works: [{ wait: { kind: 'settles', span: [30, 60, 240] }, … }], … }) //=> 'It settles for about 1 h while you do the rest.'
 */
export function whyFirst({ works, behindFirstMin }: Pick<DayPlan, 'works' | 'behindFirstMin'>): string {
  const [first] = works;
  if (works.length < 2) return 'It is the last one.';
  if (first?.wait)
    return `It ${waitsWords[first.wait.kind]} for about ${span(first.wait.span[1])} while you do the rest.`;
  const waiting = works.slice(1).find(({ after, wait }) => wait && after.length > 0);
  const towards = waiting ? ` A timer starts on the way: ${waiting.steps[0]?.title}.` : '';
  return `The longest way to the end begins here: ${span(behindFirstMin)} after it.${towards}`;
}

/**
 * What a pause now does to the day.
 * @example pauseWords({ pauseFreeMin: 0 }) //=> 'A pause now makes it later by as much.'
 */
export function pauseWords({ pauseFreeMin }: Pick<DayPlan, 'pauseFreeMin'>): string {
  if (pauseFreeMin < 5) return 'A pause now makes it later by as much.';
  return `A pause now of up to ${span(Math.floor(pauseFreeMin / 5) * 5)} makes it no later.`;
}

/**
 * One line of a plan: when, what, how long, and by what that is known.
 * @example workWords({ steps: [{ title: 'Fork: fit' }], beginMin: 0, span: [3, 8, 20], own: 0, … }, 0, 'UTC')
 *   //=> '00:00  Fork: fit, 8 min'
 */
export function workWords(
  { steps, beginMin, span: [, usual], wait, own }: TimedWork,
  nowMs: number,
  zone?: string,
) {
  const titles = steps.map(({ title }) => title).join(', then ');
  const after = wait ? `, then ${waitsWords[wait.kind]} ${span(wait.span[1])}` : '';
  const from = own > 0 ? ` (yours, ${own} times)` : '';
  return `${instant(nowMs, beginMin, zone)}  ${titles}, ${span(usual)}${from}${after}`;
}
