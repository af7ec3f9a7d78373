import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { firstVisit, openPhone, type Phone, type Served, serveDist } from './product.ts';

let served: Served;
let phone: Phone;

beforeAll(async () => {
  served = await serveDist();
  phone = await openPhone(served.origin);
  await firstVisit(phone, served.origin);
});

afterAll(async () => {
  await phone.close();
  await served.stop();
});

async function goTo(hash: string, page: Page): Promise<void> {
  await page.evaluate((to) => {
    location.hash = to;
  }, hash);
  await page.getByText('One moment…').waitFor({ state: 'detached' });
  await page.getByRole('heading', { level: 1 }).waitFor();
}

async function startBike(name: string, page = phone.page): Promise<void> {
  await goTo('#/new-bike', page);
  await page.getByLabel('Name', { exact: true }).fill(name);
  await page.locator('button.button-main').first().click();
  await page.getByRole('heading', { level: 1, name }).waitFor();
}

/** All that lies in the store, but for what is of one phone only: the number a line came in under. */
const held = (page = phone.page) =>
  page.evaluate(
    () =>
      new Promise<{ entries: unknown[]; rows: unknown[] }>((resolve, reject) => {
        const asked = indexedDB.open('pinchbolt');
        asked.onerror = () => reject(asked.error);
        asked.onsuccess = () => {
          const tx = asked.result.transaction(['journal', 'views']);
          const [lines, rows] = [tx.objectStore('journal').getAll(), tx.objectStore('views').getAll()];
          tx.oncomplete = () => {
            asked.result.close();
            resolve({ entries: lines.result.map(({ entry }) => entry), rows: rows.result });
          };
        };
      }),
  );

/** The text of the second copy. */
const copied = (page = phone.page) =>
  page.evaluate(async () => {
    const folder = await (await navigator.storage.getDirectory()).getDirectoryHandle('pinchbolt-mirror');
    let text = '';
    for await (const [name, file] of folder as unknown as AsyncIterable<[string, FileSystemFileHandle]>)
      if (name.startsWith('journal-')) text += await (await file.getFile()).text();
    return text;
  });

const copyHolds = (words: string, page = phone.page) =>
  expect.poll(() => copied(page).catch(() => ''), { timeout: 20_000 }).toContain(words);

/** A page of the same origin in which nothing of the app runs. */
const leaveTheApp = () => phone.page.goto(`${served.origin}/rescue.html`);

async function loseTheStore(): Promise<void> {
  await leaveTheApp();
  await phone.page.evaluate(
    () =>
      new Promise<void>((done, failed) => {
        const asked = indexedDB.deleteDatabase('pinchbolt');
        asked.onsuccess = () => done();
        asked.onerror = () => failed(asked.error);
      }),
  );
  await phone.page.goto(`${served.origin}/`);
}

describe('[K4] the second copy', () => {
  test('holds an entry shortly after it was made, written by the worker, and the settings say so', async () => {
    await startBike('Wagtail');
    await copyHolds('Wagtail');
    const asked = () => phone.page.evaluate(() => localStorage.getItem('pinchbolt:asked-to-keep'));
    await expect.poll(asked, { message: 'the browser was asked to keep the logbook' }).not.toBeNull();
    expect(served.hits.some((path) => /assets\/worker-[\w-]+\.js/.test(path))).toBe(true);
    await goTo('#/settings', phone.page);
    await phone.page.getByText('Second copy on this phone').waitFor();
    await phone.page.getByText(/^1 entry, last written/).waitFor();
  });

  test('takes entries of two pages at once, each of them once', async () => {
    const other = await phone.context.newPage();
    await other.goto(`${served.origin}/`);
    await other.getByText('Wagtail').first().waitFor();
    await Promise.all([startBike('Dipper', other), startBike('Ouzel')]);
    await copyHolds('Dipper');
    await copyHolds('Ouzel');
    await phone.page.waitForTimeout(500);
    expect((await copied()).match(/"entry":/g)).toHaveLength(3);
    await other.close();
  });

  test('[K6] the check of the logbook finds nothing wrong', async () => {
    await goTo('#/check', phone.page);
    await phone.page.getByRole('button', { name: 'Check now' }).click();
    await phone.page.getByText('Nothing wrong: 3 entries').waitFor();
  });
});

describe('[K5] a store that the browser lost', () => {
  test('is not greeted as a first day; one tap brings back the same journal and the same rows', async () => {
    const before = await held();
    const { profile } = phone;
    await phone.kill();
    phone = await openPhone(served.origin, { profile });
    await phone.page.goto(`${served.origin}/`);
    await phone.page.getByText('Wagtail').first().waitFor();
    await loseTheStore();
    await phone.page.getByText('The logbook is missing on this phone').waitFor();
    expect(await phone.page.getByText('Look at the demo').count()).toBe(0);
    await phone.page.getByText('The second copy holds 3 entries').waitFor();
    await phone.page.getByRole('button', { name: 'Restore the logbook' }).click();
    await phone.page.getByText('Wagtail').first().waitFor();
    expect(await held()).toEqual(before);
  });

  test('with the second copy gone as well the mark alone tells of it, and a new logbook can be begun', async () => {
    await leaveTheApp();
    const drop = () =>
      phone.page.evaluate(async () => {
        const top = await navigator.storage.getDirectory();
        await top.removeEntry('pinchbolt-mirror', { recursive: true });
      });
    // What the app was writing as it was left may hold the folder for a moment.
    await expect.poll(() => drop().then(() => 'gone', String)).toBe('gone');
    await loseTheStore();
    await phone.page.getByText('It held 3 entries', { exact: false }).waitFor();
    await phone.page.getByText('There is no second copy on this phone').waitFor();
    await phone.page.getByRole('button', { name: 'Start a new logbook' }).focus();
    await phone.page.keyboard.down('Enter');
    await phone.page.getByText('Look at the demo').waitFor();
    await phone.page.keyboard.up('Enter');
    await phone.page.reload();
    await phone.page.getByText('Look at the demo').waitFor();
  });
});
