import { describe, expect, test } from 'vitest';
import { choose, goTo, press, unfold } from './hands.ts';
import { entries, rows } from './rawStore.ts';
import { bikeId, DAY_MS, HOME, joint, MINUTE_MS, nowMs, page, part, putDownFor, torquesOf } from './story.ts';
import * as wagtail from './wagtail.ts';

/** What was put on that thread, who wrote of a creak, how it was before, where the saddle came from. */
export function readLater(): void {
  describe('months later', () => {
    const block = (heading: string) =>
      page.locator('.paper-block', { has: page.getByRole('heading', { name: heading }) });

    test('the history is narrowed to a part, and a written word is found', async () => {
      await putDownFor(120 * DAY_MS);
      await goTo(page, `#/history/b:${bikeId}`);
      await page.getByRole('list', { name: 'Entries, newest first' }).waitFor();
      await unfold(page, 'Filter');
      await choose(page, 'Part', wagtail.stem.name);
      await page.getByText(/^\d+ found in \d+ entries\.$/).waitFor();
      await page.getByLabel('Find words').fill('4,1');
      await page.getByText(/^1 found in/).waitFor();
      await page.getByRole('button', { name: /Stem on steerer.*moved before.*4,1 N·m/ }).waitFor();
      await page.getByLabel('Find words').fill('');
      await choose(page, 'Part', 'every part');
      await page.getByLabel('Find words').fill('creak uphill');
      await page.getByText(/^1 found in/).waitFor();
      await page.getByText(/A creak from the saddle, uphill only/).waitFor();
    });

    test('[C2] a correction keeps the first reading beside the second, with the reason; [J2] the entry itself is as it was', async () => {
      const [before] = await torquesOf('Saddle rails');
      await page.getByLabel('Find words').fill('44,3');
      await page.getByRole('button', { name: /Saddle rails.*44,3 in·lbf/ }).click();
      await press(page, 'Correct or strike out');
      await page.getByLabel('Applied', { exact: true }).fill('43,4');
      await press(page, 'Correct the entry');
      await page.getByText('Say why; the reason stays beside it.').waitFor();
      await page.getByLabel('Why', { exact: true }).fill('Two digits swapped');
      await press(page, 'Correct the entry');
      const line = page.getByRole('button', { name: /Corrected/ });
      await line.waitFor();
      const words = await line.textContent();
      expect(words).toMatch(/44,3 in·lbf.*43,4 in·lbf.*Why: Two digits swapped/s);
      await line.locator('s', { hasText: '44,3' }).waitFor();
      expect((await torquesOf('Saddle rails'))[0]).toEqual(before);
      expect((await joint('Saddle rails')).applied?.applied).toMatchObject({
        typed: '43,4',
        unit: '[in_i].[lbf_av]',
      });
    });

    test('the sheet as it was before the re-check shows the figure of the build, today’s the later one', async () => {
      await goTo(page, `#/sheet/${bikeId}`);
      const axle = block('Front axle nuts');
      await axle.getByText(/tightened to 22,5 N·m/).waitFor();
      await block('Stem on steerer')
        .getByText(/at 4,1 N·m/)
        .waitFor();
      const [ride] = await entries(page, 'ride-logged');
      const before = (ride?.happenedAtMs ?? 0) - MINUTE_MS;
      await page.getByLabel('Show the bike as of').fill(localMinute(before, HOME.zone));
      await axle.getByText(/tightened to 20 N·m/).waitFor();
      expect(await axle.getByText(/22,5/).count()).toBe(0);
      expect(await block('Stem on steerer').getByText('4,1').count()).toBe(0);
    });

    test('[P1] [P2] the saddle goes to another bike: its joint comes apart, and its own history tells of both', async () => {
      await goTo(page, '#/new-bike');
      await page.getByLabel('Name').fill('Dunlin');
      await press(page, 'Add bike');
      await page.getByRole('heading', { level: 1, name: 'Dunlin' }).waitFor();
      const dunlin = (await rows(page, 'bike')).find(({ name }) => name === 'Dunlin')?.bikeId;
      const { partId } = await part(wagtail.saddle.name);
      await goTo(page, `#/part/${partId}`);
      await press(page, 'Take it off');
      const sheet = page.getByRole('dialog');
      await sheet.getByRole('radio', { name: /^Another bike/ }).check();
      await choose(page, 'Which bike', 'Dunlin');
      await sheet.getByLabel('Why it moves').fill('Fits the other rider');
      await sheet.getByRole('button', { name: 'Take it off' }).click();
      await expect
        .poll(async () => (await part(wagtail.saddle.name)).place)
        .toEqual({ on: 'bike', bikeId: dunlin });
      expect((await joint('Saddle rails')).state).toBe('apart');
      const been = page.getByRole('list', { name: 'Where it has been' });
      await expect
        .poll(async () =>
          (await been.getByRole('listitem').allTextContents()).map(
            (line) => /Dunlin|Wagtail|shelf/i.exec(line)?.[0],
          ),
        )
        .toEqual(['Dunlin', 'Wagtail', expect.stringMatching(/shelf/i)]);
      await press(page, /^Full history/);
      await page
        .getByRole('button', { name: /Dunlin/ })
        .first()
        .waitFor();
      await page.getByRole('button', { name: /Saddle rails.*44,3 in·lbf/ }).waitFor();
    });
  });
}

