import { isDeepStrictEqual } from 'node:util';
import type { Page } from 'playwright-core';
import type { Stored, StoredEntry } from '../stored.ts';

/** Ids of what the demo brings begin with this. */
const DEMO = /^demo-/;

/** Whether an entry belongs to the demo: some id in it says so. */
export const ofDemo = (entry: StoredEntry): boolean =>
  Object.entries(entry).some(
    ([field, value]) => field.endsWith('Id') && typeof value === 'string' && DEMO.test(value),
  );

/** How many entries of each kind the demo left, whichever ids they got. */
export function demoCounts({ lines }: Stored): Record<string, number> {
  const counts: Record<string, number> = {};
  for (const { entry } of lines) if (ofDemo(entry)) counts[entry.type] = (counts[entry.type] ?? 0) + 1;
  return counts;
}

/** Nothing of the demo, or all of it, once. */
export function demoFaults(stored: Stored, whole: Record<string, number>): string[] {
  const there = demoCounts(stored);
  if (Object.keys(there).length === 0 || isDeepStrictEqual(there, whole)) return [];
  const sum = (counts: Record<string, number>) => Object.values(counts).reduce((all, one) => all + one, 0);
  return [`${sum(there)} entries of the demo's ${sum(whole)} stand as a whole demo`];
}

export const tapDemo = (page: Page) => page.getByRole('button', { name: 'Look at the demo' }).click();

/** Waits until the first screen says that the demo is there, and no longer that it is on its way. */
export async function demoThere(page: Page): Promise<void> {
  const timeout = 240_000;
  await page
    .getByText(/Demo bikes loaded|demo did not load/)
    .first()
    .waitFor({ timeout });
  await page.getByText('Loading the demo').first().waitFor({ state: 'detached', timeout });
}
