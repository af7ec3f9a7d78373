import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { SCREENS } from './addresses.mjs';
import { firstVisit, openPhone, type Phone, type Served, serveDist } from './product.ts';

const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');

let served: Served;
let phone: Phone;
let page: Page;

beforeAll(async () => {
  served = await serveDist();
  phone = await openPhone(served.origin);
  page = phone.page;
  await firstVisit(phone, served.origin);
  await page.getByRole('button', { name: /Look at the demo/ }).click();
  await page.getByText('Magpie (demo)').waitFor({ timeout: 110_000 });
  await page.getByText(/Loading the demo/).waitFor({ state: 'detached', timeout: 110_000 });
});

afterAll(async () => {
  expect(phone.strays, '[N1] no request leaves the origin').toEqual([]);
  await phone.close();
  await served.stop();
});

async function goTo(hash: string): Promise<void> {
  await page.evaluate((to) => {
    location.hash = to;
  }, hash);
  await page.getByText('One moment…').waitFor({ state: 'detached' });
  await page.getByRole('heading', { level: 1 }).waitFor();
  // Data is read after the frame is drawn.
  await page.waitForTimeout(250);
}

async function axeFinds(): Promise<string[]> {
  if (!(await page.evaluate(() => 'axe' in globalThis))) await page.evaluate(axe);
  return page.evaluate(async () => {
    const { axe: engine } = globalThis as unknown as {
      axe: { run(options: object): Promise<{ violations: { id: string; nodes: { target: string[] }[] }[] }> };
    };
    const tags = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];
    // What lies half under the foot of a screen can be scrolled up; target sizes are measured below, whole.
    const rules = { 'target-size': { enabled: false } };
    const { violations } = await engine.run({ runOnly: { type: 'tag', values: tags }, rules });
    return violations.map(
      ({ id, nodes }) => `${id}: ${nodes.map(({ target }) => target.join(' ')).join(', ')}`,
    );
  });
}

const overflow = () => page.evaluate(() => document.documentElement.scrollWidth - innerWidth);

describe.each(['light', 'dark'] as const)('in %s', (colorScheme) => {
  test.each(Object.entries(SCREENS))(
    '%s: axe-core finds nothing, and nothing sticks out at 390 by 844',
    async (_name, hash) => {
      await page.emulateMedia({ colorScheme });
      await page.setViewportSize({ width: 390, height: 844 });
      await goTo(hash);
      expect(await axeFinds()).toEqual([]);
      expect(await overflow()).toBe(0);
    },
  );
});

test.each(Object.entries(SCREENS))('%s lying down: nothing sticks out at 844 by 390', async (_name, hash) => {
  await page.setViewportSize({ width: 844, height: 390 });
  await goTo(hash);
  expect(await overflow()).toBe(0);
});

/** WCAG 2.2, definition of contrast ratio: (L1 + 0.05) / (L2 + 0.05) with relative luminance. */
function contrast(one: number[], other: number[]): number {
  const luminance = (rgb: number[]) => {
    const [r = 0, g = 0, b = 0] = rgb.map((value) => {
      const share = value / 255;
      return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
    });
    return 0.2126 * r + 0.7152 * g + 0.0722 * b;
  };
  const [dark = 0, bright = 0] = [luminance(one), luminance(other)].sort((a, b) => a - b);
  return (bright + 0.05) / (dark + 0.05);
}

test('the contrast formula gives 21 for black on white and 4.54 for #767676 on white (WCAG 2.2 technique G18)', () => {
  expect(contrast([0, 0, 0], [255, 255, 255])).toBeCloseTo(21, 5);
  expect(contrast([118, 118, 118], [255, 255, 255])).toBeCloseTo(4.54, 2);
});

test.each(Object.entries(SCREENS))(
  '%s on paper is dark on white, by night as by day (WCAG 2.2 SC 1.4.3: 4.5:1)',
  async (_name, hash) => {
    await page.setViewportSize({ width: 794, height: 1123 });
    await goTo(hash);
    await page.emulateMedia({ media: 'print', colorScheme: 'dark' });
    const inks = await page.evaluate(() => {
      const seen = new Map<string, string>();
      const words = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
      for (let node = words.nextNode(); node; node = words.nextNode()) {
        const of = node.parentElement;
        if (!of?.checkVisibility() || node.textContent?.trim() === '') continue;
        seen.set(getComputedStyle(of).color, node.textContent ?? '');
      }
      return { inks: [...seen], paper: getComputedStyle(document.documentElement).backgroundColor };
    });
    await page.emulateMedia({ media: 'screen', colorScheme: 'light' });
    expect(inks.paper).toBe('rgb(255, 255, 255)');
    expect(inks.inks.length).toBeGreaterThan(0);
    for (const [ink, text] of inks.inks) {
      const rgb = (ink.match(/[\d.]+/g) ?? []).slice(0, 3).map(Number);
      expect(contrast(rgb, [255, 255, 255]), `${text} in ${ink}`).toBeGreaterThanOrEqual(4.5);
    }
  },
);

