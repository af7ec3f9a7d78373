import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { eachOnItsOwnPhone, phone, served } from '../browser/ownPhone.ts';
import { firstVisit, throwAwayFiles } from '../browser/product.ts';
import { opened, whole } from '../node/exchange/aCopy.ts';

eachOnItsOwnPhone();

const heading = (name: string) => phone.page.getByRole('heading', { level: 1, name }).waitFor();

async function startBike(name: string): Promise<void> {
  await phone.page.goto(`${served.origin}/#/new-bike`);
  await phone.page.getByLabel('Name').fill(name);
  await phone.page.getByRole('button', { name: 'Add bike' }).click();
  await heading(name);
}

/** The journal as it lies in the store, read past the product. */
const storedLines = () =>
  phone.page.evaluate(async () => {
    const open = indexedDB.open('pinchbolt');
    const db = await new Promise<IDBDatabase>((done) => {
      open.onsuccess = () => done(open.result);
    });
    const all = db.transaction('journal').objectStore('journal').getAll();
    const lines = await new Promise<unknown[]>((done) => {
      all.onsuccess = () => done(all.result);
    });
    db.close();
    return lines;
  });

/** Three bytes as a photo in the store: the page has only to hand over what lies there. */
const putPhoto = () =>
  phone.page.evaluate(async () => {
    const open = indexedDB.open('pinchbolt');
    const db = await new Promise<IDBDatabase>((done) => {
      open.onsuccess = () => done(open.result);
    });
    const tx = db.transaction('photos', 'readwrite');
    const buf = new Uint8Array([0, 127, 255]).buffer;
    tx.objectStore('photos').put({ photoId: 'p1', type: 'image/jpeg', widthPx: 1, heightPx: 1, buf });
    await new Promise((done) => {
      tx.oncomplete = done;
    });
    db.close();
  });

/** Bytes of lines in the second copy. */
const secondCopyBytes = () =>
  phone.page.evaluate(async () => {
    const top = await navigator.storage.getDirectory();
    const folder = await top.getDirectoryHandle('pinchbolt-mirror').catch(() => undefined);
    const file = await folder?.getFileHandle('journal-1').catch(() => undefined);
    return (await file?.getFile())?.size ?? 0;
  });

async function saved(button: string): Promise<{ name: string; lines: unknown[] }> {
  const [download] = await Promise.all([
    phone.page.waitForEvent('download'),
    phone.page.getByRole('button', { name: button }).click(),
  ]);
  const text = readFileSync(await download.path(), 'utf8');
  const lines = text.trimEnd().split('\n');
  return { name: download.suggestedFilename(), lines: lines.map((line) => JSON.parse(line)) };
}

describe('the rescue page', () => {
  test('saves journal and photos with every file of the app gone and no network', async () => {
    await firstVisit(phone, served.origin);
    await startBike('Lapwing');
    await startBike('Sandpiper');
    await putPhoto();
    const stored = await storedLines();
    await throwAwayFiles(phone);
    await served.stop();
    await phone.page.goto(`${served.origin}/#/home`);
    await heading('Save your logbook');
    const journal = await saved('Save the logbook');
    expect(journal.name).toMatch(/^pinchbolt-journal-\d{4}-\d\d-\d\d\.jsonl$/);
    expect(journal.lines).toEqual(stored);
    expect(stored.length).toBeGreaterThanOrEqual(2);
    await phone.page.getByText(`Entries in the file: ${stored.length}.`).waitFor();
    const photos = await saved('Save the photos');
    // RFC 4648, section 4: 0x00 0x7f 0xff is AH//.
    const photo = { photoId: 'p1', type: 'image/jpeg', widthPx: 1, heightPx: 1, base64: 'AH//' };
    expect(photos.lines).toEqual([photo]);
  });

  test('saves the second copy where the store is gone, as a copy that the app restores', async () => {
    await firstVisit(phone, served.origin);
    await startBike('Lapwing');
    const stored = (await storedLines()) as { entry: unknown }[];
    await expect.poll(secondCopyBytes).toBeGreaterThan(400);
    await phone.page.goto(`${served.origin}/second-copy.js`);
    await phone.page.evaluate(
      () =>
        new Promise((done) => {
          indexedDB.deleteDatabase('pinchbolt').onsuccess = done;
        }),
    );
    await served.stop();
    await phone.page.goto(`${served.origin}/rescue.html`);
    const [download] = await Promise.all([
      phone.page.waitForEvent('download'),
      phone.page.getByRole('button', { name: 'Save the second copy' }).click(),
    ]);
    const { entries } = await whole(await opened(new Blob([readFileSync(await download.path())])));
    expect(entries).toEqual(stored.map(({ entry }) => entry));
    expect(
      await phone.page.evaluate(async () => (await indexedDB.databases()).map(({ name }) => name)),
    ).not.toContain('pinchbolt');
  });

  test('lies on the server as well, for a phone whose worker is gone', async () => {
    await firstVisit(phone, served.origin);
    await startBike('Lapwing');
    const stored = await storedLines();
    await phone.page.evaluate(async () => {
      for (const one of await navigator.serviceWorker.getRegistrations()) await one.unregister();
    });
    await phone.page.goto(`${served.origin}/rescue.html`);
    expect(await phone.page.evaluate(() => navigator.serviceWorker.controller)).toBeNull();
    expect((await saved('Save the logbook')).lines).toEqual(stored);
  });

  test('makes no logbook where there is none', async () => {
    await phone.page.goto(`${served.origin}/rescue.html`);
    await phone.page.getByRole('button', { name: 'Save the logbook' }).click();
    await phone.page.getByText('There is no logbook on this phone.').waitFor();
    expect(await phone.page.evaluate(() => indexedDB.databases())).toEqual([]);
  });

  test('gets an app running again whose cached script is no script, and keeps the logbook', async () => {
    await firstVisit(phone, served.origin);
    await startBike('Lapwing');
    await phone.page.evaluate(async () => {
      const [name = ''] = await caches.keys();
      const files = await caches.open(name);
      const main = (await files.keys()).find(({ url }) => /\/assets\/main-/.test(url));
      if (!main) throw new Error('no first script');
      await files.put(
        main,
        new Response('<h1>Back soon</h1>', { headers: { 'content-type': 'text/javascript' } }),
      );
    });
    await phone.page.goto('about:blank');
    await phone.page.goto(`${served.origin}/#/home`);
    await phone.page.getByRole('link', { name: 'Save the logbook' }).click({ timeout: 20_000 });
    await heading('Save your logbook');
    served.answer(() => ({ body: '<h1>Back soon</h1>' }));
    await phone.page.getByRole('button', { name: 'Download the app again' }).click();
    await phone.page.getByText('The server does not answer as it should.').waitFor();
    served.answer(() => undefined);
    await phone.page.getByRole('button', { name: 'Download the app again' }).click();
    await phone.page.getByText('Lapwing').waitFor();
  });
});
