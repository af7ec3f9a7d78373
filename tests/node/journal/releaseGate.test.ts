import { describe, expect, test } from 'vitest';
import type { OpenItem } from '../../../src/journal/entries.ts';
import type { Logbook } from '../../../src/logbook.ts';
import { stopsStatement } from '../../../src/planning/stopsStatement.ts';
import { rideCheck } from '../../../src/standards/checks/rideCheck.ts';
import type { JointKind } from '../../../src/standards/jointKinds.ts';
import { aBike, torque } from '../logbook/aBike.ts';
import { done, openTestLogbook } from '../logbook/openTestLogbook.ts';

const HOUR = 3_600_000;
const bare = { between: [], targets: [] };
const open = async (logbook: Logbook): Promise<OpenItem[]> =>
  ((await logbook.read('release', { bikeId: 'b1' }))?.open ?? []).filter(
    ({ what }) => !what.startsWith('check'),
  );
const stopping = async (logbook: Logbook) =>
  (await open(logbook)).filter(({ blocks }) => blocks).map(({ words }) => words);

/** A bike with one joint of a kind and one step about it. */
async function withStep(kind: JointKind, step: 'fit' | 'press' | 'adjust' | 'torque' | 'lock', name = 'It') {
  const opened = await openTestLogbook();
  const { logbook } = opened;
  await aBike(logbook, 'b1', { ...bare, kind, name, jointId: 'j', fasteners: [] });
  await done(logbook, { type: 'add-step', stepId: 's', bikeId: 'b1', kind: step, title: name, jointId: 'j' });
  return opened;
}

describe('the release gate', () => {
  test('[L9] a brake hose that was never tightened stops, until work on it is logged', async () => {
    const { logbook, clock } = await openTestLogbook();
    const fasteners = [{ thread: 'M6', count: 1, hand: 'right' as const }];
    await aBike(logbook, 'b1', { ...bare, kind: 'cable-anchor', name: 'Hose', jointId: 'j', fasteners });
    expect(await stopping(logbook)).toEqual(['Hose: no work logged']);
    clock.nowMs += HOUR;
    await torque(logbook, 'j', 6, 1);
    expect(await stopping(logbook)).toEqual([]);
    logbook.close();
  });

  test('[L9] a brake that was not bled stops, left open or skipped, and says why', async () => {
    const { logbook } = await withStep('caliper', 'adjust', 'Bleed the brake');
    const why = 'A brake that was not bled or adjusted does not hold.';
    expect(await stopping(logbook)).toEqual([`Step not done: Bleed the brake, adjust. ${why}`]);
    await done(logbook, { type: 'skip-step', stepId: 's', why: 'no fluid' });
    expect(await stopping(logbook)).toEqual([`Step skipped: Bleed the brake, adjust: no fluid. ${why}`]);
    await done(logbook, { type: 'reopen-step', stepId: 's', why: 'fluid came' });
    await done(logbook, { type: 'finish-step', stepId: 's' });
    expect(await stopping(logbook)).toEqual([]);
    logbook.close();
  });

  test('[L9] a wheel whose tension was skipped stops', async () => {
    const { logbook } = await withStep('spokes', 'adjust', 'Tension and true');
    await done(logbook, { type: 'skip-step', stepId: 's', why: 'later' });
    expect(await stopping(logbook)).toContain(
      'Step skipped: Tension and true, adjust: later. A wheel that was not brought to tension and true folds.',
    );
    logbook.close();
  });

  test('[L9] a steering joint unfinished stops; once its torque is logged the line in the list does not', async () => {
    const pressed = await withStep('headset', 'press', 'Headset');
    expect(await stopping(pressed.logbook)).toContain(
      'Step not done: Headset, press. Steering with play or tight spots throws the rider.',
    );
    pressed.logbook.close();
    const { logbook, clock } = await openTestLogbook();
    const { jointId } = await aBike(logbook);
    await done(logbook, { type: 'add-step', stepId: 's', bikeId: 'b1', kind: 'fit', title: 'Stem', jointId });
    expect((await stopping(logbook)).some((words) => words.startsWith('Step not done: Stem, fit.'))).toBe(
      true,
    );
    clock.nowMs += HOUR;
    await torque(logbook, jointId);
    expect(await stopping(logbook)).toEqual([]);
    expect((await open(logbook)).map(({ words }) => words)).toEqual(['Step not done: Stem, fit']);
    logbook.close();
  });

  test('[L9] a step about a part alone stops by that part; one about nothing, or about a rack, is named', async () => {
    const { logbook } = await openTestLogbook();
    await aBike(logbook, 'b1', { ...bare, kind: 'rack', matters: false, fasteners: [], jointId: 'j' });
    await done(logbook, {
      ...{
        type: 'add-part',
        partId: 'brake',
        place: { on: 'bike', bikeId: 'b1' },
        label: 'B',
        name: 'Brake',
      },
      ...{ kind: 'caliper', origin: 'found' },
    });
    const add = { type: 'add-step', bikeId: 'b1', kind: 'adjust' } as const;
    await done(logbook, { ...add, title: 'Bleed', partId: 'brake' });
    await done(logbook, { ...add, title: 'Rack level', jointId: 'j' });
    await done(logbook, { ...add, title: 'Ring the bell' });
    expect((await stopping(logbook)).map((words) => words.split(',')[0])).toEqual(['Step not done: Bleed']);
    expect(await open(logbook)).toHaveLength(3);
    logbook.close();
  });

  test('[L9] an unset bond stops, also where it is about no joint, and one cut short until it is made again', async () => {
    const { logbook, clock } = await openTestLogbook();
    await aBike(logbook, 'b1', { ...bare, kind: 'headset', fasteners: [], jointId: 'j' });
    await done(logbook, {
      type: 'add-step',
      stepId: 's',
      bikeId: 'b1',
      kind: 'fit',
      title: 'In',
      jointId: 'j',
    });
    await done(logbook, { type: 'finish-step', stepId: 's' });
    const glue = { type: 'start-wait', bikeId: 'b1', kind: 'adhesive', waitMs: 24 * HOUR } as const;
    await done(logbook, { ...glue, waitId: 'w1', title: 'Sleeve in the frame' });
    await done(logbook, { ...glue, waitId: 'w2', title: 'Cup', jointId: 'j' });
    expect(await stopping(logbook)).toEqual(['Timer running: Sleeve in the frame', 'Timer running: Cup']);
    await done(logbook, { type: 'end-wait', waitId: 'w2', outcome: 'cut-short' });
    clock.nowMs += 25 * HOUR;
    expect(await stopping(logbook)).toEqual(['Stem on steerer: its adhesive timer was ended early']);
    await done(logbook, { ...glue, waitId: 'w3', title: 'Cup again', jointId: 'j' });
    clock.nowMs += 25 * HOUR;
    expect(await stopping(logbook)).toEqual([]);
    logbook.close();
  });

  test('[L9] threadlocker of a step that is about no joint stops until it has cured', async () => {
    const { logbook, clock } = await openTestLogbook();
    await aBike(logbook, 'b1', { kind: 'other', matters: false });
    await done(logbook, { type: 'add-step', stepId: 's', bikeId: 'b1', kind: 'lock', title: 'Lever screw' });
    await done(logbook, {
      ...{ type: 'apply-locker', stepId: 's', grade: 'medium', surface: 'steel', primer: false },
      waitMs: 24 * HOUR,
    });
    expect(await stopping(logbook)).toEqual(['Timer running: Lever screw']);
    clock.nowMs += 25 * HOUR;
    expect(await stopping(logbook)).toEqual([]);
    logbook.close();
  });
});

