import { describe, expect, test } from 'vitest';
import { dropsIn, headsetCap, jointToBuild } from '../../../src/planning/jointToBuild.ts';
import { type JointToBuild, stepsFor, stepTitle } from '../../../src/planning/stepOrder.ts';
import { headsets } from '../../../src/standards/interfaces/headsets.ts';
import { type JointKind, jointKinds } from '../../../src/standards/jointKinds.ts';
import { jointWork, metAgainWords } from '../../../src/standards/jointWork.ts';

const joint = (jointId: string, kind: JointKind, more: Partial<JointToBuild> = {}): JointToBuild => ({
  ...{ jointId, name: jointId, kind, partNames: ['A', 'B'], between: [], locker: false, screwed: true },
  ...more,
});
const part = (partId: string, kind: string, faces: object[] = []) =>
  ({ partId, kind, name: partId, faces }) as Parameters<typeof dropsIn>[0][number];
const face = (kind: string, more: object = {}) => ({
  ...{ faceId: kind, kind, standard: null, nominal: {}, measured: {} },
  ...more,
});
/** What is done at a joint of one kind, as "kind what". */
const doneAt = (kind: JointKind, more: Partial<JointToBuild> = {}) =>
  stepsFor([joint('j', kind, more)]).map((step) => `${step.kind}: ${step.title.slice('j: '.length)}`);

describe('the examples of the descriptions', () => {
  test('no joints, no steps', () => expect(stepsFor([])).toEqual([]));
  test('a title', () => expect(stepTitle('Headset', 'press')).toBe('Headset: press'));
  test('nothing drops in where nothing is known', () => expect(dropsIn([])).toBe(false));
  test('the usual cap', () => expect(headsetCap([])).toBe('cap'));
  test('a word for pulling', () => expect(metAgainWords.pull).toBe('torque check'));
});

test('bearings come before what hangs on them, and equal orders keep their place', () => {
  const steps = stepsFor([
    joint('bar', 'bar-clamp'),
    joint('race', 'crown-race', { screwed: false }),
    joint('second', 'bar-clamp'),
  ]);
  expect(steps.map(({ title }) => title)).toEqual([
    'race: press',
    'bar: fit',
    'bar: torque',
    'second: fit',
    'second: torque',
  ]);
});

test('the step says what comes together and what goes between', () => {
  expect(stepsFor([joint('stem', 'stem-steerer', { between: ['shim', 'grease'] })])[0]?.detail).toBe(
    'A + B; between: shim, grease',
  );
});

describe('[L10] each kind of joint names its steps', () => {
  // Common practice, no source.
  test.each([
    ['rotor', { locker: true }, ['fit: fit', 'lock: threadlocker', 'torque: torque']],
    ['bead', { screwed: false }, ['seat: seat']],
    ['spokes', {}, ['fit: lace', 'adjust: tension', 'adjust: true', 'check: dish']],
    ['headset', {}, ['press: press', 'adjust: no play, turns freely']],
    ['headset', { dropIn: true }, ['fit: fit', 'adjust: no play, turns freely']],
    ['bottom-bracket', {}, ['fit: fit', 'torque: torque', 'check: turns freely']],
    ['bottom-bracket', { pressed: true, screwed: false }, ['press: press', 'check: turns freely']],
    [
      'caliper',
      {},
      ['fit: fit', 'torque: torque', 'adjust: bleed, or set the cable', 'adjust: pad clearance'],
    ],
    ['caliper', { cabled: true }, ['fit: fit', 'torque: torque', 'adjust: pad clearance']],
    ['cable-anchor', {}, ['fit: fit', 'torque: torque', 'adjust: cable length']],
    ['chain', { screwed: false }, ['check: count of links', 'fit: joining link or pin', 'adjust: slack']],
    ['other', { bonded: true, screwed: false }, ['lock: retaining compound', 'fit: fit']],
  ] as const)('%s %j', (kind, more, steps) => expect(doneAt(kind, more)).toEqual(steps));

  test('a figure that is given is tightened to, on a headset too', () =>
    expect(doneAt('headset', { figure: true })).toContain('torque: torque'));

  test.each(jointKinds.map(({ kind }) => kind))(
    '%s: no two of its steps bear the same name, and each tells what to do',
    (kind) => {
      const steps = stepsFor([joint('j', kind, { locker: true, figure: true })]);
      expect(new Set(steps.map(({ title }) => title)).size).toBe(steps.length);
      for (const { work, detail } of steps) if (work) expect(detail).toMatch(/\.$/);
      expect(Object.keys(metAgainWords)).toContain(jointWork[kind].metAgain);
    },
  );

  test('what no wrench tells has words of its own for a re-check', () => {
    const silent = jointKinds
      .filter(({ kind }) => !['pull', 'listen'].includes(jointWork[kind].metAgain))
      .filter(({ kind }) => kind !== 'bead' && kind !== 'headset' && !jointWork[kind].again);
    expect(silent).toEqual([]);
  });
});

describe('[L10] a headset goes by what the parts tell', () => {
  test('bearings drop in where the code of their seats says so', () => {
    for (const { id, seat } of headsets)
      expect([id, dropsIn([part('h', 'headset', [face('headset-cup-upper', { standard: id })])])]).toEqual([
        id,
        seat === 'integrated',
      ]);
  });

  test.each([
    ['locknut', [face('steerer', { traits: { tube: 'threaded' } })]],
    ['locknut', [face('quill')]],
    ['threaded-cap', [face('steerer-cap', { traits: { pulls: 'thread' } })]],
    [
      'cap',
      [
        face('steerer', { traits: { tube: 'plain' } }),
        face('steerer-cap', { traits: { pulls: 'star-nut' } }),
      ],
    ],
  ] as const)('its play is taken up by a %s', (cap, faces) =>
    expect(headsetCap([part('f', 'fork', [...faces])])).toBe(cap),
  );

  test('the step says which', () => {
    const made = {
      jointId: 'h',
      name: 'Headset',
      kind: 'headset',
      partIds: ['h', 'f'],
      between: [],
    } as const;
    const steps = (faces: object[]) =>
      stepsFor([
        jointToBuild(
          { ...made, partIds: [...made.partIds], between: [], fasteners: [], targets: [] },
          [],
          [
            part('h', 'headset', [face('headset-cup-upper', { standard: 'IS41/28.6' })]),
            part('f', 'fork', faces),
          ],
        ),
      ]);
    const threaded = steps([face('steerer', { traits: { tube: 'threaded' } })]);
    expect(threaded.map(({ kind, title }) => `${kind} ${title}`)).toEqual([
      'fit Headset: fit',
      'adjust Headset: no play, turns freely',
    ]);
    expect(threaded[1]?.detail).toMatch(/locknut/);
    expect(steps([])[1]?.detail).toMatch(/^Stem bolts loose\. Turn the top cap/);
  });
});
