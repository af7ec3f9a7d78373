import { describe, expect, test } from 'vitest';
import { checkPile } from '../../../../src/fit/checkPile.ts';
import { isAccepted } from '../../../../src/fit/openFindings.ts';
import { pileOf } from '../../../../src/fit/pileOf.ts';
import type { Logbook } from '../../../../src/logbook.ts';
import { acceptCommands } from '../../../../src/practice/pile/acceptCommands.ts';
import { done, openTestLogbook } from '../../logbook/openTestLogbook.ts';
import { BIKE, pile, situationOf, writePile } from './pileInLogbook.ts';

async function openFindings(logbook: Logbook) {
  const { card, situation } = await situationOf(logbook);
  const { findings } = checkPile(pileOf(situation.parts));
  return { card, situation, open: findings.filter((finding) => !isAccepted(card.findings, finding)) };
}

async function accept(logbook: Logbook, findingId: string, bridgeId?: string) {
  const { situation, open } = await openFindings(logbook);
  const finding = open.find((one) => one.findingId === findingId);
  if (!finding) throw new Error(`not open: ${findingId}`);
  const accepted = acceptCommands(finding, bridgeId ?? finding.bridges[0]?.bridgeId ?? '', situation);
  if (!accepted.ok) throw new Error(accepted.reason);
  const entries = [];
  for (const command of accepted.commands) entries.push(...(await done(logbook, command)));
  return { accepted, entries };
}

/** The store gives parts in the order of their ids, and a row of two adapters is named from its first part on. */
const inStoreOrder = [...pile].sort((a, b) => a.partId.localeCompare(b.partId));

const everyBridge = checkPile(inStoreOrder).findings.flatMap(({ findingId, bridges }) =>
  bridges.map(({ bridgeId }) => ({ findingId, bridgeId })),
);

