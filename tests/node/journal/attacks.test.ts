import { describe, expect, test } from 'vitest';
import type { Command } from '../../../src/journal/commands.ts';
import type { Entry } from '../../../src/journal/entries.ts';
import { openDatabase } from '../../../src/store/database.ts';
import { rebuildIfOld } from '../../../src/store/rebuild.ts';
import { aBike, answers, nm, release, torque } from '../logbook/aBike.ts';
import { done, openTestLogbook } from '../logbook/openTestLogbook.ts';

const MINUTE = 60_000;
const HOUR = 60 * MINUTE;
const DAY = 24 * HOUR;

type Opened = Awaited<ReturnType<typeof openTestLogbook>>;
type Book = Opened['logbook'];

const jointNow = async (logbook: Book, jointId: string) =>
  (await logbook.read('joint', { jointId }))?.joint ?? expect.unreachable();
const bikeNow = async (logbook: Book, bikeId = 'b1') =>
  (await logbook.read('bike', { bikeId })) ?? expect.unreachable();
const locker = { grade: 'medium', surface: 'steel', primer: false, waitMs: DAY };

describe('corrections', () => {
  test('[J9] a torque whose time is corrected to before its joint was written down stays, and is said to be early', async () => {
    const { logbook, clock } = await openTestLogbook();
    const { bikeId, jointId } = await aBike(logbook);
    await done(logbook, { type: 'plan-steps', bikeId });
    const stepId = (await bikeNow(logbook)).steps.find(({ kind }) => kind === 'torque')?.stepId ?? '';
    clock.nowMs += HOUR;
    const tap = {
      type: 'apply-torque',
      jointId,
      stepId,
      applied: nm(5),
      entered: 'tap',
      bolts: 2,
      passes: 1,
    } as const;
    const [entry] = await done(logbook, tap);
    const becomes = { happenedAtMs: clock.nowMs - 2 * DAY };
    await done(logbook, { type: 'correct', entryId: entry?.id ?? '', reason: 'it was Friday', becomes });
    expect(await jointNow(logbook, jointId)).toMatchObject({ state: 'torqued', appliedTimes: 1, early: 1 });
    const { steps, bike } = await bikeNow(logbook);
    expect(steps.find((step) => step.stepId === stepId)?.state).toBe('done');
    expect(bike.stepsDone).toBe(1);
    logbook.close();
  });

  test.each<[string, Command, Record<string, unknown>, string]>([
    ['a distance no ride has', { type: 'log-ride', bikeId: 'b1', km: 5 }, { km: 1e12 }, 'absurd-value'],
    ['a distance below nothing', { type: 'log-ride', bikeId: 'b1', km: 5 }, { km: -5 }, 'not-positive'],
    [
      'a distance that is no number',
      { type: 'log-ride', bikeId: 'b1', km: 5 },
      { km: Number.NaN },
      'not-a-number',
    ],
    ['words for minutes', { type: 'log-ride', bikeId: 'b1', km: 5 }, { minutes: 'forty' }, 'not-a-number'],
    [
      'half a bolt',
      { type: 'apply-torque', jointId: 'b1-j1', applied: nm(5), entered: 'tap', bolts: 2, passes: 1 },
      { bolts: 1.5 },
      'bolts-missing',
    ],
    [
      'fewer bolts than there are',
      { type: 'apply-torque', jointId: 'b1-j1', applied: nm(5), entered: 'tap', bolts: 2, passes: 1 },
      { bolts: 1 },
      'bolts-missing',
    ],
    [
      'a field that says what it is about',
      { type: 'apply-torque', jointId: 'b1-j1', applied: nm(5), entered: 'tap', bolts: 2, passes: 1 },
      { jointId: 'other' },
      'cannot-be-corrected',
    ],
    [
      'a name of joiners alone',
      { type: 'start-bike', bikeId: 'b2', name: 'Wren' },
      { name: '\u200b\u200d' },
      'name-missing',
    ],
    [
      'a time before the year 1800',
      { type: 'log-ride', bikeId: 'b1', km: 5 },
      { happenedAtMs: Date.UTC(1799, 11, 31) },
      'absurd-value',
    ],
    [
      'a time that is no number',
      { type: 'log-ride', bikeId: 'b1', km: 5 },
      { happenedAtMs: 'Friday' },
      'not-a-number',
    ],
    [
      'a time in the future',
      { type: 'log-ride', bikeId: 'b1', km: 5 },
      { happenedAtMs: Date.UTC(2300, 0) },
      'in-the-future',
    ],
  ])('[J10] a correction passes the checks of its command: %s', async (_what, command, becomes, refused) => {
    const { logbook, clock } = await openTestLogbook();
    await aBike(logbook);
    clock.nowMs += MINUTE;
    const entries = await done(logbook, command);
    const entryId = entries.find(({ type }) => !type.startsWith('recheck'))?.id ?? '';
    const before = await logbook.read('size', {});
    expect(await logbook.run({ type: 'correct', entryId, reason: 'x', becomes })).toMatchObject({ refused });
    expect(await logbook.read('size', {})).toEqual(before);
    logbook.close();
  });

  test('[J10] corrections lie over one another; what is struck out is not brought back by another', async () => {
    const { logbook, clock } = await openTestLogbook();
    const { jointId } = await aBike(logbook);
    const [entry] = await torque(logbook, jointId, 5);
    const entryId = entry?.id ?? '';
    clock.nowMs += MINUTE;
    await done(logbook, { type: 'correct', entryId, reason: 'misread', becomes: { applied: nm(6) } });
    clock.nowMs += MINUTE;
    await done(logbook, { type: 'correct', entryId, reason: 'note', becomes: { note: 'new bolts' } });
    expect((await jointNow(logbook, jointId)).applied?.applied.value).toBe(6);
    clock.nowMs += MINUTE;
    await done(logbook, { type: 'correct', entryId, reason: 'other bike', becomes: null });
    expect((await jointNow(logbook, jointId)).state).toBe('open');
    clock.nowMs += MINUTE;
    const again = { type: 'correct', entryId, reason: 'x', becomes: { applied: nm(7) } } as const;
    expect(await logbook.run(again)).toMatchObject({ refused: 'already-undone' });
    expect((await logbook.read('entry', { entryId }))?.now).toBeUndefined();
    logbook.close();
  });

  test('[J10] a correction that is taken back counts no more', async () => {
    const { logbook, clock } = await openTestLogbook();
    const { jointId } = await aBike(logbook);
    const [entry] = await torque(logbook, jointId, 5);
    clock.nowMs += MINUTE;
    const becomes = { applied: nm(9) };
    const [fix] = await done(logbook, { type: 'correct', entryId: entry?.id ?? '', reason: 'x', becomes });
    expect((await jointNow(logbook, jointId)).applied?.applied.value).toBe(9);
    await done(logbook, { type: 'undo', entryIds: [fix?.id ?? ''] });
    expect((await jointNow(logbook, jointId)).applied?.applied.value).toBe(5);
    expect(await logbook.run({ type: 'undo', entryIds: [fix?.id ?? ''] })).toMatchObject({
      refused: 'already-undone',
    });
    logbook.close();
  });
});

