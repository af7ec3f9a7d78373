import { describe, expect, test } from 'vitest';
import type { Logbook } from '../../../src/logbook.ts';
import { sentenceOf } from '../../../src/words/refusals.ts';
import { aBike } from '../logbook/aBike.ts';
import { done, openTestLogbook } from '../logbook/openTestLogbook.ts';

const bare = { between: [], targets: [], fasteners: [] };
const titles = async (logbook: Logbook) =>
  (await logbook.read('bench', { bikeId: 'b1' }))?.steps.map(({ title }) => title) ?? [];
const idOf = async (logbook: Logbook, title: string) =>
  (await logbook.read('bench', { bikeId: 'b1' }))?.steps.find((step) => step.title === title)?.stepId ?? '';

/** A fork, a headset and a stem that are written down in the wrong order. */
async function steering() {
  const { logbook, clock } = await openTestLogbook();
  const { partIds } = await aBike(logbook, 'b1', { ...bare, kind: 'fork', name: 'Fork' });
  const make = (jointId: string, kind: 'headset' | 'stem-steerer', name: string) =>
    done(logbook, { type: 'make-joint', bikeId: 'b1', jointId, kind, name, partIds, ...bare });
  await make('stem', 'stem-steerer', 'Stem');
  await make('headset', 'headset', 'Headset');
  return { logbook, clock, make };
}

const inOrder = ['Headset: press', 'Fork: fit', 'Stem: fit', 'Headset: no play, turns freely'];

describe('[B5] the order of work', () => {
  test('a new plan is made in it', async () => {
    const { logbook } = await steering();
    await done(logbook, { type: 'plan-steps', bikeId: 'b1' });
    expect(await titles(logbook)).toEqual(inOrder);
    logbook.close();
  });

  test('what is planned later goes where it belongs, and a step without a place as well', async () => {
    const { logbook, clock } = await openTestLogbook();
    const { partIds } = await aBike(logbook, 'b1', { ...bare, kind: 'fork', name: 'Fork' });
    await done(logbook, { type: 'plan-steps', bikeId: 'b1' });
    await done(logbook, {
      type: 'make-joint',
      ...{ bikeId: 'b1', jointId: 'h', kind: 'headset', name: 'Headset', partIds, ...bare },
    });
    clock.nowMs += 60_000;
    await done(logbook, { type: 'plan-steps', bikeId: 'b1' });
    expect(await titles(logbook)).toEqual(['Headset: press', 'Fork: fit', 'Headset: no play, turns freely']);
    await done(logbook, { type: 'add-step', bikeId: 'b1', kind: 'press', title: 'Lower cup', jointId: 'h' });
    expect((await titles(logbook)).slice(0, 3)).toEqual(['Headset: press', 'Lower cup', 'Fork: fit']);
    logbook.close();
  });

  test('a move that breaks it is refused with the reason, one that does not is done', async () => {
    const { logbook } = await steering();
    await done(logbook, { type: 'plan-steps', bikeId: 'b1' });
    const [press, fork] = [await idOf(logbook, 'Headset: press'), await idOf(logbook, 'Fork: fit')];
    const refused = await logbook.run({ type: 'move-step', stepId: press, afterStepId: fork });
    expect(refused).toMatchObject({ refused: 'out-of-order' });
    expect('refused' in refused ? sentenceOf(refused) : '').toBe(
      '“Fork: fit” comes after “Headset: press”. The cups go into an empty head tube.',
    );
    expect(await titles(logbook)).toEqual(inOrder);
    await done(logbook, { type: 'add-step', bikeId: 'b1', stepId: 'bell', kind: 'fit', title: 'Bell' });
    await done(logbook, { type: 'move-step', stepId: 'bell', afterStepId: press });
    expect((await titles(logbook))[1]).toBe('Bell');
    logbook.close();
  });

  test('a step is not added where it does not belong', async () => {
    const { logbook } = await steering();
    await done(logbook, { type: 'plan-steps', bikeId: 'b1' });
    const fork = await idOf(logbook, 'Fork: fit');
    const cup = {
      type: 'add-step',
      bikeId: 'b1',
      kind: 'press',
      title: 'Lower cup',
      jointId: 'headset',
    } as const;
    expect(await logbook.run({ ...cup, afterStepId: fork })).toMatchObject({ refused: 'out-of-order' });
    await done(logbook, { ...cup, afterStepId: null });
    logbook.close();
  });

  test('what is done no longer holds a place, and an order of before stays until it is mended', async () => {
    const { logbook, clock } = await steering();
    await done(logbook, { type: 'plan-steps', bikeId: 'b1' });
    const press = await idOf(logbook, 'Headset: press');
    const fork = await idOf(logbook, 'Fork: fit');
    const play = await idOf(logbook, 'Headset: no play, turns freely');
    await done(logbook, { type: 'finish-step', stepId: press });
    await done(logbook, { type: 'move-step', stepId: press, afterStepId: fork });
    // Opened again it stands behind the fork, as a list of an earlier version may: it may go on, and back.
    clock.nowMs += 60_000;
    await done(logbook, { type: 'reopen-step', stepId: press, why: 'not home' });
    const stem = await idOf(logbook, 'Stem: fit');
    await done(logbook, { type: 'move-step', stepId: press, afterStepId: stem });
    expect(await logbook.run({ type: 'move-step', stepId: press, afterStepId: play })).toMatchObject({
      refused: 'out-of-order',
    });
    await done(logbook, { type: 'move-step', stepId: press, afterStepId: null });
    expect(await titles(logbook)).toEqual(inOrder);
    logbook.close();
  });
});
