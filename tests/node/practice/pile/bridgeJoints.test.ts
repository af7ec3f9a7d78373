import { describe, expect, test } from 'vitest';
import { checkPile } from '../../../../src/fit/checkPile.ts';
import { pileOf } from '../../../../src/fit/pileOf.ts';
import type { Logbook } from '../../../../src/logbook.ts';
import { acceptCommands } from '../../../../src/practice/pile/acceptCommands.ts';
import { named } from '../../../fixtures/pileParts.ts';
import { done, openTestLogbook } from '../../logbook/openTestLogbook.ts';
import { BIKE, situationOf } from './pileInLogbook.ts';

/** A frame with a press shell, and threaded cups, as the bike they are on. */
async function shellAndCups(shell: string) {
  const { logbook } = await openTestLogbook();
  await done(logbook, { type: 'start-bike', bikeId: BIKE, name: 'Dabchick' });
  const parts = [
    ['frame', 'frame', named('shell', shell)],
    ['cups', 'bottom-bracket', named('bb-cup', 'iso')],
  ] as const;
  for (const [partId, kind, face] of parts)
    await done(logbook, {
      ...{ type: 'add-part', partId, kind, name: partId, label: partId, origin: 'found' },
      ...{ place: { on: 'bike', bikeId: BIKE }, faces: [face] },
    });
  return logbook;
}

async function acceptSleeve(logbook: Logbook, bridge: RegExp) {
  const { situation } = await situationOf(logbook);
  const finding = checkPile(pileOf(situation.parts)).findings.find(
    ({ topic }) => topic === 'bottom-bracket-in-shell',
  );
  const { bridgeId = '' } = finding?.bridges.find((one) => bridge.test(one.bridgeId)) ?? {};
  if (!finding) throw new Error('no finding about the shell');
  const accepted = acceptCommands(finding, bridgeId, situation);
  if (!accepted.ok)
    throw new Error(`no such bridge among ${finding.bridges.map((one) => one.bridgeId).join()}`);
  for (const command of accepted.commands) await done(logbook, command);
  const { card } = await situationOf(logbook);
  const bench = await logbook.read('bench', { bikeId: BIKE });
  return { card, steps: bench?.steps.map(({ kind, title }) => `${kind} ${title}`) ?? [] };
}

describe('[B3] a sleeve pressed into the shell', () => {
  test('[B3] is a joint on each side, and the cups in it are another, with the left-hand thread on the drive side', async () => {
    const logbook = await shellAndCups('pf30');
    const { card, steps } = await acceptSleeve(logbook, /./);
    const sleeve = card.parts.find(({ kind }) => kind === 'adapter')?.partId;
    expect(
      card.joints.map(({ name, kind, partIds, fasteners }) => [
        name,
        kind,
        partIds.toSorted(),
        fasteners.length,
      ]),
    ).toEqual(
      expect.arrayContaining([
        ['Sleeve in shell, drive side', 'bottom-bracket', ['frame', sleeve].toSorted(), 0],
        ['Sleeve in shell, other side', 'bottom-bracket', ['frame', sleeve].toSorted(), 0],
        ['Bottom bracket', 'bottom-bracket', ['cups', sleeve].toSorted(), 2],
      ]),
    );
    expect(card.joints).toHaveLength(3);
    expect(steps.slice(1)).toEqual([
      'press Sleeve in shell, drive side: press',
      'press Sleeve in shell, other side: press',
      'fit Bottom bracket: fit',
      'torque Bottom bracket: torque',
      'check Bottom bracket: turns freely',
    ]);
    // Planned from the joints as well, nothing is doubled and nothing pressed twice.
    expect(await logbook.run({ type: 'plan-steps', bikeId: BIKE })).toMatchObject({
      refused: 'nothing-to-plan',
    });
    logbook.close();
  });

  test('[B3] cups that were in the shell keep their screws and go into the sleeve', async () => {
    const logbook = await shellAndCups('pf30');
    await done(logbook, {
      ...{ type: 'make-joint', jointId: 'cups', bikeId: BIKE, kind: 'bottom-bracket', name: 'Cups' },
      ...{ partIds: ['frame', 'cups'], between: [], targets: [] },
      fasteners: [{ thread: 'iso', count: 2, hand: 'right' }],
    });
    const { card } = await acceptSleeve(logbook, /./);
    const sleeve = card.parts.find(({ kind }) => kind === 'adapter')?.partId;
    expect(card.joints.find(({ jointId }) => jointId === 'cups')?.partIds.toSorted()).toEqual(
      ['cups', sleeve].toSorted(),
    );
    expect(card.joints).toHaveLength(3);
    logbook.close();
  });

  test('[B3] a bonded one gets its compound, and the cure before the cups are tightened', async () => {
    const logbook = await shellAndCups('bb30');
    const { card, steps } = await acceptSleeve(logbook, /iso/);
    const bonded = card.joints.filter(({ between }) =>
      between.some(({ kind }) => kind === 'retaining-compound'),
    );
    expect(bonded.map(({ name }) => name).toSorted()).toEqual([
      'Sleeve in shell, drive side',
      'Sleeve in shell, other side',
    ]);
    expect(steps).toContain('lock Sleeve in shell, drive side: retaining compound');
    logbook.close();
  });
});
