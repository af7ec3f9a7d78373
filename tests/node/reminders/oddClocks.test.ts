import { afterEach, describe, expect, test } from 'vitest';
import { announceDue } from '../../../src/reminders/announceDue.ts';
import { aBike } from '../logbook/aBike.ts';
import { done, openTestLogbook } from '../logbook/openTestLogbook.ts';

const HOUR_MS = 3_600_000;
const DAY_MS = 24 * HOUR_MS;

const own = process.env['TZ'];
afterEach(() => {
  if (own === undefined) delete process.env['TZ'];
  else process.env['TZ'] = own;
});

// Zones whose clocks change in either half of the year, one with half hours, one that changes none.
describe.each(['Pacific/Auckland', 'America/Santiago', 'Asia/Kolkata', 'Europe/Berlin'])('in %s', (zone) => {
  const opened = async (startMs = Date.UTC(2026, 2, 25, 9)) => {
    process.env['TZ'] = zone;
    const { logbook, clock, name } = await openTestLogbook(startMs);
    const { bikeId } = await aBike(logbook);
    const wait = (waitId: string, title: string, waitMs: number) =>
      done(logbook, { type: 'start-wait', waitId, bikeId, kind: 'other', title, waitMs });
    const announced = async () => (await announceDue(logbook, () => {})).map(({ title }) => title);
    return { logbook, clock, name, bikeId, wait, announced };
  };

  test('[R1] a clock set back announces nothing twice, whether the timers move along or not', async () => {
    const { logbook, clock, wait, announced } = await opened();
    await wait('w1', 'Paint', HOUR_MS);
    await wait('w2', 'Glue', 3 * HOUR_MS);
    clock.nowMs += HOUR_MS;
    expect(await announced()).toEqual(['Paint']);
    // Set back by two hours: the glue has two hours left by both clocks once it is moved along.
    clock.nowMs -= 2 * HOUR_MS;
    expect(await announced()).toEqual([]);
    await done(logbook, { type: 'shift-waits', byMs: -2 * HOUR_MS, changeId: 'c1' });
    expect(await announced()).toEqual([]);
    clock.nowMs += 2 * HOUR_MS - 1;
    expect(await announced()).toEqual([]);
    clock.nowMs += 1;
    expect(await announced()).toEqual(['Glue']);
    clock.nowMs += 5 * DAY_MS;
    expect(await announced()).toEqual([]);
    logbook.close();
  });

  test('[R1] a timer that was set anew after the clock moved is announced again', async () => {
    const { logbook, clock, wait, announced } = await opened();
    await wait('w1', 'Paint', HOUR_MS);
    clock.nowMs += HOUR_MS;
    expect(await announced()).toEqual(['Paint']);
    clock.nowMs += 30 * HOUR_MS;
    await done(logbook, { type: 'shift-waits', byMs: 29 * HOUR_MS, changeId: 'c1' });
    await done(logbook, { type: 'change-wait', waitId: 'w1', waitMs: 3 * HOUR_MS, why: 'cold' });
    clock.nowMs += 2 * HOUR_MS;
    expect(await announced()).toEqual(['Paint']);
    logbook.close();
  });

  test('a phone that was off for a week tells all of it, once, in the order of the instants', async () => {
    const { logbook, clock, name, bikeId, wait, announced } = await opened();
    await wait('w1', 'Third', 3 * DAY_MS);
    await wait('w2', 'First', HOUR_MS);
    await done(logbook, {
      ...{ type: 'set-recheck', bikeId, kind: 'inspect', title: 'Second', instruction: 'Look', dueDays: 2 },
    });
    await wait('w4', 'Not yet', 8 * DAY_MS);
    clock.nowMs += 7 * DAY_MS;
    const other = await openTestLogbook(clock.nowMs, name);
    const [here, there] = await Promise.all([announced(), announceDue(other.logbook, () => {})]);
    expect([...here, ...there.map(({ title }) => title)]).toEqual(['First', 'Second', 'Third']);
    expect(await announced()).toEqual([]);
    logbook.close();
    other.logbook.close();
  });

  test('a timer over the night of a change of the clocks has its hours, and a check by days its time of day', async () => {
    // From noon of every day of two months in which many zones change their clocks.
    process.env['TZ'] = zone;
    const { logbook, clock, bikeId } = await opened(new Date(2026, 2, 1, 12).getTime());
    for (let day = 1; day <= 61; day += 10) {
      clock.nowMs = new Date(2026, 2, day, 12).getTime();
      const waitId = `w${day}`;
      await done(logbook, {
        type: 'start-wait',
        waitId,
        bikeId,
        kind: 'other',
        title: waitId,
        waitMs: 24 * HOUR_MS,
      });
      await done(logbook, {
        ...{ type: 'set-recheck', recheckId: `r${day}`, bikeId, kind: 'inspect', title: `r${day}` },
        ...{ instruction: 'Look', dueDays: 10 },
      });
      const due = await logbook.read('due', { untilMs: Number.MAX_SAFE_INTEGER });
      const dueOf = (id: string) => due.find((line) => line.id === id)?.dueAtMs ?? Number.NaN;
      expect(dueOf(waitId) - clock.nowMs).toBe(24 * HOUR_MS);
      expect(new Date(dueOf(`r${day}`)).getHours()).toBe(12);
    }
    const instants = (await logbook.read('due', { untilMs: Number.MAX_SAFE_INTEGER })).map(
      ({ dueAtMs }) => dueAtMs,
    );
    expect(instants).toEqual(instants.toSorted((a, b) => a - b));
    logbook.close();
  });
});
