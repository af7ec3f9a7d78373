import { describe, expect, test } from 'vitest';
import {
  nextTurns,
  type TruingBands,
  type WheelState,
  wheelAfter,
} from '../../../../src/mechanics/wheels/nextTurns.ts';
import { spokeLayout } from '../../../../src/mechanics/wheels/spokeLayout.ts';
import { usualRim, wheelInfluence } from '../../../../src/mechanics/wheels/wheelInfluence.ts';
import { byRuleOfThumb, excess } from '../../../fixtures/wheels/ruleOfThumb.ts';

const pieces = [{ lengthMm: 184, diameterMm: 2 }];
const bands: TruingBands = { sidewaysMm: 0.15, outwardMm: 0.2, tensionShare: 0.15 };

/** The same dice every time. */
function dice(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return state / 2 ** 32;
  };
}

function aWheel(spokes: number, crosses: number, erdMm: number, leftMm: number, driveMm: number) {
  const half = spokes / 2;
  const layout = spokeLayout({
    ...{ drilling: 'even', firstSide: 'left', leftSpokes: half, driveSpokes: half },
    ...{ leftCrosses: crosses, driveCrosses: crosses },
  });
  const side = (flangeMm: number) => ({ pcdMm: 45, flangeMm, pieces });
  const influence = wheelInfluence(
    layout,
    { left: side(leftMm), drive: side(driveMm) },
    erdMm,
    usualRim(erdMm),
  );
  const targetsN = layout.map((one) => (one.side === 'drive' ? 1000 : (1000 * driveMm) / leftMm));
  return { layout, influence, targetsN };
}

/** A wheel as hands leave it: nipples turned at random from a true one, and a pointer that misreads a little. */
function outOfTrue(
  { influence, targetsN }: ReturnType<typeof aWheel>,
  roll: () => number,
  turns: number,
): WheelState {
  const quarters = targetsN.map(() => (roll() + roll() + roll() - 1.5) * turns * 4);
  const flat = targetsN.map(() => 0);
  const moved = wheelAfter({ tensionsN: targetsN, sidewaysMm: flat, outwardMm: flat }, quarters, influence);
  const mean = moved.outwardMm.reduce<number>((sum, mm) => sum + (mm ?? 0), 0) / targetsN.length;
  return { ...moved, outwardMm: moved.outwardMm.map((mm) => (mm ?? 0) - mean) };
}

const spent = (quarters: readonly number[]) => quarters.reduce((sum, one) => sum + Math.abs(one), 0);

const wheels = [aWheel(36, 3, 384, 34, 20), aWheel(32, 3, 601, 35, 21), aWheel(24, 2, 595, 30, 30)];
const RUNS = Number(process.env.WHEEL_RUNS ?? 90);
const SEED = Number(process.env.WHEEL_SEED ?? 7);

describe('what to turn next', () => {
  test('nothing on a wheel that is within its bands', () => {
    const { influence, targetsN } = wheels[0]!;
    const flat = targetsN.map(() => 0);
    const plan = nextTurns(
      { tensionsN: targetsN, sidewaysMm: flat, outwardMm: flat },
      targetsN,
      bands,
      influence,
    );
    expect(plan).toMatchObject({ within: true, quarters: flat });
  });

  test('one nipple half a turn off is found, and turned back', () => {
    const { influence, targetsN } = wheels[1]!;
    const flat = targetsN.map(() => 0);
    const off = flat.map((_, at) => (at === 10 ? 2 : 0));
    const state = wheelAfter({ tensionsN: targetsN, sidewaysMm: flat, outwardMm: flat }, off, influence);
    const { quarters } = nextTurns(state, targetsN, { ...bands, tensionShare: 0.05 }, influence);
    expect(quarters.flatMap((turn, at) => (turn === 0 ? [] : [[at, Math.sign(turn)]]))).toEqual([[10, -1]]);
  });

  test(`${RUNS} random wheels, seed ${SEED}: never worse than the rule of thumb, and fewer turns`, () => {
    const roll = dice(SEED);
    let [ours, rules, both, worse] = [0, 0, 0, 0];
    for (let run = 0; run < RUNS; run++) {
      const wheel = wheels[run % wheels.length]!;
      const state = outOfTrue(wheel, roll, 0.2 + 0.5 * roll());
      const { quarters, expected } = nextTurns(state, wheel.targetsN, bands, wheel.influence);
      const rule = byRuleOfThumb(state, wheel.targetsN, bands, wheel.influence, wheel.layout, 300);
      const mean = expected.outwardMm.reduce<number>((sum, mm) => sum + (mm ?? 0), 0) / quarters.length;
      const there = { ...expected, outwardMm: expected.outwardMm.map((mm) => (mm ?? 0) - mean) };
      const left = excess(there, wheel.targetsN, bands);
      if (left > rule.excess + 1e-9) worse += 1;
      if (rule.excess > 0) continue;
      both += 1;
      ours += spent(quarters);
      rules += rule.quarterTurns;
    }
    // The rule must have brought some of them within, or there is nothing to compare.
    expect(both).toBeGreaterThan(RUNS / 10);
    expect(ours).toBeLessThan(0.8 * rules);
    expect(worse).toBe(0);
  });

  test('without a run-out reading it evens the tensions alone, and a spoke that was not read is left', () => {
    const { influence, targetsN } = wheels[0]!;
    const none = targetsN.map(() => null);
    const tensionsN = targetsN.map((n, at) => (at === 3 ? n * 1.4 : at === 8 ? null : n));
    const plan = nextTurns({ tensionsN, sidewaysMm: none, outwardMm: none }, targetsN, bands, influence);
    expect(plan.within).toBe(true);
    expect(plan.quarters[3]).toBeLessThan(0);
    expect(plan.expected.tensionsN[8]).toBeNull();
  });

  test('lists that do not match, and bands of nothing, are no question', () => {
    const { influence, targetsN } = wheels[0]!;
    const flat = targetsN.map(() => 0);
    const state = { tensionsN: targetsN, sidewaysMm: flat, outwardMm: flat };
    expect(() => nextTurns({ ...state, sidewaysMm: [0] }, targetsN, bands, influence)).toThrow(RangeError);
    expect(() => nextTurns(state, targetsN, { ...bands, outwardMm: 0 }, influence)).toThrow(RangeError);
  });
});
