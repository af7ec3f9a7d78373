import { describe, expect, test } from 'vitest';
import type { CommandOf } from '../../../src/journal/commands.ts';
import type { Logbook } from '../../../src/logbook.ts';
import { aBike } from '../logbook/aBike.ts';
import { done, openTestLogbook } from '../logbook/openTestLogbook.ts';

const HOUR = 3_600_000;
const crack: CommandOf<'find-defect'> = {
  ...({ type: 'find-defect', defectId: 'd1', bikeId: 'b1', area: 'other' } as const),
  ...({ words: 'Crack in the fork', decision: 'do-not-ride' } as const),
};

const graveOf = async (logbook: Logbook) =>
  (await logbook.read('bikes', {})).flatMap(({ grave }) => grave.map(({ words }) => words));

async function withCrack() {
  const opened = await openTestLogbook();
  await aBike(opened.logbook);
  opened.clock.nowMs += HOUR;
  const [found] = await done(opened.logbook, crack);
  opened.clock.nowMs += HOUR;
  return { ...opened, foundId: found?.id ?? '' };
}

describe('[J3] the bike says by its row which open problems stop it', () => {
  test('one that is closed stops it no more, also where the closing is corrected to before it was found', async () => {
    const { logbook, clock } = await withCrack();
    expect(await graveOf(logbook)).toEqual(['Crack in the fork']);
    const [closed] = await done(logbook, { type: 'close-defect', defectId: 'd1', how: 'another fork' });
    expect(await graveOf(logbook)).toEqual([]);
    await done(logbook, {
      ...{ type: 'correct', entryId: closed?.id ?? '', reason: 'mended the day before' },
      becomes: { happenedAtMs: clock.nowMs - 3 * HOUR },
    });
    expect((await logbook.read('bike', { bikeId: 'b1' }))?.defects).toEqual([]);
    expect(await graveOf(logbook)).toEqual([]);
    await logbook.sortAnew(() => {});
    expect(await graveOf(logbook)).toEqual([]);
    logbook.close();
  });

  test('one that is closed late, at an hour before it was found, stops it no more', async () => {
    const { logbook, clock } = await withCrack();
    const happenedAtMs = clock.nowMs - 3 * HOUR;
    await done(logbook, { type: 'close-defect', defectId: 'd1', how: 'another fork', happenedAtMs });
    expect(await graveOf(logbook)).toEqual([]);
    logbook.close();
  });

  test('struck out, or corrected to one that may be ridden with, it stops the bike no more', async () => {
    const { logbook, clock, foundId } = await withCrack();
    await done(logbook, {
      ...{ type: 'correct', entryId: foundId, reason: 'a scratch' },
      becomes: { words: 'Scratch in the paint', decision: 'ride-limited', untilKm: 20 },
    });
    expect(await graveOf(logbook)).toEqual([]);
    clock.nowMs += HOUR;
    const [again] = await done(logbook, { ...crack, defectId: 'd2' });
    expect(await graveOf(logbook)).toEqual(['Crack in the fork']);
    await done(logbook, { type: 'undo', entryIds: [again?.id ?? ''] });
    expect(await graveOf(logbook)).toEqual([]);
    logbook.close();
  });

  test('its words are those of today, the first found first', async () => {
    const { logbook, clock, foundId } = await withCrack();
    const happenedAtMs = clock.nowMs - 90 * 60_000;
    await done(logbook, { ...crack, defectId: 'd0', words: 'Bent axle', happenedAtMs });
    await done(logbook, {
      ...{ type: 'correct', entryId: foundId, reason: 'the left leg' },
      becomes: { words: 'Crack in the left leg' },
    });
    expect(await graveOf(logbook)).toEqual(['Bent axle', 'Crack in the left leg']);
    await logbook.sortAnew(() => {});
    expect(await graveOf(logbook)).toEqual(['Bent axle', 'Crack in the left leg']);
    logbook.close();
  });
});
