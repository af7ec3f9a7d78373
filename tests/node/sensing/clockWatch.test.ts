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
  expect(clockWatch({ wallMs: () => 0, steadyMs: () => 0 }).look()).toBe(0));

test('time passing is no jump', () => {
  const { run, watch } = clocks();
  run(86_400_000);
  expect(watch.look()).toBe(0);
});

test.each([3_600_000, -3_600_000, 60_000, -60_000])('a clock set by %s ms is told once', (jumpMs) => {
  const { at, run, watch } = clocks();
  run(5000);
  at.wall += jumpMs;
  run(5000);
  expect(watch.look()).toBe(jumpMs);
  run(5000);
  expect(watch.look()).toBe(0);
});

test('less than a minute is no jump', () => {
  const { at, watch } = clocks();
  at.wall += 59_999;
  expect(watch.look()).toBe(0);
});

test('small steps in one direction add up', () => {
  const { at, watch } = clocks();
  at.wall += 40_000;
  expect(watch.look()).toBe(0);
  at.wall += 40_000;
  expect(watch.look()).toBe(80_000);
});
