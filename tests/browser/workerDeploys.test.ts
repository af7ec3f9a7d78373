import { readdirSync, readFileSync, statSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { type Build, nextBuild } from './builds.ts';
import {
  type Answer,
  firstVisit,
  openPhone,
  type Phone,
  type Served,
  serveDist,
  throwAwayFiles,
} from './product.ts';

let served: Served;
let phone: Phone;
const builds: Build[] = [];

beforeEach(async () => {
  served = await serveDist();
  phone = await openPhone(served.origin);
});

afterEach(async () => {
  await phone.close();
  await served.stop();
  for (const build of builds.splice(0)) build.remove();
});

async function buildNext(...wanted: Parameters<typeof nextBuild>): Promise<Build> {
  const build = await nextBuild(...wanted);
  builds.push(build);
  return build;
}

/** Gives one script of a build other bytes, as a real change would. */
const touch = (name: string) => (build: Build) => {
  const path = build.path(scriptOf(name, build.folder));
  writeFileSync(path, `${readFileSync(path, 'utf8')}\n// changed`);
};

function scriptOf(name: string, folder = 'dist'): string {
  const found = readdirSync(join(folder, 'assets')).find((file) => file.startsWith(`${name}-`));
  if (!found) throw new Error(`no script is called ${name}`);
  return `assets/${found}`;
}

/** Asks for an update and waits until the browser has dealt with it. */
const update = () =>
  phone.page.evaluate(async () => {
    const registration = await navigator.serviceWorker.ready;
    await registration.update().catch(() => {});
    const { installing } = registration;
    if (installing)
      await new Promise<void>((done) =>
        installing.addEventListener('statechange', () => installing.state !== 'installing' && done()),
      );
    return registration.waiting !== null;
  });

const cacheNames = () => phone.page.evaluate(() => caches.keys());
const versionOfPage = () => phone.page.evaluate(() => document.documentElement.dataset['version']);
const heading = (name: string) => phone.page.getByRole('heading', { level: 1, name }).waitFor();

async function goTo(hash: string): Promise<void> {
  await phone.page.evaluate((to) => {
    location.hash = to;
  }, hash);
}

/** Closes the page and opens the app again, with no server to ask. */
async function startOffline(hash = '#/home'): Promise<void> {
  await phone.context.setOffline(true);
  await phone.page.goto('about:blank');
  await phone.page.goto(`${served.origin}/${hash}`);
}

const MAINTENANCE = '<!doctype html><title>Back soon</title><h1>Back soon</h1>';
const WRONG: [string, Answer][] = [
  ['an HTML page', { body: MAINTENANCE }],
  [
    'an HTML page that says it is a script',
    { body: MAINTENANCE, headers: { 'content-type': 'text/javascript' } },
  ],
  ['an empty file', { headers: { 'content-type': 'text/javascript' } }],
  ['a script of another build', { body: 'let other;', headers: { 'content-type': 'text/javascript' } }],
];

describe('a half-finished deploy', () => {
  test('something else in place of one script: the version in use goes on', async () => {
    await firstVisit(phone, served.origin);
    const script = scriptOf('Tools');
    const next = await buildNext(touch('Tools'));
    served.serve(next.folder);
    for (const [what, wrong] of WRONG) {
      served.answer((path) => (path === `/${script}` ? wrong : undefined));
      expect(await update(), what).toBe(false);
      expect(await cacheNames(), what).toHaveLength(1);
    }
    await startOffline('#/tools');
    await heading('Tools');
    expect(await versionOfPage()).toBeUndefined();
  });

  test('a maintenance page for everything but the worker: refused, and taken up when the server is whole', async () => {
    await firstVisit(phone, served.origin);
    const next = await buildNext();
    served.serve(next.folder);
    served.answer((path) => (path === '/sw.js' ? undefined : { body: MAINTENANCE }));
    expect(await update()).toBe(false);
    expect(await cacheNames()).toHaveLength(1);
    await phone.page.reload();
    await heading('Workshop');
    served.answer(() => undefined);
    expect(await update()).toBe(true);
  });

  test('a maintenance page for everything: nothing changes, also at the next start', async () => {
    await firstVisit(phone, served.origin);
    served.answer(() => ({ body: MAINTENANCE }));
    await update();
    await phone.page.goto(`${served.origin}/#/settings`);
    await heading('Settings');
    await startOffline();
    await heading('Workshop');
  });

  test('the new page with scripts of the old build: refused', async () => {
    await firstVisit(phone, served.origin);
    const next = await buildNext(touch('SettingsPage'));
    writeFileSync(next.path(scriptOf('SettingsPage')), readFileSync(join('dist', scriptOf('SettingsPage'))));
    served.serve(next.folder);
    expect(await update()).toBe(false);
    await startOffline('#/settings');
    await heading('Settings');
  });

  test('a first visit that meets it says what to do, and works when the server is whole', async () => {
    const script = scriptOf('main');
    const pages = [];
    for (const [, wrong] of WRONG) {
      served.answer((path) => (path === `/${script}` ? wrong : undefined));
      const page = await phone.context.newPage();
      await page.goto(`${served.origin}/`);
      pages.push(page);
    }
    for (const page of pages) {
      await page.getByRole('link', { name: 'Save the logbook' }).waitFor({ timeout: 15_000 });
      await page.close();
    }
    served.answer(() => undefined);
    await firstVisit(phone, served.origin);
    await startOffline();
    await heading('Workshop');
  });
});

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

  test('only what changed is fetched', async () => {
    await firstVisit(phone, served.origin);
    served.serve((await buildNext(touch('Tools'))).folder);
    const before = served.hits.length;
    expect(await update()).toBe(true);
    expect(served.hits.slice(before).sort()).toEqual(['/', `/${scriptOf('Tools')}`, '/sw.js']);
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

  test('[N1] that sends a file on to another origin: refused, and nothing is asked there', async () => {
    await firstVisit(phone, served.origin);
    served.serve((await buildNext()).folder);
    const elsewhere = await serveDist();
    const location = `${elsewhere.origin}/`;
    const isPage = (path: string) => path === '/' || path === '/index.html';
    served.answer((path) => (isPage(path) ? { status: 302, headers: { location } } : undefined));
    expect(await update()).toBe(false);
    expect(elsewhere.hits).toEqual([]);
    await elsewhere.stop();
  });
});

test('a store that is held back holds up no request', async () => {
  await phone.context.grantPermissions(['notifications'], { origin: served.origin });
  await phone.page.goto(`${served.origin}/icons/icon-32.png`);
  const answered = await phone.page.evaluate(async () => {
    // A change of the store's version that never ends.
    const open = indexedDB.open('pinchbolt', 1);
    await new Promise<void>((begun) => {
      open.onupgradeneeded = () => {
        const store = open.result.createObjectStore('busy');
        const again = () => {
          store.count().onsuccess = again;
        };
        again();
        begun();
      };
    });
    const registration = await navigator.serviceWorker.register('/sw.js');
    await new Promise((taken) => navigator.serviceWorker.addEventListener('controllerchange', taken));
    const late = new Promise<string>((done) => setTimeout(done, 5000, 'held up'));
    const asked = fetch('/manifest.webmanifest').then(
      (answer) => `${registration.active?.state} ${answer.status}`,
    );
    return Promise.race([asked, late]);
  });
  expect(answered).toBe('activated 200');
});
