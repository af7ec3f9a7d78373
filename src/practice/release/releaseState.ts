import type { EntryType } from '../../journal/entries.ts';
import type { BikeRow } from '../../journal/rows.ts';

const sinceThen: Partial<Record<EntryType, string>> = {
  'torque-applied': 'a torque was logged since',
  'torque-found': 'a re-check found a moved joint',
  'hand-tightened': 'a joint was left hand-tight since',
  'locker-applied': 'threadlocker was applied since',
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
 * @param stopping words of the problems that stop it, where those whose limit is over are known as well
 * @example releaseState({ grave: [{ defectId: '1', words: 'Crack in the fork' }] })
 *   //=> { is: 'problem', words: 'Crack in the fork', more: 0 }
 */
export function releaseState(
  { release, revoked, grave }: Pick<BikeRow, 'release' | 'revoked' | 'grave'>,
  stopping: readonly string[] = grave.map(({ words }) => words),
): ReleaseState {
  const [words] = stopping;
  if (words !== undefined) return { is: 'problem', words, more: stopping.length - 1 };
  if (!release) return { is: 'never' };
  const { atMs, releaseId, statement, withdrawn, open } = release;
  if (withdrawn !== undefined) return { is: 'withdrawn', atMs, why: withdrawn };
  if (statement === 'not-to-ride') return { is: 'not-to-ride', atMs };
  if (revoked?.releaseId !== releaseId) return { is: 'stands', atMs, open };
  const why = sinceThen[revoked.because] ?? 'work was logged since';
  return { is: 'revoked', atMs, revokedAtMs: revoked.atMs, why };
}
