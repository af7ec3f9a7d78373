import { chromium } from 'playwright-core';
import { findBrowser } from '../browser/findBrowser.mjs';
import { pageScript } from './pageScript.mjs';
import { p95, result, say } from './result.mjs';

const SLOWER = 4;
const DAYS = 1000;
const TIMED = 200;
const WORKS = 60;
/** What may go by unnoticed between a tap and its answer. */
const MOST_MS = 50;

/** The day's order of work on a phone's processor: how near the bound, and how soon. */
export async function benchDay() {
  const script = await pageScript('tests/bench/day.ts', 'day');
  const { path, why } = findBrowser({ install: true });
  if (!path) throw new Error(why);
  const browser = await chromium.launch({ executablePath: path, headless: true });
  try {
    const page = await browser.newPage();
    await page.evaluate(script);
    const measure = (work, ...args) =>
      page.evaluate(([name, of]) => globalThis.day[name](...of), [work, args]);
    say(`the order of ${DAYS} days …`);
    const { over } = await measure('days', DAYS, WORKS);
    const mean = over.reduce((sum, one) => sum + one, 0) / over.length;
    const session = await page.context().newCDPSession(page);
    await session.send('Emulation.setCPUThrottlingRate', { rate: SLOWER });
    const { ms } = await measure('days', TIMED, WORKS);
    const floor = await measure('floorMs', TIMED, WORKS);
    const name = `the order of ${WORKS} steps, ${SLOWER}x slower CPU, 95 % of ${TIMED} days`;
    return [
      result(`when ${DAYS} days of ${WORKS} steps are ready, mean, against the bound`, 1 + mean, 1, '', 1.02),
      result(`${name}, against ${MOST_MS} ms`, p95(ms), MOST_MS, 'ms', 1),
      result(`${name}, against laying each out 2,500 times`, p95(ms), p95(floor), 'ms', 5),
    ];
  } finally {
    await browser.close();
  }
}
