import { readFileSync } from 'node:fs';
import { createServer } from 'node:http';
import { chromium } from 'playwright-core';
import { findBrowser } from '../browser/findBrowser.mjs';
import { pageScript } from './pageScript.mjs';
import { median, result, say } from './result.mjs';

const ENTRIES = Number(process.env.BENCH_ENTRIES ?? 200_000);
const PHOTOS = Number(process.env.BENCH_PHOTOS ?? 500);
const ROUNDS = 3;
const MOST_MB = 150;
const HEAP_MB = 64;
/** Against the bare library on the same bytes. */
const MOST_RATIO = 1.5;

/** Memory of the processes that run pages, MB; undefined where the system does not tell. */
function residentMb(processIds) {
  try {
    return processIds.reduce((sum, id) => {
      const status = readFileSync(`/proc/${id}/status`, 'utf8');
      return sum + Number(/VmRSS:\s+(\d+)/.exec(status)?.[1]) / 1024;
    }, 0);
  } catch {
    return undefined;
  }
}

/** Keys, digests and streams of the platform are only given to a page of a safe origin. */
async function servePage() {
  const server = createServer((_request, response) => {
    response.setHeader('content-type', 'text/html');
    response.end('<!doctype html><title>bench</title>');
  });
  await new Promise((listening) => server.listen(0, '127.0.0.1', listening));
  return { origin: `http://127.0.0.1:${server.address().port}`, close: () => server.close() };
}

/** The archive of a large logbook written and read, in a browser, against the bare compression library. */
export async function benchExchange() {
  const script = await pageScript('tests/bench/exchange.ts', 'exchange');
  const { path, why } = findBrowser({ install: true });
  if (!path) throw new Error(why);
  const served = await servePage();
  const browser = await chromium.launch({ executablePath: path, headless: true });
  // Memory is asked of a page that has as little of it as on a small phone: what is not needed is cleared away.
  const small = await chromium.launch({
    executablePath: path,
    headless: true,
    args: [`--js-flags=--max-old-space-size=${HEAP_MB}`],
  });
  try {
    const fresh = async (of = browser) => {
      const page = await of.newPage();
      await page.goto(served.origin);
      await page.evaluate(script);
      return page;
    };
    const call = (page, name, ...args) =>
      page.evaluate(([work, of]) => globalThis.exchange[work](...of), [name, args]);

    const what = `${ENTRIES} entries and ${PHOTOS} photos`;
    const [write, check, pack, unpack] = [[], [], [], []];
    for (let round = 0; round < ROUNDS; round += 1) {
      say(`archive of ${what}, round ${round + 1} …`);
      const page = await fresh();
      write.push((await call(page, 'write', ENTRIES, PHOTOS, true)).ms);
      unpack.push((await call(page, 'bareUnpack')).ms);
      const { checkMs, entries, photos } = await call(page, 'read');
      if (entries !== ENTRIES || photos !== PHOTOS)
        throw new Error(`read ${entries} entries, ${photos} photos`);
      check.push(checkMs);
      await page.close();
      const other = await fresh();
      pack.push((await call(other, 'barePack', ENTRIES, PHOTOS)).ms);
      await other.close();
    }
    const sum = (...lists) => lists.reduce((all, list) => all + median(list), 0);
    return [
      result(`archive of ${what}, against the bare library`, sum(write), sum(pack), 'ms', MOST_RATIO),
      result(`reading it with every check, against bare unpacking`, sum(check), sum(unpack), 'ms', null),
      result(
        `archive and restore of ${what}, against the bare library`,
        sum(write, check),
        sum(pack, unpack),
        'ms',
        MOST_RATIO,
      ),
      ...(await memoryOf(small, () => fresh(small), call, what)),
    ];
  } finally {
    await browser.close();
    await small.close();
    served.close();
  }
}

async function memoryOf(browser, fresh, call, what) {
  const session = await browser.newBrowserCDPSession();
  const renderers = async () =>
    (await session.send('SystemInfo.getProcessInfo')).processInfo
      .filter(({ type }) => type === 'renderer')
      .map(({ id }) => id);
  const page = await fresh();
  const processIds = await renderers();
  const out = [];
  for (const [label, work] of [
    ['written', () => call(page, 'write', ENTRIES, PHOTOS, false)],
    ['written locked', () => call(page, 'write', ENTRIES, PHOTOS, true, 'blue spoke key')],
    ['read', () => call(page, 'read', 'blue spoke key')],
  ]) {
    const start = residentMb(processIds);
    if (start === undefined) return [];
    let peak = start;
    const watching = setInterval(() => {
      peak = Math.max(peak, residentMb(processIds) ?? 0);
    }, 20);
    say(`memory of ${what} ${label} …`);
    await work();
    clearInterval(watching);
    out.push(
      result(
        `memory peak over an idle page with a heap of ${HEAP_MB} MB, ${what} ${label}`,
        peak - start,
        MOST_MB,
        'MB',
        1,
      ),
    );
  }
  await page.close();
  return out;
}
