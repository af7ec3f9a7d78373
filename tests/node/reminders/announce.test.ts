import { afterEach, describe, expect, test } from 'vitest';
import type { DueLine } from '../../../src/logbook.ts';
import { announceDue } from '../../../src/reminders/announceDue.ts';
import { type DueNotice, noticeOf } from '../../../src/reminders/notice.ts';
import { owedOf } from '../../../src/reminders/owed.ts';
import { routeOf } from '../../../src/screens/route.ts';
import { aBike, torque } from '../logbook/aBike.ts';
import { done, openTestLogbook } from '../logbook/openTestLogbook.ts';

const line: DueLine = {
  key: 'wait/w1',
  is: 'wait',
  id: 'w1',
  bikeId: 'b1',
  bikeName: 'Magpie',
  jointId: 'j1',
  title: 'Rear tyre on rim',
  kind: 'seal',
  dueAtMs: 1000,
  startedAtMs: 0,
};

describe('noticeOf', () => {
  test.each<[Partial<DueLine>, Partial<DueNotice>]>([
    [{}, { title: 'Magpie', body: 'Re-check the seal: Rear tyre on rim', href: '#/seal/j1' }],
    [
      { kind: 'cure', title: 'medium' },
      { body: 'Curing time over: medium', href: '#/bike/b1/w1' },
    ],
    [
      { is: 'recheck', kind: 'retorque', title: 'Stem', id: 'r1' },
      { body: 'Re-check: Stem', href: '#/rechecks/b1/r1' },
    ],
    [
      { is: 'defect', kind: 'ride-limited', title: 'Bell', id: 'd1' },
      { body: 'Limit reached: Bell', href: '#/bike/b1/d1' },
    ],
  ])('%j', (change, notice) => expect(noticeOf({ ...line, ...change })).toMatchObject(notice));

  test('every address is one of the app that opens at the very thing, and so is each action of a seal', () => {
    const kinds: Partial<DueLine>[] = [
      {},
      { kind: 'cure' },
      { is: 'recheck', id: 'r/1' },
      { is: 'defect', id: 'd1' },
    ];
    const routes = kinds.map((change) => routeOf(noticeOf({ ...line, ...change }).href));
    expect(routes).toEqual([
      { at: 'seal', jointId: 'j1' },
      { at: 'bike', bikeId: 'b1', open: 'w1' },
      { at: 'rechecks', bikeId: 'b1', open: 'r/1' },
      { at: 'bike', bikeId: 'b1', open: 'd1' },
    ]);
    const { href, actions = [] } = noticeOf(line);
    expect(actions.map(({ action, title }) => [title, routeOf(`${href}/${action}`)])).toEqual([
      ['Look again in 30 min', { at: 'seal', jointId: 'j1', open: 'again' }],
      ['It holds', { at: 'seal', jointId: 'j1', open: 'verdict' }],
    ]);
    expect(noticeOf({ ...line, kind: 'cure' }).actions).toBeUndefined();
  });

  test('the tag holds the instant, so that a wait set anew is a new notice', () => {
    expect(noticeOf(line).tag).not.toBe(noticeOf({ ...line, dueAtMs: 2000 }).tag);
  });
});

describe('[R1] announced once', () => {
  test('page and worker race for the same rows; every row is shown by exactly one of them', async () => {
    const { logbook, clock, name } = await openTestLogbook();
    const worker = await openTestLogbook(clock.nowMs, name);
    const { bikeId } = await aBike(logbook);
    for (let at = 0; at < 30; at += 1) {
      await done(logbook, { type: 'start-wait', bikeId, kind: 'adhesive', title: `${at}`, waitMs: 60_000 });
    }
    clock.nowMs += 61_000;
    worker.clock.nowMs = clock.nowMs;
    const shown: string[] = [];
    const show = (notice: DueNotice) => void shown.push(notice.tag);
    await Promise.all([
      announceDue(logbook, show),
      announceDue(worker.logbook, show),
      announceDue(logbook, show),
    ]);
    expect(shown).toHaveLength(30);
    expect(new Set(shown).size).toBe(30);
    logbook.close();
    worker.logbook.close();
  });

  test('a notice that cannot be shown keeps no other back, and the duty stays in the list', async () => {
    const { logbook, clock } = await openTestLogbook();
    const { bikeId } = await aBike(logbook);
    for (const title of ['one', 'two']) {
      await done(logbook, { type: 'start-wait', bikeId, kind: 'other', title, waitMs: 1000 });
    }
    clock.nowMs += 2000;
    const shown: string[] = [];
    await announceDue(logbook, (notice) => {
      if (notice.body.endsWith('one')) throw new TypeError('not allowed');
      shown.push(notice.body);
    });
    expect(shown).toEqual(['Timer ended: two']);
    expect(await logbook.read('due', { untilMs: clock.nowMs })).toHaveLength(2);
    logbook.close();
  });

  test('a wait moved to a later instant is announced again at that instant', async () => {
    const { logbook, clock } = await openTestLogbook();
    const { bikeId } = await aBike(logbook);
    await done(logbook, { type: 'start-wait', bikeId, kind: 'other', title: 'x', waitMs: 1000 });
    clock.nowMs += 2000;
    expect(await announceDue(logbook, () => {})).toHaveLength(1);
    const waitId = (await logbook.read('bike', { bikeId }))?.waits[0]?.waitId ?? '';
    await done(logbook, { type: 'change-wait', waitId, waitMs: 10_000, why: 'cold in here' });
    expect(await announceDue(logbook, () => {})).toHaveLength(0);
    clock.nowMs += 10_000;
    expect(await announceDue(logbook, () => {})).toHaveLength(1);
    logbook.close();
  });
});

