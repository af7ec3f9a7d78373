import type { Locator, Page } from 'playwright-core';
import { expect } from 'vitest';

/** Two touches closer together than this are taken for one by the bench, ms; see screens/bench/steadyTap.ts. */
const STEADY_MS = 500;
/** As long as a sign-off is held, and a little more, ms. */
const HELD_MS = 1100;

/** Goes to an address of the app, as a link or the phone's back key would. */
export async function goTo(page: Page, hash: string): Promise<void> {
  await page.evaluate((to) => {
    location.hash = to;
  }, hash);
  await page.getByText('One moment…').waitFor({ state: 'detached' });
  await page.getByRole('heading', { level: 1 }).waitFor();
}

/** Presses a button or follows a link by what stands on it. */
export async function press(page: Page, name: string | RegExp, exact = false): Promise<void> {
  const button = page.getByRole('button', { name, exact });
  await button.or(page.getByRole('link', { name, exact })).first().click();
}

/** A touch of a hand that looks first: later than what the bench takes for a trembling knuckle. */
export async function touch(page: Page, name: string | RegExp): Promise<void> {
  await page.getByRole('button', { name }).first().waitFor();
  await page.waitForTimeout(STEADY_MS + 100);
  await page.getByRole('button', { name }).first().click();
}

/** Holds a button as long as a signature wants it. */
export async function hold(page: Page, name: string | RegExp): Promise<void> {
  const button = page.getByRole('button', { name });
  await button.scrollIntoViewIfNeeded();
  const box = await button.boundingBox();
  if (!box) throw new Error(`nothing to hold: ${name}`);
  await page.mouse.move(box.x + box.width / 2, box.y + box.height / 2);
  await page.mouse.down();
  await page.waitForTimeout(HELD_MS);
  await page.mouse.up();
}

/** A fold of the card, opened where it is shut. */
export async function unfold(page: Page, label: string | RegExp): Promise<Locator> {
  const fold = page.locator('details', {
    has: page.getByRole('heading', { name: label, exact: typeof label === 'string' }),
  });
  await fold.waitFor();
  if ((await fold.getAttribute('open')) === null) await fold.locator('summary').first().click();
  return fold;
}

/** Chooses in a picker the one option that begins with these words: labels carry a part's own label behind its name. */
export async function choose(page: Page, field: string, begins: string): Promise<void> {
  const picker = page.getByLabel(field, { exact: true });
  await expect
    .poll(async () =>
      (await picker.locator('option').allTextContents()).filter((one) => one.startsWith(begins)),
    )
    .toHaveLength(1);
  const [label = ''] = (await picker.locator('option').allTextContents()).filter((one) =>
    one.startsWith(begins),
  );
  await picker.selectOption({ label });
}

/** Keys of the big keypad, one after the other. */
export async function keys(page: Page, text: string): Promise<void> {
  for (const sign of text) {
    await page.getByRole('button', { name: sign === ',' ? 'comma' : sign, exact: true }).click();
  }
}

/** Counts bolts off, one touch each, from where the count stands. */
export async function boltsTight(page: Page, from: number, to: number, of: number, pass = 1): Promise<void> {
  for (let tight = from + 1; tight <= to; tight += 1) {
    await touch(page, /^(Bolt|Nut|Pedal) tight/);
    await page
      .getByText(new RegExp(`${tight} of ${of} (?:bolt|nut|pedal)s?${pass === 1 ? '$' : `, pass ${pass}`}`))
      .waitFor();
  }
}

/** The list of steps as it reads, top to bottom: what is out of view is not drawn, so it is scrolled through. */
export async function planLines(page: Page): Promise<string[]> {
  const seen = new Map<number, string>();
  await page.evaluate(() => scrollTo(0, 0));
  for (;;) {
    await page.waitForTimeout(120);
    const drawn = await page
      .getByRole('list', { name: 'Steps' })
      .locator(':scope > li')
      .evaluateAll((items) =>
        items.map((item) => [Number((item as HTMLElement).dataset['row']), item.textContent ?? ''] as const),
      );
    for (const [row, text] of drawn) seen.set(row, text);
    const atEnd = await page.evaluate(() => {
      const before = scrollY;
      scrollBy(0, innerHeight / 2);
      return scrollY === before;
    });
    if (atEnd) break;
  }
  return [...seen].sort(([a], [b]) => a - b).map(([, text]) => text);
}

/** Scrolls a long list until a line of it is drawn. */
export async function inView(page: Page, line: Locator): Promise<Locator> {
  await page.evaluate(() => scrollTo(0, 0));
  for (let screens = 0; screens < 40; screens += 1) {
    await page.waitForTimeout(120);
    if ((await line.count()) > 0) break;
    await page.evaluate(() => scrollBy(0, innerHeight / 2));
  }
  await line.first().scrollIntoViewIfNeeded();
  return line.first();
}

/** Takes a step of the plan to the bench. */
export async function takeUp(page: Page, bikeId: string, title: string, work: string): Promise<void> {
  await goTo(page, `#/plan/${bikeId}`);
  await page.getByRole('list', { name: 'Steps' }).waitFor();
  const line = page.getByRole('button', { name: new RegExp(`^\\d+\\s+${title}(?:: [^A-Z]*)?\\s*${work}`) });
  await (await inView(page, line)).click();
  await page.getByRole('heading', { level: 2, name: title }).waitFor();
}