describe('the sheet for a past day', () => {
  test('has what was corrected into that day, and nothing that later corrections did', async () => {
    const { logbook, clock } = await openTestLogbook();
    const { bikeId, jointId } = await aBike(logbook);
    clock.nowMs += DAY;
    const [first] = await torque(logbook, jointId, 5);
    await release(logbook, bikeId);
    const dayMs = clock.nowMs + HOUR;
    clock.nowMs += 3 * DAY;
    const [late] = await torque(logbook, jointId, 6);
    clock.nowMs += DAY;
    await done(logbook, {
      type: 'correct',
      entryId: first?.id ?? '',
      reason: 'misread',
      becomes: { applied: nm(4) },
    });
    const then = await logbook.read('as-built', { bikeId, atMs: dayMs });
    expect(then.joints[0]?.applied?.applied.value).toBe(4);
    expect(then.bike?.revoked).toBeUndefined();
    const becomes = { happenedAtMs: dayMs - MINUTE };
    await done(logbook, { type: 'correct', entryId: late?.id ?? '', reason: 'that day', becomes });
    const mended = await logbook.read('as-built', { bikeId, atMs: dayMs });
    expect(mended.joints[0]).toMatchObject({ appliedTimes: 2, applied: { applied: { value: 6 } } });
    logbook.close();
  });
});

