import type { DayTask } from '../../../../src/planning/day/dayTask.ts';

/** Invented days, the same for the same seed: works of 2 to 40 minutes, waits up to some hours. */
export function randomDay(seed: number, count: number): DayTask[] {
  // "mulberry32", a small public-domain generator, from memory; any would do.
  let state = seed >>> 0;
  const dice = () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
  const whole = (lo: number, hi: number) => lo + Math.floor(dice() * (hi - lo + 1));
  const waits = 0.1 + dice() * 0.5;
  // How long the longest wait is against all the work there is.
  const longest = whole(10, Math.round(21 * count * (0.1 + dice() * 0.5)));
  const lag = () => (dice() < waits ? whole(0, longest) : 0);
  const after =
    seed % 2 === 0
      ? // Rows of works one after the other, with a pair across now and then: the hard kind.
        chains(whole(3, Math.max(3, Math.round(count / 3))), dice() * 0.3)
      : scattered(0.5 + dice() * 2);
  return Array.from({ length: count }, (_, at) => ({
    spanMin: whole(2, 40),
    headMin: dice() < 0.1 ? whole(0, 120) : 0,
    tailMin: dice() < 0.1 ? whole(0, longest) : 0,
    after: after(at).map((task) => ({ task, lagMin: lag() })),
  }));

  function chains(length: number, across: number): (at: number) => number[] {
    return (at) => [
      ...new Set([
        ...(at % length === 0 ? [] : [at - 1]),
        ...(at > 0 && dice() < across ? [whole(0, at - 1)] : []),
      ]),
    ];
  }
  function scattered(dense: number): (at: number) => number[] {
    return (at) => Array.from({ length: at }, (_, task) => task).filter(() => dice() < dense / count);
  }
}
