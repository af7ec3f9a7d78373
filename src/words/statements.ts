import type { ReleaseRow } from '../journal/rows.ts';

/** What a release says, as it is chosen and as it is read later. */
export const statementWords: Record<'first-ride' | 'ride' | 'not-to-ride', string> = {
  'first-ride': 'For a first short ride',
  ride: 'To be ridden',
  'not-to-ride': 'Not to be ridden',
};

/** @example statementText({ statement: 'ride' }) //=> 'To be ridden' */
export function statementText({ statement }: Pick<ReleaseRow['releases'][number], 'statement'>): string {
  return (statementWords as Record<string, string>)[statement] ?? statement;
}
