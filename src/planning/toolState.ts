/** How far a torque tool can be trusted. */
export type ToolState = 'checked' | 'check-overdue' | 'never-checked' | 'dropped';

/** What is known of a tool's checks. */
export interface ToolChecks {
  lastCheckMs?: number;
  checkEveryDays?: number;
  droppedAtMs?: number | null;
  /** When it was found to show wrong. */
  foundOut?: { atMs: number };
}

/** A year is the usual span between checks where the owner has set none. ISO 6789-1, from memory. */
const USUAL_DAYS = 365;
const DAY_MS = 86_400_000;

/**
 * When a tool is to be checked again: a span after its last check, at once where it fell or showed wrong since.
 * @returns undefined for a tool that was never checked and has not fallen
 * @example toolCheckDueMs({ lastCheckMs: 0, checkEveryDays: 10 }) //=> 864_000_000
 */
export function toolCheckDueMs(checks: ToolChecks): number | undefined {
  const { droppedAtMs, lastCheckMs, checkEveryDays = USUAL_DAYS, foundOut } = checks;
  const since = [droppedAtMs, foundOut?.atMs].filter((ms) => typeof ms === 'number');
  const doubted = since.filter((ms) => ms > (lastCheckMs ?? 0));
  const spans = lastCheckMs === undefined ? [] : [lastCheckMs + checkEveryDays * DAY_MS];
  const all = [...doubted, ...spans];
  return all.length === 0 ? undefined : Math.min(...all);
}

/**
 * How far a tool can be trusted on a day. The journal keeps this judgement with every torque, and the screens
 * show it.
 * @param checks what is known of the tool
 * @param atMs the day, ms UTC
 * @example toolState({ lastCheckMs: 0, checkEveryDays: 10 }, 86_400_000) //=> 'checked'
 */
export function toolState(
  { droppedAtMs, lastCheckMs, checkEveryDays = USUAL_DAYS, foundOut }: ToolChecks,
  atMs: number,
): ToolState {
  if (droppedAtMs && droppedAtMs > (lastCheckMs ?? 0)) return 'dropped';
  if (lastCheckMs === undefined) return 'never-checked';
  if (foundOut && foundOut.atMs > lastCheckMs) return 'check-overdue';
  return atMs - lastCheckMs > checkEveryDays * DAY_MS ? 'check-overdue' : 'checked';
}
