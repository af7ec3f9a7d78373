import type { WheelAbout } from '../../src/journal/aboutWheels.ts';
import { truingAdvice } from '../../src/practice/wheel/truingAdvice.ts';
import { workedWheel } from '../../src/practice/wheel/wheelResult.ts';
import { dishedRear, mm, newtons, sideOf } from '../fixtures/wheels/someWheels.ts';

/** Runs in the page: what to turn next on a wheel of 36 spokes. */

const wheel: WheelAbout = {
  ...dishedRear,
  ...{
    leftSide: sideOf(18, 3, 58, 35),
    driveSide: sideOf(18, 3, 58, 21),
    erds: [mm(601)],
    target: newtons(1000),
  },
};

/** Readings of a wheel on the way to true, the same dice every time. */
function roughSet(layout: readonly { side: 'left' | 'drive' }[], seed: number) {
  let state = seed >>> 0;
  const roll = () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return state / 2 ** 32 - 0.5;
  };
  return {
    tensionsN: layout.map(({ side }) => (side === 'left' ? 600 : 1000) * (1 + 0.3 * roll())),
    sidewaysMm: layout.map((_, at) => 0.4 * Math.sin(at / 3) + 0.2 * roll()),
    outwardMm: layout.map((_, at) => 0.3 * Math.cos(at / 5) + 0.2 * roll()),
  };
}

/** What each set takes, ms, after some that warm up. */
export function turnsMs(rounds: number): number[] {
  const worked = workedWheel(wheel);
  if (worked.is !== 'known') throw new Error(worked.is);
  const { figures, result } = worked;
  const spent: number[] = [];
  for (let at = -3; at < rounds; at += 1) {
    const set = roughSet(figures.layout, at + 10);
    const start = performance.now();
    const advice = truingAdvice(wheel, figures, result, set);
    if (advice.is !== 'turns') throw new Error(advice.is);
    if (at >= 0) spent.push(performance.now() - start);
  }
  return spent;
}
