import type { EntryType } from '../../journal/entries.ts';
import type { BikeRow, DefectRow } from '../../journal/rows.ts';

const sinceThen: Partial<Record<EntryType, string>> = {
  'torque-applied': 'a torque was logged since',
  'torque-found': 'a re-check found a moved joint',
  'hand-tightened': 'a joint was left hand-tight since',
  'locker-applied': 'threadlocker went on since',
  'joint-taken-apart': 'a joint was taken apart since',
  'joint-described': 'a joint was changed since',
  'seal-marked': 'a tyre was worked on since',
  'step-done': 'a step was done since',
  'part-moved': 'a part was moved since',
  'part-changed': 'a part was changed since',
  'entry-corrected': 'an entry was corrected since',
};

export type ReleaseState =
  | { is: 'never' }
  /** A problem with which the bike must not be ridden, whatever was signed. */
  | { is: 'problem'; words: string; more: number }
  | { is: 'stands'; atMs: number; open: number }
  | { is: 'not-to-ride'; atMs: number }
  | { is: 'withdrawn'; atMs: number; why: string }
  | { is: 'revoked'; atMs: number; revokedAtMs: number; why: string };

/**
 * Where the release of a bike stands today, and why it does not if it does not.
 * @param bike the bike's row; only its last release counts
 * @param grave words of the open problems with which it must not be ridden
 * @example releaseState({}, ['Crack in the fork']) //=> { is: 'problem', words: 'Crack in the fork', more: 0 }
 */
export function releaseState(
  { release, revoked }: Pick<BikeRow, 'release' | 'revoked'>,
  grave: readonly string[] = [],
): ReleaseState {
  const [words] = grave;
  if (words !== undefined) return { is: 'problem', words, more: grave.length - 1 };
  if (!release) return { is: 'never' };
  const { atMs, releaseId, statement, withdrawn, open } = release;
  if (withdrawn !== undefined) return { is: 'withdrawn', atMs, why: withdrawn };
  if (statement === 'not-to-ride') return { is: 'not-to-ride', atMs };
  if (revoked?.releaseId !== releaseId) return { is: 'stands', atMs, open };
  const why = sinceThen[revoked.because] ?? 'work was logged since';
  return { is: 'revoked', atMs, revokedAtMs: revoked.atMs, why };
}

/** The words of the problems with which a bike must not be ridden. */
export const graveWords = (defects: readonly Pick<DefectRow, 'decision' | 'words' | 'closed'>[]): string[] =>
  defects.flatMap(({ decision, words, closed }) =>
    decision === 'do-not-ride' && closed === undefined ? [words] : [],
  );
