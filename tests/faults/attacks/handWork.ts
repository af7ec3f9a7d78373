import type { Page } from 'playwright-core';
import type { Acknowledged } from '../acknowledged.ts';
import type { Dice } from '../dice.ts';
import { give } from '../door.ts';
import { rest } from '../ground.ts';
import { type Known, word } from '../orders.ts';

/** Two touches closer together than this are taken for one by the bench, ms; see screens/bench/steadyTap.ts. */
const STEADY_MS = 600;

/** Something typed into a form and not saved. */
export interface Typed {
  hash: string;
  label: string;
  words: string;
  /** When the last key was struck, ms. */
  atMs: number;
}

async function goTo(page: Page, hash: string): Promise<void> {
  await page.evaluate((to) => {
    location.hash = to;
  }, hash);
}

/** A bike by its form, key by key. */
async function typeBike(page: Page, _dice: Dice, _known: Known, kept: Acknowledged): Promise<void> {
  const name = word('Typed bike');
  await goTo(page, '#/new-bike');
  await page.getByLabel('Name').fill('');
  await page.getByLabel('Name').pressSequentially(name, { delay: 4 });
  await page.getByLabel('Notes').fill('Out of three crates');
  await page.getByRole('button', { name: 'Add bike' }).click();
  await page.getByRole('heading', { level: 1, name, exact: true }).waitFor();
  kept.promise({ type: 'bike-started', name });
}

/** A part by its form, which stays open for the next one. */
async function typePart(page: Page, dice: Dice, { bikes }: Known, kept: Acknowledged): Promise<void> {
  const place = bikes.length === 0 ? 'shelf' : String(dice.one(bikes)['bikeId']);
  const name = word('Typed part');
  await goTo(page, `#/new-part/${place}`);
  await page.getByLabel('Name', { exact: true }).fill('');
  await page.getByLabel('Name', { exact: true }).pressSequentially(name, { delay: 4 });
  await page.getByLabel('Kind', { exact: true }).selectOption({ index: 1 });
  await page.getByRole('button', { name: 'Add it, then another', exact: true }).click();
  await page.getByText(`${name} added. The next one:`).waitFor();
  kept.promise({ type: 'part-added', name });
}

/** A remark on the card of a bike. */
async function typeNote(page: Page, dice: Dice, { bikes }: Known, kept: Acknowledged): Promise<void> {
  if (bikes.length === 0) return;
  const words = word('Typed note');
  await goTo(page, `#/bike/${String(dice.one(bikes)['bikeId'])}`);
  await page.getByRole('button', { name: 'Note or photo' }).click();
  const sheet = page.getByRole('dialog');
  await sheet.getByRole('textbox').first().fill(words);
  await sheet.getByRole('button', { name: 'Save' }).click();
  await sheet.waitFor({ state: 'detached' });
  kept.promise({ type: 'note-added', words });
}

/** A torque at the bench: the bolt is counted, the figure is one tap. */
async function tapTorque(page: Page, dice: Dice, { steps }: Known, kept: Acknowledged): Promise<void> {
  const open = steps.filter(({ kind, state }) => kind === 'torque' && state === 'open');
  if (open.length === 0) return;
  const { stepId, bikeId } = dice.one(open);
  await give(page, [{ command: { type: 'open-step', stepId } }]);
  await goTo(page, `#/bench/${String(bikeId)}`);
  const bolt = page.getByRole('button', { name: /^Bolt tight/ });
  await bolt.waitFor({ timeout: 4000 });
  await rest(STEADY_MS);
  await bolt.click();
  await rest(STEADY_MS);
  await page
    .getByRole('button', { name: /^Applied/ })
    .first()
    .click();
  await page.getByText('Saved', { exact: true }).waitFor();
  kept.promise({ type: 'torque-applied', stepId: String(stepId) });
}

export const handActs = [typeBike, typePart, typeNote, tapTorque];

/** Types into a form and leaves it: after a kill it must come back. */
export async function typeAndLeave(page: Page, dice: Dice): Promise<Typed> {
  const label = 'Notes';
  const hash = '#/new-bike';
  const words = `${word('Half typed')} ${dice.whole(0, 1e6)}`;
  await goTo(page, hash);
  await page.getByLabel(label).fill('');
  await page.getByLabel(label).pressSequentially(words, { delay: 2 });
  return { hash, label, words, atMs: Date.now() };
}

/** What stands in that form now. */
export async function typedNow(page: Page, { hash, label }: Typed): Promise<string> {
  await goTo(page, hash);
  return page.getByLabel(label).inputValue();
}
