import { describe, expect, test } from 'vitest';
import { orderedJoints } from '../../../src/planning/orderedJoints.ts';
import { breachWords, newBreach, placeInOrder } from '../../../src/planning/placeInOrder.ts';
import { inWorkOrder, orderedBefore, pairBetween } from '../../../src/planning/workPairs.ts';

type Joint = Parameters<typeof orderedJoints>[0][number];
type Part = Parameters<typeof orderedJoints>[1][number];
const joint = (
  jointId: string,
  kind: Joint['kind'],
  partIds: string[] = [],
  more: Partial<Joint> = {},
): Joint => ({ jointId, kind, partIds, between: [], state: 'open', ...more });
const step = (
  jointId: string,
  kind: 'fit' | 'press' | 'seat' | 'lock' | 'torque' | 'adjust',
  work?: 'play' | 'slack' | 'dish',
) => ({
  ...{ kind, jointId, title: `${jointId} ${work ?? kind}` },
  ...(work ? { work } : {}),
});
const titles = (steps: readonly { title: string }[]) => steps.map(({ title }) => title);

const parts: Part[] = [
  ...(['frame', 'fork', 'hub-f', 'hub-r', 'rim-f', 'rim-r', 'caliper'] as const).map((partId) => ({
    partId,
    kind: partId.split('-')[0] ?? '',
  })),
];
const wheels = [
  joint('lace-f', 'spokes', ['hub-f', 'rim-f']),
  joint('lace-r', 'spokes', ['hub-r', 'rim-r']),
  joint('tyre-f', 'bead', ['tyre', 'rim-f']),
  joint('axle-f', 'front-axle', ['hub-f', 'fork']),
  joint('axle-r', 'rear-axle', ['hub-r', 'frame']),
  joint('caliper', 'caliper', ['caliper', 'fork']),
];

test('the examples of the descriptions', () => {
  const none = new Map();
  const [cups, fork] = [
    { ...step('h', 'press'), title: 'Cups: press' },
    { ...step('f', 'fit'), title: 'Fork: fit' },
  ] as const;
  expect(orderedJoints([], []).size).toBe(0);
  expect(orderedBefore([], none)).toEqual([]);
  expect(inWorkOrder([], none)).toEqual([]);
  expect(newBreach([], cups, 0, none)).toBeUndefined();
  expect(placeInOrder([], cups, 0, none)).toBe(0);
  const joints = orderedJoints([joint('h', 'headset'), joint('f', 'fork')], []);
  const pair = pairBetween(cups, fork, joints);
  if (!pair) throw new Error('cups do not come before the fork');
  expect(breachWords({ first: cups, second: fork, pair })).toBe(
    '“Fork: fit” comes after “Cups: press”. The cups go into an empty head tube.',
  );
  expect(pairBetween(step('f', 'torque'), step('f', 'fit'), joints)).toBeUndefined();
});

describe('[B5] what belongs together', () => {
  const joints = orderedJoints(wheels, parts);
  const before = (one: string, other: string) =>
    pairBetween(step(one, 'fit'), step(other, other === 'caliper' ? 'torque' : 'fit'), joints) !== undefined;

  test.each([
    ['lace-f', 'tyre-f', true],
    ['lace-r', 'tyre-f', false],
    ['tyre-f', 'axle-f', true],
    ['tyre-f', 'axle-r', false],
    ['axle-f', 'caliper', true],
    ['axle-r', 'caliper', false],
  ])('%s before %s: %s', (one, other, yes) => expect(before(one, other)).toBe(yes));

  test('a joint that is apart, and a step of no known joint, have no place to keep', () => {
    const apart = orderedJoints([joint('h', 'headset', [], { state: 'apart' }), joint('f', 'fork')], []);
    expect(pairBetween(step('h', 'press'), step('f', 'fit'), apart)).toBeUndefined();
  });

  test('a sleeve and its compound come before the cups in it', () => {
    const shell: Part[] = [
      ...parts,
      { partId: 'sleeve', kind: 'adapter' },
      { partId: 'bb', kind: 'bottom-bracket' },
    ];
    const both = orderedJoints(
      [
        joint('sleeve', 'bottom-bracket', ['frame', 'sleeve'], { between: [{ kind: 'retaining-compound' }] }),
        joint('cups', 'bottom-bracket', ['sleeve', 'bb']),
      ],
      shell,
    );
    const steps = [step('cups', 'fit'), step('sleeve', 'press'), step('sleeve', 'lock')];
    expect(titles(inWorkOrder(steps, both))).toEqual(['sleeve lock', 'sleeve press', 'cups fit']);
  });
});

