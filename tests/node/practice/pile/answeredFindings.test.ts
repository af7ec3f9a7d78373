import { describe, expect, test } from 'vitest';
import { checkPile } from '../../../../src/fit/checkPile.ts';
import type { Face } from '../../../../src/fit/faces/face.ts';
import { pileOf } from '../../../../src/fit/pileOf.ts';
import type { Logbook } from '../../../../src/logbook.ts';
import { acceptCommands } from '../../../../src/practice/pile/acceptCommands.ts';
import { findingGroups } from '../../../../src/practice/pile/findingGroups.ts';
import { caliper } from '../../../fixtures/pileParts.ts';
import { done, openTestLogbook } from '../../logbook/openTestLogbook.ts';
import { BIKE, pile, situationOf, writePile } from './pileInLogbook.ts';

const fitLines = async (logbook: Logbook): Promise<string[]> => {
  const view = await logbook.read('release', { bikeId: BIKE });
  return (view?.open ?? []).filter(({ what }) => what === 'fit-finding').map(({ words }) => words);
};

async function signedOpen(logbook: Logbook): Promise<string[]> {
  const entries = await done(logbook, {
    ...{ type: 'release-bike', bikeId: BIKE, statement: 'not-to-ride' },
    ...{ covers: 'As it stands', by: 'the builder' },
  });
  return entries.flatMap((entry) =>
    entry.type === 'bike-released' ? entry.open.map(({ words }) => words) : [],
  );
}

const CHAINLINE = 'chainline:cranks.spider~rear-hub.driver-mount~rear-hub.hub-spacing';

/** Writes measured sizes onto faces of a part, as the form does. */
async function measure(logbook: Logbook, partId: string, sizes: Record<string, [string, number]>) {
  const { situation } = await situationOf(logbook);
  const faces = (situation.parts.find((part) => part.partId === partId)?.faces ?? []).map((face): Face => {
    const [key, value] = sizes[face.kind] ?? [];
    return key && value !== undefined
      ? { ...face, measured: { ...face.measured, [key]: caliper(value) } }
      : face;
  });
  await done(logbook, { type: 'describe-part', partId, faces });
}

describe('[L5] what the fit check leaves open', () => {
  test('is named by a release although the fit page was not opened', async () => {
    const { logbook } = await openTestLogbook();
    await writePile(logbook);
    const seen = await fitLines(logbook);
    const open = checkPile(pile);
    // And one line for the joints that are not logged.
    expect(seen).toHaveLength(open.findings.length + open.toMeasure.length + 1);
    expect(seen).toContain('Fit: Chainline: Not known yet.');
    expect(seen).toContain(
      'Fit: Bar in stem: The 26 mm bar is too thin for the 31.8 mm clamp: 5.8 mm of play.',
    );
    expect(await signedOpen(logbook)).toEqual(expect.arrayContaining(seen));
    logbook.close();
  });

  test('a way accepted is no longer open, and neither is what is built so already', async () => {
    const { logbook } = await openTestLogbook();
    await writePile(logbook);
    const { situation } = await situationOf(logbook);
    const bar = checkPile(pileOf(situation.parts)).findings.find(({ topic }) => topic === 'bar-in-stem');
    const plan = bar && acceptCommands(bar, bar.bridges[0]?.bridgeId ?? '', situation);
    if (!plan?.ok) throw new Error('nothing to accept');
    for (const command of plan.commands) await done(logbook, command);
    await done(logbook, {
      type: 'make-joint',
      ...{ jointId: 'j1', bikeId: BIKE, kind: 'seatpost', name: 'Post', partIds: ['seatpost', 'frame'] },
      ...{ between: [{ kind: 'shim', words: 'turned' }], fasteners: [], targets: [] },
    });
    const lines = (await fitLines(logbook)).join('\n');
    expect(lines).not.toContain('Bar in stem');
    expect(lines).not.toContain('Post in seat tube');
    expect(lines).toContain('Stem on steerer');
    logbook.close();
  });

  test('a not-known noted as open stays in sight until it is measured, then it is gone', async () => {
    const { logbook } = await openTestLogbook();
    await writePile(logbook);
    const groupsOf = async () => {
      const { card, situation } = await situationOf(logbook);
      return findingGroups(checkPile(pileOf(situation.parts)), card.findings);
    };
    await done(logbook, {
      ...{ type: 'note-finding', bikeId: BIKE, findingId: CHAINLINE, outcome: 'not-known' },
      words: 'Chainline: not measured yet',
    });
    const stillOpen = (await groupsOf()).find(({ group }) => group === 'not-known');
    expect(stillOpen?.findings.map(({ findingId }) => findingId)).toContain(CHAINLINE);
    expect((await fitLines(logbook)).filter((words) => words.startsWith('Fit: Chainline'))).toHaveLength(1);

    await measure(logbook, 'cranks', { spider: ['chainlineMm', 43] });
    expect((await fitLines(logbook)).join()).toContain('Fit: Chainline');
    await measure(logbook, 'rear-hub', { 'driver-mount': ['toothCentreMm', 22] });
    expect((await fitLines(logbook)).join()).not.toContain('Fit: Chainline');
    expect(await signedOpen(logbook)).not.toContain('Fit: Chainline: not measured yet');
    const settled = (await groupsOf()).find(({ findings }) =>
      findings.some(({ findingId }) => findingId === CHAINLINE),
    );
    expect(settled?.group).toBe('fits');
    logbook.close();
  });

  test('parts that go together without a joint are named until there is one, and again when it is apart', async () => {
    const { logbook } = await openTestLogbook();
    await writePile(logbook);
    const alone = async () =>
      (await fitLines(logbook)).find((words) => words.startsWith('Fit: No joint is logged')) ?? '';
    expect(await alone()).toContain('pedals');
    await done(logbook, {
      type: 'make-joint',
      ...{ jointId: 'j1', bikeId: BIKE, kind: 'pedal', name: 'Pedals', partIds: ['pedals', 'cranks'] },
      ...{ between: [], fasteners: [], targets: [] },
    });
    expect(await alone()).not.toBe('');
    expect(await alone()).not.toContain('pedals');
    await done(logbook, { type: 'take-joint-apart', jointId: 'j1', why: 'they squeak' });
    expect(await alone()).toContain('pedals');
    logbook.close();
  });

  test('a face emptied answers nothing; a part taken off takes its question along', async () => {
    const { logbook } = await openTestLogbook();
    await writePile(logbook);
    await done(logbook, {
      ...{ type: 'note-finding', bikeId: BIKE, findingId: CHAINLINE, outcome: 'not-known' },
      words: 'Chainline: not measured yet',
    });
    await done(logbook, { type: 'describe-part', partId: 'cranks', faces: [] });
    expect(await fitLines(logbook)).toContain('Fit: Chainline: not measured yet');
    await done(logbook, {
      ...{ type: 'move-part', partId: 'cranks', to: { on: 'shelf' }, why: 'others are wanted' },
    });
    expect((await fitLines(logbook)).join()).not.toContain('Chainline');
    logbook.close();
  });
});