describe('[L11] a brake is bedded in before the full release', () => {
  const statements = async (logbook: Logbook) => {
    const all = await open(logbook);
    return all.filter(({ blocksFull }) => blocksFull).map(({ words, blocks }) => [words, blocks]);
  };
  const checked = async (logbook: Logbook) => {
    for (const { id, items } of rideCheck)
      await done(logbook, {
        ...{ type: 'confirm-ride-check', bikeId: 'b1', groupId: id },
        items: items.map((item) => ({ itemId: item.id, ok: true })),
      });
  };
  const sign = (statement: 'first-ride' | 'ride') =>
    ({ type: 'release-bike', bikeId: 'b1', statement, covers: 'all', by: 'T' }) as const;

  test('[L11] the first short ride is released without it, the full one is refused, and after the ride it is answered', async () => {
    const { logbook, clock } = await openTestLogbook();
    const rotor = { ...bare, kind: 'rotor' as const, name: 'Rotor', jointId: 'j', fasteners: [] };
    await aBike(logbook, 'b1', rotor);
    expect(await statements(logbook)).toEqual([['Brake not bedded in: Rotor', false]]);
    await checked(logbook);
    expect(await logbook.run(sign('ride'))).toMatchObject({
      refused: 'must-not-be-deferred',
      about: 'Brake not bedded in: Rotor',
    });
    await done(logbook, sign('first-ride'));
    clock.nowMs += HOUR;
    await done(logbook, { type: 'log-ride', bikeId: 'b1', km: 3 });
    const bedIn = (await logbook.read('rechecks', { bikeId: 'b1' })).find(
      ({ kind }) => kind === 'brake-bed-in',
    );
    expect(bedIn?.jointId).toBe('j');
    expect(await statements(logbook)).toHaveLength(1);
    await done(logbook, {
      type: 'answer-recheck',
      recheckId: bedIn?.recheckId ?? '',
      outcome: 'as-it-should',
    });
    expect(await statements(logbook)).toEqual([]);
    // A release uses up the check it was signed on.
    await checked(logbook);
    await done(logbook, sign('ride'));
    logbook.close();
  });

  test('[L11] a check that ended because the brake came apart beds in nothing; one that was not wanted does', async () => {
    const { logbook, clock } = await openTestLogbook();
    const fasteners = [{ thread: 'M5', count: 6, hand: 'right' as const }];
    await aBike(logbook, 'b1', { ...bare, kind: 'rotor', name: 'Rotor', jointId: 'j', fasteners });
    await torque(logbook, 'j', 5, 6);
    clock.nowMs += HOUR;
    await done(logbook, { type: 'log-ride', bikeId: 'b1', km: 3 });
    await done(logbook, { type: 'take-joint-apart', jointId: 'j', why: 'new pads' });
    clock.nowMs += HOUR;
    await torque(logbook, 'j', 5, 6);
    expect(await statements(logbook)).toEqual([['Brake not bedded in: Rotor', false]]);
    clock.nowMs += HOUR;
    await done(logbook, { type: 'log-ride', bikeId: 'b1', km: 3 });
    const all = await logbook.read('rechecks', { bikeId: 'b1' });
    const recheckId = all.find(({ kind }) => kind === 'brake-bed-in')?.recheckId ?? '';
    await done(logbook, { type: 'drop-recheck', recheckId, why: 'Not needed on this bike' });
    expect(await statements(logbook)).toEqual([]);
    logbook.close();
  });

  test('the example of what stops which statement', () => {
    expect(stopsStatement({ blocks: false, blocksFull: true }, 'first-ride')).toBe(false);
    expect(stopsStatement({ blocks: false, blocksFull: true }, 'ride')).toBe(true);
    expect(stopsStatement({ blocks: true }, 'first-ride')).toBe(true);
    expect(stopsStatement({ blocks: true, blocksFull: true }, 'not-to-ride')).toBe(false);
  });
});
