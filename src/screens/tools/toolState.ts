import type { ToolSnapshot } from '../../journal/entries.ts';
import type { ToolRow } from '../../journal/rows.ts';
import { type TorqueUnit, torqueFromNm, unitLabel } from '../../mechanics/units.ts';
import { numberText } from '../quantityText.ts';

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
    foundOut,
  }: Pick<ToolRow, 'droppedAtMs' | 'lastCheckMs' | 'checkEveryDays' | 'foundOut'>,
  atMs: number,
): ToolSnapshot['state'] {
  if (droppedAtMs && droppedAtMs > (lastCheckMs ?? 0)) return 'dropped';
  if (lastCheckMs === undefined) return 'never-checked';
  if (foundOut && foundOut.atMs > lastCheckMs) return 'check-overdue';
  return atMs - lastCheckMs > checkEveryDays * DAY_MS ? 'check-overdue' : 'checked';
}

/** The scale of a tool in the unit chosen. @example scaleText({ minNm: 2, maxNm: 24 }, 'N.m') //=> '2 to 24 N·m' */
export function scaleText({ minNm, maxNm }: Pick<ToolRow, 'minNm' | 'maxNm'>, unit: TorqueUnit): string {
  const text = (nm: number) => numberText(torqueFromNm(nm, unit), 1);
  if (maxNm === undefined) return 'Scale not written down';
  return `${minNm === undefined ? 'up' : text(minNm)} to ${text(maxNm)} ${unitLabel[unit]}`;
}