describe('at the bench', () => {
  /** Step by step to the first one with bolts to count. */
  const torqueStep = async () => {
    await goTo('#/home');
    await goTo('#/bench/demo-magpie');
    const count = page.getByRole('button', { name: /Bolt tight/ });
    for (let at = 0; at < 40 && !(await count.isVisible()); at += 1) {
      await page.getByRole('button', { name: 'Next', exact: true }).click();
    }
    await count.waitFor();
  };

  test.each(['light', 'dark'] as const)(
    'the torque is 40 px or more and stands at 7:1 or more (WCAG 2.2 SC 1.4.6), in %s',
    async (colorScheme) => {
      await page.emulateMedia({ colorScheme });
      await page.setViewportSize({ width: 390, height: 844 });
      await torqueStep();
      const seen = await page.evaluate(() => {
        const number = document.querySelector('.big-line span');
        if (!number) throw new Error('no number');
        const { color, fontSize } = getComputedStyle(number);
        let behind: Element | null = number;
        let background = 'rgba(0, 0, 0, 0)';
        while (behind && /rgba\(0, 0, 0, 0\)|transparent/.test(background)) {
          background = getComputedStyle(behind).backgroundColor;
          behind = behind.parentElement;
        }
        const numbers = (text: string) => (text.match(/[\d.]+/g) ?? []).slice(0, 3).map(Number);
        return { ink: numbers(color), paper: numbers(background), px: Number.parseFloat(fontSize) };
      });
      expect(seen.px).toBeGreaterThanOrEqual(40);
      expect(contrast(seen.ink, seen.paper)).toBeGreaterThanOrEqual(7);
    },
  );

  test.each([
    ['upright', 390, 844],
    ['lying down', 844, 390],
  ])(
    'what a greasy hand touches is 96 by 72 px or more, %s (WCAG 2.2 SC 2.5.8 asks 24, SC 2.5.5 asks 44)',
    async (_way, width, height) => {
      await page.setViewportSize({ width, height });
      await torqueStep();
      const small = await page.evaluate(() =>
        [...document.querySelectorAll('.screen-foot button, .screen-foot a')]
          .map((target) => ({ name: target.textContent, box: target.getBoundingClientRect() }))
          .filter(({ box }) => box.width < 96 || box.height < 72)
          .map(({ name, box }) => `${name}: ${Math.round(box.width)} × ${Math.round(box.height)}`),
      );
      expect(small).toEqual([]);
    },
  );
});

/** Keys of a number pad that something lies over, or that are too small for a knuckle. */
const keysOutOfReach = () =>
  page.evaluate(() =>
    [...document.querySelectorAll('.keypad-key')].flatMap((key) => {
      const { left, top, right, bottom, width: wide, height: high } = key.getBoundingClientRect();
      const atCorners = [
        [left + 2, top + 2],
        [right - 2, bottom - 2],
      ].map(([x = 0, y = 0]) => document.elementFromPoint(x, y)?.closest('.keypad-key'));
      const whole = atCorners.every((found) => found === key) && wide >= 96 && high >= 72;
      return whole ? [] : [`${key.getAttribute('aria-label')}: ${wide} × ${high}, ends at ${bottom}`];
    }),
  );

test.each([
  ['upright', 390, 844],
  ['lying down', 844, 390],
])(
  'what fell due stays in sight above a number pad and lies over none of its keys, %s',
  async (_way, width, height) => {
    await page.setViewportSize({ width, height });
    // A wait of the demo was over before the demo came.
    const told = page.getByRole('link', { name: /^Due now:/ });
    await goTo('#/joint/demo-f-j-axle-rear');
    await page
      .getByRole('button', { name: /torque/i })
      .first()
      .click();
    await page.locator('.keypad-keys').waitFor();
    await told.waitFor();
    expect(await keysOutOfReach()).toEqual([]);
    await goTo('#/part/demo-m-frame');
    await page.evaluate(() => scrollTo(0, document.documentElement.scrollHeight));
    const box = await told.boundingBox();
    expect(box?.y).toBeGreaterThanOrEqual(0);
    expect((box?.y ?? height) + (box?.height ?? 0)).toBeLessThanOrEqual(height);
  },
);

