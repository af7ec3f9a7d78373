import { readdirSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { nextBuild } from './builds.ts';
import { firstVisit, openPhone, type Phone, type Served, serveDist } from './product.ts';

let served: Served;
let phone: Phone;

beforeEach(async () => {
  served = await serveDist();
  phone = await openPhone(served.origin);
});

afterEach(async () => {
  await phone.close();
  await served.stop();
});

/** The worker itself, what it carries in itself, and what only servers read. */
const BESIDE = [
  ...['/sw.js', '/rescue.html', '/rescue.js'],
  ...['/_headers', '/.htaccess', '/nginx.conf', '/vercel.json', '/staticwebapp.config.json'],
];

describe('without a network', () => {
  test('after one visit the app opens, at any address, with the server gone', async () => {
    await firstVisit(phone, served.origin);
    await served.stop();
    await phone.page.goto(`${served.origin}/#/settings`);
    await phone.page.reload();
    await phone.page.getByRole('heading', { level: 1, name: 'Settings' }).waitFor();
    await phone.page.goto(`${served.origin}/deep/link`);
    await phone.page.getByRole('heading', { level: 1 }).waitFor();
    served = await serveDist();
  });

  test('every shipped file is in the worker’s cache, and nothing is fetched twice', async () => {
    await firstVisit(phone, served.origin);
    const cached = await phone.page.evaluate(async () => {
      const [name] = await caches.keys();
      return (await (await caches.open(name ?? '')).keys()).map(({ url }) => new URL(url).pathname);
    });
    const shipped = readdirSync('dist', { recursive: true, withFileTypes: true })
      .filter((entry) => entry.isFile())
      .map((entry) => `/${join(entry.parentPath, entry.name).split('dist/')[1]}`)
      .filter((path) => !BESIDE.includes(path) && !path.startsWith('/install/'))
      // The page goes by the path of its folder.
      .map((path) => (path === '/index.html' ? '/' : path));
    expect(cached.sort()).toEqual(shipped.sort());
    const before = served.hits.length;
    await phone.page.reload();
    await phone.page.getByRole('heading', { level: 1 }).waitFor();
    const asked = served.hits.slice(before).filter((path) => path !== '/sw.js');
    expect(asked).toEqual([]);
    await phone.page.goto(`${served.origin}/#/settings`);
    await phone.page.getByText('Version and licences').click();
    await phone.page.getByText(/^Version [0-9a-f]+, on this phone since/).waitFor();
  });
});

test('the browser finds nothing that keeps it from being installed', async () => {
  await firstVisit(phone, served.origin);
  // The manifest is named after the first screen.
  await phone.page.waitForSelector('link[rel="manifest"]', { state: 'attached' });
  const session = await phone.context.newCDPSession(phone.page);
  const manifest = await session.send('Page.getAppManifest');
  expect(manifest).toMatchObject({ url: `${served.origin}/manifest.webmanifest`, errors: [] });
  expect(await session.send('Page.getInstallabilityErrors')).toEqual({ installabilityErrors: [] });
});

describe('an update', () => {
  const lookForOne = () =>
    phone.page.evaluate(async () => {
      const registration = await navigator.serviceWorker.ready;
      await registration.update().catch(() => {});
    });

  test('is offered, not forced: what is typed stays, and the choice is the person’s', async () => {
    await firstVisit(phone, served.origin);
    await phone.page.evaluate(() => {
      location.hash = '#/new-bike';
    });
    await phone.page.getByLabel('Name').fill('Half typed');
    const next = await nextBuild();
    served.serve(next.folder);
    await lookForOne();
    await phone.page.waitForFunction(async () => (await navigator.serviceWorker.ready).waiting !== null);
    // Something is half typed: not even the offer stands in the way.
    expect(await phone.page.getByText('A newer version is ready').count()).toBe(0);
    expect(await phone.page.getByLabel('Name').inputValue()).toBe('Half typed');
    await phone.page.getByRole('button', { name: 'Add bike' }).click();
    await phone.page.getByRole('heading', { level: 1, name: 'Half typed' }).waitFor();
    await phone.page.evaluate(() => {
      location.hash = '#/home';
    });
    await phone.page.getByText('A newer version is ready').waitFor();
    // Put off, it stays out of the way until the app is opened anew.
    await phone.page.getByRole('button', { name: 'Later' }).click();
    expect(await phone.page.getByText('A newer version is ready').count()).toBe(0);
    await phone.page.reload();
    await phone.page.getByText('A newer version is ready').waitFor();
    expect(await phone.page.evaluate(() => document.documentElement.dataset['version'])).toBeUndefined();
    await Promise.all([
      phone.page.waitForEvent('load'),
      phone.page.getByRole('button', { name: 'Use it now' }).click(),
    ]);
    await phone.page.getByText('Half typed').waitFor();
    expect(await phone.page.evaluate(() => document.documentElement.dataset['version'])).toBe('next');
    next.remove();
  });

  test('another open page keeps its own files until it is loaded anew', async () => {
    await firstVisit(phone, served.origin);
    const other = await phone.context.newPage();
    await other.goto(`${served.origin}/#/home`);
    await other.getByRole('heading', { level: 1 }).waitFor();
    // The next version has other names for its files, as a real one would.
    const next = await nextBuild(({ path }) => {
      for (const name of readdirSync(path('assets')))
        if (name.startsWith('Tools-')) rmSync(path(join('assets', name)));
    });
    served.serve(next.folder);
    await lookForOne();
    await phone.page.getByRole('button', { name: 'Use it now' }).click();
    await phone.page.waitForFunction(() => document.documentElement.dataset['version'] === 'next');
    await other.evaluate(() => {
      location.hash = '#/tools';
    });
    await other.getByRole('heading', { level: 1, name: 'Tools' }).waitFor();
    next.remove();
  });

  test('that is broken is refused, and the version in use goes on', async () => {
    await firstVisit(phone, served.origin);
    // A file that did not change is taken from the version before; a changed one is missing here.
    const next = await nextBuild((build) =>
      writeFileSync(build.path('manifest.webmanifest'), '{"name":"Pinchbolt, changed"}'),
    );
    rmSync(next.path('manifest.webmanifest'));
    served.serve(next.folder);
    await lookForOne();
    await phone.page.waitForTimeout(1500);
    expect(await phone.page.evaluate(async () => (await navigator.serviceWorker.ready).waiting)).toBeNull();
    await served.stop();
    await phone.page.reload();
    await phone.page.getByRole('heading', { level: 1 }).waitFor();
    served = await serveDist();
    next.remove();
  });
});

describe('what falls due', () => {
  const ROWS = 40;

  /** Waits that ended a moment ago, put beside what the product wrote itself. */
  const putDueRows = (count: number) =>
    phone.page.evaluate(async (rows) => {
      const open = indexedDB.open('pinchbolt');
      const db = await new Promise<IDBDatabase>((done) => {
        open.onsuccess = () => done(open.result);
      });
      const tx = db.transaction('views', 'readwrite');
      for (let at = 0; at < rows; at += 1) {
        tx.objectStore('views').put({
          ...{
            key: `wait/x${at}`,
            is: 'wait',
            waitId: `x${at}`,
            bikeId: 'x',
            waitKind: 'seal',
            title: `Tyre ${at}`,
          },
          ...{
            group: 'wait@x',
            startedAtMs: 0,
            waitMs: 1,
            clockMovedMs: 0,
            lastMs: 0,
            dueAtMs: Date.now() - 1000,
          },
        });
      }
      await new Promise((done) => {
        tx.oncomplete = done;
      });
      db.close();
    }, count);

  /** The way to wake the worker as a phone does now and then. */
  async function alarm(): Promise<() => Promise<void>> {
    const session = await phone.context.newCDPSession(phone.page);
    const registered = new Promise<string>((found) => {
      session.on('ServiceWorker.workerRegistrationUpdated', ({ registrations: [registration] }) => {
        if (registration) found(registration.registrationId);
      });
    });
    await session.send('ServiceWorker.enable');
    const about = { origin: served.origin, registrationId: await registered, tag: 'due' };
    return async () => void (await session.send('ServiceWorker.dispatchPeriodicSyncEvent', about));
  }

  const lookAtPage = () =>
    phone.page.evaluate(() => void document.dispatchEvent(new Event('visibilitychange')));

  test('[R1] page and worker race for the same rows; each is announced once', async () => {
    await phone.context.grantPermissions(['notifications'], { origin: served.origin });
    await firstVisit(phone, served.origin);
    const [worker] = phone.context.serviceWorkers();
    if (!worker) throw new Error('no worker');
    await phone.page.evaluate(() => {
      const seen = globalThis as unknown as { shown: string[] };
      seen.shown = [];
      const show = ServiceWorkerRegistration.prototype.showNotification;
      ServiceWorkerRegistration.prototype.showNotification = function (title, options) {
        seen.shown.push(options?.tag ?? title);
        return show.call(this, title, options);
      };
    });
    await worker.evaluate(() => {
      const seen = globalThis as unknown as {
        shown: string[];
        registration: { showNotification(title: string, options?: { tag?: string }): Promise<void> };
      };
      seen.shown = [];
      const show = seen.registration.showNotification.bind(seen.registration);
      seen.registration.showNotification = (title, options) => {
        seen.shown.push(options?.tag ?? title);
        return show(title, options);
      };
    });
    await putDueRows(ROWS);
    const wake = await alarm();
    await Promise.all([wake(), lookAtPage()]);
    const shownBy = async () => {
      const page = await phone.page.evaluate(() => (globalThis as unknown as { shown: string[] }).shown);
      const inWorker = await worker.evaluate(() => (globalThis as unknown as { shown: string[] }).shown);
      return [...page, ...inWorker];
    };
    await expect.poll(async () => (await shownBy()).length, { timeout: 15_000 }).toBe(ROWS);
    await Promise.all([wake(), lookAtPage()]);
    await phone.page.waitForTimeout(800);
    const shown = await shownBy();
    expect(shown).toHaveLength(ROWS);
    expect(new Set(shown).size).toBe(ROWS);
  });

  test('without leave to show notices the worker claims nothing, and the page says it', async () => {
    await firstVisit(phone, served.origin);
    await putDueRows(2);
    await (await alarm())();
    await phone.page.waitForTimeout(500);
    await lookAtPage();
    await phone.page
      .getByRole('complementary', { name: 'Remarks' })
      .getByText(/\d+ due: /)
      .waitFor();
  });
});
