import { afterEach, describe, expect, test } from 'vitest';
import { isQuiet } from '../../../src/journal/quietHours.ts';
import { announceDue } from '../../../src/reminders/announceDue.ts';
import { aBike } from '../logbook/aBike.ts';
import { done, openTestLogbook } from '../logbook/openTestLogbook.ts';

const HOUR_MS = 3_600_000;
const night = { fromMin: 22 * 60, toMin: 7 * 60 };
const at = (hour: number, minute = 0, day = 3) => new Date(2026, 4, day, hour, minute).getTime();

const own = process.env['TZ'];
afterEach(() => {
  if (own === undefined) delete process.env['TZ'];
  else process.env['TZ'] = own;
});

test.each([
  ['the example of its description', night, at(23), true],
  ['the first minute', night, at(22), true],
  ['the minute before', night, at(21, 59), false],
  ['after midnight', night, at(3), true],
  ['the end', night, at(7), false],
  ['a lunch hour', { fromMin: 720, toMin: 780 }, at(12, 30), true],
  ['after a lunch hour', { fromMin: 720, toMin: 780 }, at(13), false],
  ['the same time twice', { fromMin: 600, toMin: 600 }, at(10), false],
  ['none set', undefined, at(23), false],
  ['switched off', null, at(23), false],
] as const)('%s', (_name, quiet, ms, is) => expect(isQuiet(quiet, ms)).toBe(is));

describe.each(['Pacific/Apia', 'America/Santiago', 'Asia/Kolkata', 'UTC'])('in %s', (zone) => {
  test('quiet hours go by the clock on the wall, on every day of a year', () => {
    process.env['TZ'] = zone;
    for (let day = 1; day <= 365; day += 1) {
      expect(isQuiet(night, new Date(2026, 0, day, 23, 30).getTime())).toBe(true);
      expect(isQuiet(night, new Date(2026, 0, day, 12).getTime())).toBe(false);
    }
  });

  test('[R11] what falls due in quiet hours is announced at their end, once', async () => {
    process.env['TZ'] = zone;
    const { logbook, clock } = await openTestLogbook(at(21));
    const { bikeId } = await aBike(logbook);
    await done(logbook, { type: 'change-settings', change: { quiet: night } });
    await done(logbook, { type: 'start-wait', bikeId, kind: 'other', title: 'Paint', waitMs: 3 * HOUR_MS });
    const shown: string[] = [];
    const look = () => announceDue(logbook, (notice) => void shown.push(notice.body));
    for (const [hour, minute, day] of [
      [0, 0, 4],
      [3, 0, 4],
      [6, 59, 4],
    ] as const) {
      clock.nowMs = at(hour, minute, day);
      await look();
      expect(shown).toEqual([]);
      // The list of what is due does not keep quiet.
      expect(await logbook.read('due', { untilMs: clock.nowMs })).toHaveLength(1);
    }
    clock.nowMs = at(7, 0, 4);
    await look();
    await look();
    expect(shown).toEqual(['Timer ended: Paint']);
    logbook.close();
  });
});

test('switched off again, it is announced at once', async () => {
  const { logbook, clock } = await openTestLogbook(at(21));
  const { bikeId } = await aBike(logbook);
  await done(logbook, { type: 'change-settings', change: { quiet: night } });
  await done(logbook, { type: 'start-wait', bikeId, kind: 'other', title: 'Paint', waitMs: 2 * HOUR_MS });
  clock.nowMs = at(23);
  expect(await logbook.claimDue()).toEqual([]);
  await done(logbook, { type: 'change-settings', change: { quiet: null } });
  expect(await logbook.claimDue()).toHaveLength(1);
  logbook.close();
});

test.each([
  { fromMin: -1, toMin: 60 },
  { fromMin: 0, toMin: 1440 },
  { fromMin: 1.5, toMin: 2 },
  { fromMin: 5 },
])('quiet hours %j are refused', async (quiet) => {
  const { logbook } = await openTestLogbook();
  const result = await logbook.run({ type: 'change-settings', change: { quiet: quiet as typeof night } });
  expect('refused' in result).toBe(true);
  logbook.close();
});
