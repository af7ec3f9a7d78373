import { describe, expect, test } from 'vitest';
import { freeName } from '../../../src/journal/freeName.ts';
import type { Logbook } from '../../../src/logbook.ts';
import { cardTitle } from '../../../src/practice/bench/cardTitle.ts';
import { countedAs } from '../../../src/standards/jointKinds.ts';
import { aBike } from '../logbook/aBike.ts';
import { done, openTestLogbook } from '../logbook/openTestLogbook.ts';

const bare = { between: [], targets: [], fasteners: [] };
const seen = async (logbook: Logbook) => {
  const bench = await logbook.read('bench', { bikeId: 'b1' });
  return {
    joints: bench?.joints.map(({ name }) => name).toSorted(),
    steps: bench?.steps.map(({ kind, title }) => `${kind} ${title}`),
  };
};
const rotor = (jointId: string, name = '') =>
  ({ type: 'make-joint', bikeId: 'b1', jointId, kind: 'rotor', name, partIds: ['part1'], ...bare }) as const;

test('the examples of the descriptions', () => {
  expect(freeName('Rotor on hub', ['Rotor on hub'])).toBe('Rotor on hub 2');
  expect(freeName('Stem', [])).toBe('Stem');
  expect(freeName('Stem', ['Stem', 'Stem 2', 'Stem 4'])).toBe('Stem 3');
  expect(countedAs('pedal')).toBe('pedal');
  expect(countedAs('rotor')).toBe('bolt');
  expect(cardTitle({ kind: 'fit', title: 'Stem: fit' }, { name: 'Stem' })).toBe('Stem');
  expect(cardTitle({ kind: 'fit', title: 'Wheel: lace' }, { name: 'Wheel' })).toBe('Wheel: lace');
  expect(cardTitle({ kind: 'adjust', title: 'Wheel: true', work: 'true' }, { name: 'Wheel' })).toBe(
    'Wheel: true',
  );
});

describe('[B1] no two joints and no two steps of a bike bear the same name', () => {
  test('[B1] a second joint of a kind gets a number, and its steps with it', async () => {
    const { logbook } = await openTestLogbook();
    await aBike(logbook, 'b1', { ...bare, kind: 'rotor', name: 'Rotor on hub', jointId: 'j1' });
    const partIds = (await logbook.read('bike', { bikeId: 'b1' }))?.parts.map(({ partId }) => partId) ?? [];
    await done(logbook, { ...rotor('j2'), partIds });
    await done(logbook, { type: 'plan-steps', bikeId: 'b1' });
    const { joints, steps = [] } = await seen(logbook);
    expect(joints).toEqual(['Rotor on hub', 'Rotor on hub 2']);
    expect(steps).toEqual(['fit Rotor on hub: fit', 'fit Rotor on hub 2: fit']);
    // A name that is taken is not given by another way either.
    await done(logbook, { type: 'describe-joint', jointId: 'j2', name: 'Rotor on hub' });
    await done(logbook, { type: 'add-step', bikeId: 'b1', kind: 'check', title: 'Rotor on hub: fit' });
    const after = await seen(logbook);
    expect(after.joints).toEqual(['Rotor on hub', 'Rotor on hub 2']);
    expect(new Set(after.steps?.map((step) => step.split(' ').slice(1).join(' '))).size).toBe(3);
    logbook.close();
  });

  test('[B1] the parts of a split step are told apart', async () => {
    const { logbook } = await openTestLogbook();
    await aBike(logbook);
    await done(logbook, { type: 'add-step', stepId: 's', bikeId: 'b1', kind: 'check', title: 'Bell' });
    await done(logbook, { type: 'split-step', stepId: 's', titles: ['Bell', 'Bell'] });
    expect((await seen(logbook)).steps).toEqual(['check Bell', 'check Bell 2']);
    logbook.close();
  });
});

describe('[B2] a joint renamed renames its steps', () => {
  test('[B2] what is done stays done, a title of ones own stays', async () => {
    const { logbook } = await openTestLogbook();
    await aBike(logbook, 'b1', { ...bare, kind: 'chain', name: 'Chain', jointId: 'j1' });
    await done(logbook, { type: 'plan-steps', bikeId: 'b1' });
    await done(logbook, { type: 'add-step', bikeId: 'b1', kind: 'check', title: 'Wax it', jointId: 'j1' });
    const [first] = (await logbook.read('bench', { bikeId: 'b1' }))?.steps ?? [];
    await done(logbook, { type: 'finish-step', stepId: first?.stepId ?? '' });
    await done(logbook, { type: 'describe-joint', jointId: 'j1', name: 'Brake chain' });
    const bench = await logbook.read('bench', { bikeId: 'b1' });
    expect(bench?.steps.map(({ title, state }) => `${title}, ${state}`)).toEqual([
      'Brake chain: count of links, done',
      'Brake chain: joining link or pin, open',
      'Brake chain: slack, open',
      'Wax it, open',
    ]);
    // Planned again, nothing is doubled.
    expect(await logbook.run({ type: 'plan-steps', bikeId: 'b1' })).toMatchObject({
      refused: 'nothing-to-plan',
    });
    logbook.close();
  });

  test('[B2] the kind of a step can be changed; a torque needs its joint', async () => {
    const { logbook } = await openTestLogbook();
    await aBike(logbook, 'b1', { ...bare, kind: 'headset', name: 'Headset', jointId: 'j1' });
    await done(logbook, {
      type: 'add-step',
      stepId: 's',
      bikeId: 'b1',
      kind: 'press',
      title: 'Cups',
      jointId: 'j1',
    });
    await done(logbook, { type: 'describe-step', stepId: 's', kind: 'fit' });
    expect((await seen(logbook)).steps).toEqual(['fit Cups']);
    await done(logbook, { type: 'add-step', stepId: 't', bikeId: 'b1', kind: 'check', title: 'Look' });
    expect(await logbook.run({ type: 'describe-step', stepId: 't', kind: 'torque' })).toMatchObject({
      refused: 'no-such-joint',
    });
    logbook.close();
  });
});
