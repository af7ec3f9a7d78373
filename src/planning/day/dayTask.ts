/** One piece of work for one pair of hands; what it starts goes on by itself. All times in minutes, 0 or more. */
export interface DayTask {
  spanMin: number;
  /** Not before this, counted from now: a wait that runs already. */
  headMin: number;
  /** What runs on by itself after it until the bike is ready: a cure that nothing else waits for. */
  tailMin: number;
  /** What has to be done before it, and how long after that it may begin. */
  after: readonly { task: number; lagMin: number }[];
}

/** The same work with heads and tails drawn out of the order, for searching. */
export interface DayGraph {
  count: number;
  span: readonly number[];
  before: readonly (readonly { task: number; lagMin: number }[])[];
  behind: readonly (readonly { task: number; lagMin: number }[])[];
  /** Earliest begin of each, whatever the sequence. */
  head: number[];
  /** Least time from the end of each until the bike is ready. */
  tail: number[];
  /** No sequence is ready before this. */
  boundMin: number;
}

/**
 * Work laid out in time: each piece as early as its sequence allows.
 * @param order every piece once, none before what it comes after
 * @returns begin of each piece by its number, and when the bike is ready, min
 * @example laidOut([{ spanMin: 5, headMin: 0, tailMin: 10, after: [] }], [0]) //=> { begins: [0], readyMin: 15, handsMin: 5 }
 */
export function laidOut(
  tasks: readonly DayTask[],
  order: readonly number[],
  fromMin = 0,
): { begins: number[]; readyMin: number; handsMin: number } {
  const begins = new Array<number>(tasks.length).fill(0);
  let hands = fromMin;
  let ready = 0;
  for (const at of order) {
    const task = tasks[at] as DayTask;
    let begin = Math.max(hands, task.headMin);
    for (const { task: other, lagMin } of task.after)
      begin = Math.max(begin, (begins[other] as number) + (tasks[other] as DayTask).spanMin + lagMin);
    begins[at] = begin;
    hands = begin + task.spanMin;
    ready = Math.max(ready, hands + task.tailMin);
  }
  return { begins, readyMin: ready, handsMin: hands };
}
