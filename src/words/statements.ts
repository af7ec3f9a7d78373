import type { ReleaseRow } from '../journal/rows.ts';

/** What a release says, as it is chosen and as it is read later. */
export const statementWords: Record<'first-ride' | 'ride' | 'not-to-ride', string> = {
  'first-ride': 'Cleared for a short test ride',
  ride: 'Cleared to ride',
  'not-to-ride': 'Do not ride',
};

/** @example statementText({ statement: 'ride' }) //=> 'Cleared to ride' */
export function statementText({ statement }: Pick<ReleaseRow['releases'][number], 'statement'>): string {
  return (statementWords as Record<string, string>)[statement] ?? statement;
}