describe('riding with a limit', () => {
  const limited = {
    type: 'find-defect',
    bikeId: 'b1',
    words: 'Spoke loose',
    area: 'other',
    decision: 'ride-limited',
  } as const;
  const signed = { type: 'release-bike', bikeId: 'b1', statement: 'ride', covers: 'all', by: 'me' } as const;

  async function rideable(opened: Opened) {
    const { jointId } = await aBike(opened.logbook);
    await torque(opened.logbook, jointId);
  }

  test('[L6] the ride that uses up its distance takes back the release, makes a due line and stops the next one', async () => {
    const opened = await openTestLogbook();
    const { logbook, clock } = opened;
    await rideable(opened);
    await done(logbook, { ...limited, untilKm: 50 });
    clock.nowMs += MINUTE;
    await release(logbook, 'b1');
    clock.nowMs += HOUR;
    await done(logbook, { type: 'log-ride', bikeId: 'b1', km: 30 });
    const isDefect = ({ is }: { is: string }) => is === 'defect';
    expect((await logbook.read('due', { untilMs: clock.nowMs })).filter(isDefect)).toEqual([]);
    clock.nowMs += HOUR;
    await done(logbook, { type: 'log-ride', bikeId: 'b1', km: 25 });
    expect((await logbook.read('due', { untilMs: clock.nowMs })).filter(isDefect)).toHaveLength(1);
    expect((await bikeNow(logbook)).bike.release?.withdrawn).toContain('50 km');
    expect(await logbook.run(signed)).toMatchObject({ refused: 'must-not-be-deferred' });
    logbook.close();
  });

  test('[L6] [R2] a ride written down late that was before the problem uses up nothing of its distance', async () => {
    const opened = await openTestLogbook();
    const { logbook, clock } = opened;
    await rideable(opened);
    const beforeMs = clock.nowMs;
    clock.nowMs += HOUR;
    await done(logbook, { ...limited, untilKm: 50 });
    clock.nowMs += MINUTE;
    await release(logbook, 'b1');
    clock.nowMs += HOUR;
    const late = await done(logbook, { type: 'log-ride', bikeId: 'b1', km: 60, happenedAtMs: beforeMs });
    expect(late.map(({ type }) => type)).not.toContain('release-withdrawn');
    await done(logbook, { type: 'log-ride', bikeId: 'b1', km: 50, happenedAtMs: clock.nowMs - MINUTE });
    expect((await bikeNow(logbook)).bike.release?.withdrawn).toContain('50 km');
    logbook.close();
  });

  test('[L6] after its date it stops a release', async () => {
    const opened = await openTestLogbook();
    const { logbook, clock } = opened;
    await rideable(opened);
    await done(logbook, { ...limited, untilMs: clock.nowMs + DAY });
    clock.nowMs += 10 * DAY;
    expect(await logbook.read('due', { untilMs: clock.nowMs })).toMatchObject([{ is: 'defect' }]);
    expect(await logbook.run(signed)).toMatchObject({
      refused: 'must-not-be-deferred',
      about: expect.stringContaining('Spoke loose'),
    });
    logbook.close();
  });
});