describe.each([
  ['upright', 390, 844],
  ['lying down', 844, 390],
])('a number pad, %s', (_way, width, height) => {
  test.each([
    ['pressure', '#/seal/demo-m-j-bead-rear', /^Pressure/],
    ['sealant', '#/seal/demo-m-j-bead-rear', /^Sealant/],
    ['torque of a joint', '#/joint/demo-f-j-axle-rear', /torque/i],
  ])('%s: all keys are in sight with what waits above them, and big enough for a knuckle', async (...pad) => {
    const [, hash, opener] = pad;
    await page.setViewportSize({ width, height });
    // What fell due is told once in a bar of its own, which is put away here.
    const seen = page.getByRole('button', { name: 'Dismiss' });
    await goTo('#/home');
    if (await seen.isVisible()) await seen.click();
    await goTo(hash);
    await page.getByRole('button', { name: opener }).first().click();
    await page.locator('.keypad-keys').waitFor();
    await page.getByRole('region', { name: 'Timers' }).getByRole('link').waitFor();
    expect(await keysOutOfReach()).toEqual([]);
    expect(await overflow()).toBe(0);
  });
});

describe('[C1] the undo bar keeps the ten seconds of the journal', () => {
  const addPart = async (name: string) => {
    await goTo('#/home');
    await goTo('#/new-part/shelf');
    await page.getByLabel('Name', { exact: false }).first().fill(name);
    await page.getByLabel('Kind').selectOption({ label: 'Fork' });
    await page.getByRole('button', { name: 'Add it', exact: true }).click();
    await page.getByRole('button', { name: /^Undo/ }).waitFor();
  };

  test('left alone it goes; who is at the button is told and sent to the correction', async () => {
    await addPart('Left alone');
    await page.getByRole('button', { name: /^Undo/ }).waitFor({ state: 'detached', timeout: 11_500 });
    expect(await page.getByText(/Too late/).count()).toBe(0);
    await addPart('Hesitated over');
    await page.getByRole('button', { name: /^Undo/ }).focus();
    const link = page.getByRole('link', { name: 'Correct it' });
    await link.waitFor({ timeout: 11_500 });
    await page.getByText('Too late to undo: Hesitated over added').waitFor();
    expect(await link.evaluate((one) => one === document.activeElement)).toBe(true);
    await page.keyboard.press('Enter');
    await page.getByRole('heading', { level: 1, name: /Hesitated over/ }).waitFor();
    expect(await link.count()).toBe(0);
  });

  test('it goes along to another screen and keeps its time there', async () => {
    await addPart('Carried along');
    await page.waitForTimeout(3000);
    await goTo('#/tools');
    const undo = page.getByRole('button', { name: /^Undo/ });
    expect(await undo.isVisible()).toBe(true);
    // Ten seconds counted anew would end more than nine from here.
    await undo.waitFor({ state: 'detached', timeout: 8500 });
  });
});

test('every target on every screen is 24 by 24 px or more (WCAG 2.2 SC 2.5.8)', async () => {
  await page.setViewportSize({ width: 390, height: 844 });
  const small: string[] = [];
  for (const [name, hash] of Object.entries(SCREENS)) {
    await goTo(hash);
    const here = await page.evaluate(() =>
      [...document.querySelectorAll('a, button, select, input, summary')]
        .filter(
          (target) =>
            (target as HTMLElement).offsetParent !== null && !target.closest('[aria-hidden="true"]'),
        )
        .map((target) => ({ target, box: (target.closest('label') ?? target).getBoundingClientRect() }))
        .filter(({ box }) => box.width > 0 && (box.width < 24 || box.height < 24))
        .map(
          ({ target, box }) =>
            `${target.outerHTML.slice(0, 90)} ${Math.round(box.width)} × ${Math.round(box.height)}`,
        ),
    );
    small.push(...here.map((text) => `${name}: ${text}`));
  }
  expect(small).toEqual([]);
});
