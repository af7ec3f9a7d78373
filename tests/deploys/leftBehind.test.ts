import { readdirSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import {
  buildNext,
  cacheNames,
  eachWithItsBuilds,
  goTo,
  heading,
  MAINTENANCE,
  startOffline,
  touch,
  update,
} from '../browser/deploying.ts';
import { phone, served } from '../browser/ownPhone.ts';
import { firstVisit, throwAwayFiles } from '../browser/product.ts';

eachWithItsBuilds();

describe('what an update leaves behind', () => {
  /** Bytes of the worker's caches on the phone's disk. */
  function bytesOnDisk(): number {
    const folder = join(phone.profile, 'Default', 'Service Worker', 'CacheStorage');
    const files = readdirSync(folder, { recursive: true, withFileTypes: true }).filter((file) =>
      file.isFile(),
    );
    return files.reduce((sum, { parentPath, name }) => sum + statSync(join(parentPath, name)).size, 0);
  }

  test('nothing, with the app open all the time', async () => {
    await firstVisit(phone, served.origin);
    const before = bytesOnDisk();
    for (const mark of ['second', 'third']) {
      served.serve((await buildNext(touch('main'), mark)).folder);
      await update();
      await goTo('#/home');
      await phone.page.getByRole('button', { name: 'Use it now' }).click();
      await phone.page.waitForFunction((at) => document.documentElement.dataset['version'] === at, mark);
      await heading('Workshop');
    }
    await expect.poll(cacheNames, { timeout: 10_000 }).toHaveLength(1);
    // What was thrown away leaves the disk when the browser ends the worker that had it open, after half a minute at most.
    await expect.poll(bytesOnDisk, { timeout: 70_000 }).toBeLessThan(before * 1.2);
  });

  test('nothing, when it is refused', async () => {
    await firstVisit(phone, served.origin);
    const before = bytesOnDisk();
    for (const mark of ['second', 'third']) {
      served.serve((await buildNext(touch('main'), mark)).folder);
      served.answer((path) => (path === '/' || path === '/index.html' ? { status: 500 } : undefined));
      expect(await update()).toBe(false);
      expect(await cacheNames()).toHaveLength(1);
    }
    await expect.poll(bytesOnDisk, { timeout: 30_000 }).toBeLessThan(before * 1.2);
  });
});

describe('a cache that was thrown away', () => {
  test('is filled again at the next start with a network', async () => {
    await firstVisit(phone, served.origin);
    await throwAwayFiles(phone);
    await phone.page.goto(`${served.origin}/#/home`);
    await heading('Workshop');
    const files = () =>
      phone.page.evaluate(async () => {
        const [name] = await caches.keys();
        return name === undefined ? 0 : (await (await caches.open(name)).keys()).length;
      });
    const whole = readdirSync('dist/assets').length;
    await expect.poll(files, { timeout: 10_000 }).toBeGreaterThan(whole);
    await startOffline('#/tools');
    await heading('Tools');
  });

  test('without a network leads to the page that saves the logbook', async () => {
    await firstVisit(phone, served.origin);
    await throwAwayFiles(phone);
    await served.stop();
    await phone.page.goto(`${served.origin}/#/home`);
    await heading('Save your logbook');
  });

  test('beside a server that has nothing right either leads there too', async () => {
    await firstVisit(phone, served.origin);
    await throwAwayFiles(phone);
    served.answer((path) => (path === '/sw.js' ? undefined : { status: 503, body: MAINTENANCE }));
    await phone.page.goto(`${served.origin}/#/home`);
    await heading('Save your logbook');
  });
});

describe('a server set up in its own way', () => {
  test('that sends /index.html on to /: the app starts offline', async () => {
    served.answer((path) =>
      path === '/index.html' ? { status: 301, headers: { location: '/' } } : undefined,
    );
    await firstVisit(phone, served.origin);
    await startOffline();
    await heading('Workshop');
  });

  test('that sends / on to /index.html: the app starts offline', async () => {
    served.answer((path) =>
      path === '/' ? { status: 302, headers: { location: '/index.html' } } : undefined,
    );
    await firstVisit(phone, served.origin);
    await startOffline();
    await heading('Workshop');
  });
});