describe('accepting a bridge', () => {
  test('the best bridge of each finding in turn leaves none open', async () => {
    const { logbook } = await openTestLogbook();
    await writePile(logbook);
    const first = await openFindings(logbook);
    expect(first.open.length).toBeGreaterThan(0);
    for (const { findingId } of first.open) await accept(logbook, findingId);
    const { open, card } = await openFindings(logbook);
    expect(open).toEqual([]);
    expect(card.findings.map(({ outcome }) => outcome)).toEqual(first.open.map(() => 'accepted'));
    expect(new Set(card.parts.map(({ label }) => label)).size).toBe(card.parts.length);
    logbook.close();
  });

  test.each(everyBridge)('$bridgeId is carried out and taken back whole', async ({ findingId, bridgeId }) => {
    const { logbook } = await openTestLogbook();
    await writePile(logbook);
    const before = await situationOf(logbook);
    const { entries } = await accept(logbook, findingId, bridgeId);
    const after = await openFindings(logbook);
    expect(after.open.map((one) => one.findingId)).not.toContain(findingId);
    // No torque comes with a bridge: a changed part has none.
    expect(after.card.joints.flatMap(({ targets }) => targets)).toEqual([]);
    await done(logbook, { type: 'undo', entryIds: entries.map(({ id }) => id) });
    const back = await situationOf(logbook);
    expect(back.card.parts.map(({ partId }) => partId)).toEqual(
      before.card.parts.map(({ partId }) => partId),
    );
    expect(back.card.joints).toEqual(before.card.joints);
    expect(back.card.steps).toEqual(before.card.steps);
    expect(back.card.findings).toEqual([]);
    logbook.close();
  });

  test('a shim lies in the one joint of bar and stem, and its step says so', async () => {
    const { logbook } = await openTestLogbook();
    await writePile(logbook);
    await accept(logbook, 'bar-in-stem:bar.bar-centre~stem.bar-clamp');
    const { card } = await situationOf(logbook);
    const shim = card.parts.find(({ kind }) => kind === 'shim');
    expect(card.joints).toHaveLength(1);
    const [joint] = card.joints;
    expect(joint?.kind).toBe('bar-clamp');
    expect([...(joint?.partIds ?? [])].sort()).toEqual(['bar', 'stem']);
    expect(joint?.between).toEqual([{ kind: 'shim', partId: shim?.partId }]);
    expect(card.steps.map(({ kind, title }) => `${kind}: ${title}`)).toEqual([
      'check: Get or make: Bar shim 31.8 → 26',
      'fit: Bar in stem: fit',
      'torque: Bar in stem: torque',
    ]);
    logbook.close();
  });

  test('a brake adapter has two joints of its own: on the fork, and under the caliper (common practice, no source)', async () => {
    const { logbook } = await openTestLogbook();
    await writePile(logbook);
    await accept(logbook, 'caliper-on-mount:caliper.caliper-mount~fork.disc-mount');
    const { card } = await situationOf(logbook);
    const adapter = card.parts.find(({ kind }) => kind === 'adapter')?.partId ?? '';
    const joints = card.joints.map(({ kind, partIds }) => `${kind} ${[...partIds].sort().join()}`).sort();
    expect(joints).toEqual(
      [
        `brake-mount ${[adapter, 'fork'].sort().join()}`,
        `caliper ${[adapter, 'caliper'].sort().join()}`,
      ].sort(),
    );
    logbook.close();
  });

  test('a joint that is there is extended, and what lay between stays', async () => {
    const { logbook } = await openTestLogbook();
    await writePile(logbook);
    await done(logbook, {
      type: 'make-joint',
      ...{ jointId: 'j1', bikeId: BIKE, kind: 'seatpost', name: 'Post', partIds: ['seatpost', 'frame'] },
      ...{ between: [{ kind: 'grease' }], fasteners: [], targets: [] },
    });
    await done(logbook, { type: 'plan-steps', bikeId: BIKE });
    await accept(logbook, 'post-in-seat-tube:frame.seat-tube~seatpost.post');
    const { card } = await situationOf(logbook);
    expect(card.joints.map(({ jointId }) => jointId)).toEqual(['j1']);
    expect(card.joints[0]?.between.map(({ kind }) => kind)).toEqual(['grease', 'shim']);
    expect(card.steps.filter(({ jointId }) => jointId === 'j1').map(({ title }) => title)).toEqual([
      'Post: Seatpost shim 27.2 → 25.4 between',
      'Post: fit',
    ]);
    logbook.close();
  });

  test('a shim on the shelf is taken before one is bought', async () => {
    const { logbook } = await openTestLogbook();
    await writePile(logbook);
    await done(logbook, {
      type: 'add-part',
      ...{ partId: 'own', kind: 'shim', name: 'own shim', label: 'P-90', origin: 'made' },
      place: { on: 'shelf' },
      faces: [
        {
          ...{ faceId: 'o', kind: 'bar-centre', standard: null, measured: {} },
          nominal: { diameterMm: 31.8 },
        },
        { ...{ faceId: 'i', kind: 'bar-clamp', standard: null, measured: {} }, nominal: { boreMm: 26 } },
      ],
    });
    await accept(logbook, 'bar-in-stem:bar.bar-centre~stem.bar-clamp');
    const { card } = await situationOf(logbook);
    expect(card.parts.find(({ partId }) => partId === 'own')?.place).toEqual({ on: 'bike', bikeId: BIKE });
    expect(card.joints[0]?.between).toEqual([{ kind: 'shim', partId: 'own' }]);
    logbook.close();
  });

  test('a change for good makes a step and no part', async () => {
    const { logbook } = await openTestLogbook();
    await writePile(logbook);
    const findingId = 'hub-between-ends:frame.end-spacing~rear-hub.hub-spacing';
    const { accepted } = await accept(logbook, findingId, 'one-way:cut-hub');
    expect(accepted.changeOf).toBe('rear-hub');
    const { card } = await situationOf(logbook);
    expect(card.parts).toHaveLength(pile.length);
    expect(card.steps.map(({ kind, partId }) => ({ kind, partId }))).toEqual([
      { kind: 'cut', partId: 'rear-hub' },
    ]);
    logbook.close();
  });

  test('a way that was not offered is refused', async () => {
    const { logbook } = await openTestLogbook();
    await writePile(logbook);
    const { open, situation } = await openFindings(logbook);
    const finding = open[0];
    if (!finding) throw new Error('nothing open');
    expect(acceptCommands(finding, 'no-such', situation)).toEqual({ ok: false, reason: 'no-such-bridge' });
    logbook.close();
  });
});
