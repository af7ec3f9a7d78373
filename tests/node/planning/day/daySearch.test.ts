import { describe, expect, test } from 'vitest';
import { changingOver, dayGraph } from '../../../../src/planning/day/dayBound.ts';
import { bestOrder } from '../../../../src/planning/day/daySearch.ts';
import { type DayTask, laidOut } from '../../../../src/planning/day/dayTask.ts';
import { randomDay } from './randomDay.ts';

/** Ready at the earliest, the naive way: every sequence there is, minute by minute, with nothing of the product. */
function naiveReady(tasks: readonly DayTask[]): number {
  let earliest = Number.POSITIVE_INFINITY;
  const go = (left: readonly number[], over: ReadonlyMap<number, number>, hands: number, ready: number) => {
    if (left.length === 0) earliest = Math.min(earliest, ready);
    for (const at of left) {
      const task = tasks[at];
      if (!task?.after.every((one) => over.has(one.task))) continue;
      const begins = [
        hands,
        task.headMin,
        ...task.after.map((one) => (over.get(one.task) ?? 0) + one.lagMin),
      ];
      const end = Math.max(...begins) + task.spanMin;
      go(
        left.filter((one) => one !== at),
        new Map(over).set(at, end),
        end,
        Math.max(ready, end + task.tailMin),
      );
    }
  };
  go([...tasks.keys()], new Map(), 0, 0);
  return earliest;
}

const keepsOrder = (tasks: readonly DayTask[], order: readonly number[]) =>
  order.toSorted((a, b) => a - b).every((at, place) => at === place) &&
  order.every((at, place) => tasks[at]?.after.every(({ task }) => order.indexOf(task) < place));

test('the examples of the descriptions', () => {
  const one = { spanMin: 5, headMin: 0, tailMin: 10, after: [] };
  expect(laidOut([one], [0])).toEqual({ begins: [0], readyMin: 15, handsMin: 5 });
  expect(changingOver([0, 1], [3, 2], [0, 0], [0, 4])).toBe(6);
  expect(dayGraph([{ ...one, headMin: 2 }]).boundMin).toBe(17);
  expect(bestOrder([{ ...one, tailMin: 0 }])).toEqual({ order: [0], readyMin: 5, boundMin: 5, best: true });
});

test('nothing to do is ready at once; a circle is refused', () => {
  expect(bestOrder([])).toMatchObject({ order: [], readyMin: 0, best: true });
  const round = [0, 1].map((at) => ({
    spanMin: 1,
    headMin: 0,
    tailMin: 0,
    after: [{ task: 1 - at, lagMin: 0 }],
  }));
  expect(() => bestOrder(round)).toThrow(RangeError);
});

test('[B6] a tyre settles while the other wheel is laced', () => {
  const plain = { headMin: 0, tailMin: 0 };
  const tasks = [
    { ...plain, spanMin: 90, after: [] },
    { ...plain, spanMin: 20, after: [] },
    { ...plain, spanMin: 10, after: [{ task: 1, lagMin: 60 }] },
  ];
  expect(bestOrder(tasks)).toMatchObject({ order: [1, 0, 2], readyMin: 120, best: true });
});

test('[B6] among sequences as good the given order is kept', () => {
  const one = { spanMin: 5, headMin: 0, tailMin: 0, after: [] };
  expect(bestOrder([one, one, { ...one, tailMin: 3 }, one]).order).toEqual([0, 1, 2, 3]);
  expect(bestOrder([one, one, { ...one, tailMin: 10 }, one]).order).toEqual([0, 2, 1, 3]);
});

describe('[B6] the sequence that is ready first', () => {
  test('is that of trying every sequence, on 400 small days', () => {
    for (let seed = 1; seed <= 400; seed++) {
      const tasks = randomDay(seed, 2 + (seed % 6));
      const { order, readyMin, best, boundMin } = bestOrder(tasks);
      expect([seed, readyMin, best, boundMin]).toEqual([seed, naiveReady(tasks), true, readyMin]);
      expect(keepsOrder(tasks, order)).toBe(true);
    }
  });

  test('no bound is above the best there is', () => {
    for (let seed = 401; seed <= 700; seed++) {
      const tasks = randomDay(seed, 2 + (seed % 6));
      expect(dayGraph(tasks).boundMin).toBeLessThanOrEqual(naiveReady(tasks));
    }
  });

  test('is proven on days of twenty works', () => {
    const open: number[] = [];
    for (let seed = 1; seed <= 60; seed++) if (!bestOrder(randomDay(seed, 20)).best) open.push(seed);
    expect(open).toEqual([]);
  });

  test('is within 2 % of the bound on the average of 40 days of sixty works', () => {
    const over = Array.from({ length: 40 }, (_, seed) => {
      const tasks = randomDay(seed + 1, 60);
      const { order, readyMin, boundMin } = bestOrder(tasks);
      expect(keepsOrder(tasks, order)).toBe(true);
      expect(laidOut(tasks, order).readyMin).toBe(readyMin);
      return readyMin / boundMin - 1;
    });
    expect(over.reduce((sum, one) => sum + one, 0) / over.length).toBeLessThan(0.02);
    expect(Math.min(...over)).toBeGreaterThanOrEqual(0);
  });
});
