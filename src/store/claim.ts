import type { DueLine } from '../journal/answers.ts';
import { isQuiet } from '../journal/quietHours.ts';
import type { Database } from './database.ts';
import { due, momentOf } from './read.ts';

/** Claims older than this belong to duties long done with. */
const FORGET_MS = 400 * 86_400_000;

/** A timer that was moved along with the phone's clock ends at the same instant as before. */
const claimOf = ({ key, dueAtMs, movedMs = 0 }: DueLine) => `${key}@${dueAtMs - movedMs}`;

/**
 * What has fallen due and was not announced yet. Claiming happens in one transaction: of page, other
 * tabs and worker, the first gets the line and the others find nothing, so each instant is announced once. In quiet
 * hours nothing is claimed, so that it is announced once they are over; nor are the checks of a bike put away.
 */
export async function claimDue(db: Database, nowMs: number): Promise<DueLine[]> {
  const kept = await momentOf(db).row('settings', 'app');
  if (isQuiet(kept?.settings.quiet, nowMs)) return [];
  const lines = (await due(db, nowMs)).filter(({ is, away }) => is === 'wait' || !away);
  if (lines.length === 0) return [];
  const tx = db.transaction('announced', 'readwrite', { durability: 'strict' });
  tx.done.catch(() => {});
  const keys = lines.map(claimOf);
  const known = await Promise.all(keys.map((key) => tx.store.getKey(key)));
  const mine = lines.filter((_line, at) => known[at] === undefined);
  for (const line of mine) tx.store.put({ key: claimOf(line), atMs: nowMs }).catch(() => {});
  if (mine.length > 0) {
    for (const claim of await tx.store.getAll()) {
      if (claim.atMs < nowMs - FORGET_MS) tx.store.delete(claim.key).catch(() => {});
    }
  }
  tx.commit();
  await tx.done;
  return mine;
}
