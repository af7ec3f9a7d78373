import { chromium } from 'playwright-core';
import { findBrowser } from '../browser/findBrowser.mjs';
import { pageScript } from './pageScript.mjs';
import { median, result, say } from './result.mjs';

const ROUNDS = 25;
/** Against the bare transform of as many samples. */
const MOST_RATIO = 3;

/** The pitch of a plucked spoke from one look, against the bare transform of 4096 samples, in the browser. */
export async function benchEar() {
  const script = await pageScript('tests/bench/ear.ts', 'ear');
  const { path, why } = findBrowser({ install: true });
  if (!path) throw new Error(why);
  const browser = await chromium.launch({ executablePath: path, headless: true });
  try {
    const out = [];
    for (const [what, lengthMm, newtons] of [
      ['a 184 mm spoke', 184, 1000],
      ['its outer piece, 121 mm', 121, 1000],
      ['a 290 mm spoke', 290, 1000],
    ]) {
      say(`pitch of ${what} …`);
      const page = await browser.newPage();
      await page.evaluate(script);
      const { pitchUs, fftUs } = await page.evaluate(
        ([mm, tension, rounds]) => globalThis.ear.pitchAgainstFft(mm, tension, rounds),
        [lengthMm, newtons, ROUNDS],
      );
      await page.close();
      out.push(
        result(
          `pitch of ${what} in 85 ms of sound, median against the bare FFT of 4096 samples (fft.js)`,
          median(pitchUs),
          median(fftUs),
          'µs',
          MOST_RATIO,
        ),
      );
    }
    return out;
  } finally {
    await browser.close();
  }
}
