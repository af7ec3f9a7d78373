import { expect, test } from 'vitest';
import { holds, type KeptJoint } from '../../../src/fit/topicJoints.ts';

const pedals: KeptJoint = { kind: 'pedal', state: 'torqued', partIds: ['pedals', 'cranks'], between: [] };

test.each([
  [pedals, ['cranks'], true],
  [pedals, ['cranks', 'pedals'], true],
  [pedals, ['cranks', 'chain'], false],
  // What was taken apart holds nothing.
  [{ ...pedals, state: 'apart' }, ['cranks'], false],
])('a joint that is %j holds %j: %s', (joint, partIds, held) => {
  expect(holds(joint, partIds)).toBe(held);
});
