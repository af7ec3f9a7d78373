import { expect, test } from 'vitest';
import type { CommandOf } from '../../../../src/journal/commands.ts';
import { mm } from '../../logbook/aBike.ts';
import { done, openTestLogbook } from '../../logbook/openTestLogbook.ts';

const HOUR = 3_600_000;

test('[B4] a step that changes a part for good is not done before the change is logged; both go in one tap', async () => {
  const { logbook, clock } = await openTestLogbook();
  await done(logbook, { type: 'start-bike', bikeId: 'b', name: 'Dabchick' });
  await done(logbook, {
    ...{ type: 'add-part', partId: 'frame', kind: 'frame', name: 'Frame', label: 'D-1', origin: 'found' },
    place: { on: 'bike', bikeId: 'b' },
  });
  const file: CommandOf<'change-part'> = {
    ...({ type: 'change-part', partId: 'frame', cut: 'file' } as const),
    ...{ where: 'slot', before: mm(40), after: mm(42) },
    ...{ how: 'round file', why: 'chain' },
  };
  // A change of another day is not this one.
  await done(logbook, file);
  clock.nowMs += HOUR;
  const step = {
    type: 'add-step',
    bikeId: 'b',
    kind: 'cut',
    title: 'File the slot',
    partId: 'frame',
  } as const;
  await done(logbook, { ...step, stepId: 's' });
  clock.nowMs += HOUR;
  expect(await logbook.run({ type: 'finish-step', stepId: 's' })).toMatchObject({
    refused: 'change-not-logged',
    about: 'File the slot',
  });
  await done(logbook, [
    { ...file, before: mm(42), after: mm(44) },
    { type: 'finish-step', stepId: 's' },
  ]);
  const bench = await logbook.read('bench', { bikeId: 'b' });
  expect(bench?.steps.map(({ state }) => state)).toEqual(['done']);
  // Without a part it is a line of ones own, and ticked like one.
  await done(logbook, { type: 'add-step', stepId: 't', bikeId: 'b', kind: 'cut', title: 'Saw the tape' });
  await done(logbook, { type: 'finish-step', stepId: 't' });
  logbook.close();
});

/** A frame with two permanent changes planned for it. */
async function twoCuts() {
  const opened = await openTestLogbook();
  const { logbook, clock } = opened;
  await done(logbook, { type: 'start-bike', bikeId: 'b', name: 'Dabchick' });
  await done(logbook, {
    ...{ type: 'add-part', partId: 'frame', kind: 'frame', name: 'Frame', label: 'D-1', origin: 'found' },
    place: { on: 'bike', bikeId: 'b' },
  });
  const step = { type: 'add-step', bikeId: 'b', kind: 'cut', partId: 'frame' } as const;
  await done(logbook, { ...step, stepId: 'slot', title: 'File the slot' });
  await done(logbook, { ...step, stepId: 'shell', title: 'Face the shell' });
  clock.nowMs += HOUR;
  return opened;
}

const filed = (where: string): CommandOf<'change-part'> => ({
  ...({ type: 'change-part', partId: 'frame', cut: 'file', where } as const),
  ...{ before: mm(40), after: mm(42), how: 'file', why: 'chain' },
});

test('[B4] one change finishes one step: the other wants its own', async () => {
  const { logbook, clock } = await twoCuts();
  await done(logbook, [filed('slot'), { type: 'finish-step', stepId: 'slot' }]);
  clock.nowMs += HOUR;
  expect(await logbook.run({ type: 'finish-step', stepId: 'shell' })).toMatchObject({
    refused: 'change-not-logged',
    about: 'Face the shell',
  });
  await done(logbook, [filed('shell'), { type: 'finish-step', stepId: 'shell' }]);
  logbook.close();
});

test('[B4] a change is not struck out from under the step that it finished', async () => {
  const { logbook, clock } = await twoCuts();
  const both = await done(logbook, [filed('slot'), { type: 'finish-step', stepId: 'slot' }]);
  const [changed, ticked] = both.map(({ id }) => id) as [string, string];
  const strike = { type: 'correct', entryId: changed, reason: 'not filed after all', becomes: null } as const;
  expect(await logbook.run({ type: 'undo', entryIds: [changed] })).toMatchObject({
    refused: 'others-build-on-it',
  });
  expect(await logbook.run(strike)).toMatchObject({ refused: 'others-build-on-it' });
  // Both at once, as one tap made them, go together; so does the change once its step is open again.
  await done(logbook, { type: 'undo', entryIds: [changed, ticked] });
  const states = async () => (await logbook.read('bench', { bikeId: 'b' }))?.steps.map(({ state }) => state);
  expect(await states()).toEqual(['open', 'open']);
  clock.nowMs += HOUR;
  const [again] = await done(logbook, [filed('slot'), { type: 'finish-step', stepId: 'slot' }]);
  await done(logbook, { type: 'reopen-step', stepId: 'slot', why: 'not filed' });
  clock.nowMs += HOUR;
  await done(logbook, { ...strike, entryId: again?.id ?? '' });
  expect(await logbook.run({ type: 'finish-step', stepId: 'slot' })).toMatchObject({
    refused: 'change-not-logged',
  });
  logbook.close();
});

