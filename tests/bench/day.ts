import { bestOrder } from '../../src/planning/day/daySearch.ts';
import { laidOut } from '../../src/planning/day/dayTask.ts';
import { randomDay } from '../node/planning/day/randomDay.ts';

/** Runs in the page: the day's order of work, against the bound and against laying days out and nothing more. */

const timed = (work: () => unknown): number => {
  const start = performance.now();
  work();
  return performance.now() - start;
};

/** How far above the proven bound each day is, and what ordering it takes, ms. */
export function days(count: number, works: number): { over: number[]; ms: number[] } {
  const over: number[] = [];
  const ms: number[] = [];
  for (let seed = 1; seed <= count; seed += 1) {
    const tasks = randomDay(seed, works);
    let ready = 0;
    let bound = 0;
    ms.push(timed(() => ({ readyMin: ready, boundMin: bound } = bestOrder(tasks))));
    over.push(ready / bound - 1);
  }
  return { over, ms };
}

/** What laying each of these days out 2,500 times takes, ms: as often as a long list is tried to be bettered. */
export const floorMs = (count: number, works: number): number[] =>
  Array.from({ length: count }, (_, at) => {
    const tasks = randomDay(at + 1, works);
    const order = [...tasks.keys()];
    return timed(() => {
      for (let time = 0; time < 2500; time += 1) laidOut(tasks, order);
    });
  });
