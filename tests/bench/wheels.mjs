import { chromium } from 'playwright-core';
import { findBrowser } from '../browser/findBrowser.mjs';
import { pageScript } from './pageScript.mjs';
import { median, result, say } from './result.mjs';

const SLOWER = 4;
const ROUNDS = 15;
/** Within a blink: aimed at, and not reached yet. */
const MOST_MS = 50;
/** So many times that is a step back. */
const STEP_BACK = 5;

/** What to turn next for 36 spokes, on a phone's processor. */
export async function benchWheels() {
  const script = await pageScript('tests/bench/wheels.ts', 'wheels');
  const { path, why } = findBrowser({ install: true });
  if (!path) throw new Error(why);
  const browser = await chromium.launch({ executablePath: path, headless: true });
  try {
    say('what to turn next …');
    const page = await browser.newPage();
    await page.evaluate(script);
    const session = await page.context().newCDPSession(page);
    await session.send('Emulation.setCPUThrottlingRate', { rate: SLOWER });
    const spent = await page.evaluate((rounds) => globalThis.wheels.turnsMs(rounds), ROUNDS);
    return [
      result(
        `what to turn next of 36 spokes, ${SLOWER}x slower CPU, median against ${MOST_MS} ms`,
        median(spent),
        MOST_MS,
        'ms',
        STEP_BACK,
      ),
    ];
  } finally {
    await browser.close();
  }
}