test('[B2] [B4] what is done does not become a step that a tick cannot finish, by no way', async () => {
  const { logbook, clock } = await twoCuts();
  const step = { type: 'add-step', bikeId: 'b', kind: 'check', partId: 'frame' } as const;
  const [added] = await done(logbook, { ...step, stepId: 'look', title: 'Look it over' });
  const [described] = await done(logbook, { type: 'describe-step', stepId: 'look', kind: 'fit' });
  // A torque needs its joint, also where the kind is corrected.
  const correct = (entryId: string | undefined, kind: string) =>
    logbook.run({ type: 'correct', entryId: entryId ?? '', reason: 'mixed up', becomes: { kind } });
  for (const entry of [added, described])
    expect(await correct(entry?.id, 'torque')).toMatchObject({ refused: 'no-such-joint' });
  await done(logbook, { type: 'finish-step', stepId: 'look' });
  clock.nowMs += HOUR;
  for (const kind of ['cut', 'lock'] as const) {
    expect(await logbook.run({ type: 'describe-step', stepId: 'look', kind })).toMatchObject({
      refused: 'already-done',
    });
    for (const entry of [added, described])
      expect(await correct(entry?.id, kind)).toMatchObject({ refused: 'already-done' });
  }
  await done(logbook, { type: 'describe-step', stepId: 'look', kind: 'check' });
  logbook.close();
});

test('[B4] a change made after the hour a step is said to be done finishes no step, and each later one its own', async () => {
  const { logbook, clock } = await twoCuts();
  const before = clock.nowMs;
  clock.nowMs += HOUR;
  await done(logbook, filed('slot'));
  expect(await logbook.run({ type: 'finish-step', stepId: 'slot', happenedAtMs: before })).toMatchObject({
    refused: 'change-not-logged',
  });
  clock.nowMs += HOUR;
  const step = { type: 'add-step', bikeId: 'b', kind: 'cut', partId: 'frame' } as const;
  await done(logbook, { ...step, stepId: 'late', title: 'Ream the shell' });
  clock.nowMs += HOUR;
  await done(logbook, filed('shell'));
  clock.nowMs += HOUR;
  // The first step stands on the first change, so that the second is left for the step planned after that.
  await done(logbook, { type: 'finish-step', stepId: 'slot' });
  await done(logbook, { type: 'finish-step', stepId: 'late' });
  logbook.close();
});

test('[B4] the time of a change is not corrected to where its step would stand on none', async () => {
  const { logbook, clock } = await twoCuts();
  const [change] = await done(logbook, [filed('slot'), { type: 'finish-step', stepId: 'slot' }]);
  const entryId = change?.id ?? '';
  clock.nowMs += HOUR;
  const moved = (byMs: number) => ({
    ...({ type: 'correct', entryId, reason: 'the day was wrong' } as const),
    becomes: { happenedAtMs: (change?.happenedAtMs ?? 0) + byMs },
  });
  expect(await logbook.run(moved(-48 * HOUR))).toMatchObject({ refused: 'others-build-on-it' });
  expect(await logbook.run(moved(-HOUR / 2))).not.toHaveProperty('refused');
  logbook.close();
});

test('[B2] a description that was undone does not leave a step done that a tick cannot finish', async () => {
  const { logbook, clock } = await openTestLogbook();
  await done(logbook, { type: 'start-bike', bikeId: 'b', name: 'Dabchick' });
  await done(logbook, {
    ...{ type: 'make-joint', jointId: 'j', bikeId: 'b', name: 'Stem', kind: 'stem-steerer' },
    ...{ partIds: [], between: [], fasteners: [], targets: [] },
  });
  const step = {
    type: 'add-step',
    stepId: 's',
    bikeId: 'b',
    kind: 'torque',
    title: 'Stem',
    jointId: 'j',
  } as const;
  await done(logbook, step);
  const [described] = await done(logbook, { type: 'describe-step', stepId: 's', kind: 'fit' });
  clock.nowMs += 2000;
  const [finished] = await done(logbook, { type: 'finish-step', stepId: 's' });
  const ids = [described?.id ?? '', finished?.id ?? ''];
  expect(await logbook.run({ type: 'undo', entryIds: [ids[0] ?? ''] })).toMatchObject({
    refused: 'already-done',
  });
  expect(await logbook.run({ type: 'undo', entryIds: ids })).not.toHaveProperty('refused');
  logbook.close();
});

test('[J10] a joint that has an open step, a timer or a problem is not struck out; with what was made beside it it is', async () => {
  const { logbook } = await openTestLogbook();
  await done(logbook, { type: 'start-bike', bikeId: 'b', name: 'Dabchick' });
  const make = (jointId: string) => ({
    ...({ type: 'make-joint', jointId, bikeId: 'b', name: jointId, kind: 'stem-steerer' } as const),
    ...{ partIds: [], between: [], fasteners: [], targets: [] },
  });
  const problem = (jointId: string) => ({
    ...({ type: 'find-defect', bikeId: 'b', jointId, words: 'Slips', area: 'steering' } as const),
    decision: 'do-not-ride' as const,
  });
  const [made] = await done(logbook, make('j'));
  await done(logbook, problem('j'));
  expect(await logbook.run({ type: 'undo', entryIds: [made?.id ?? ''] })).toMatchObject({
    refused: 'others-build-on-it',
  });
  const together = await done(logbook, [make('k'), problem('k')]);
  expect(await logbook.run({ type: 'undo', entryIds: together.map(({ id }) => id) })).not.toHaveProperty(
    'refused',
  );
  logbook.close();
});
