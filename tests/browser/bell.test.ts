import { expect, test } from 'vitest';
import { firstVisit, openPhone, serveDist } from './product.ts';

/** Keeps every AudioContext of the page where the test can see it. */
function watchSound() {
  const made: AudioContext[] = [];
  const Plain = globalThis.AudioContext;
  class Watched extends Plain {
    constructor() {
      super();
      made.push(this);
    }
  }
  Object.assign(globalThis, { AudioContext: Watched, soundMade: made });
}

const states = () =>
  (globalThis as { soundMade?: AudioContext[] }).soundMade?.map(({ state }) => state) ?? [];

test('[R1] the bell may sound after one raw touch, and again after the phone took the sound away', async () => {
  const served = await serveDist();
  const phone = await openPhone(served.origin);
  try {
    const { page } = phone;
    await page.addInitScript(watchSound);
    await firstVisit(phone, served.origin);
    const session = await page.context().newCDPSession(page);
    const touch = async (type: 'touchStart' | 'touchEnd') =>
      session.send('Input.dispatchTouchEvent', {
        type,
        touchPoints: type === 'touchStart' ? [{ x: 4, y: 300 }] : [],
      });
    expect(await page.evaluate(states)).toEqual([]);
    await touch('touchStart');
    await touch('touchEnd');
    await page.waitForFunction(
      () => (globalThis as { soundMade?: AudioContext[] }).soundMade?.[0]?.state === 'running',
      undefined,
      { timeout: 5000 },
    );
    await page.evaluate(() => (globalThis as { soundMade?: AudioContext[] }).soundMade?.[0]?.suspend());
    expect(await page.evaluate(states)).toEqual(['suspended']);
    await touch('touchStart');
    await touch('touchEnd');
    await page.waitForFunction(
      () => (globalThis as { soundMade?: AudioContext[] }).soundMade?.[0]?.state === 'running',
      undefined,
      { timeout: 5000 },
    );
    // Still the one context: a new one for each touch would sooner or later be refused.
    expect(await page.evaluate(states)).toEqual(['running']);
  } finally {
    await phone.close();
    await served.stop();
  }
});
