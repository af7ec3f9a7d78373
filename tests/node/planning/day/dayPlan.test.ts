import { describe, expect, test } from 'vitest';
import type { PartRow, StepRow, WaitRow } from '../../../../src/journal/rows.ts';
import { dayPlan } from '../../../../src/planning/day/dayPlan.ts';
import { type DayAround, dayWorks } from '../../../../src/planning/day/dayWorks.ts';
import { pastSpans, stepSpan } from '../../../../src/planning/day/stepSpan.ts';
import { orderedJoints } from '../../../../src/planning/orderedJoints.ts';
import { workPlaceOf } from '../../../../src/planning/workPairs.ts';
import { ownWaits, togetherSpans, workSpans } from '../../../../src/standards/stepSpans.ts';

const MINUTE_MS = 60_000;
const none = { steps: [], joints: new Map(), parts: [], waits: [], past: new Map(), nowMs: 0 };
type Joint = Parameters<typeof orderedJoints>[0][number];
const joint = (
  jointId: string,
  kind: Joint['kind'],
  partIds: string[] = [],
  more: Partial<Joint> = {},
): Joint => ({
  ...{ jointId, kind, partIds, between: [], state: 'open' },
  ...more,
});
const step = (jointId: string, kind: StepRow['kind'], more: Partial<StepRow> = {}) =>
  ({
    stepId: `${jointId}-${kind}`,
    jointId,
    kind,
    title: `${jointId} ${kind}`,
    state: 'open',
    addedAtMs: 0,
    ...more,
  }) as StepRow;
const day = (steps: StepRow[], joints: Joint[], more: Partial<DayAround> = {}): DayAround => ({
  ...none,
  ...{ steps, joints: orderedJoints(joints, (more.parts ?? []) as PartRow[]) },
  ...more,
});
const inOrder = (around: DayAround) => dayPlan(around)?.works.map(({ steps }) => steps[0]?.stepId);

const wheels = [
  joint('tyre', 'bead', ['tyre', 'rim']),
  joint('lace', 'spokes', ['hub', 'rim']),
  joint('axle', 'front-axle', ['hub', 'fork']),
  joint('other-lace', 'spokes', ['hub-2', 'rim-2']),
];

test('the examples of the descriptions', () => {
  expect(workPlaceOf({ kind: 'cut', title: 'Slot' }, new Map())).toBeUndefined();
  expect(pastSpans([]).size).toBe(0);
  expect(stepSpan({ kind: 'cut', title: 'Slot' }, new Map(), new Map())).toEqual({
    span: [15, 30, 75],
    own: 0,
  });
  expect(dayWorks(none)).toEqual([]);
  expect(dayPlan(none)).toBeUndefined();
});

test('every span has its ends in order and its source', () => {
  for (const { span, source } of [
    ...Object.values(workSpans),
    ...Object.values(togetherSpans),
    ...Object.values(ownWaits),
  ]) {
    expect(span.toSorted((a, b) => a - b)).toEqual(span);
    expect(span[0]).toBeGreaterThan(0);
    expect(source).not.toBe('');
  }
});

