import { expect, test } from 'vitest';
import { mattersHere } from '../../../src/fit/mattersHere.ts';
import { pileOf } from '../../../src/fit/pileOf.ts';
import type { Command } from '../../../src/journal/commands.ts';
import type { SealMark } from '../../../src/journal/entries.ts';
import { confirmedItems, firstAnswers } from '../../../src/practice/release/checkAnswers.ts';
import { rideCheck } from '../../../src/standards/checks/rideCheck.ts';
import type { JointKind } from '../../../src/standards/jointKinds.ts';
import { mm, nm } from './aBike.ts';
import { done, openTestLogbook } from './openTestLogbook.ts';
import { releaseSays } from './releaseSays.ts';

const HOUR = 3_600_000;
const bikeId = 'dabchick';
const bar = (value: number) => ({ value, unit: 'bar' as const, typed: String(value) });

/** What is on the bike: kind by id; no front brake, the hub brakes by back-pedalling. */
const kinds = {
  frame: 'frame',
  fork: 'fork',
  headset: 'headset',
  stem: 'stem',
  bar: 'bar',
  shim: 'shim',
  grips: 'grips',
  sleeve: 'sleeve',
  cups: 'bottom-bracket',
  cranks: 'cranks',
  ring: 'chainring',
  chain: 'chain',
  pedals: 'pedals',
  'front-hub': 'front-hub',
  'rear-hub': 'rear-hub',
  'front-rim': 'rim',
  'rear-rim': 'rim',
  'front-tyre': 'tyre',
  'rear-tyre': 'tyre',
  post: 'seatpost',
  saddle: 'saddle',
} as const;

type Made = [kind: JointKind, parts: (keyof typeof kinds)[], bolts: number, torqueNm?: number];
const joints: Record<string, Made> = {
  'front-spokes': ['spokes', ['front-hub', 'front-rim'], 0],
  'rear-spokes': ['spokes', ['rear-hub', 'rear-rim'], 0],
  'front-bead': ['bead', ['front-tyre', 'front-rim'], 0],
  'rear-bead': ['bead', ['rear-tyre', 'rear-rim'], 0],
  bonded: ['other', ['frame', 'sleeve'], 0],
  cups: ['bottom-bracket', ['sleeve', 'cups'], 2, 40],
  headset: ['headset', ['headset', 'frame'], 0],
  quill: ['stem-quill', ['stem', 'fork'], 1, 20],
  bar: ['bar-clamp', ['bar', 'stem'], 1, 18],
  cranks: ['crank', ['cranks', 'cups'], 1, 40],
  pedals: ['pedal', ['pedals', 'cranks'], 2, 35],
  'front-axle': ['front-axle', ['front-hub', 'fork'], 2, 25],
  'rear-axle': ['rear-axle', ['rear-hub', 'frame'], 2, 34],
  chain: ['chain', ['chain', 'rear-hub'], 0],
  seatpost: ['seatpost', ['post', 'frame'], 1, 12],
  saddle: ['saddle-rails', ['saddle', 'post'], 1, 14],
};

