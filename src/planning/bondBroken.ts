import type { JointRow, WaitRow } from '../journal/rows.ts';

/** When the cure of a wait was over, as far as it came to its end. */
function curedAt({ dueAtMs, endedAtMs, outcome }: WaitRow): number | undefined {
  return endedAtMs === undefined ? dueAtMs : outcome === 'looked' ? endedAtMs : undefined;
}

/**
 * Why threadlocker in a joint holds nothing any more: a re-check met the joint moved, or it was tightened once more
 * after the cure. Only a fresh application mends it.
 * @param wait the cure of what is in the joint
 * @example bondBroken({}, undefined) //=> undefined
 */
export function bondBroken(
  { locked, applied }: Pick<JointRow, 'locked' | 'applied'>,
  wait: WaitRow | undefined,
): 'moved' | 'turned-when-cured' | undefined {
  if (!locked) return undefined;
  if (locked.brokenAtMs !== undefined) return 'moved';
  const curedAtMs = wait && curedAt(wait);
  return applied && curedAtMs !== undefined && applied.atMs > curedAtMs ? 'turned-when-cured' : undefined;
}
