import { expect, test } from 'vitest';
import { checkPile } from '../../../../src/fit/checkPile.ts';
import { pileOf } from '../../../../src/fit/pileOf.ts';
import { plannedChanges } from '../../../../src/practice/part/plannedChange.ts';
import { acceptCommands } from '../../../../src/practice/pile/acceptCommands.ts';
import { done, openTestLogbook } from '../../logbook/openTestLogbook.ts';
import { situationOf, writePile } from '../pile/pileInLogbook.ts';

/** Accepts every change for good the pile asks for; the demo's frame of 120 under a hub of 130 asks for one. */
async function acceptChanges(which: string) {
  const { logbook } = await openTestLogbook();
  await writePile(logbook);
  const { situation } = await situationOf(logbook);
  for (const finding of checkPile(pileOf(situation.parts)).findings) {
    const bridge = finding.bridges.find(({ oneWay }) => oneWay?.change === which);
    if (!bridge) continue;
    const plan = acceptCommands(finding, bridge.bridgeId, situation);
    if (!plan.ok) throw new Error(plan.reason);
    for (const command of plan.commands) await done(logbook, command);
  }
  return logbook;
}

test('a frame to be cold-set is offered the figures that were accepted, and no other part is', async () => {
  const logbook = await acceptChanges('cold-set');
  const { card } = await situationOf(logbook);
  expect(plannedChanges('frame', card).map(({ draft }) => draft)).toMatchObject([
    { cut: 'cold-set', before: '120', after: '130', unit: 'mm' },
  ]);
  for (const { partId } of card.parts)
    if (partId !== 'frame') expect(plannedChanges(partId, card)).toEqual([]);
  logbook.close();
});

test('where the hub was to be cut instead, the frame is left alone', async () => {
  const logbook = await acceptChanges('cut-hub');
  const { card } = await situationOf(logbook);
  expect(plannedChanges('rear-hub', card).map(({ draft }) => draft.cut)).toEqual(['saw']);
  expect(plannedChanges('frame', card)).toEqual([]);
  logbook.close();
});

test('nothing is planned where nothing was accepted', async () => {
  const { logbook } = await openTestLogbook();
  await writePile(logbook);
  expect(plannedChanges('frame', (await situationOf(logbook)).card)).toEqual([]);
  logbook.close();
});

test('the frame measured as bent is asked for nothing more', async () => {
  const logbook = await acceptChanges('cold-set');
  const { card } = await situationOf(logbook);
  const frame = card.parts.find(({ partId }) => partId === 'frame');
  const faces = (frame?.faces ?? []).map((face) =>
    face.kind === 'end-spacing' ? { ...face, standard: 'rear-130' } : face,
  );
  await done(logbook, { type: 'describe-part', partId: 'frame', faces });
  expect(plannedChanges('frame', (await situationOf(logbook)).card)).toEqual([]);
  logbook.close();
});
