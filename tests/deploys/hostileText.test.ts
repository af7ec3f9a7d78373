import { expect, test } from 'vitest';
import type { Route } from '../../src/screens/route.ts';
import { eachOnItsOwnPhone, phone, served } from '../browser/ownPhone.ts';
import { firstVisit } from '../browser/product.ts';
import { hostileEntries } from '../fixtures/hostileText.ts';
import { archiveOf, content } from '../node/exchange/aCopy.ts';

eachOnItsOwnPhone();

/** Where each screen is walked. A screen that is added and not here does not compile. */
const WALK: { [At in Route['at']]: string[] } = {
  home: ['#/home'],
  'new-bike': ['#/new-bike'],
  bike: ['#/bike/demo-magpie', '#/bike/demo-ferry', '#/bike/b1'],
  bench: ['#/bench/demo-magpie', '#/bench/b1'],
  plan: ['#/plan/demo-magpie', '#/plan/b1'],
  fit: ['#/fit/demo-magpie', '#/fit/b1'],
  shelf: ['#/shelf'],
  'new-part': ['#/new-part/bike:demo-magpie'],
  part: ['#/part/demo-m-frame', '#/part/p1'],
  'edit-part': ['#/edit-part/demo-m-stem', '#/edit-part/p1'],
  'change-part': ['#/change-part/demo-m-fork'],
  'new-wheel': ['#/new-wheel/bike:demo-magpie'],
  wheel: ['#/wheel/wh1'],
  'edit-wheel': ['#/edit-wheel/wh1'],
  'lace-wheel': ['#/lace-wheel/wh1'],
  'read-wheel': ['#/read-wheel/wh1'],
  'new-joint': ['#/new-joint/demo-magpie'],
  joint: ['#/joint/demo-f-j-axle-rear', '#/joint/j1'],
  'edit-joint': ['#/edit-joint/demo-m-j-stem', '#/edit-joint/j1'],
  seal: ['#/seal/demo-m-j-bead-rear', '#/seal/j1'],
  release: ['#/release/demo-ferry', '#/release/b1'],
  ride: ['#/ride/demo-ferry'],
  log: ['#/log/b1', '#/log/b1/torque', '#/log/b1/problem', '#/log/-/part'],
  rechecks: ['#/rechecks/demo-ferry', '#/rechecks/b1'],
  history: ['#/history/b:demo-ferry', '#/history/b:b1', '#/history/p:p1', '#/history/t:t1'],
  sheet: ['#/sheet/demo-ferry', '#/sheet/b1'],
  workings: ['#/workings/demo-m-j-stem', '#/workings/all'],
  tools: ['#/tools'],
  settings: ['#/settings'],
  check: ['#/check'],
};

/** What hostile text became on the screen: elements, handlers, a script that ran, or text. */
const found = () =>
  phone.page.evaluate(() => {
    const handler = (one: Element) => [...one.attributes].some(({ name }) => name.startsWith('on'));
    const all = [...document.querySelectorAll('body *')];
    return {
      made: all.filter((one) => one.matches('img[src="x"], body script:not([src])') || handler(one)).length,
      ran: (globalThis as { ran?: unknown }).ran,
      shown:
        (
          (document.body.textContent ?? '') + all.map((one) => (one as HTMLInputElement).value ?? '').join()
        ).split('<img src=x').length - 1,
    };
  });

test('[K3] hostile text in every field is text on every screen', async () => {
  await firstVisit(phone, served.origin);
  const bytes = Buffer.from(await (await archiveOf(content(hostileEntries(), []))).arrayBuffer());
  await phone.page.goto(`${served.origin}/#/settings`);
  await phone.page
    .getByLabel('Copy to restore')
    .setInputFiles({ name: 'copy.zip', mimeType: 'application/zip', buffer: bytes });
  await phone.page.getByRole('button', { name: 'Add to this logbook' }).click({ timeout: 60_000 });
  await phone.page.getByText(/entries added/).waitFor({ timeout: 60_000 });
  let opened = false;
  phone.page.on('dialog', () => {
    opened = true;
  });
  const shown: Record<string, number> = {};
  for (const [at, addresses] of Object.entries(WALK))
    for (const hash of addresses) {
      await phone.page.evaluate((to) => {
        location.hash = to;
      }, hash);
      await phone.page.getByText('One moment…').waitFor({ state: 'detached' });
      await phone.page.getByRole('heading', { level: 1 }).waitFor();
      await phone.page.waitForTimeout(300);
      // What is folded in is drawn as well.
      await phone.page.evaluate(() => {
        for (const one of document.querySelectorAll('details')) one.open = true;
      });
      const { made, ran, shown: times } = await found();
      expect({ made, ran }, hash).toEqual({ made: 0, ran: undefined });
      shown[at] = (shown[at] ?? 0) + times;
    }
  expect(opened).toBe(false);
  expect(phone.refusals).toEqual([]);
  // Screens that show what was typed really had it; the others hold nothing of the kind.
  const silent = Object.keys(WALK).filter((at) => shown[at] === 0);
  console.log(`hostile text stood on the screens so often: ${JSON.stringify(shown)}`);
  expect(silent.filter((at) => !['new-bike', 'check'].includes(at))).toEqual([]);
});
