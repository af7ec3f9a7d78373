import { describe, expect, test } from 'vitest';
import type { WheelAbout } from '../../../../src/journal/aboutWheels.ts';
import { truingAdvice } from '../../../../src/practice/wheel/truingAdvice.ts';
import { workedWheel } from '../../../../src/practice/wheel/wheelResult.ts';
import { dishedRear, mm, newtons, sideOf } from '../../../fixtures/wheels/someWheels.ts';

const large: WheelAbout = {
  ...dishedRear,
  ...{
    leftSide: sideOf(16, 3, 58, 35),
    driveSide: sideOf(16, 3, 58, 21),
    erds: [mm(601)],
    target: newtons(1000),
  },
};

function asked(wheel: WheelAbout) {
  const worked = workedWheel(wheel);
  if (worked.is !== 'known') throw new Error(worked.is);
  const { figures, result } = worked;
  const ratio = result.tensions.ok ? result.tensions.leftN : Number.NaN;
  const even = figures.layout.map(({ side }) => (side === 'left' ? ratio : 1000));
  return {
    figures,
    result,
    even,
    advise: (set: Parameters<typeof truingAdvice>[3]) => truingAdvice(wheel, figures, result, set),
  };
}

describe('what to turn next', () => {
  const { even, advise, figures } = asked(large);
  const flat = figures.layout.map(() => 0);

  test('the example: nothing on a wheel that is even and true', () =>
    expect(advise({ tensionsN: even, sidewaysMm: flat, outwardMm: flat })).toMatchObject({
      is: 'turns',
      turns: [],
      within: true,
    }));

  test('one spoke far too tight is loosened, first of all', () => {
    const tensionsN = even.map((n, at) => (at === 9 ? n * 1.5 : n));
    const advice = advise({ tensionsN });
    expect(advice).toMatchObject({ is: 'turns', within: true });
    if (advice.is === 'turns')
      expect(advice.turns[0]).toMatchObject({ spoke: 10, side: figures.layout[9]!.side });
    if (advice.is === 'turns') expect(advice.turns[0]?.eighths).toBeLessThan(0);
  });

  test('where the pointer stood does not matter, and a dish to the drive side loosens there or tightens left', () => {
    const shifted = flat.map(() => 1.7);
    expect(advise({ tensionsN: even, sidewaysMm: shifted })).toMatchObject({
      is: 'turns',
      turns: [],
      within: true,
    });
    const advice = advise({ tensionsN: even, sidewaysMm: shifted, dish: mm(0.6) });
    if (advice.is !== 'turns') throw new Error(advice.is);
    const pull = advice.turns.reduce(
      (sum, { side, eighths }) => sum + (side === 'left' ? eighths : -eighths),
      0,
    );
    expect(pull).toBeGreaterThan(0);
  });

  test('without a target each side is brought to its own mean', () => {
    const { target: _target, ...rest } = large;
    const advice = asked(rest).advise({ tensionsN: even.map((n) => n * 0.8) });
    expect(advice).toMatchObject({ is: 'turns', turns: [], within: true });
    if (advice.is === 'turns') expect(advice.targetsN.drive).toBeCloseTo(800, 6);
  });

  test('nothing read, and one side alone without a target, are said so', () => {
    const none = even.map(() => null);
    expect(advise({ tensionsN: none }).is).toBe('nothing-read');
    const { target: _target, ...rest } = large;
    const oneSide = figures.layout.map(({ side }) => (side === 'left' ? 600 : null));
    expect(asked(rest).advise({ tensionsN: oneSide }).is).toBe('no-target');
  });

  test('a flange in the plane of the rim holds nothing', () => {
    const { figures: beside, result, advise: asking } = asked({ ...large, driveSide: sideOf(16, 3, 58, 0) });
    expect(result.tensions.ok).toBe(false);
    expect(asking({ tensionsN: beside.layout.map(() => 900) }).is).toBe('held-by-nothing');
    // The target is set: to ask for one would not help.
    const left = beside.layout.map(({ side }) => (side === 'left' ? 900 : null));
    expect(asking({ tensionsN: left }).is).toBe('held-by-nothing');
  });

  test('[H3] nothing is turned toward a tension above the rim maker’s maximum', () => {
    const tooMuch = { ...large, target: newtons(1300), limit: newtons(1200) };
    expect(asked(tooMuch).advise({ tensionsN: even }).is).toBe('at-maximum');
    const { target: _target, ...rest } = large;
    const tight = even.map((n) => 1.3 * n);
    expect(asked({ ...rest, limit: newtons(1200) }).advise({ tensionsN: tight }).is).toBe('at-maximum');
  });

  test('[H3] a spoke above the maximum is not within its band, and what is promised lies below it', () => {
    const limit = newtons(1070);
    const tensionsN = even.map((n, at) => (figures.layout[at]!.side === 'drive' ? 1.08 * n : n));
    expect(advise({ tensionsN })).toMatchObject({ turns: [], within: true });
    const advice = asked({ ...large, limit }).advise({ tensionsN });
    if (advice.is !== 'turns') throw new Error(advice.is);
    expect(advice.within).toBe(true);
    expect(advice.turns.length).toBeGreaterThan(0);
    for (const n of advice.expected.tensionsN) expect(n).toBeLessThanOrEqual(1070 + 1e-6);
  });

  test('on the short spokes of a small wheel quarter turns are too coarse, and eighths help', () => {
    const small = asked({ ...dishedRear, target: newtons(1000) });
    const tensionsN = small.even.map((n, at) => n * [1.13, 1, 0.92, 0.95, 1.04][at % 5]!);
    const advice = small.advise({ tensionsN });
    if (advice.is !== 'turns') throw new Error(advice.is);
    expect(advice.turns.some(({ eighths }) => eighths % 2 !== 0)).toBe(true);
    const worst = (list: readonly (number | null)[]) =>
      Math.max(...list.map((n, at) => Math.abs((n ?? 0) / (small.even[at] ?? 1) - 1)));
    expect(worst(advice.expected.tensionsN)).toBeLessThan(worst(tensionsN));
  });
});