/** Another time zone moves no instant and no day. */
export function carriedAway(): void {
  describe('on the other side of the world', () => {
    const AWAY = { zone: 'Pacific/Auckland', locale: HOME.locale };
    const clockIn = (zone: string, ms: number) =>
      new Intl.DateTimeFormat('en-GB', { timeZone: zone, timeStyle: 'short' }).format(ms);

    test('[W1] a wait is the same instant there, told in the time of the place', async () => {
      await goTo(page, `#/bike/${bikeId}`);
      await unfold(page, 'Timers');
      await press(page, 'Start a timer');
      await page.getByLabel('What are you waiting for?').fill('Glue under the grips');
      await page.getByLabel('How long', { exact: true }).fill('24');
      await press(page, 'Start timer');
      await page.getByRole('button', { name: /Glue under the grips.*left/ }).waitFor();
      const before = { rechecks: await rows(page, 'recheck'), waits: await rows(page, 'wait') };
      const dueAtMs = before.waits.find(({ title }) => title.startsWith('Glue'))?.dueAtMs ?? 0;

      await putDownFor(MINUTE_MS, AWAY);
      expect({ rechecks: await rows(page, 'recheck'), waits: await rows(page, 'wait') }).toEqual(before);
      await goTo(page, `#/bike/${bikeId}`);
      await unfold(page, 'Timers');
      await page.getByRole('button', { name: /Glue under the grips.*23 h \d\d left/ }).click();
      await page.getByRole('timer').getByText(clockIn(AWAY.zone, dueAtMs)).waitFor();
      expect(clockIn(AWAY.zone, dueAtMs)).not.toBe(clockIn(HOME.zone, dueAtMs));
      await page.clock.fastForward(dueAtMs - (await nowMs()) + 1000);
      await press(page, /^Checked, cured/);
      await expect.poll(async () => (await entries(page, 'wait-ended')).at(-1)?.zone).toBe(AWAY.zone);
    });

    test('a day stays the day it was lived on; what is printed there carries the days of the place', async () => {
      await goTo(page, `#/history/b:${bikeId}`);
      await page.getByLabel('Find words').fill('crates');
      // Begun on Saturday afternoon in Vienna, when it was Sunday in Auckland.
      await page.getByRole('heading', { level: 2, name: '15 March 2031' }).waitFor();
      await page.getByText('14:00', { exact: true }).waitFor();
      await goTo(page, `#/sheet/${bikeId}`);
      const [release] = await entries(page, 'bike-released');
      const day = new Intl.DateTimeFormat('en-GB', { timeZone: AWAY.zone, dateStyle: 'long' });
      const signed = `${day.format(release?.happenedAtMs)} at ${clockIn(AWAY.zone, release?.happenedAtMs ?? 0)}`;
      await page.locator('.paper-field', { hasText: 'Signed on' }).getByText(signed).waitFor();
    });
  });
}

/** An instant as a date-and-time field wants it: local, to the minute. */
function localMinute(ms: number, timeZone: string): string {
  const parts = new Intl.DateTimeFormat('sv-SE', { timeZone, dateStyle: 'short', timeStyle: 'short' });
  return parts.format(ms).replace(' ', 'T');
}
