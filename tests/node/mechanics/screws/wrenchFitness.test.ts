import { describe, expect, test } from 'vitest';
import { toolAtSetting, toolCheckState } from '../../../../src/mechanics/screws/wrenchFitness.ts';
import { toolClassRow } from '../../../fixtures/rows.ts';
import { refusesBadNumbers } from '../badNumbers.ts';

const tolerance = toolClassRow('click').tolerance!;
const large = { minNm: 40, maxNm: 200, tolerance };
const small = { minNm: 1, maxNm: 10, tolerance };

// ISO 6789 (from memory): ±6 % of the reading up to 10 N·m of full scale, ±4 % above, from a fifth of the scale upwards.
describe('a tool at a setting', () => {
  test.each([
    ['a long wrench at a stem bolt', large, 5, { ok: false, reason: 'below-its-scale' }],
    ['a long wrench at a crank', large, 40, { ok: true, error: 0.04 }],
    ['a long wrench beyond its end', large, 201, { ok: false, reason: 'above-full-scale' }],
    ['a small wrench at a stem bolt', small, 5, { ok: true, error: 0.06 }],
    ['a small wrench at its very bottom', small, 1.9, { ok: false, reason: 'below-a-fifth-of-full-scale' }],
    ['a small wrench at a fifth', small, 2, { ok: true, error: 0.06 }],
    ['a key with one torque, at it', { minNm: 5, maxNm: 5, tolerance }, 5, { ok: true, error: 0.06 }],
    [
      'a key with one torque, below it',
      { minNm: 5, maxNm: 5, tolerance },
      4,
      { ok: false, reason: 'below-its-scale' },
    ],
  ] as const)('%s', (_, tool, settingNm, expected) => {
    expect(toolAtSetting(tool, settingNm)).toEqual(expected);
  });
});

describe('the tool’s own check', () => {
  const yearly = { months: 12, cycles: 5000 };
  const days = (n: number) => n * 86_400_000;
  test.each([
    ['never done', undefined, 0, 0, 'never-checked'],
    ['yesterday', 0, 10, days(1), 'current'],
    ['eleven months ago', 0, 10, days(335), 'due-soon'],
    ['thirteen months ago', 0, 10, days(396), 'overdue'],
    ['last week, but 4600 clicks since', 0, 4600, days(7), 'due-soon'],
    ['last week, but 5000 clicks since', 0, 5000, days(7), 'overdue'],
  ] as const)('%s', (_, lastCheckMs, cycles, nowMs, state) => {
    expect(toolCheckState(lastCheckMs, cycles, nowMs, yearly)).toBe(state);
  });
  test('an impossible instant is refused', () => {
    expect(() => toolCheckState(0, 0, Number.NaN, yearly)).toThrow(RangeError);
  });
  refusesBadNumbers({ months: 'positive', cycles: 'positive' }, (name, value) =>
    toolCheckState(0, 0, 0, { ...yearly, [name]: value }),
  );
  refusesBadNumbers({ cyclesSince: 'or-zero' }, (_, value) => toolCheckState(0, value, 0, yearly));
});

refusesBadNumbers({ settingNm: 'positive' }, (_, value) => toolAtSetting(large, value));
refusesBadNumbers({ minNm: 'or-zero', maxNm: 'positive' }, (name, value) =>
  toolAtSetting({ ...large, [name]: value }, 50),
);
test('a scale that runs backwards is refused', () => {
  expect(() => toolAtSetting({ minNm: 20, maxNm: 5, tolerance }, 5)).toThrow(RangeError);
});