describe('what only screens used to keep', () => {
  test.each<[string, Command, string]>([
    [
      'a pre-ride check without points',
      { type: 'confirm-ride-check', bikeId: 'b1', groupId: 'air', items: [] },
      'check-incomplete',
    ],
    [
      'a group that does not exist',
      { type: 'confirm-ride-check', bikeId: 'b1', groupId: 'none', items: [] },
      'check-incomplete',
    ],
    [
      'a point answered twice',
      {
        type: 'confirm-ride-check',
        bikeId: 'b1',
        groupId: 'air',
        items: [...answers('air'), ...answers('air')],
      },
      'check-incomplete',
    ],
    [
      'a limit that is no number',
      {
        type: 'find-defect',
        bikeId: 'b1',
        words: 'x',
        area: 'other',
        decision: 'ride-limited',
        untilKm: Number.NaN,
      },
      'not-a-number',
    ],
    [
      'a span of 1e300 days',
      { type: 'change-settings', change: { schedule: { 'stem-steerer:retorque:0': { days: 1e300 } } } },
      'absurd-value',
    ],
    [
      'a theme that does not exist',
      { type: 'change-settings', change: { theme: 'neon' as never } },
      'malformed',
    ],
    ['a name of zero-width signs', { type: 'start-bike', name: '\u200b\u2060' }, 'name-missing'],
    ['a bike that is there already', { type: 'start-bike', bikeId: 'b1', name: 'Again' }, 'already-there'],
    [
      'a field that no part has',
      { type: 'describe-part', partId: 'b1-p1', colour: 'red' } as never,
      'malformed',
    ],
    [
      'a time of the wrong year',
      { type: 'log-ride', bikeId: 'b1', km: 3, happenedAtMs: -1e15 },
      'absurd-value',
    ],
  ])('[J5] %s is refused by the journal', async (_what, command, refused) => {
    const { logbook } = await openTestLogbook();
    await aBike(logbook);
    const before = await logbook.read('size', {});
    expect(await logbook.run(command)).toMatchObject({ refused });
    expect(await logbook.read('size', {})).toEqual(before);
    logbook.close();
  });

  test('[T6] nothing is logged on a joint that is apart while its part is on the shelf; with the part back it is', async () => {
    const { logbook, clock } = await openTestLogbook();
    const { bikeId, jointId, partIds } = await aBike(logbook);
    await done(logbook, { type: 'move-part', partId: partIds[0], to: { on: 'shelf' } });
    const tap = {
      type: 'apply-torque',
      jointId,
      applied: nm(5),
      entered: 'tap',
      bolts: 2,
      passes: 1,
    } as const;
    for (const command of [
      tap,
      { type: 'hand-tighten', jointId, bolts: 2 } as const,
      { type: 'apply-locker', jointId, ...locker } as const,
    ])
      expect(await logbook.run(command)).toMatchObject({
        refused: 'part-not-on-this-bike',
        about: 'Part b1-p1',
      });
    await done(logbook, { type: 'move-part', partId: partIds[0], to: { on: 'bike', bikeId } });
    clock.nowMs += MINUTE;
    await done(logbook, tap);
    expect((await jointNow(logbook, jointId)).state).toBe('torqued');
    logbook.close();
  });

  test('[P2] taking off a shim takes the joint apart that it lies in', async () => {
    const { logbook } = await openTestLogbook();
    const shim = {
      type: 'add-part',
      partId: 'shim',
      place: { on: 'shelf' },
      label: 'S',
      name: 'Shim',
      kind: 'other',
      origin: 'made',
    } as const;
    await done(logbook, shim);
    const { bikeId, partIds } = await aBike(logbook);
    await done(logbook, { type: 'move-part', partId: 'shim', to: { on: 'bike', bikeId } });
    const between = [{ kind: 'shim' as const, partId: 'shim' }];
    await done(logbook, {
      ...{ type: 'make-joint', jointId: 'shimmed', bikeId, name: 'Bar', kind: 'bar-clamp', partIds, between },
      ...{ fasteners: [], targets: [] },
    });
    await done(logbook, { type: 'move-part', partId: 'shim', to: { on: 'shelf' } });
    expect((await jointNow(logbook, 'shimmed')).state).toBe('apart');
    logbook.close();
  });
});

describe('what revokes', () => {
  const revoked = async (logbook: Book) => (await bikeNow(logbook)).bike.revoked !== undefined;

  async function released() {
    const opened = await openTestLogbook();
    const { jointId, partIds } = await aBike(opened.logbook);
    const [entry] = await torque(opened.logbook, jointId);
    await release(opened.logbook, 'b1');
    opened.clock.nowMs += MINUTE;
    return { ...opened, jointId, partIds, entryId: entry?.id ?? '' };
  }

  test('[L2] correcting a note does not revoke; correcting the figure does', async () => {
    const { logbook, clock, entryId } = await released();
    await done(logbook, { type: 'correct', entryId, reason: 'x', becomes: { note: 'black bolts' } });
    expect(await revoked(logbook)).toBe(false);
    clock.nowMs += MINUTE;
    await done(logbook, { type: 'correct', entryId, reason: 'x', becomes: { applied: nm(4) } });
    expect(await revoked(logbook)).toBe(true);
    logbook.close();
  });

  test('[L2] another target revokes, also where it comes with the word that the joint does not matter', async () => {
    const { logbook, jointId } = await released();
    const targets = [{ source: 'own-judgement' as const, torque: nm(9) }];
    await done(logbook, { type: 'describe-joint', jointId, targets, matters: false });
    expect(await revoked(logbook)).toBe(true);
    logbook.close();
  });

  test('[L2] a part that comes to the bike revokes neither from the shelf nor from another bike', async () => {
    for (const place of [{ on: 'shelf' as const }, { on: 'bike' as const, bikeId: 'b2' }]) {
      const { logbook, clock } = await released();
      await aBike(logbook, 'b2');
      const part = {
        type: 'add-part',
        partId: 'extra',
        place,
        label: 'X',
        name: 'Extra',
        kind: 'other',
        origin: 'found',
      } as const;
      await done(logbook, part);
      clock.nowMs += MINUTE;
      await done(logbook, { type: 'move-part', partId: 'extra', to: { on: 'bike', bikeId: 'b1' } });
      expect(await revoked(logbook)).toBe(false);
      logbook.close();
    }
  });

  test('[L2] undo of what revoked lets the release stand again', async () => {
    const { logbook, jointId } = await released();
    const [entry] = await torque(logbook, jointId, 6);
    expect(await revoked(logbook)).toBe(true);
    await done(logbook, { type: 'undo', entryIds: [entry?.id ?? ''] });
    expect(await revoked(logbook)).toBe(false);
    logbook.close();
  });
});

