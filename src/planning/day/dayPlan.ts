import { bestOrder } from './daySearch.ts';
import { type DayTask, laidOut } from './dayTask.ts';
import { type DayAround, type DayWork, dayWorks } from './dayWorks.ts';

/** A work at its time, min from now. */
export interface TimedWork extends DayWork {
  beginMin: number;
  endMin: number;
  /** What it starts is over by then. */
  waitEndMin?: number;
}

/** The day of one pair of hands. */
export interface DayPlan {
  /** In the order of the hands. */
  works: TimedWork[];
  /** The last hand's turn, and when everything has cured and settled, min from now. */
  handsMin: number;
  readyMin: number;
  /** Between these it is likely to be ready. */
  likelyMin: readonly [early: number, late: number];
  /** Waits that run already are over by then. */
  runningMin: number;
  /** A pause now of up to so many minutes makes nothing later. */
  pauseFreeMin: number;
  /** Least time from the end of the first work until the bike is ready, hands and waits together. */
  behindFirstMin: number;
  /** No other order is ready earlier. */
  best: boolean;
}

/** Works as tasks, with the span of one of them quick or slow. */
function tasksOf(works: readonly DayWork[], off?: { at: number; which: 0 | 2 }): DayTask[] {
  const span = (at: number) => (off?.at === at ? off.which : 1);
  return works.map((work, at) => ({
    spanMin: work.span[span(at)],
    headMin: work.headMin,
    tailMin: work.wait?.span[span(at)] ?? 0,
    after: work.after.map(({ work: task, waits }) => ({
      task,
      lagMin: waits ? (works[task]?.wait?.span[span(task)] ?? 0) : 0,
    })),
  }));
}

/**
 * The day of a bike: in which order one pair of hands is ready first, and when. The band takes each span as off by itself:
 * root of the sum of squares.
 * @returns undefined where nothing is open
 * @example dayPlan({ steps: [], joints: new Map(), parts: [], waits: [], past: new Map(), nowMs: 0 }) //=> undefined
 */
export function dayPlan(around: DayAround): DayPlan | undefined {
  const works = dayWorks(around);
  if (works.length === 0) return undefined;
  const tasks = tasksOf(works);
  const { order, best } = bestOrder(tasks);
  const { begins, readyMin: worked, handsMin } = laidOut(tasks, order);
  const due = around.waits.map(({ dueAtMs = around.nowMs }) => (dueAtMs - around.nowMs) / 60_000);
  const runningMin = Math.max(0, ...due);
  const ready = (given: readonly DayTask[], fromMin = 0) =>
    Math.max(runningMin, laidOut(given, order, fromMin).readyMin);
  const readyMin = Math.max(worked, runningMin);
  const off = (which: 0 | 2) =>
    Math.hypot(...works.map((_, at) => ready(tasksOf(works, { at, which })) - readyMin));
  // The longest way from the first turn of the hands to the end: what is left of the day beside it may be paused.
  const far = 100_000;
  const pauseFreeMin = Math.max(0, far + readyMin - ready(tasks, far));
  const first = order[0] ?? 0;
  return {
    works: order.flatMap((at): TimedWork[] => {
      const [work, task] = [works[at], tasks[at]];
      if (!work || !task) return [];
      const beginMin = begins[at] ?? 0;
      const endMin = beginMin + task.spanMin;
      return [
        { ...work, beginMin, endMin, ...(work.wait ? { waitEndMin: endMin + work.wait.span[1] } : {}) },
      ];
    }),
    ...{
      handsMin,
      readyMin,
      likelyMin: [readyMin - off(0), readyMin + off(2)],
      runningMin,
      pauseFreeMin,
      best,
    },
    behindFirstMin: readyMin - (begins[first] ?? 0) - (tasks[first]?.spanMin ?? 0),
  };
}
