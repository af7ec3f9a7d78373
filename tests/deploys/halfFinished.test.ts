import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import {
  buildNext,
  cacheNames,
  eachWithItsBuilds,
  heading,
  MAINTENANCE,
  scriptOf,
  startOffline,
  touch,
  update,
  WRONG,
} from '../browser/deploying.ts';
import { phone, served } from '../browser/ownPhone.ts';
import { firstVisit } from '../browser/product.ts';

eachWithItsBuilds();

describe('a half-finished deploy', () => {
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