describe('second taps', () => {
  test.each<[string, Command]>([
    ['a ride', { type: 'log-ride', bikeId: 'b1', km: 12 }],
    [
      'a part',
      { type: 'add-part', place: { on: 'shelf' }, label: '', name: 'Spacer', kind: 'other', origin: 'found' },
    ],
    ['a note', { type: 'add-note', bikeId: 'b1', words: 'creaks' }],
    ['a wait', { type: 'start-wait', bikeId: 'b1', kind: 'other', title: 'Paint', waitMs: HOUR }],
  ])(
    '[J11] %s asked twice at the same instant is taken once, from one page or two',
    async (_what, command) => {
      const one = await openTestLogbook();
      await aBike(one.logbook);
      const other = await openTestLogbook(one.clock.nowMs, one.name);
      one.clock.nowMs += MINUTE;
      other.clock.nowMs = one.clock.nowMs;
      const results = await Promise.all([
        one.logbook.run(command),
        one.logbook.run(command),
        other.logbook.run(command),
      ]);
      expect(results.filter((result) => 'entries' in result)).toHaveLength(1);
      for (const result of results) if ('refused' in result) expect(result.refused).toBe('double-tap');
      one.clock.nowMs += 5000;
      expect(await one.logbook.run(command)).toHaveProperty('entries');
      one.logbook.close();
      other.logbook.close();
    },
  );

  test('[J11] a clock that was set back makes no second tap, and the new torque stands after the old one', async () => {
    const { logbook, clock } = await openTestLogbook();
    const { jointId } = await aBike(logbook);
    clock.nowMs += 2 * DAY;
    await torque(logbook, jointId, 5);
    clock.nowMs -= 2 * DAY - MINUTE;
    const [entry] = await torque(logbook, jointId, 5);
    clock.nowMs += MINUTE;
    await torque(logbook, jointId, 7);
    expect(await jointNow(logbook, jointId)).toMatchObject({
      appliedTimes: 3,
      applied: { applied: { value: 7 } },
    });
    // [J8] It says when it happened, and where it stands.
    expect(entry?.orderMs).toBeGreaterThan(entry?.happenedAtMs ?? Number.NaN);
    logbook.close();
  });
});

describe('threadlocker', () => {
  test('[T7] a step that is about no joint begins a cure all the same, and is not done without one', async () => {
    const { logbook, clock } = await openTestLogbook();
    const { bikeId } = await aBike(logbook);
    await done(logbook, {
      type: 'add-step',
      stepId: 'lock',
      bikeId,
      kind: 'lock',
      title: 'Lever pinch screw',
    });
    expect(await logbook.run({ type: 'finish-step', stepId: 'lock' })).toMatchObject({
      refused: 'cure-not-started',
    });
    await done(logbook, { type: 'apply-locker', stepId: 'lock', ...locker });
    const { waits, steps } = await bikeNow(logbook);
    expect(waits).toMatchObject([
      { waitKind: 'cure', title: 'Lever pinch screw', dueAtMs: clock.nowMs + DAY },
    ]);
    expect(steps.find(({ stepId }) => stepId === 'lock')?.state).toBe('done');
    logbook.close();
  });

  test('[T7] a torque logged with threadlocker on the threads starts a cure, once', async () => {
    const { logbook, clock } = await openTestLogbook();
    const { jointId } = await aBike(logbook);
    const tap = {
      type: 'apply-torque',
      jointId,
      applied: nm(5),
      entered: 'tap',
      bolts: 2,
      passes: 1,
      between: 'threadlocker',
    } as const;
    await done(logbook, { type: 'apply-locker', jointId, ...locker });
    clock.nowMs += MINUTE;
    await done(logbook, tap);
    expect((await bikeNow(logbook)).waits).toHaveLength(1);
    clock.nowMs += 2 * DAY;
    const entries = await done(logbook, tap);
    expect(entries.map(({ type }) => type)).toEqual(['wait-ended', 'locker-applied', 'torque-applied']);
    const { waits } = await bikeNow(logbook);
    expect(waits).toHaveLength(1);
    expect(waits[0]?.dueAtMs).toBeGreaterThanOrEqual(clock.nowMs + DAY);
    logbook.close();
  });

  test('[T7] a new application ends the cure before it', async () => {
    const { logbook, clock } = await openTestLogbook();
    const { jointId } = await aBike(logbook);
    await done(logbook, { type: 'apply-locker', jointId, ...locker });
    clock.nowMs += HOUR;
    await done(logbook, { type: 'apply-locker', jointId, ...locker, grade: 'strong' });
    const { waits } = await bikeNow(logbook);
    expect(waits).toMatchObject([{ dueAtMs: clock.nowMs + DAY }]);
    expect((await jointNow(logbook, jointId)).locked?.grade).toBe('strong');
    logbook.close();
  });
});

