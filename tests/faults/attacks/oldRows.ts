import type { Page } from 'playwright-core';
import { changeStored, type RawChange, type Stored } from '../stored.ts';

/** The note of the version by which the rows were made. */
function noted(stored: Stored): { name: string; value: number } {
  const note = stored.meta.find(({ name, value }) => /views/.test(name) && typeof value === 'number');
  if (!note) throw new Error('the store notes no version of its rows');
  return note as { name: string; value: number };
}

/** The version of the rows that the store notes. */
export const notedVersion = (stored: Stored): number => noted(stored).value;

/**
 * Makes the rows those of an older version: the noted version is lowered, and the rows are made wrong, so that rows
 * that were not sorted anew are told from those that were.
 */
export async function ageRows(page: Page, stored: Stored): Promise<void> {
  const note = noted(stored);
  const wrong = stored.rows.map(
    (row): RawChange => ({ store: 'views', put: { ...row, lastMs: 1, old: true } }),
  );
  await changeStored(page, [{ store: 'meta', put: { ...note, value: note.value - 1 } }, ...wrong]);
}
