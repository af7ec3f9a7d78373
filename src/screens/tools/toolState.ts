import type { ToolSnapshot } from '../../journal/entries.ts';
import type { ToolRow } from '../../journal/rows.ts';

/** How far a tool can be trusted, in words. */
export const toolStateWords: Record<ToolSnapshot['state'], string> = {
  checked: 'Checked',
  'check-overdue': 'Check overdue',
  'never-checked': 'Never checked',
  dropped: 'Dropped since its check',
};

/** A year is the usual span between checks where the owner has set none. ISO 6789-1, from memory. */
const USUAL_DAYS = 365;
const DAY_MS = 86_400_000;

/**
 * How far a tool can be trusted on a day. The journal keeps the same judgement with every torque.
 * @param atMs the day, ms UTC
 * @example toolState({ lastCheckMs: 0, checkEveryDays: 10 }, 86_400_000) //=> 'checked'
 */
export function toolState(
  {
    droppedAtMs,
    lastCheckMs,
    checkEveryDays = USUAL_DAYS,
  }: Pick<ToolRow, 'droppedAtMs' | 'lastCheckMs' | 'checkEveryDays'>,
  atMs: number,
): ToolSnapshot['state'] {
  if (droppedAtMs && droppedAtMs > (lastCheckMs ?? 0)) return 'dropped';
  if (lastCheckMs === undefined) return 'never-checked';
  return atMs - lastCheckMs > checkEveryDays * DAY_MS ? 'check-overdue' : 'checked';
}
