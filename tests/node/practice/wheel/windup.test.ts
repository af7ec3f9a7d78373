import { expect, test } from 'vitest';
import { workedWheel } from '../../../../src/practice/wheel/wheelResult.ts';
import { tighterWindup } from '../../../../src/practice/wheel/windup.ts';
import { dishedRear, mm, newtons } from '../../../fixtures/wheels/someWheels.ts';

const windupOf = (wheel: typeof dishedRear) => {
  const worked = workedWheel(wheel);
  return worked.is === 'known' ? tighterWindup(wheel, worked.result) : undefined;
};

// The handbook's estimate for a plain spoke of 184 mm at 1000 N: 16 to 25°.
test('the example: 16 to 25° on a 20 inch wheel at 1000 N', () => {
  const windup = windupOf({ ...dishedRear, target: newtons(1000) });
  expect(Math.round(windup?.lo ?? 0)).toBe(16);
  expect(Math.round(windup?.hi ?? 0)).toBe(25);
});

test('a butted spoke twists where it is thin', () => {
  const side = { ...dishedRear.driveSide, thin: mm(1.5), thick: mm(2) };
  expect(windupOf({ ...dishedRear, driveSide: side })?.mid).toBeGreaterThan(windupOf(dishedRear)?.mid ?? 0);
});
