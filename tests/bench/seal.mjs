import { chromium } from 'playwright-core';
import { findBrowser } from '../browser/findBrowser.mjs';
import { pageScript } from './pageScript.mjs';
import { median, result, say } from './result.mjs';

const SLOWER = 4;
const READINGS = 200;
/** So that a screen drawn anew after a tap does not stutter. */
const MOST_MS = 20;
const ROUNDS = 15;

/** What the screen of a seal works out from many readings, on a phone's processor. */
export async function benchSeal() {
  const script = await pageScript('tests/bench/seal.ts', 'seal');
  const { path, why } = findBrowser({ install: true });
  if (!path) throw new Error(why);
  const browser = await chromium.launch({ executablePath: path, headless: true });
  try {
    const page = await browser.newPage();
    await page.evaluate(script);
    const session = await page.context().newCDPSession(page);
    await session.send('Emulation.setCPUThrottlingRate', { rate: SLOWER });
    say(`seal of ${READINGS} readings …`);
    const spent = await page.evaluate(
      ([count, rounds]) => globalThis.seal.outlookMs(count, rounds),
      [READINGS, ROUNDS],
    );
    const name = `seal of ${READINGS} readings, ${SLOWER}x slower CPU, median against ${MOST_MS} ms`;
    return [result(name, median(spent), MOST_MS, 'ms', 1)];
  } finally {
    await browser.close();
  }
}
