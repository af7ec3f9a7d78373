import { expect, test } from 'vitest';
import type { DayPlan, TimedWork } from '../../../src/planning/day/dayPlan.ts';
import { pauseWords, readyWords, whyFirst, workWords } from '../../../src/words/dayPlanWords.ts';

const work = (more: Partial<TimedWork> = {}): TimedWork => ({
  ...{
    steps: [{ title: 'Fork: fit' }] as TimedWork['steps'],
    span: [3, 8, 20],
    own: 0,
    headMin: 0,
    after: [],
  },
  ...{ beginMin: 0, endMin: 8 },
  ...more,
});
const plan = (more: Partial<DayPlan>): DayPlan => ({
  ...{ works: [work()], handsMin: 60, readyMin: 60, likelyMin: [50, 80], runningMin: 0, pauseFreeMin: 0 },
  ...{ behindFirstMin: 0, best: true },
  ...more,
});

test('[B6] when it is ready, told to five minutes, and what waits after the hands are done', () => {
  expect(readyWords(plan({}), 0, 'UTC')).toBe('Ready about 01:00, between 00:50 and 01:20.');
  expect(readyWords(plan({ readyMin: 180, likelyMin: [179, 181] }), 0, 'UTC')).toBe(
    'Ready about 03:00. Your work ends about 01:00; the rest is waiting.',
  );
});

test('[B6] why to begin there', () => {
  const settling = work({ wait: { kind: 'settles', span: [30, 60, 240] } });
  expect(whyFirst({ works: [settling, work()], behindFirstMin: 60 })).toBe(
    'It settles for about 1 h while you do the rest.',
  );
  expect(whyFirst({ works: [work()], behindFirstMin: 0 })).toBe('It is the last one.');
  expect(whyFirst({ works: [work(), work()], behindFirstMin: 95 })).toBe(
    'The longest way to the end begins here: 1 h 35 min after it.',
  );
});

test('[B6] what a pause does', () => {
  expect(pauseWords({ pauseFreeMin: 0 })).toBe('A pause now makes it later by as much.');
  expect(pauseWords({ pauseFreeMin: 33 })).toBe('A pause now of up to 30 min makes it no later.');
});

test('[B6] a line of the day', () => {
  expect(workWords(work(), 0, 'UTC')).toBe('00:00  Fork: fit, 8 min');
  expect(workWords(work({ own: 4, wait: { kind: 'cures', span: [1440, 1440, 1440] } }), 0, 'UTC')).toBe(
    '00:00  Fork: fit, 8 min (yours, 4 times), then cures 1 d',
  );
});
