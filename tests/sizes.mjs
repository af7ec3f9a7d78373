import { execFileSync } from 'node:child_process';
import { createServer } from 'vite';
import { SCREENS } from './browser/addresses.mjs';
import { hiddenFocus, troubles } from './browser/troubles.mjs';

/** Phones upright and lying down, a tablet and a desk, CSS px. */
const SIZES = [
  [320, 568],
  [344, 882],
  [360, 640],
  [390, 664],
  [390, 844],
  [667, 375],
  [740, 360],
  [844, 390],
  [768, 1024],
  [1280, 800],
];
/** The phone's own size of text, percent of the usual one. */
const TEXTS = [100, 130, 200];

/** Sheets and pads: where they are, and what is pressed on the way, one after the other. */
const OPENED = {
  'zone of the bike': ['#/bike/demo-magpie', /^Cranks/],
  'zone of the fit check': ['#/fit/demo-magpie', /^Saddle/],
  'note of a bike': ['#/bike/demo-magpie', /^Note or photo/],
  'torque of a joint': ['#/joint/demo-f-j-axle-rear', /torque/i],
  pressure: ['#/seal/demo-m-j-bead-rear', /^Pressure/],
  sealant: ['#/seal/demo-m-j-bead-rear', /^Sealant/],
  'a step of the plan': ['#/plan/demo-magpie', /^Change/],
  'another step': ['#/plan/demo-magpie', /^Add a step/],
  'an entry of the history': ['#/history/b:demo-ferry', /Part moved/],
  'sign page': ['#/release/demo-ferry', /^Statement/],
  'group of the pre-ride check': ['#/release/demo-ferry', /^Front wheel/],
  'report a problem': ['#/release/demo-ferry', /^Report a problem/],
  're-check': ['#/rechecks/demo-ferry', /^Check \d now/],
  'a torque at the bench': ['#/bench/demo-magpie', 'torque'],
  'note at the bench': ['#/bench/demo-magpie', /^Note/],
};

const only = process.argv[2] ? new RegExp(process.argv[2]) : /./;
execFileSync(process.execPath, ['node_modules/vite/bin/vite.js', 'build', '--logLevel', 'error'], {
  stdio: ['ignore', 'ignore', 'inherit'],
  env: { ...process.env, NODE_ENV: 'production' },
});
const vite = await createServer({
  configFile: false,
  server: { middlewareMode: true, hmr: false, ws: false },
  appType: 'custom',
  logLevel: 'error',
});
const { serveDist, openPhone, firstVisit } = await vite.ssrLoadModule('/tests/browser/product.ts');
const served = await serveDist();
const phone = await openPhone(served.origin);
const { page } = phone;
const session = await page.context().newCDPSession(page);
/** What is wrong → where. */
const wrong = new Map();
let looks = 0;

async function goTo(hash) {
  await page.evaluate((to) => {
    for (const open of document.querySelectorAll('dialog[open]'))
      open.dispatchEvent(new Event('cancel', { cancelable: true }));
    location.hash = '#/tools';
    location.hash = to;
  }, hash);
  await page.getByText('One moment…').waitFor({ state: 'detached' });
  await page.getByRole('heading', { level: 1 }).waitFor();
  await page.waitForTimeout(250);
}

/** As the phone's setting does it: layouts that ask in em change along. */
async function textAt(percent) {
  const size = Math.round((16 * percent) / 100);
  await session.send('Page.setFontSizes', { fontSizes: { standard: size, fixed: size } });
}

async function look(name) {
  for (const text of TEXTS) {
    await textAt(text);
    for (const [width, height] of SIZES) {
      await page.setViewportSize({ width, height });
      await page.evaluate(() => {
        scrollTo(0, 0);
        return new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(done)));
      });
      const found = await page.evaluate(troubles);
      if (text === 100 && (width === 320 || height === 390))
        found.push(...(await page.evaluate(hiddenFocus)));
      looks += 1;
      for (const one of found) {
        const key = `${name}: ${one}`;
        wrong.set(key, [
          ...(wrong.get(key) ?? []),
          `${width}×${height}${text === 100 ? '' : ` at ${text} %`}`,
        ]);
      }
    }
  }
  await textAt(100);
}

/** Step by step to the first one with bolts to count. */
async function toTorque() {
  const count = page.getByRole('button', { name: /Bolt tight/ });
  for (let at = 0; at < 40 && !(await count.isVisible()); at += 1)
    await page.getByRole('button', { name: 'Next', exact: true }).click({ timeout: 5000 });
}

await page.setViewportSize({ width: 390, height: 844 });
await firstVisit(phone, served.origin);
if (only.test('first day')) await look('first day');
await page.getByRole('button', { name: /Look at the demo/ }).click();
await page.getByText('Magpie (demo)').waitFor({ timeout: 110_000 });
await page.getByText(/Loading the demo/).waitFor({ state: 'detached', timeout: 110_000 });
for (const [name, hash] of Object.entries(SCREENS)) {
  if (!only.test(name)) continue;
  await page.setViewportSize({ width: 390, height: 844 });
  await goTo(hash);
  await look(name);
}
for (const [name, [hash, press]] of Object.entries(OPENED)) {
  if (!only.test(name)) continue;
  await page.setViewportSize({ width: 390, height: 844 });
  await goTo(hash);
  try {
    if (press === 'torque') await toTorque();
    else await page.getByRole('button', { name: press }).first().click({ timeout: 5000 });
    await page.waitForTimeout(250);
  } catch {
    wrong.set(`${name}: nothing to press`, [hash]);
    continue;
  }
  await look(name);
}
await phone.close();
await served.stop();
await vite.close();
for (const [what, where] of wrong)
  console.log(
    `${what}\n    ${where.length} of ${SIZES.length * TEXTS.length}: ${where.slice(0, 6).join(', ')}`,
  );
console.log(`${looks} looks, ${wrong.size} wrong`);
process.exitCode = wrong.size === 0 ? 0 : 1;
