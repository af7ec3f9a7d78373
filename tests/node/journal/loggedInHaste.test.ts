import { expect, test } from 'vitest';
import type { CommandOf } from '../../../src/journal/commands.ts';
import { unsaidOf } from '../../../src/journal/openChanges.ts';
import { done, openTestLogbook } from '../logbook/openTestLogbook.ts';

const mm = (value: number) => ({ value, unit: 'mm' as const, typed: String(value) });
const nm = (value: number) => ({ value, unit: 'N.m' as const, typed: String(value) });

const stem: CommandOf<'make-joint'> = {
  ...{ type: 'make-joint', jointId: 'j1', bikeId: 'b1', name: 'Stem', kind: 'stem-steerer' },
  ...{ partIds: [], between: [], fasteners: [{ thread: '', count: 2, hand: 'right' }], targets: [] },
};
const torque: CommandOf<'apply-torque'> = {
  ...{ type: 'apply-torque', jointId: 'j1', applied: nm(5), entered: 'keypad', bolts: 2, passes: 1 },
};
const frame: CommandOf<'add-part'> = {
  ...{ type: 'add-part', partId: 'p1', place: { on: 'bike', bikeId: 'b1' } },
  ...{ label: '', name: 'Frame', kind: 'frame', origin: 'unknown' },
};
const filed = { type: 'change-part', partId: 'p1', cut: 'file', where: 'dropout', amount: mm(2) } as const;

test('[B7] a bike, a joint without parts and its torque are one transaction: all of it or none', async () => {
  const { logbook } = await openTestLogbook();
  const bike = { type: 'start-bike', bikeId: 'b1', name: 'Wren' } as const;
  expect(await logbook.run([bike, stem, { ...torque, bolts: 0 }])).toMatchObject({ at: 2 });
  expect(await logbook.read('bikes', {})).toEqual([]);
  await done(logbook, [bike, stem, torque]);
  const view = await logbook.read('bike', { bikeId: 'b1' });
  expect(view?.joints).toMatchObject([{ name: 'Stem', state: 'torqued', partIds: [], matters: true }]);
  // Parts may follow, and a part of another bike may not.
  expect(await logbook.run({ type: 'describe-joint', jointId: 'j1', partIds: ['nothing'] })).toMatchObject({
    refused: 'no-such-part',
  });
  await done(logbook, { type: 'take-joint-apart', jointId: 'j1', why: 'wrong stem' });
  await done(logbook, { ...torque, applied: nm(6) });
  logbook.close();
});

test('[P6] a change for good is logged by its amount alone, and not without any size', async () => {
  const { logbook } = await openTestLogbook();
  await done(logbook, [{ type: 'start-bike', bikeId: 'b1', name: 'Wren' }, frame]);
  expect(
    await logbook.run({ type: 'change-part', partId: 'p1', cut: 'file', where: 'dropout' }),
  ).toMatchObject({
    refused: 'change-unmeasured',
  });
  expect(
    await logbook.run({ type: 'change-part', partId: 'p1', cut: 'file', where: 'dropout', before: mm(10) }),
  ).toMatchObject({
    refused: 'change-unmeasured',
  });
  const [changed] = await done(logbook, filed);
  const open = async () =>
    (await logbook.read('release', { bikeId: 'b1' }))?.open.filter(({ what }) => what === 'change-open');
  expect(await open()).toEqual([
    {
      what: 'change-open',
      words:
        'Permanent change not fully logged: Frame, dropout: size before, size after, why, what is left, what to look for',
      ...{ partId: 'p1', blocks: false, blocksFull: true },
    },
  ]);
  const becomes = { before: mm(10), after: mm(12), why: 'longer axle', left: mm(6) };
  await done(logbook, { type: 'correct', entryId: changed?.id ?? '', reason: 'measured', becomes });
  expect(await open()).toEqual([]);
  logbook.close();
});

test.each([
  [{ cut: 'file', where: 'dropout', amount: mm(2) }, 5],
  [{ cut: 'cold-set', where: 'rear', amount: mm(10) }, 4],
  [{ cut: 'file', where: 'dropout', before: mm(10), after: mm(12) }, 3],
  [{ cut: 'file', where: 'dropout', before: mm(10), after: mm(12), why: 'axle' }, 0],
] as const)('[P6] of %o a release still asks %d things', (change, asked) => {
  expect(unsaidOf(change)).toHaveLength(asked);
});

test('[B7] sealant went in, kind and amount not said; the next look is a timer', async () => {
  const { logbook, clock } = await openTestLogbook();
  const bead: CommandOf<'make-joint'> = {
    ...stem,
    jointId: 'j2',
    name: 'Rear tyre',
    kind: 'bead',
    fasteners: [],
  };
  await done(logbook, [
    { type: 'start-bike', bikeId: 'b1', name: 'Wren' },
    bead,
    { type: 'mark-seal', jointId: 'j2', mark: { mark: 'sealant' }, lookAgainMs: 20 * 60_000 },
  ]);
  const view = await logbook.read('bike', { bikeId: 'b1' });
  expect(view?.waits.map(({ dueAtMs }) => dueAtMs)).toEqual([clock.nowMs + 20 * 60_000]);
  logbook.close();
});
