import ICAL from 'ical.js';
import { expect, test } from 'vitest';
import { calendarText } from '../../../src/exchange/calendar/calendarText.ts';
import { eventsOf } from '../../../src/exchange/calendar/eventsOf.ts';
import type { Logbook } from '../../../src/logbook.ts';
import { aBike } from './aBike.ts';
import { done, openTestLogbook } from './openTestLogbook.ts';

const HOUR_MS = 3_600_000;

/** The calendar file of all that is due ahead, as another program reads it. */
async function calendarOf(logbook: Logbook) {
  const events = eventsOf(await logbook.read('duties', {}), 'km', logbook.now());
  const calendar = new ICAL.Component(ICAL.parse(calendarText(events, logbook.now())) as unknown[]);
  return calendar.getAllSubcomponents('vevent').map((component) => new ICAL.Event(component));
}

test('one list of waits, re-checks, problems with a limit and tools, by time, rides or distance', async () => {
  const { logbook, clock } = await openTestLogbook();
  const { bikeId, jointId } = await aBike(logbook);
  await done(logbook, {
    type: 'start-wait',
    bikeId,
    jointId,
    kind: 'adhesive',
    title: 'Grip glue',
    waitMs: HOUR_MS,
  });
  await done(logbook, {
    ...{ type: 'set-recheck', recheckId: 'r1', bikeId, kind: 'inspect', title: 'Look at the braze' },
    ...{ instruction: 'Look', dueRides: 3, dueKm: 100 },
  });
  await done(logbook, {
    ...{
      type: 'find-defect',
      bikeId,
      words: 'Bell rattles',
      area: 'other',
      decision: 'ride-limited',
      untilKm: 40,
    },
  });
  await done(logbook, {
    type: 'add-tool',
    name: 'Small wrench',
    lastCheckMs: clock.nowMs,
    checkEveryDays: 200,
  });
  clock.nowMs += 1000;
  await done(logbook, { type: 'log-ride', bikeId, km: 30, recheckIds: { [`${jointId}/retorque`]: 'r2' } });
  const duties = await logbook.read('duties', {});
  expect(duties.map(({ is, title, left, bikeName }) => [is, title, left, bikeName])).toEqual([
    // The first ride makes a look at every joint due, at once.
    ['recheck', 'Stem on steerer: torque check', { rides: 0, km: 0 }, 'Bike b1'],
    ['wait', 'Grip glue', {}, 'Bike b1'],
    ['defect', 'Bell rattles', { km: 10 }, 'Bike b1'],
    ['recheck', 'Look at the braze', { rides: 2, km: 70 }, 'Bike b1'],
    ['tool', 'Small wrench', {}, ''],
  ]);
  logbook.close();
});

test('a timer that is set anew updates its event in the calendar: same UID, higher SEQUENCE', async () => {
  const { logbook, clock } = await openTestLogbook();
  const { bikeId } = await aBike(logbook);
  const waitId = '0190a6b2-1c2d-7000-8000-00000000000a';
  await done(logbook, { type: 'start-wait', waitId, bikeId, kind: 'other', title: 'Paint', waitMs: HOUR_MS });
  const [before] = await calendarOf(logbook);
  clock.nowMs += 60_000;
  await done(logbook, { type: 'change-wait', waitId, waitMs: 5 * HOUR_MS, why: 'cold workshop' });
  const [after, ...others] = await calendarOf(logbook);
  expect(others).toEqual([]);
  expect(before?.uid).toBe(waitId);
  expect(after?.uid).toBe(waitId);
  expect(after?.sequence).toBeGreaterThan(before?.sequence ?? Number.NaN);
  expect(after?.startDate.toJSDate().getTime()).toBe(
    (before?.startDate.toJSDate().getTime() ?? 0) + 4 * HOUR_MS,
  );
  logbook.close();
});

test('what rides alone make due gets a latest-by date, and the event says that it is a guess', async () => {
  const { logbook, clock } = await openTestLogbook();
  const { bikeId } = await aBike(logbook);
  await done(logbook, {
    ...{ type: 'set-recheck', recheckId: 'r1', bikeId, kind: 'inspect', title: 'Look at the braze' },
    ...{ instruction: 'Look', dueRides: 2 },
  });
  const [event] = await calendarOf(logbook);
  const at = event?.startDate.toJSDate();
  expect(at?.getHours()).toBe(9);
  // Two rides at one a week.
  expect(Math.abs((at?.getTime() ?? 0) - clock.nowMs - 14 * 24 * HOUR_MS)).toBeLessThan(24 * HOUR_MS);
  expect(event?.summary).toBe('Bike b1: Look at the braze');
  expect(event?.description).toContain('In 2 rides, if that comes sooner.');
  expect(event?.description).toContain('The date is estimated');
  logbook.close();
});

test('what is due already is not handed to a calendar: it would not ring', async () => {
  const { logbook, clock } = await openTestLogbook();
  const { bikeId } = await aBike(logbook);
  await done(logbook, { type: 'start-wait', bikeId, kind: 'other', title: 'Paint', waitMs: HOUR_MS });
  clock.nowMs += HOUR_MS;
  expect(eventsOf(await logbook.read('duties', {}), 'km', clock.nowMs)).toEqual([]);
  logbook.close();
});