describe('several pages', () => {
  test('[W2] one change of the clock moves the waits once', async () => {
    const { logbook, clock } = await openTestLogbook();
    const { jointId } = await aBike(logbook);
    await done(logbook, { type: 'apply-locker', jointId, ...locker });
    const dueMs = (await bikeNow(logbook)).waits[0]?.dueAtMs ?? 0;
    const shift = { type: 'shift-waits', byMs: HOUR, changeId: 'c1' } as const;
    await done(logbook, shift);
    clock.nowMs += MINUTE;
    expect(await logbook.run(shift)).toMatchObject({ refused: 'already-answered' });
    expect((await bikeNow(logbook)).waits[0]?.dueAtMs).toBe(dueMs + HOUR);
    logbook.close();
  });

  test('[J3] two pages that sort anew at once leave the rows of a fresh fold, with readers in between', async () => {
    const { logbook, name } = await openTestLogbook();
    const { bikeId, jointId } = await aBike(logbook);
    await torque(logbook, jointId);
    await done(logbook, { type: 'plan-steps', bikeId });
    const [one, other] = await Promise.all([openDatabase(name), openDatabase(name)]);
    const before = await one.getAll('views');
    await one.put('meta', { name: 'views-version', value: 0 });
    for (const row of before) await one.put('views', { ...row, lastMs: -1 });
    const counts: number[] = [];
    const results = await Promise.all([
      rebuildIfOld(one, () => {}),
      rebuildIfOld(other, () => {}),
      one.count('views').then((count) => counts.push(count)),
      other.count('views').then((count) => counts.push(count)),
    ]);
    expect(results.slice(0, 2).filter(Boolean)).toHaveLength(1);
    expect(counts).toEqual([before.length, before.length]);
    expect(await other.getAll('views')).toEqual(before);
    one.close();
    other.close();
    logbook.close();
  });

  test('[J2] a number of a line is never used twice, also when the demo was taken out in another page', async () => {
    const one = await openTestLogbook();
    const { bikeId, jointId } = await aBike(one.logbook);
    const other = await openTestLogbook(one.clock.nowMs, one.name);
    await torque(other.logbook, jointId, 4);
    const seen = new Set<number>();
    const note = async (logbook: Book) => {
      for (const { seq } of (await logbook.read('history', { place: `b:${bikeId}`, limit: 500 })).lines)
        seen.add(seq);
    };
    await note(one.logbook);
    await done(one.logbook, { type: 'start-bike', bikeId: 'demo-x', name: 'Invented', demo: true });
    await one.logbook.removeDemo();
    one.clock.nowMs += MINUTE;
    other.clock.nowMs = one.clock.nowMs;
    const before = Math.max(...seen);
    await torque(other.logbook, jointId, 5);
    await torque(one.logbook, jointId, 6);
    const { lines } = await one.logbook.read('history', { place: `j:${jointId}`, limit: 500 });
    const seqs = lines.map(({ seq }) => seq);
    expect(new Set(seqs).size).toBe(seqs.length);
    // The lines of the demo took numbers that none of the later ones has.
    expect(seqs.filter((seq) => seq > before).every((seq) => seq > before + 2)).toBe(true);
    expect(await jointNow(one.logbook, jointId)).toMatchObject({
      appliedTimes: 3,
      applied: { applied: { value: 6 } },
    });
    one.logbook.close();
    other.logbook.close();
  });
});

