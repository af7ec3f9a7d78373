import type { Command } from '../../../src/journal/commands.ts';
import type { Logbook } from '../../../src/logbook.ts';
import { rideCheck } from '../../../src/standards/checks/rideCheck.ts';
import { done } from './openTestLogbook.ts';

export const nm = (value: number) => ({ value, unit: 'N.m' as const, typed: String(value) });
export const mm = (value: number) => ({ value, unit: 'mm' as const, typed: String(value) });

type Joint = Extract<Command, { type: 'make-joint' }>;

/** A bike with two parts and one joint; what matters to a test is given, the rest is ordinary. */
export async function aBike(
  logbook: Logbook,
  bikeId = 'b1',
  joint: Partial<Joint> = {},
): Promise<{ bikeId: string; jointId: string; partIds: [string, string] }> {
  await done(logbook, { type: 'start-bike', bikeId, name: `Bike ${bikeId}` });
  const partIds: [string, string] = [`${bikeId}-p1`, `${bikeId}-p2`];
  for (const partId of partIds) {
    await done(logbook, {
      type: 'add-part',
      partId,
      place: { on: 'bike', bikeId },
      label: partId,
      name: `Part ${partId}`,
      kind: 'other',
      origin: 'found',
    });
  }
  const jointId = joint.jointId ?? `${bikeId}-j1`;
  await done(logbook, {
    type: 'make-joint',
    bikeId,
    name: 'Stem on steerer',
    kind: 'stem-steerer',
    partIds,
    between: [{ kind: 'grease' }],
    fasteners: [{ thread: 'M5', count: 2, hand: 'right' }],
    targets: [{ source: 'printed-on-the-part', torque: nm(5), partId: partIds[0] }],
    ...joint,
    jointId,
  });
  return { bikeId, jointId, partIds };
}

export async function torque(logbook: Logbook, jointId: string, value = 5, bolts = 2) {
  return done(logbook, {
    type: 'apply-torque',
    jointId,
    applied: nm(value),
    entered: 'tap',
    bolts,
    passes: 1,
  });
}

/** Answers to a whole group of the pre-ride check, with what was found by item. */
export function answers(groupId: string, found: Record<string, string> = {}) {
  const items = rideCheck.find(({ id }) => id === groupId)?.items ?? [];
  return items.map(({ id: itemId }) => {
    const words = found[itemId];
    return words === undefined ? { itemId, ok: true } : { itemId, ok: false, words };
  });
}

/** Everything the release asks for, and the release. */
export async function release(logbook: Logbook, bikeId: string) {
  for (const { id } of rideCheck)
    await done(logbook, { type: 'confirm-ride-check', bikeId, groupId: id, items: answers(id) });
  return done(logbook, {
    type: 'release-bike',
    bikeId,
    statement: 'ride',
    covers: 'all joints',
    by: 'Tester',
  });
}
