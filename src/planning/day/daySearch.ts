import { changingOver, dayGraph } from './dayBound.ts';
import { type DayGraph, type DayTask, laidOut } from './dayTask.ts';

/** A sequence of works, and how good it is known to be. */
export interface DayOrder {
  order: number[];
  readyMin: number;
  /** No sequence is ready before this, min. */
  boundMin: number;
  /** No other sequence is ready earlier. */
  best: boolean;
}

/** Up to as many works every sequence is looked through. */
const EXACT = 20;
/** Sequences that are tried to better a longer list, and branches of a shorter one: both well within a moment. */
const TRIES = 2500;
const BRANCHES = 12_000;

/**
 * Always what has the longest way behind it, of what may begin; where nothing may, what may first.
 * Source: Schrage's rule, from memory.
 */
function byLongestTail({ count, span, before, head, tail }: DayGraph): number[] {
  const ends = new Float64Array(count).fill(-1);
  const left = new Set(Array.from({ length: count }, (_, at) => at));
  const order: number[] = [];
  let time = 0;
  while (left.size > 0) {
    let chosen = -1;
    let chosenAt = Number.POSITIVE_INFINITY;
    for (const at of left) {
      let begin = Math.max(time, head[at] as number);
      let free = true;
      for (const { task, lagMin } of before[at] ?? []) {
        if ((ends[task] as number) < 0) free = false;
        else begin = Math.max(begin, (ends[task] as number) + lagMin);
      }
      if (!free) continue;
      const longer = begin === chosenAt && (tail[at] as number) > (tail[chosen] as number);
      if (begin < chosenAt || longer) [chosen, chosenAt] = [at, begin];
    }
    left.delete(chosen);
    order.push(chosen);
    time = chosenAt + (span[chosen] as number);
    ends[chosen] = time;
  }
  return order;
}

/** The same work told from its end. */
const backwards = ({ count, span, before, behind, head, tail, boundMin }: DayGraph): DayGraph => ({
  ...{ count, span, before: behind, behind: before, head: tail, tail: head, boundMin },
});

/** The same dice every time: a plan does not change by looking at it. */
function diceFrom(seed: number): (below: number) => number {
  let state = seed >>> 0;
  return (below) => {
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0;
    return Math.floor((state / 2 ** 32) * below);
  };
}

/** Puts one work of a sequence at another place, in place. */
function shift(order: number[], from: number, to: number): void {
  const work = order[from] as number;
  if (from < to) order.copyWithin(from, from + 1, to + 1);
  else order.copyWithin(to + 1, to, from);
  order[to] = work;
}

/** Betters a sequence by putting one work elsewhere, again and again; what is as good is taken as well. */
function bettered(tasks: readonly DayTask[], graph: DayGraph, first: readonly number[]): number[] {
  const dice = diceFrom(7);
  const now = [...first];
  const places = new Int32Array(now.length);
  const number = (lo: number, hi: number) => {
    for (let place = lo; place <= hi; place++) places[now[place] as number] = place;
  };
  number(0, now.length - 1);
  let nowReady = laidOut(tasks, now).readyMin;
  let [best, bestReady] = [[...now], nowReady];
  for (let tries = 0; tries < TRIES && bestReady > graph.boundMin; tries++) {
    const from = dice(now.length);
    const work = now[from] as number;
    let lo = 0;
    let hi = now.length - 1;
    for (const { task } of graph.before[work] ?? []) lo = Math.max(lo, (places[task] as number) + 1);
    for (const { task } of graph.behind[work] ?? []) hi = Math.min(hi, (places[task] as number) - 1);
    const to = lo + dice(hi - lo + 1);
    if (to === from) continue;
    shift(now, from, to);
    const ready = laidOut(tasks, now).readyMin;
    if (ready > nowReady && dice(200) > 0) {
      shift(now, to, from);
      continue;
    }
    number(Math.min(from, to), Math.max(from, to));
    nowReady = ready;
    if (ready < bestReady) [best, bestReady] = [[...now], ready];
  }
  return best;
}

/**
 * Looks through every sequence that could be ready earlier than the one given: by depth, the longest tail first. A branch
 * is cut where its bound is no better, or where another order of the same works left everything as early.
 */
