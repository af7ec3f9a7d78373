import { deflateSync } from 'node:zlib';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { firstVisit, openPhone, type Phone, type Served, serveDist } from './product.ts';

let served: Served;
let phone: Phone;
let page: Page;

beforeAll(async () => {
  served = await serveDist();
  phone = await openPhone(served.origin);
  page = phone.page;
  await firstVisit(phone, served.origin);
});

afterAll(async () => {
  expect(phone.strays, '[N1] no request leaves the origin').toEqual([]);
  await phone.close();
  await served.stop();
});

const heading = (on: Page) => on.getByRole('heading', { level: 1 });

async function goTo(hash: string, on = page): Promise<void> {
  await on.evaluate((to) => {
    location.hash = to;
  }, hash);
  await on.getByText('One moment…').waitFor({ state: 'detached' });
  await heading(on).waitFor();
}

/** What lies in a store of the browser. */
function stored(database: string, store: string): Promise<Record<string, unknown>[]> {
  return page.evaluate(
    ([name, of]) =>
      new Promise<Record<string, unknown>[]>((resolve, reject) => {
        const asked = indexedDB.open(name!);
        asked.onerror = () => reject(asked.error);
        asked.onsuccess = () => {
          const all = asked.result.transaction(of!).objectStore(of!).getAll();
          all.onsuccess = () => {
            asked.result.close();
            resolve(all.result);
          };
        };
      }),
    [database, store] as const,
  );
}

const partCalled = async (name: string) =>
  (await stored('pinchbolt', 'views')).find((row) => row['is'] === 'part' && row['name'] === name);

const mainButton = (on = page) => on.locator('button.button-main').first();

async function describePart(name: string): Promise<void> {
  await page.getByLabel('Name', { exact: true }).fill(name);
  await page.getByLabel('Kind', { exact: true }).selectOption('stem');
}

async function choosePicture(picture: { name: string; mimeType: string; buffer: Buffer }): Promise<void> {
  const chooser = page.waitForEvent('filechooser');
  await page.locator('.photo-add').click();
  await (await chooser).setFiles(picture);
}

/** A store that takes the question and never answers. */
async function openWithHanging(database: string, hash: string): Promise<Page> {
  const other = await phone.context.newPage();
  await other.addInitScript((name) => {
    const { open } = IDBFactory.prototype;
    IDBFactory.prototype.open = function (asked: string, version?: number) {
      if (asked !== name)
        return version === undefined ? open.call(this, asked) : open.call(this, asked, version);
      const request = open.call(this, `${asked} that hangs`);
      // Every event is stopped here, so the caller gets no answer.
      for (const event of ['success', 'error', 'upgradeneeded', 'blocked'])
        request.addEventListener(event, (heard) => heard.stopImmediatePropagation());
      return request;
    };
  }, database);
  await other.goto(`${served.origin}/${hash}`);
  return other;
}

describe('a store that does not answer', () => {
  test('of drafts: the page is drawn all the same', async () => {
    const other = await openWithHanging('pinchbolt-drafts', '#/new-bike');
    await heading(other).waitFor({ timeout: 15_000 });
    await other.getByLabel('Name', { exact: true }).fill('Wagtail');
    await other.close();
  });

  test('of the logbook: the first screen says so and what can be done', async () => {
    const other = await openWithHanging('pinchbolt', '#/home');
    await other.getByText('The logbook is not answering yet').waitFor({ timeout: 20_000 });
    await other.getByRole('button', { name: 'Reload' }).waitFor();
    await other.close();
  });
});

test('no two fields have one id, also after something beside the screen had its say', async () => {
  await goTo('#/new-part/shelf');
  // What runs beside the screens reports within a second or two of the start.
  await page.waitForTimeout(2500);
  await page.locator('summary', { hasText: 'More about it' }).click();
  const ids = await page.evaluate(() => [...document.querySelectorAll('[id]')].map(({ id }) => id));
  expect(ids.filter((id, at) => ids.indexOf(id) !== at)).toEqual([]);
});

test('an address that every object answers to leads to the first screen', async () => {
  await goTo('#/constructor/x');
  expect(await heading(page).textContent()).toBe('Workshop');
});

