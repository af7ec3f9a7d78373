import type { WorkPair } from '../standards/workOrder.ts';
import { type JointsById, type OrderedStep, pairBetween } from './workPairs.ts';

/** A step that would stand before something that has to be done first. */
export interface Breach {
  first: OrderedStep;
  second: OrderedStep;
  pair: WorkPair;
}

const isOpen = ({ state = 'open' }: OrderedStep): boolean => state === 'open';

/**
 * What putting a step into a list would break: it would stand before something that must come first, or behind
 * something that must come after it. What is done or skipped has no place to keep any more.
 * @param others the list without the step, in its order
 * @param index place among them, 0 for the first
 * @param from where it stands now, counted likewise: a pair that is the wrong way round already is no new breach
 * @example newBreach([], step, 0, new Map()) //=> undefined
 */
export function newBreach(
  others: readonly OrderedStep[],
  step: OrderedStep,
  index: number,
  joints: JointsById,
  from?: number,
): Breach | undefined {
  if (!isOpen(step)) return undefined;
  for (const [at, other] of others.entries()) {
    if (!isOpen(other)) continue;
    const behind = at < index;
    if (from !== undefined && at < from === behind) continue;
    const pair = behind ? pairBetween(step, other, joints) : pairBetween(other, step, joints);
    if (pair) return behind ? { first: step, second: other, pair } : { first: other, second: step, pair };
  }
  return undefined;
}

/**
 * Where a new step goes: at the place it is wanted, or as near to it as the order allows. Where the list is the wrong
 * way round already, right behind what has to be done first.
 * @param wanted place among the others, 0 for the first
 * @example placeInOrder([], step, 0, new Map()) //=> 0
 */
export function placeInOrder(
  others: readonly OrderedStep[],
  step: OrderedStep,
  wanted: number,
  joints: JointsById,
): number {
  let earliest = 0;
  let latest = others.length;
  for (const [at, other] of others.entries()) {
    if (!isOpen(other)) continue;
    if (pairBetween(other, step, joints)) earliest = at + 1;
    if (latest === others.length && pairBetween(step, other, joints)) latest = at;
  }
  return Math.max(earliest, Math.min(latest, wanted));
}

/**
 * A breach in words: which comes after which, and why.
 * @example breachWords({ first: { title: 'Cups: press' }, second: { title: 'Fork: fit' }, pair })
 *   //=> '“Fork: fit” comes after “Cups: press”. The cups go into an empty head tube.'
 */
export const breachWords = ({ first, second, pair }: Breach): string =>
  `“${second.title}” comes after “${first.title}”. ${pair.because}`;
