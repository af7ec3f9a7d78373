import { expect, test } from 'vitest';
import { pullInstructions } from '../../../../src/standards/checks/pullInstructions.ts';

test('without a figure nothing asks for a pull, and none is made up', () => {
  const { title, words } = pullInstructions.none;
  expect(`${title} ${words}`).not.toMatch(/pull slowly|\d/i);
  expect(words).toMatch(/Look for the figure first/);
  expect(pullInstructions.applied.words).toMatch(/no further/);
});