function searched(graph: DayGraph, known: number): { order: number[] | undefined; all: boolean } {
  const { count, span, before, behind, tail, boundMin } = graph;
  const forward = byTopology(graph);
  const seen = new Map<number, Float64Array[]>();
  let best = known;
  let found: number[] | undefined;
  let branches = 0;
  let cut = false;
  const sequence: number[] = [];

  function branch(done: number, time: number, ready: number, begin: Float64Array): void {
    if (cut || best <= boundMin) return;
    if (sequence.length === count) {
      if (ready < best) [best, found] = [ready, [...sequence]];
      return;
    }
    if (++branches > BRANCHES) {
      cut = true;
      return;
    }
    const left = forward.filter((at) => (done & (1 << at)) === 0);
    // Earliest begins of what is left, along the order.
    const heads = begin.slice();
    for (const at of left) {
      heads[at] = Math.max(heads[at] as number, time);
      for (const { task, lagMin } of before[at] ?? [])
        if ((done & (1 << task)) === 0)
          heads[at] = Math.max(heads[at], (heads[task] as number) + (span[task] as number) + lagMin);
    }
    if (Math.max(ready, changingOver(left, span, heads, tail)) >= best) return;
    const mark = heads.slice();
    mark[count] = ready;
    const others = seen.get(done) ?? [];
    if (
      others.some(
        (one) =>
          left.every((at) => (one[at] as number) <= (mark[at] as number)) && (one[count] as number) <= ready,
      )
    )
      return;
    seen.set(done, [...others, mark]);
    const free = left.filter((at) => before[at]?.every(({ task }) => (done & (1 << task)) !== 0));
    const firstOver = Math.min(...free.map((at) => (heads[at] as number) + (span[at] as number)));
    const firstOne = free.find((at) => (heads[at] as number) + (span[at] as number) === firstOver);
    free.sort(
      (a, b) => (tail[b] as number) - (tail[a] as number) || (heads[a] as number) - (heads[b] as number),
    );
    for (const at of free) {
      // What could only begin when another is over leaves room for that one before it.
      if (at !== firstOne && (heads[at] as number) >= firstOver) continue;
      const over = (heads[at] as number) + (span[at] as number);
      const next = begin.slice();
      for (const { task, lagMin } of behind[at] ?? [])
        next[task] = Math.max(next[task] as number, over + lagMin);
      sequence.push(at);
      branch(done | (1 << at), over, Math.max(ready, over + (tail[at] as number)), next);
      sequence.pop();
    }
  }
  const begin = new Float64Array(count + 1);
  begin.set(graph.head);
  branch(0, 0, 0, begin);
  return { order: found, all: !cut };
}

/** Numbers of the works so that each comes after what it comes after. */
function byTopology(graph: DayGraph): number[] {
  return byLongestTail({ ...graph, head: graph.head.map(() => 0) });
}

/** Of sequences that are ready as early, the one nearest to the order the works are given in: hands wander less. */
function tidied(
  tasks: readonly DayTask[],
  graph: DayGraph,
  given: readonly number[],
  ready: number,
): number[] {
  const now = [...given];
  for (let place = 0; place < now.length; place++) {
    const left = new Set(now.slice(place));
    const wanted = [...left].toSorted((a, b) => a - b);
    for (const work of wanted) {
      if (work === now[place]) break;
      if (graph.before[work]?.some(({ task }) => left.has(task))) continue;
      const from = now.indexOf(work, place);
      shift(now, from, place);
      if (laidOut(tasks, now).readyMin <= ready) break;
      shift(now, place, from);
    }
  }
  return now;
}

/**
 * In which sequence one pair of hands is ready first, while what it started goes on by itself: 1 | prec, finish-start
 * lags | Cmax. Up to twenty works every sequence counts, as far as a moment reaches; beyond, the longest tail first,
 * bettered by putting single works elsewhere.
 * @param tasks works; what comes after what goes round in no circle
 * @returns the sequence, and the bound below which there is none
 * @throws RangeError where the order goes round in a circle
 * @example bestOrder([{ spanMin: 5, headMin: 0, tailMin: 0, after: [] }]) //=> { order: [0], readyMin: 5, boundMin: 5, best: true }
 */
export function bestOrder(tasks: readonly DayTask[]): DayOrder {
  const graph = dayGraph(tasks);
  const { boundMin } = graph;
  const readyOf = (order: readonly number[]) => laidOut(tasks, order).readyMin;
  const both = [byLongestTail(graph), byLongestTail(backwards(graph)).reverse()];
  const [first = []] = both.toSorted((a, b) => readyOf(a) - readyOf(b));
  let order = readyOf(first) > boundMin ? bettered(tasks, graph, first) : first;
  let all = false;
  if (tasks.length <= EXACT && readyOf(order) > boundMin) {
    const exact = searched(graph, readyOf(order));
    order = exact.order ?? order;
    ({ all } = exact);
  }
  const readyMin = readyOf(order);
  order = tidied(tasks, graph, order, readyMin);
  return { order, readyMin, boundMin: all ? readyMin : boundMin, best: all || readyMin <= boundMin };
}
