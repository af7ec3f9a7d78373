import { expect, test } from 'vitest';
import { clockWatch } from '../../../src/sensing/clockWatch.ts';

function clocks() {
  const at = { wall: 1_000_000, steady: 50 };
  return {
    at,
    run(ms: number) {
      at.wall += ms;
      at.steady += ms;
    },
    watch: clockWatch({ wallMs: () => at.wall, steadyMs: () => at.steady }),
  };
}

test('example of the docstring: clocks that stand still have not jumped', () =>
  expect(clockWatch({ wallMs: () => 0, steadyMs: () => 0 }).look()).toBeUndefined());

test('time passing is no jump', () => {
  const { run, watch } = clocks();
  run(86_400_000);
  expect(watch.look()).toBeUndefined();
});

test.each([3_600_000, -3_600_000, 60_000, -60_000])('a clock set by %s ms is told once', (jumpMs) => {
  const { at, run, watch } = clocks();
  run(5000);
  at.wall += jumpMs;
  run(5000);
  expect(watch.look()?.byMs).toBe(jumpMs);
  run(5000);
  expect(watch.look()).toBeUndefined();
});

test('less than a minute is no jump', () => {
  const { at, watch } = clocks();
  at.wall += 59_999;
  expect(watch.look()).toBeUndefined();
});

test('small steps in one direction add up', () => {
  const { at, watch } = clocks();
  at.wall += 40_000;
  expect(watch.look()).toBeUndefined();
  at.wall += 40_000;
  expect(watch.look()?.byMs).toBe(80_000);
});

test('[W2] a night in which the steady clock stood still is no clock that was set', () => {
  const { at, run, watch } = clocks();
  watch.look(true);
  // The phone sleeps with the page out of sight; on waking the page is seen again.
  at.wall += 8 * 3_600_000;
  run(200);
  expect(watch.look(true)).toBeUndefined();
  run(10_000);
  expect(watch.look()).toBeUndefined();
});

test('a clock put back is told, also when the page was out of sight meanwhile', () => {
  const { at, watch } = clocks();
  at.wall -= 7_200_000;
  expect(watch.look(true)?.byMs).toBe(-7_200_000);
});

test('the instant after which it happened is told by the clock as it runs now', () => {
  const { at, run, watch } = clocks();
  run(5000);
  watch.look();
  at.wall += 3_600_000;
  run(5000);
  expect(watch.look()).toEqual({ byMs: 3_600_000, afterMs: 1_005_000 + 3_600_000 });
});
