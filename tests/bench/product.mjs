import { execFileSync } from 'node:child_process';
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { brotliCompressSync } from 'node:zlib';
import { createServer } from 'vite';
import { findBrowser } from '../browser/findBrowser.mjs';
import { firstScripts } from '../browser/firstScripts.mjs';
import { pageScript } from './pageScript.mjs';
import { benchReading } from './reading.mjs';
import { median, p95, result, say } from './result.mjs';

const BIKES = Number(process.env.BENCH_BIKES ?? 200);
const ENTRIES_EACH = 950;
const BIG = 10_000;

/** The built product, in a store filled as years would fill it, against floors taken in the same run. */
export async function benchProduct() {
  execFileSync(process.execPath, ['node_modules/vite/bin/vite.js', 'build', '--logLevel', 'error'], {
    stdio: ['ignore', 'ignore', 'inherit'],
    env: { ...process.env, NODE_ENV: 'production' },
  });
  const seedScript = await pageScript('tests/bench/seed.ts', 'seed');

  // The product's own test server, so that bench and tests meet the same files in the same way.
  const vite = await createServer({
    configFile: false,
    server: { middlewareMode: true, hmr: false, ws: false },
    appType: 'custom',
    logLevel: 'error',
  });
  const { serveDist, openPhone, firstVisit } = await vite.ssrLoadModule('/tests/browser/product.ts');
  const browser = findBrowser({ install: true });
  if (!browser.path) throw new Error(browser.why);
  const served = await serveDist();
  const phone = await openPhone(served.origin);
  const { page } = phone;
  const out = [];
  try {
    await firstVisit(phone, served.origin);
    // The page's own policy forbids foreign scripts; the seeder comes in from the outside of the page.
    await page.evaluate(seedScript);
    const sizes = Object.fromEntries(Array.from({ length: BIKES }, (_, at) => [`b${at}`, ENTRIES_EACH]));
    say(`filling ${BIKES} bikes …`);
    await page.evaluate((names) => globalThis.seed.fill('pinchbolt', names), sizes);
    const lines = await page.evaluate((names) => globalThis.seed.fill('pinchbolt', names), {
      big: BIG,
      small: 100,
    });
    say(`${lines} entries in the store`);

    await page.evaluate(() => {
      location.hash = '#/tools';
    });
    await page.evaluate(() => globalThis.seed.taps('pinchbolt', 'b1', 20));
    const { tapMs, putMs, bytes } = await page.evaluate(() => globalThis.seed.taps('pinchbolt', 'b2', 240));
    out.push(
      result(
        `tap to committed entry, median (${bytes} bytes, ${lines} entries)`,
        median(tapMs),
        median(putMs),
        'ms',
        1.5,
      ),
    );
    out.push(result('tap to committed entry, p95', p95(tapMs), p95(putMs), 'ms', 1.5));

    // An empty page, put into the worker's own cache under a path that it ships, so that the same worker serves it.
    await page.evaluate(async () => {
      const [name] = await caches.keys();
      const cache = await caches.open(name);
      const html =
        '<!doctype html><html lang="en"><title>Empty</title><body><p data-empty>empty</p></body></html>';
      await cache.put(
        '/manifest.webmanifest',
        new Response(html, { headers: { 'content-type': 'text/html' } }),
      );
    });
    await phone.context.setOffline(true);
    // The page is watched from within and says when it has been painted; a question of the tool's own, asked
    // meanwhile, would be answered on the thread that is measured.
    const watch = (selector) => `new MutationObserver((_, watch) => {
      if (!document.querySelector(${JSON.stringify(selector)})) return;
      watch.disconnect();
      requestAnimationFrame(() => {
        const { port1, port2 } = new MessageChannel();
        port1.onmessage = () => console.log('painted ' + performance.now());
        port2.postMessage(0);
      });
    }).observe(document, { subtree: true, childList: true, attributes: true, attributeFilter: ['disabled'] });`;
    const start = async (address, selector) => {
      const fresh = await phone.context.newPage();
      const session = await phone.context.newCDPSession(fresh);
      await session.send('Emulation.setCPUThrottlingRate', { rate: 4 });
      await fresh.addInitScript(watch(selector));
      const painted = fresh.waitForEvent('console', (message) => message.text().startsWith('painted '));
      await fresh.goto(`${served.origin}${address}`, { waitUntil: 'commit' });
      const ms = Number((await painted).text().slice('painted '.length));
      await fresh.close();
      return ms;
    };
    const starts = [];
    const empties = [];
    for (let at = 0; at < 14; at += 1) {
      const empty = await start('/manifest.webmanifest', '[data-empty]');
      const app = await start('/#/bench/b3', '.acts .button:not(:disabled)');
      if (at < 2) continue;
      empties.push(empty);
      starts.push(app);
    }
    out.push(
      result(
        'start from the worker to the current step, 4x slower CPU, median',
        median(starts),
        median(empties),
        'ms',
        2.5,
      ),
    );

    const opens = { big: [], small: [] };
    await page.goto(`${served.origin}/#/home`);
    for (let at = 0; at < 24; at += 1) {
      for (const bikeId of ['big', 'small']) {
        await page.evaluate(() => {
          location.hash = '#/shelf';
        });
        await page.waitForFunction(() => document.title.startsWith('Shelf'));
        const ms = await page.evaluate(
          (id) =>
            new Promise((done) => {
              const from = performance.now();
              location.hash = `#/bike/${id}`;
              const look = () =>
                document.title.startsWith(`Bike ${id}`)
                  ? requestAnimationFrame(() => done(performance.now() - from))
                  : setTimeout(look, 0);
              look();
            }),
          bikeId,
        );
        if (at >= 4) opens[bikeId].push(ms);
      }
    }
    out.push(
      result(
        `open a bike with ${BIG} entries against one with 100, median`,
        median(opens.big),
        median(opens.small),
        'ms',
        1.5,
      ),
    );
    out.push(...(await benchReading(page, 'big', BIG)));
  } finally {
    await phone.close();
    await served.stop();
    await vite.close();
  }

  const brotli = (path) => brotliCompressSync(readFileSync(path)).length;
  const firstBytes = firstScripts().reduce((sum, path) => sum + brotli(path), 0);
  out.push(result('first-load JavaScript, brotli', firstBytes, 30_000, 'bytes', 1));
  out.push(result('service worker, brotli', brotli('dist/sw.js'), 8000, 'bytes', 1));
  const all = readdirSync('dist/assets').filter((name) => name.endsWith('.js'));
  out.push(
    result(
      'all JavaScript, brotli',
      all.reduce((sum, name) => sum + brotli(join('dist/assets', name)), 0),
      30_000,
      'bytes',
      null,
    ),
  );
  return out;
}
