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
