import type { Entry } from '../../../src/journal/entries.ts';

/** What a release says is open, word for word. */
export const releaseSays = (entry: Entry | undefined): string[] =>
  entry?.type === 'bike-released' ? entry.open.map(({ words }) => words) : [];