test('[L8] [L9] [T9] Dabchick is built, released and looked at again without one untrue answer', async () => {
  const { logbook, clock } = await openTestLogbook();
  const run = async (command: Command) => {
    clock.nowMs += 5000;
    return done(logbook, command);
  };
  const open = async () => (await logbook.read('release', { bikeId }))?.open ?? [];
  const stops = async () =>
    (await open()).filter(({ blocks, what }) => blocks && what !== 'check-open').map(({ words }) => words);

  await run({ type: 'start-bike', bikeId, name: 'Dabchick' });
  const coaster = { faceId: 'd', kind: 'driver-mount' as const, standard: null, nominal: {}, measured: {} };
  for (const [partId, kind] of Object.entries(kinds))
    await run({
      ...{ type: 'add-part', partId, place: { on: 'bike', bikeId }, label: partId, name: partId, kind },
      origin: 'found',
      ...(partId === 'rear-hub' ? { faces: [{ ...coaster, traits: { drive: 'back-pedal' } }] } : {}),
      ...(partId.startsWith('front-') ? { position: 'front' as const } : {}),
      ...(partId.startsWith('rear-') ? { position: 'rear' as const } : {}),
    });
  const parts = (await logbook.read('bike', { bikeId }))?.parts ?? [];
  for (const [jointId, [kind, partIds, count, torqueNm]] of Object.entries(joints)) {
    const { matters } = mattersHere(
      kind,
      pileOf(parts.filter(({ partId }) => partIds.includes(partId as never))),
      pileOf(parts),
    );
    await run({
      ...{ type: 'make-joint', jointId, bikeId, name: jointId, kind, partIds: [...partIds], matters },
      between:
        jointId === 'bonded'
          ? [{ kind: 'retaining-compound' }]
          : jointId === 'bar'
            ? [{ kind: 'shim', partId: 'shim' }]
            : [],
      fasteners: count > 0 ? [{ thread: 'M8', count, hand: 'right' }] : [],
      targets: torqueNm ? [{ source: 'printed-on-the-part', torque: nm(torqueNm) }] : [],
      ...(jointId === 'bonded' ? { diameters: { bore: mm(40.06), outside: mm(40) } } : {}),
    });
  }
  // The chain is part of the brake here.
  expect((await logbook.read('joint', { jointId: 'chain' }))?.joint.matters).toBe(true);
  await run({
    ...{ type: 'change-part', partId: 'frame', cut: 'cold-set', where: 'rear ends', before: mm(110) },
    ...{ after: mm(114), how: 'threaded rod', why: 'the hub is 114 wide' },
  });

  // The sleeve: compound on, and the cups only with a word, or a day later.
  await run({
    ...{ type: 'apply-locker', jointId: 'bonded', grade: 'retaining', surface: 'steel', primer: false },
    ...{ gap: mm(0.06), waitMs: 24 * HOUR },
  });
  const tighten = (jointId: string): Command => ({
    ...{ type: 'apply-torque', jointId, applied: nm(joints[jointId]?.[3] ?? 0), entered: 'keypad' },
    ...{ bolts: joints[jointId]?.[2] ?? 0, passes: 1 },
  });
  expect(await logbook.run(tighten('cups'))).toMatchObject({ refused: 'bond-not-set', about: 'bonded' });
  clock.nowMs += 25 * HOUR;
  for (const [jointId, [, , , torqueNm]] of Object.entries(joints)) if (torqueNm) await run(tighten(jointId));

  // Drop-in bearings, two wheels to true, the play of the headset.
  const steps = {
    headset: 'adjust',
    'front-spokes': 'adjust',
    'rear-spokes': 'adjust',
    chain: 'adjust',
  } as const;
  for (const [jointId, kind] of Object.entries(steps))
    await run({ type: 'add-step', stepId: `s-${jointId}`, bikeId, kind, title: jointId, jointId });
  await run({ type: 'skip-step', stepId: 's-rear-spokes', why: 'the stand is out' });
  expect((await stops()).map((words) => words.split(/[:,.]/).slice(0, 2).join(':'))).toEqual(
    expect.arrayContaining(['headset: no work logged', 'Step skipped: rear-spokes', 'Step not done: chain']),
  );
  await run({ type: 'reopen-step', stepId: 's-rear-spokes', why: 'the stand is back' });
  for (const jointId of Object.keys(steps)) await run({ type: 'finish-step', stepId: `s-${jointId}` });
  for (const jointId of ['front-bead', 'rear-bead']) {
    const seated: SealMark = { mark: 'seated', dry: true, beadLine: 'even', reading: { pressure: bar(2.5) } };
    await run({ type: 'mark-seal', jointId, mark: seated });
    await run({ type: 'mark-seal', jointId, mark: { mark: 'verdict', verdict: 'holds' } });
  }
  expect(await stops()).toEqual([]);

  // The check: what the bike has not got is not asked, the rest is as it should be.
  const seen = await logbook.read('release', { bikeId });
  const bike = { parts: seen?.parts ?? [], joints: seen?.joints ?? [] };
  for (const group of rideCheck) {
    const first = firstAnswers(group, undefined, bike);
    const looked = group.items.map(({ id }) => [id, first[id] ?? { ok: true as const }] as const);
    const lights = { ok: false as const, absent: true as const };
    const answers = {
      ...Object.fromEntries(looked),
      ...(group.id === 'then' ? { 'local-rules': lights } : {}),
    };
    await run({
      type: 'confirm-ride-check',
      bikeId,
      groupId: group.id,
      items: confirmedItems(group, answers),
    });
  }
  const [signed] = await run({
    ...{ type: 'release-bike', bikeId, statement: 'first-ride', covers: 'the whole build', by: 'T' },
    restrictions: 'not on the road without a second brake; short rides first',
  });
  const missing = releaseSays(signed).filter((words) => words.startsWith('Not fitted'));
  expect(missing.map((words) => words.split('.')[0])).toEqual([
    'Not fitted: front brake',
    'Not fitted: front rotor or brake cable',
    'Not fitted: brake levers',
    'Not fitted: rear rotor or brake cable',
    'Not fitted: lights, reflectors or bell',
  ]);

  // Months later a crank bolt has moved under a click wrench.
  await run({ type: 'log-ride', bikeId, minutes: 20, km: 4 });
  clock.nowMs += 150 * 24 * HOUR;
  await run({
    type: 'find-torque',
    jointId: 'cranks',
    outcome: 'moved',
    way: 'tightening',
    broughtTo: nm(40),
  });
  const after = (await logbook.read('bike', { bikeId }))?.bike;
  expect(after?.revoked?.releaseId).toBe(after?.release?.releaseId);
  logbook.close();
});