test('[B5] a plan: play between stem and its bolts, slack before the nuts, the caliper last (common practice, no source)', () => {
  const all = [
    joint('headset', 'headset'),
    joint('fork', 'fork'),
    joint('stem', 'stem-steerer'),
    joint('axle', 'rear-axle', ['hub-r', 'frame']),
    joint('chain', 'chain'),
    joint('caliper', 'caliper', ['caliper', 'frame']),
  ];
  const steps = [
    step('caliper', 'fit'),
    step('caliper', 'torque'),
    step('headset', 'press'),
    step('headset', 'adjust', 'play'),
    step('fork', 'fit'),
    step('stem', 'fit'),
    step('stem', 'torque'),
    step('axle', 'fit'),
    step('axle', 'torque'),
    step('chain', 'fit'),
    step('chain', 'adjust', 'slack'),
  ];
  expect(titles(inWorkOrder(steps, orderedJoints(all, parts)))).toEqual([
    'caliper fit',
    'headset press',
    'fork fit',
    'stem fit',
    'headset play',
    'stem torque',
    'axle fit',
    'chain fit',
    'chain slack',
    'axle torque',
    'caliper torque',
  ]);
});

describe('[B5] a step keeps its place', () => {
  const joints = orderedJoints([joint('stem', 'stem-steerer'), joint('fork', 'fork')], []);
  const [fork, fit, lock, torque] = [
    step('fork', 'fit'),
    step('stem', 'fit'),
    step('stem', 'lock'),
    step('stem', 'torque'),
  ] as const;

  test('it is not put before what comes first, nor behind what comes after', () => {
    expect(newBreach([fork, fit, lock], torque, 2, joints)?.first).toBe(lock);
    expect(newBreach([fork, fit, lock], torque, 3, joints)).toBeUndefined();
    expect(newBreach([fit, lock, torque], fork, 1, joints)?.second).toBe(fit);
  });

  test('what is the wrong way round already is no new breach, and can be put right', () => {
    const others = [torque, fit];
    // Threadlocker stands behind its torque: moved to the very end it breaks nothing more, to the front it is mended.
    expect(newBreach(others, lock, 2, joints, 1)).toBeUndefined();
    expect(newBreach(others, lock, 0, joints, 1)).toBeUndefined();
    expect(newBreach([fit, torque], lock, 2, joints, 0)?.second).toBe(torque);
  });

  test('what is done or skipped has no place to keep', () => {
    expect(newBreach([{ ...lock, state: 'done' }], torque, 0, joints)).toBeUndefined();
    expect(newBreach([{ ...lock, state: 'skipped' }], torque, 0, joints)).toBeUndefined();
    expect(newBreach([lock], { ...torque, state: 'done' }, 0, joints)).toBeUndefined();
  });

  test('a new one goes where it is wanted, or as near as it may', () => {
    expect(placeInOrder([fork, fit, torque], lock, 3, joints)).toBe(2);
    expect(placeInOrder([fork, fit, torque], lock, 0, joints)).toBe(1);
    expect(placeInOrder([fit, torque], fork, 2, joints)).toBe(0);
    expect(placeInOrder([torque, fork], fit, 2, joints)).toBe(2);
  });
});
