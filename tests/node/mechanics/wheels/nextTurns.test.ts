import { describe, expect, test } from 'vitest';
import { nextTurns, type TruingBands, wheelAfter } from '../../../../src/mechanics/wheels/nextTurns.ts';
import { spokeLayout } from '../../../../src/mechanics/wheels/spokeLayout.ts';
import { spokeStiffnessN } from '../../../../src/mechanics/wheels/spokeLengthCorrections.ts';
import { NIPPLE_PITCH_MM } from '../../../../src/mechanics/wheels/spokeTensionNipple.ts';
import { usualRim, wheelInfluence } from '../../../../src/mechanics/wheels/wheelInfluence.ts';
import { turnEach, turnNipples } from '../../../fixtures/wheels/finiteElementWheel.ts';
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
  const sides = { left: side(leftMm), drive: side(driveMm) };
  const assumed = usualRim(erdMm);
  const targetsN = layout.map((one) => (one.side === 'drive' ? 1000 : (1000 * driveMm) / leftMm));
  return {
    layout,
    targetsN,
    influence: wheelInfluence(layout, sides, erdMm, assumed),
    /** What every nipple does on a wheel of finite elements whose rim is so many times as stiff as assumed. */
    nipplesAt: (times: number) => {
      const rim = {
        radiusMm: assumed.radiusMm,
        roundNmm2: times * assumed.roundNmm2,
        sidewaysNmm2: times * assumed.sidewaysNmm2,
        twistNmm2: times * assumed.twistNmm2,
        stretchN: times * assumed.stretchN,
      };
      return turnEach(layout, sides, rim, erdMm, [...layout.keys()], {
        ...{ perGap: 2, stiffnessN: spokeStiffnessN(pieces), pitchMm: NIPPLE_PITCH_MM },
      });
    },
  };
}

/** Wheels as hands leave them: nipples of a true one turned at random. The wheel is one of finite elements. */
function outOfTrue(times: number) {
  const nipples = wheels.map(({ nipplesAt }) => nipplesAt(times));
  const roll = dice(SEED);
  return Array.from({ length: RUNS }, (_, run) => {
    const wheel = wheels[run % wheels.length]!;
    const each = nipples[run % wheels.length]!;
    const { targetsN } = wheel;
    const flat = targetsN.map(() => 0);
    const most = 0.2 + 0.5 * roll();
    const turns = targetsN.map(() => (roll() + roll() + roll() - 1.5) * most);
    const begun = turnNipples({ tensionsN: targetsN, sidewaysMm: flat, outwardMm: flat }, each, turns);
    return { ...wheel, each, begun };
  });
}

/** How far outside its bands such a wheel is once it was turned as told. */
function afterTurns(
  { begun, each, targetsN }: ReturnType<typeof outOfTrue>[number],
  quarters: readonly number[],
): number {
  const turned = turnNipples(
    begun,
    each,
    quarters.map((one) => one / 4),
  );
  return excess(turned, targetsN, bands);
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

  describe(`${RUNS} random wheels of finite elements, seed ${SEED}, turned as told`, () => {
    const told = outOfTrue(1).map((wheel) => {
      const { begun, targetsN, influence, layout, each } = wheel;
      const { quarters, within } = nextTurns(begun, targetsN, bands, influence);
      const rule = byRuleOfThumb(begun, targetsN, bands, each, layout, 300);
      return { within, rule, left: afterTurns(wheel, quarters), turns: spent(quarters) };
    });

    test('what is promised to be within its bands is, to a twentieth of a band', () => {
      const promised = told.filter(({ within }) => within);
      expect(promised.length).toBeGreaterThan(0.9 * RUNS);
      for (const { left } of promised) expect(left).toBeLessThan(0.05);
    });

    test('at most one in twenty is left farther out than by the rule of thumb, with a look after every turn', () => {
      const worse = told.filter(({ left, rule }) => left > rule.excess + 1e-9);
      expect(worse.length).toBeLessThanOrEqual(0.05 * RUNS);
    });

    test('fewer turns than by the rule, where the rule ends within', () => {
      const both = told.filter(({ rule }) => rule.excess === 0);
      // The rule must have brought some of them within, or there is nothing to compare.
      expect(both.length).toBeGreaterThan(RUNS / 10);
      const sum = (list: readonly number[]) => list.reduce((all, one) => all + one, 0);
      expect(sum(both.map(({ turns }) => turns))).toBeLessThan(
        0.8 * sum(both.map(({ rule }) => rule.quarterTurns)),
      );
    });
  });

  test.each([0.5, 2])(
    'a rim %s times as stiff as assumed: the first try takes away more than half',
    (times) => {
      for (const wheel of outOfTrue(times)) {
        const { begun, targetsN, influence } = wheel;
        const { quarters } = nextTurns(begun, targetsN, bands, influence);
        const before = excess(begun, targetsN, bands);
        if (before > 0) expect(afterTurns(wheel, quarters)).toBeLessThan(before / 2);
      }
    },
  );

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
