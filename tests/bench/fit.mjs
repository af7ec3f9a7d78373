import { chromium } from 'playwright-core';
import { findBrowser } from '../browser/findBrowser.mjs';
import { pageScript } from './pageScript.mjs';
import { median, result, say } from './result.mjs';

const SLOWER = 4;
const SIZES = [15, 30, 60, 120];
const ASKED = 60;
/** What a person waits for without wondering. */
const MOST_MS = 1000;
/** Up to here trying every choice of parts ends within seconds; every part more doubles it. */
const SETS_MOST = 10;
/** Twice the parts may take four times as long, no more: every part is held against every other. */
const GROWTH_MOST = (120 / 15) ** 2;
const ROUNDS = 9;

/** The fit check and the search for complete sets, on a phone's processor, against trying everything. */
export async function benchFit() {
  const script = await pageScript('tests/bench/fit.ts', 'fit');
  const { path, why } = findBrowser({ install: true });
  if (!path) throw new Error(why);
  const browser = await chromium.launch({ executablePath: path, headless: true });
  const slow = `${SLOWER}x slower CPU`;
  try {
    /** A fresh page, slowed down, so that nothing is warm from the measurement before. */
    const measure = async (work, ...args) => {
      const page = await browser.newPage();
      await page.evaluate(script);
      const session = await page.context().newCDPSession(page);
      await session.send('Emulation.setCPUThrottlingRate', { rate: SLOWER });
      const answer = await page.evaluate(([name, of]) => globalThis.fit[name](...of), [work, args]);
      await page.close();
      return answer;
    };
    const out = [];
    for (const [label, work] of [
      ['fit check of a pile', 'checkMs'],
      ['complete sets from a shelf', 'setsMs'],
    ]) {
      const ms = {};
      for (const count of SIZES) {
        say(`${label}, ${count} parts …`);
        ms[count] = median(await measure(work, count, ROUNDS));
        const bridged = count === ASKED && work === 'checkMs' ? await measure('bridgedCount', count) : null;
        const told = bridged === null ? '' : `, ${bridged} joints bridged`;
        const limit = count === ASKED ? 1 : null;
        out.push(
          result(
            `${label} of ${count} parts${told}, ${slow}, median against ${MOST_MS} ms`,
            ms[count],
            MOST_MS,
            'ms',
            limit,
          ),
        );
      }
      out.push(
        result(`${label}: 120 parts against 15, at most quadratic`, ms[120], ms[15], 'ms', GROWTH_MOST),
      );
    }
    const firsts = [];
    for (let at = 0; at < 5; at += 1) firsts.push(await measure('firstSetsMs', ASKED));
    out.push(
      result(
        `complete sets of ${ASKED} parts, first run of a page, ${slow}, median against ${MOST_MS} ms`,
        median(firsts),
        MOST_MS,
        'ms',
        1,
      ),
    );
    say('trying every row of adapters …');
    const rows = await measure('checkAgainstEveryRow', ASKED, ROUNDS);
    out.push(
      result(
        `fit check of ${ASKED} parts against trying every row of up to three adapters at every joint`,
        median(rows.searchMs),
        rows.bruteMs,
        'ms',
        1,
      ),
    );
    say('trying every choice of parts …');
    const sets = await measure('setsAgainstEverySet', SETS_MOST, ROUNDS);
    out.push(
      result(
        `complete sets from ${SETS_MOST} parts against trying every choice (each part more doubles that)`,
        median(sets.searchMs),
        sets.bruteMs,
        'ms',
        1,
      ),
    );
    return out;
  } finally {
    await browser.close();
  }
}