test('a notice, the due list and the bike name a joint as it is named today', async () => {
  const { logbook, clock } = await openTestLogbook();
  const { bikeId, jointId } = await aBike(logbook);
  await torque(logbook, jointId);
  await done(logbook, {
    type: 'apply-locker',
    ...{ jointId, grade: 'medium', surface: 'steel', primer: false, waitMs: 1000 },
  });
  await done(logbook, { type: 'describe-joint', jointId, name: 'Stem clamp' });
  clock.nowMs += 2000;
  const bodies: string[] = [];
  await announceDue(logbook, ({ body }) => void bodies.push(body));
  expect(bodies).toEqual(['Curing time over: Stem clamp']);
  expect(await logbook.read('due', { untilMs: clock.nowMs })).toMatchObject([{ title: 'Stem clamp' }]);
  expect((await logbook.read('bike', { bikeId }))?.waits).toMatchObject([{ title: 'Stem clamp' }]);
  logbook.close();
});

describe('time zones', () => {
  const own = process.env['TZ'];
  afterEach(() => {
    if (own === undefined) delete process.env['TZ'];
    else process.env['TZ'] = own;
  });

  test.each(['Pacific/Apia', 'America/Santiago', 'Asia/Kolkata', 'Europe/Berlin', 'UTC'])(
    '[W1] a wait set here ends at the same instant when the phone is carried to %s',
    async (zone) => {
      const { logbook, clock, name } = await openTestLogbook(Date.UTC(2026, 9, 24, 20));
      const { bikeId, jointId } = await aBike(logbook);
      await torque(logbook, jointId);
      await done(logbook, {
        type: 'start-wait',
        bikeId,
        kind: 'seal',
        jointId,
        title: 'Tyre',
        waitMs: 12 * 3_600_000,
      });
      await done(logbook, {
        type: 'set-recheck',
        bikeId,
        kind: 'inspect',
        title: 'S',
        instruction: 'x',
        dueDays: 30,
      });
      const before = await logbook.read('due', { untilMs: Number.MAX_SAFE_INTEGER });
      logbook.close();
      process.env['TZ'] = zone;
      // The night of 24 to 25 October 2026 has the end of summer time in much of Europe.
      const later = await openTestLogbook(clock.nowMs + 12 * 3_600_000, name);
      expect(await later.logbook.read('due', { untilMs: Number.MAX_SAFE_INTEGER })).toEqual(before);
      expect(await announceDue(later.logbook, () => {})).toMatchObject([{ is: 'wait', kind: 'seal' }]);
      later.logbook.close();
    },
  );
});

describe('[R12] the number on the icon', () => {
  test('counts what asks for something: not what cured by the clock, nor the checks of a bike put away', () => {
    const lines: DueLine[] = [
      line,
      { ...line, kind: 'cure' },
      { ...line, kind: 'adhesive' },
      { ...line, kind: 'other' },
      { ...line, is: 'recheck', kind: 'retorque' },
      { ...line, is: 'recheck', kind: 'retorque', away: true },
      { ...line, is: 'defect', kind: 'ride-limited', away: true },
      { ...line, away: true },
    ];
    expect(owedOf(lines)).toEqual([lines[0], lines[3], lines[4], lines[7]]);
  });

  test('a check of a bike put away is announced when the bike is back, and a timer at once', async () => {
    const { logbook, clock } = await openTestLogbook();
    const { bikeId } = await aBike(logbook);
    await done(logbook, {
      ...{ type: 'set-recheck', bikeId, kind: 'inspect', title: 'Braze', instruction: 'Look', dueDays: 1 },
    });
    await done(logbook, { type: 'start-wait', bikeId, kind: 'other', title: 'Paint', waitMs: 1000 });
    await done(logbook, { type: 'put-bike-away', bikeId, why: 'winter' });
    clock.nowMs += 3 * 86_400_000;
    const titles = async () => (await announceDue(logbook, () => {})).map(({ title }) => title);
    expect(await titles()).toEqual(['Paint']);
    await done(logbook, { type: 'take-bike-out', bikeId });
    expect(await titles()).toEqual(['Braze']);
    expect(await titles()).toEqual([]);
    logbook.close();
  });
});
