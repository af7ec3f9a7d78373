import type { DayGraph, DayTask } from './dayTask.ts';

/**
 * When the last of some works is over, were the hands free to change over at any moment: always the one with the longest
 * way behind it. No sequence without changing over is ready before that.
 * Source: Jackson's rule with preemption, which gives the largest of head + sum + tail over all sets (J. Carlier,
 * European Journal of Operational Research 11, 1982; from memory).
 * @param works numbers of them
 * @param head earliest begin, min
 * @param tail least time from the end of each, min
 * @example changingOver([0, 1], [3, 2], [0, 0], [0, 4]) //=> 6
 */
export function changingOver(
  works: readonly number[],
  span: readonly number[],
  head: ArrayLike<number>,
  tail: ArrayLike<number>,
): number {
  const waiting = [...works].sort((a, b) => (head[a] as number) - (head[b] as number));
  const left = new Map<number, number>();
  let at = 0;
  let time = 0;
  let over = 0;
  while (at < waiting.length || left.size > 0) {
    if (left.size === 0) time = Math.max(time, head[waiting[at] as number] as number);
    for (; at < waiting.length && (head[waiting[at] as number] as number) <= time; at++)
      left.set(waiting[at] as number, span[waiting[at] as number] as number);
    let chosen = -1;
    for (const one of left.keys())
      if (chosen < 0 || (tail[one] as number) > (tail[chosen] as number)) chosen = one;
    const next = at < waiting.length ? (head[waiting[at] as number] as number) : Number.POSITIVE_INFINITY;
    const rest = left.get(chosen) as number;
    const until = Math.min(time + rest, next);
    if (until - time >= rest) {
      left.delete(chosen);
      over = Math.max(over, until + (tail[chosen] as number));
    } else left.set(chosen, rest - (until - time));
    time = until;
  }
  return over;
}

type Edges = readonly (readonly { task: number; lagMin: number }[])[];

/** Numbers of the works so that each comes after what it comes after. Throws where they go round in a circle. */
function sorted(count: number, before: Edges): number[] {
  const order: number[] = [];
  const state = new Uint8Array(count);
  const visit = (at: number) => {
    if (state[at] === 2) return;
    if (state[at] === 1) throw new RangeError('the order of work goes round in a circle');
    state[at] = 1;
    for (const { task } of before[at] ?? []) visit(task);
    state[at] = 2;
    order.push(at);
  };
  for (let at = 0; at < count; at++) visit(at);
  return order;
}

/**
 * The earliest begin of each work: by the longest way to it, and by the hands that all before it need.
 * @param own what each has of itself, min
 */
function heads(span: readonly number[], own: readonly number[], before: Edges): number[] {
  const count = span.length;
  const head = [...own];
  const order = sorted(count, before);
  // The longest way from the end of each work to the begin of this one; below nothing where there is none.
  const ways: Float64Array[] = [];
  for (const at of order) {
    const way = new Float64Array(count).fill(-1);
    for (const { task, lagMin } of before[at] ?? []) {
      way[task] = Math.max(way[task] as number, lagMin);
      const further = ways[task] as Float64Array;
      for (let one = 0; one < count; one++)
        if ((further[one] as number) >= 0)
          way[one] = Math.max(way[one] as number, (further[one] as number) + (span[task] as number) + lagMin);
    }
    ways[at] = way;
    const all = order.filter((one) => (way[one] as number) >= 0);
    if (all.length > 0) head[at] = Math.max(head[at] as number, changingOver(all, span, head, way));
  }
  return head;
}

/**
 * Works with their earliest begins, the least time behind each, and the instant before which no sequence is ready.
 * @throws RangeError where the order goes round in a circle
 * @example dayGraph([{ spanMin: 5, headMin: 2, tailMin: 10, after: [] }]).boundMin //=> 17
 */
export function dayGraph(tasks: readonly DayTask[]): DayGraph {
  const count = tasks.length;
  const span = tasks.map(({ spanMin }) => spanMin);
  const before = tasks.map(({ after }) => after);
  const behind = tasks.map((): { task: number; lagMin: number }[] => []);
  for (const [task, { after }] of tasks.entries())
    for (const { task: other, lagMin } of after) behind[other]?.push({ task, lagMin });
  const head = heads(
    span,
    tasks.map(({ headMin }) => headMin),
    before,
  );
  const tail = heads(
    span,
    tasks.map(({ tailMin }) => tailMin),
    behind,
  );
  const boundMin = changingOver([...span.keys()], span, head, tail);
  return { count, span, before, behind, head, tail, boundMin };
}