describe('lists of commands', () => {
  test('[J13] a list is carried out whole or not at all, and the refusal says which of them it was', async () => {
    const { logbook } = await openTestLogbook();
    const { bikeId, partIds } = await aBike(logbook);
    const before = await logbook.read('size', {});
    const joint = (name: string, part: string): Command => ({
      ...{
        type: 'make-joint',
        bikeId,
        name,
        kind: 'other',
        partIds: [part],
        between: [],
        fasteners: [],
        targets: [],
      },
    });
    const add = {
      type: 'add-part',
      partId: 'new',
      place: { on: 'bike', bikeId },
      label: 'N',
      name: 'New',
      kind: 'other',
      origin: 'made',
    } as const;
    expect(await logbook.run([add, joint('One', 'new'), joint('Two', 'nowhere')])).toEqual({
      refused: 'no-such-part',
      at: 2,
    });
    expect(await logbook.read('size', {})).toEqual(before);
    const result = await logbook.run([add, joint('One', 'new'), joint('Two', partIds[0])]);
    expect((result as { entries: Entry[] }).entries.map(({ type }) => type)).toEqual([
      'part-added',
      'joint-made',
      'joint-made',
    ]);
    logbook.close();
  });
});

describe('what a naive second model found', () => {
  test('[L2] a figure corrected while another entry had revoked still revokes once that one is undone', async () => {
    const { logbook, clock } = await openTestLogbook();
    const { jointId, partIds } = await aBike(logbook);
    const other = {
      type: 'make-joint',
      jointId: 'j2',
      bikeId: 'b1',
      name: 'Bar',
      kind: 'bar-clamp',
      partIds,
    } as const;
    await done(logbook, {
      ...other,
      between: [],
      fasteners: [{ thread: 'M5', count: 2, hand: 'right' }],
      targets: [],
    });
    const [first] = await torque(logbook, jointId, 5);
    await torque(logbook, 'j2', 5);
    await release(logbook, 'b1');
    clock.nowMs += MINUTE;
    const [again] = await torque(logbook, 'j2', 5);
    const becomes = { applied: nm(7) };
    await done(logbook, { type: 'correct', entryId: first?.id ?? '', reason: 'misread', becomes });
    await done(logbook, { type: 'undo', entryIds: [again?.id ?? ''] });
    expect((await bikeNow(logbook)).bike.revoked).toMatchObject({ because: 'entry-corrected' });
    logbook.close();
  });

  test('[J10] between two corrections the sheet reads as the entry reads today', async () => {
    const { logbook, clock } = await openTestLogbook();
    await aBike(logbook);
    const entries = await done(logbook, { type: 'log-ride', bikeId: 'b1', km: 10 });
    const entryId = entries.find(({ type }) => type === 'ride-logged')?.id ?? '';
    clock.nowMs += HOUR;
    await done(logbook, { type: 'correct', entryId, reason: 'x', becomes: { km: 20 } });
    const between = clock.nowMs + MINUTE;
    clock.nowMs += HOUR;
    await done(logbook, { type: 'correct', entryId, reason: 'x', becomes: { km: 30 } });
    expect((await logbook.read('as-built', { bikeId: 'b1', atMs: between })).rides?.km).toBe(30);
    logbook.close();
  });

  test('[R4] a ride after the clock was set back counts for what was set before it', async () => {
    const { logbook, clock } = await openTestLogbook();
    await aBike(logbook);
    const recheck = {
      type: 'set-recheck',
      recheckId: 'c1',
      bikeId: 'b1',
      kind: 'inspect',
      title: 'Look',
    } as const;
    await done(logbook, { ...recheck, instruction: 'Look at it.', dueRides: 1 });
    const limit = {
      type: 'find-defect',
      bikeId: 'b1',
      words: 'Loose',
      area: 'other',
      decision: 'ride-limited',
    } as const;
    await done(logbook, { ...limit, untilKm: 5 });
    clock.nowMs -= DAY;
    await done(logbook, { type: 'log-ride', bikeId: 'b1', km: 10 });
    const { rechecks, defects } = await bikeNow(logbook);
    expect(rechecks.find(({ recheckId }) => recheckId === 'c1')?.dueAtMs).toBeDefined();
    expect(defects[0]?.dueAtMs).toBeDefined();
    logbook.close();
  });

  test('[W3] a look written down late does not end a wait that began after it', async () => {
    const { logbook, clock } = await openTestLogbook();
    const { jointId } = await aBike(logbook, 'b1', { kind: 'bead', fasteners: [], targets: [] });
    clock.nowMs += 10 * HOUR;
    const reading = { pressure: { value: 2, unit: 'bar', typed: '2' } } as const;
    await done(logbook, {
      type: 'mark-seal',
      jointId,
      mark: { mark: 'reading', reading },
      lookAgainMs: HOUR,
    });
    const late = { happenedAtMs: clock.nowMs - 9 * HOUR };
    await done(logbook, { type: 'mark-seal', jointId, mark: { mark: 'verdict', verdict: 'leaks' }, ...late });
    expect((await bikeNow(logbook)).waits).toHaveLength(1);
    logbook.close();
  });

  test('[J9] an undo by a clock that was set back makes no entry early', async () => {
    const { logbook, clock } = await openTestLogbook();
    const { jointId } = await aBike(logbook);
    const [entry] = await torque(logbook, jointId);
    clock.nowMs -= HOUR;
    await done(logbook, { type: 'undo', entryIds: [entry?.id ?? ''] });
    expect((await jointNow(logbook, jointId)).early).toBeUndefined();
    logbook.close();
  });

  test('[L2] a re-check that is corrected to "held" revokes no more', async () => {
    const { logbook, clock } = await openTestLogbook();
    const { jointId } = await aBike(logbook);
    await torque(logbook, jointId);
    await release(logbook, 'b1');
    clock.nowMs += MINUTE;
    const found = {
      type: 'find-torque',
      jointId,
      outcome: 'moved',
      way: 'tightening',
      movedAt: nm(4),
    } as const;
    const [entry] = await done(logbook, found);
    expect((await bikeNow(logbook)).bike.revoked).toBeDefined();
    await done(logbook, {
      type: 'correct',
      entryId: entry?.id ?? '',
      reason: 'x',
      becomes: { outcome: 'held' },
    });
    expect((await bikeNow(logbook)).bike.revoked).toBeUndefined();
    logbook.close();
  });

  test.each([
    ['before the release', true],
    ['after the release', false],
  ])('[L2] a look %s that is corrected to "moved" revokes', async (_when, before) => {
    const { logbook, clock } = await openTestLogbook();
    const { jointId } = await aBike(logbook);
    await torque(logbook, jointId);
    const look = async () => {
      clock.nowMs += MINUTE;
      const held = { type: 'find-torque', jointId, outcome: 'held', way: 'mark' } as const;
      const [entry] = await done(logbook, held);
      clock.nowMs += MINUTE;
      return entry?.id ?? '';
    };
    const early = before ? await look() : '';
    await release(logbook, 'b1');
    const entryId = before ? early : await look();
    expect((await bikeNow(logbook)).bike.revoked).toBeUndefined();
    clock.nowMs += MINUTE;
    const becomes = { outcome: 'moved' };
    const [fix] = await done(logbook, { type: 'correct', entryId, reason: 'it had turned', becomes });
    expect((await bikeNow(logbook)).bike.revoked).toBeDefined();
    await done(logbook, { type: 'undo', entryIds: [fix?.id ?? ''] });
    expect((await bikeNow(logbook)).bike.revoked).toBeUndefined();
    logbook.close();
  });

  test('[P2] a wait about a joint that is apart already ends when one of its parts leaves', async () => {
    const { logbook, clock } = await openTestLogbook();
    const { jointId } = await aBike(logbook);
    await done(logbook, { type: 'take-joint-apart', jointId, why: 'grease' });
    await done(logbook, {
      type: 'start-wait',
      bikeId: 'b1',
      jointId,
      kind: 'adhesive',
      title: 'Glue',
      waitMs: DAY,
    });
    expect((await bikeNow(logbook)).waits).toHaveLength(1);
    clock.nowMs += MINUTE;
    const [partId = ''] = (await jointNow(logbook, jointId)).partIds;
    await done(logbook, { type: 'move-part', partId, to: { on: 'shelf' } });
    expect((await bikeNow(logbook)).waits).toHaveLength(0);
    logbook.close();
  });
});
