import { expect, test } from 'vitest';
import { pullFigure } from '../../../../src/standards/checks/pullFigure.ts';

const torque = { value: 5 };

test.each([
  ['none', [{ source: 'none' }], 'hand-tight', undefined],
  ['none', [], 'open', undefined],
  ['target', [{ source: 'none' }, { torque }], 'hand-tight', undefined],
  ['target', [{ torque }], 'torqued', torque],
  ['applied', [], 'torqued', torque],
  // Loosened to hand-tight after the torque: what was applied then is not in it any more.
  ['none', [], 'hand-tight', torque],
])('there is %s to pull to: %j, %s', (figure, targets, state, applied) => {
  expect(pullFigure({ targets, state, applied })).toBe(figure);
});