describe('drafts', () => {
  test('a form touched and emptied again holds nothing', async () => {
    const keys = async () => (await stored('pinchbolt-drafts', 'drafts')).map(({ key }) => key);
    await goTo('#/new-bike');
    const name = page.getByLabel('Name', { exact: true });
    await name.fill('Heron');
    await expect.poll(keys).toContain('bike:new');
    await name.fill('');
    await expect.poll(keys).not.toContain('bike:new');
  });

  test('another name for a bike outlives a reload', async () => {
    await goTo('#/new-bike');
    await page.getByLabel('Name', { exact: true }).fill('Heron');
    await mainButton().click();
    await page.waitForURL(/#\/bike\//);
    const rename = page.getByRole('button', { name: /^(Another name|Rename)/ });
    await rename.click();
    await page.locator('dialog input').fill('Grey heron');
    await expect
      .poll(async () => JSON.stringify(await stored('pinchbolt-drafts', 'drafts')))
      .toContain('Grey heron');
    await page.reload();
    await rename.click();
    expect(await page.locator('dialog input').inputValue()).toBe('Grey heron');
    await page.keyboard.press('Escape');
  });

  test('the reason for a skip and the titles of a split outlive a reload; shut by hand they are given up', async () => {
    const kept = async () => JSON.stringify(await stored('pinchbolt-drafts', 'drafts'));
    await goTo('#/new-bike');
    await page.getByLabel('Name', { exact: true }).fill('Bittern');
    await mainButton().click();
    await page.waitForURL(/#\/bike\//);
    await goTo(`#/plan/${page.url().split('/').at(-1)}`);
    await page.getByRole('button', { name: 'Add a step' }).click();
    await page.getByLabel('Title', { exact: true }).fill('Face the shell');
    await page.getByLabel('Adjust', { exact: true }).check();
    await page.getByRole('button', { name: 'Add it' }).click();
    const change = page.getByRole('button', { name: /^Change step 1/ });
    const reason = page.getByLabel('Another reason');
    const open = async (what: string) => {
      await change.click();
      await page.getByRole('button', { name: what, exact: true }).click();
    };
    await open('Skip');
    await reason.fill('Cutter is blunt');
    await expect.poll(kept).toContain('Cutter is blunt');
    await page.reload();
    await open('Skip');
    expect(await reason.inputValue()).toBe('Cutter is blunt');
    await page.keyboard.press('Escape');
    await expect.poll(kept).not.toContain('Cutter is blunt');
    await page.keyboard.press('Escape');
    await open('Split');
    await page.getByLabel('Step 2').fill('Left side');
    await expect.poll(kept).toContain('Left side');
    await page.reload();
    await open('Split');
    expect(await page.getByLabel('Step 2').inputValue()).toBe('Left side');
    await page.getByRole('button', { name: 'Make 2 steps' }).click();
    await page.getByText('Left side').first().waitFor();
    await expect.poll(kept).not.toContain('Left side');
  });

  test('an old edit keeps what was written down elsewhere, and says that it was', async () => {
    await goTo('#/new-part/shelf');
    await describePart('Stem of the edit');
    await mainButton().click();
    await page.waitForURL(/#\/part\//);
    const partId = page.url().split('/').at(-1) ?? '';
    const other = await phone.context.newPage();
    await other.goto(`${served.origin}/#/edit-part/${partId}`);
    const more = (on: Page) => on.locator('summary', { hasText: 'More about it' });
    await more(other).click();
    await goTo(`#/edit-part/${partId}`);
    await more(page).click();
    await page.getByLabel('Note', { exact: true }).fill('four bolts');
    await goTo('#/shelf');
    await other.getByLabel('Serial number').fill('T 209');
    await other.getByLabel('Condition').fill('cracked at the clamp');
    await mainButton(other).click();
    await other.waitForURL(/#\/part\//);
    await other.close();
    await goTo(`#/edit-part/${partId}`);
    await page.getByText('Changed since you started this edit').waitFor();
    expect(await page.getByLabel('Serial number').inputValue()).toBe('T 209');
    expect(await page.getByLabel('Note', { exact: true }).inputValue()).toBe('four bolts');
    await mainButton().click();
    await page.waitForURL(/#\/part\//);
    expect(await partCalled('Stem of the edit')).toMatchObject({
      ...{ note: 'four bolts', serial: 'T 209', condition: 'cracked at the clamp' },
    });
  });

  test('a number that cannot be read opens the fold it stands in', async () => {
    await goTo('#/new-part/shelf');
    await describePart('Heavy stem');
    const more = page.locator('summary', { hasText: 'More about it' });
    await more.click();
    await page.getByLabel('Mass').fill('8x');
    await more.click();
    await mainButton().click();
    await expect.poll(() => page.getByLabel('Mass').isVisible()).toBe(true);
    await page.getByLabel('Mass').fill('');
    await page.getByLabel('Name', { exact: true }).fill('');
  });
});

test('what a saved form leads to begins at its top, and going back from there leads past the form', async () => {
  // Low enough that the page of a part is longer than the screen.
  const usual = page.viewportSize()!;
  await page.setViewportSize({ width: 390, height: 480 });
  await goTo('#/shelf');
  await goTo('#/new-part/shelf');
  await describePart('Stem with a long form');
  await page.evaluate(() => scrollTo(0, document.documentElement.scrollHeight));
  await expect.poll(() => page.evaluate(() => scrollY)).toBeGreaterThan(200);
  await mainButton().click();
  await page.getByRole('heading', { level: 1, name: 'Stem with a long form' }).waitFor();
  // As long as a place is looked for, and a little more.
  await page.waitForTimeout(1700);
  expect(await page.evaluate(() => document.documentElement.scrollHeight)).toBeGreaterThan(600);
  expect(await page.evaluate(() => scrollY)).toBe(0);
  await page.goBack();
  await page.getByRole('heading', { level: 1, name: 'Shelf' }).waitFor();
  await page.setViewportSize(usual);
});

describe('photos', () => {
  test('400 megapixels in a small PNG are refused at once', async () => {
    await goTo('#/new-part/shelf');
    const side = 20_000;
    const chunk = (kind: string, body: Buffer) => {
      const length = Buffer.alloc(4);
      length.writeUInt32BE(body.length);
      return Buffer.concat([length, Buffer.from(kind), body, Buffer.alloc(4)]);
    };
    const head = Buffer.alloc(13);
    head.writeUInt32BE(side, 0);
    head.writeUInt32BE(side, 4);
    head[8] = 1;
    const rows = deflateSync(Buffer.alloc(side * (1 + side / 8)), { level: 9 });
    const buffer = Buffer.concat([
      Buffer.from([137, 80, 78, 71, 13, 10, 26, 10]),
      ...[chunk('IHDR', head), chunk('IDAT', rows), chunk('IEND', Buffer.alloc(0))],
    ]);
    expect(buffer.length).toBeLessThan(100_000);
    await choosePicture({ name: 'huge.png', mimeType: 'image/png', buffer });
    await page.getByText(/too many pixels/).waitFor({ timeout: 5000 });
    expect(await page.locator('.photo img').count()).toBe(0);
  });

  test('a large photo stays with the part it was taken for when the next one is begun at once', async () => {
    await goTo('#/shelf');
    await goTo('#/new-part/shelf');
    const encoded = await page.evaluate(async () => {
      const canvas = new OffscreenCanvas(6000, 4500);
      const pen = canvas.getContext('2d');
      for (let at = 0; pen && at < 300; at += 1) {
        pen.fillStyle = `hsl(${at * 37} 60% 50%)`;
        pen.fillRect((at * 997) % 6000, (at * 613) % 4500, 400, 400);
      }
      const blob = await canvas.convertToBlob({ type: 'image/jpeg', quality: 0.8 });
      const reader = new FileReader();
      reader.readAsDataURL(blob);
      await new Promise((read) => reader.addEventListener('load', read));
      return String(reader.result).split(',')[1] ?? '';
    });
    await describePart('First stem');
    const buffer = Buffer.from(encoded, 'base64');
    await choosePicture({ name: 'large.jpg', mimeType: 'image/jpeg', buffer });
    await page.getByRole('button', { name: /then another/ }).click();
    await page.locator('.part-added').waitFor({ timeout: 20_000 });
    await describePart('Second stem');
    await mainButton().click();
    await page.waitForURL(/#\/part\//);
    expect((await partCalled('First stem'))?.['photoIds']).toHaveLength(1);
    expect((await partCalled('Second stem'))?.['photoIds'] ?? []).toEqual([]);
    const [photo] = await stored('pinchbolt', 'photos');
    expect(photo).toMatchObject({ widthPx: 1600, heightPx: 1200, type: 'image/jpeg' });
  });
});
