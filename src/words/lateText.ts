import { spanShort } from './timeLeft.ts';

const DAY_MS = 86_400_000;

/**
 * How late something is; from two days on in days alone.
 * @param lateMs since it fell due, ms, >= 0
 * @example lateText(182.75 * 86_400_000) //=> '182 days late'
 */
export function lateText(lateMs: number): string {
  const days = Math.floor(lateMs / DAY_MS);
  return days >= 2 ? `${days} days late` : `${spanShort(lateMs)} late`;
}