describe('[B6] the day of a bike', () => {
  test('[B6] a tyre settles while the other wheel is laced, and its own wheel is hung after that', () => {
    const around = day([step('other-lace', 'fit'), step('tyre', 'seat'), step('axle', 'fit')], wheels);
    expect(inOrder(around)).toEqual(['tyre-seat', 'other-lace-fit', 'axle-fit']);
    // 20 to seat, 60 to settle beside 60 of lacing, 8 to hang.
    expect(dayPlan(around)).toMatchObject({ readyMin: 88, handsMin: 88, best: true });
  });

  test('[B6] a tyre with a tube does not settle', () => {
    const tube = { partId: 'tyre', kind: 'tyre', faces: [{ kind: 'tyre-bead', traits: { run: 'tube' } }] };
    const around = day([step('tyre', 'seat')], wheels, { parts: [tube as unknown as PartRow] });
    expect(dayWorks(around)[0]?.wait).toBeUndefined();
    expect(dayWorks(day([step('tyre', 'seat')], wheels))[0]?.wait?.kind).toBe('settles');
  });

  test('[B6] threadlocker goes with its torque while it is liquid, early, because it cures longest', () => {
    const joints = [...wheels, joint('rotor', 'rotor', ['rotor', 'hub'])];
    const steps = [
      step('other-lace', 'fit'),
      step('rotor', 'fit'),
      step('rotor', 'lock'),
      step('rotor', 'torque'),
    ];
    const plan = dayPlan(day(steps, joints));
    expect(plan?.works.map(({ steps }) => steps.map(({ stepId }) => stepId))).toEqual([
      ['rotor-fit'],
      ['rotor-lock', 'rotor-torque'],
      ['other-lace-fit'],
    ]);
    expect(plan?.readyMin).toBe(8 + 4 + 4 + 1440);
    expect(plan?.handsMin).toBe(8 + 4 + 4 + 60);
    expect(plan?.pauseFreeMin).toBe(0);
  });

  test('[B6] with something to be done between the two they stay apart', () => {
    const joints = [joint('stem', 'stem-steerer'), joint('headset', 'headset')];
    const steps = [step('stem', 'lock'), step('headset', 'adjust', { work: 'play' }), step('stem', 'torque')];
    // Threadlocker does not wait for the play, its torque does: both go after it.
    expect(dayPlan(day(steps, joints))?.works.map(({ steps }) => steps.map(({ stepId }) => stepId))).toEqual([
      ['headset-adjust'],
      ['stem-lock', 'stem-torque'],
    ]);
  });

  test('[B6] the halves of a joint that was split are planned singly', () => {
    const twice = (kind: 'lock' | 'torque') => [
      step('rotor', kind, { stepId: `${kind}-1` }),
      step('rotor', kind, { stepId: `${kind}-2` }),
    ];
    const plan = dayPlan(
      day([...twice('lock'), ...twice('torque')], [joint('rotor', 'rotor', ['rotor', 'hub'])]),
    );
    expect(plan?.works.map(({ steps }) => steps.map(({ stepId }) => stepId))).toEqual([
      ['lock-1'],
      ['lock-2'],
      ['torque-1'],
      ['torque-2'],
    ]);
  });

  test('[B6] a compound that is still to be put on sets before the bike is ready', () => {
    const sleeve = joint('sleeve', 'bottom-bracket', ['frame', 'sleeve'], {
      between: [{ kind: 'retaining-compound' }],
    });
    const plan = dayPlan(day([step('sleeve', 'lock')], [sleeve]));
    expect((plan?.readyMin ?? 0) - (plan?.handsMin ?? 0)).toBe(1440);
  });

  test('[B6] a bond sets before the cups load it', () => {
    const parts = [
      { partId: 'frame', kind: 'frame' },
      { partId: 'sleeve', kind: 'adapter' },
    ] as PartRow[];
    const joints = [
      joint('sleeve', 'bottom-bracket', ['frame', 'sleeve'], { between: [{ kind: 'retaining-compound' }] }),
      joint('cups', 'bottom-bracket', ['sleeve', 'bb']),
    ];
    const plan = dayPlan(
      day([step('sleeve', 'lock'), step('sleeve', 'press'), step('cups', 'fit')], joints, { parts }),
    );
    expect(plan?.works.map(({ beginMin, endMin }) => [beginMin, endMin])).toEqual([
      [0, 35],
      [35 + 1440, 35 + 1440 + 15],
    ]);
  });

  test('[B6] a wait that runs holds up what hangs on it and nothing else, and the bike is not ready before it', () => {
    const wait = { jointId: 'tyre', waitKind: 'seal', dueAtMs: 90 * MINUTE_MS } as WaitRow;
    const around = day([step('axle', 'fit'), step('other-lace', 'fit')], wheels, { waits: [wait] });
    expect(inOrder(around)).toEqual(['other-lace-fit', 'axle-fit']);
    // Lacing is over after 60: half an hour of pause is free.
    expect(dayPlan(around)).toMatchObject({ readyMin: 98, pauseFreeMin: 30 });
    const cure = { jointId: 'other-lace', waitKind: 'cure', dueAtMs: 900 * MINUTE_MS } as WaitRow;
    expect(dayPlan({ ...around, waits: [cure] })).toMatchObject({ readyMin: 900, handsMin: 68 });
  });

  test('[B6] what is done, skipped or dropped takes no time', () => {
    const steps = [step('lace', 'fit', { state: 'done' }), step('tyre', 'seat', { state: 'skipped' })];
    expect(dayPlan(day(steps, wheels))).toBeUndefined();
  });

  test('[B6] the band holds the instant, and one that is unsure widens it', () => {
    const one = dayPlan(day([step('axle', 'fit')], wheels));
    expect(one?.likelyMin).toEqual([3, 20]);
    const two = dayPlan(day([step('axle', 'fit'), step('other-lace', 'fit')], wheels));
    expect(two?.likelyMin[0]).toBeCloseTo(68 - Math.hypot(5, 20), 9);
    expect(two?.likelyMin[1]).toBeCloseTo(68 + Math.hypot(12, 60), 9);
  });
});

describe('[B6] spans of this person', () => {
  const joints = orderedJoints(wheels, []);
  const done = (jointId: string, atMin: number) =>
    step(jointId, 'fit', { state: 'done', doneAtMs: atMin * MINUTE_MS, stepId: `${jointId}${atMin}` });

  test('three of a kind give the median, fewer the table', () => {
    const steps = [0, 50, 120, 160].map((at) => done('lace', at));
    const past = pastSpans([{ steps, joints }]);
    expect(past.get('spokes:together')).toEqual([50, 70, 40]);
    expect(stepSpan(step('lace', 'fit'), joints, past)).toEqual({ span: [40, 50, 70], own: 3 });
    expect(stepSpan(step('lace', 'fit'), joints, pastSpans([{ steps: steps.slice(0, 3), joints }])).own).toBe(
      0,
    );
  });

  test('what was ticked at once, or days later, tells nothing', () => {
    const steps = [0, 0.2, 600].map((at) => done('lace', at));
    expect(pastSpans([{ steps, joints }]).size).toBe(0);
  });
});
