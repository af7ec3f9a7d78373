import { expect, test } from 'vitest';
import { done, openTestLogbook } from './openTestLogbook.ts';

const nm = (value: number) => ({ value, unit: 'N.m' as const, typed: String(value) });

test('the whole job once through: parts, joint, steps, torque, release, ride, re-check', async () => {
  const { logbook, clock } = await openTestLogbook();
  const bikeId = 'bike-1';
  await done(logbook, { type: 'start-bike', bikeId, name: 'Heron' });
  for (const [partId, name] of [
    ['stem', 'Stem'],
    ['fork', 'Fork'],
  ] as const) {
    const place = { on: 'bike' as const, bikeId };
    await done(logbook, {
      type: 'add-part',
      partId,
      place,
      label: partId,
      name,
      kind: 'stem',
      origin: 'found',
    });
  }
  await done(logbook, {
    type: 'make-joint',
    jointId: 'j1',
    bikeId,
    name: 'Stem on steerer',
    kind: 'stem-steerer',
    partIds: ['stem', 'fork'],
    between: [{ kind: 'grease' }],
    fasteners: [{ thread: 'M5', count: 2, hand: 'right' }],
    targets: [{ source: 'printed-on-the-part', torque: nm(5), partId: 'stem' }],
  });
  await done(logbook, { type: 'plan-steps', bikeId });
  const bench = await logbook.read('bench', { bikeId });
  expect(bench?.steps.map((step) => step.kind)).toEqual(['fit', 'torque']);
  const [fit, torque] = bench?.steps ?? [];
  await done(logbook, { type: 'finish-step', stepId: fit?.stepId ?? '' });
  clock.nowMs += 60_000;
  const apply = {
    type: 'apply-torque' as const,
    jointId: 'j1',
    stepId: torque?.stepId ?? '',
    applied: nm(5),
    entered: 'tap' as const,
    bolts: 2,
    passes: 2,
  };
  const [applied] = await done(logbook, apply);
  expect(await logbook.run(apply)).toEqual({ refused: 'already-applied', about: 'Stem on steerer' });
  await done(logbook, { type: 'undo', entryIds: [applied?.id ?? ''] });
  expect((await logbook.read('joint', { jointId: 'j1' }))?.joint.state).toBe('open');
  clock.nowMs += 60_000;
  await done(logbook, apply);
  const refused = await logbook.run({
    type: 'release-bike',
    bikeId,
    statement: 'first-ride',
    covers: 'all',
    by: 'me',
  });
  expect(refused).toMatchObject({ refused: 'must-not-be-deferred' });
  const { rideCheck } = await import('../../../src/standards/checks/rideCheck.ts');
  for (const { id, items } of rideCheck) {
    const answers = items.map((item) => ({ itemId: item.id, ok: true }));
    await done(logbook, { type: 'confirm-ride-check', bikeId, groupId: id, items: answers });
  }
  await done(logbook, { type: 'release-bike', bikeId, statement: 'first-ride', covers: 'all', by: 'me' });
  clock.nowMs += 3_600_000;
  await done(logbook, { type: 'log-ride', bikeId, km: 8, minutes: 30 });
  const bike = await logbook.read('bike', { bikeId });
  const recheck = bike?.rechecks.find(({ jointId }) => jointId === 'j1');
  expect(recheck?.dueAtMs).toBeLessThanOrEqual(clock.nowMs);
  expect(await logbook.claimDue()).toHaveLength(1);
  expect(await logbook.claimDue()).toHaveLength(0);
  await done(logbook, {
    type: 'find-torque',
    jointId: 'j1',
    recheckId: recheck?.recheckId ?? '',
    outcome: 'moved',
    way: 'tightening',
    movedAt: nm(4.2),
    broughtTo: nm(5),
  });
  const after = await logbook.read('bike', { bikeId });
  expect(after?.bike.revoked?.because).toBe('torque-found');
  expect(after?.joints[0]?.found?.movedAt?.value).toBe(4.2);
  const built = await logbook.read('as-built', { bikeId, atMs: Date.UTC(2026, 4, 3, 9, 1, 30) });
  expect(built.joints[0]?.applied).toBeUndefined();
  const page = await logbook.read('history', { place: `b:${bikeId}`, limit: 5 });
  const rest = await logbook.read('history', { place: `b:${bikeId}`, limit: 500, after: page.next });
  expect(page.lines).toHaveLength(5);
  const seqs = [...page.lines, ...rest.lines].map(({ seq }) => seq);
  expect(new Set(seqs).size).toBe(seqs.length);
  logbook.close();
});
