import { describe, expect, test } from 'vitest';
import {
  buildNext,
  cacheNames,
  eachWithItsBuilds,
  heading,
  scriptOf,
  startOffline,
  touch,
  update,
  versionOfPage,
  WRONG,
} from './deploying.ts';
import { phone, served } from './ownPhone.ts';
import { firstVisit, serveDist } from './product.ts';

eachWithItsBuilds();

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
});

test('only what changed is fetched by an update', async () => {
  await firstVisit(phone, served.origin);
  served.serve((await buildNext(touch('Tools'))).folder);
  const before = served.hits.length;
  expect(await update()).toBe(true);
  expect(served.hits.slice(before).sort()).toEqual(['/', `/${scriptOf('Tools')}`, '/sw.js']);
});

test('[N1] a server that sends a file on to another origin: refused, and nothing is asked there', async () => {
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
