import { isDemo } from './demoIds.ts';
import type { Id } from './entries.ts';
import type { PartRow } from './rows.ts';

const asWritten = (label: string): string => label.trim().toLowerCase();

/**
 * The part that keeps a label from another: a label is written on one tag. What the demo brings carries invented
 * labels, which other parts may have as well.
 * @param partId the part that is to carry the label; undefined while it is not in the logbook yet
 * @returns undefined where the label is free
 * @example labelHolder([{ partId: 'p1', label: 'Red 1' }], 'p2', ' red 1 ')?.partId //=> 'p1'
 */
export function labelHolder<P extends Pick<PartRow, 'partId' | 'label'>>(
  parts: readonly P[],
  partId: Id | undefined,
  label: string,
): P | undefined {
  const sought = asWritten(label);
  if (sought === '' || (partId !== undefined && isDemo(partId))) return undefined;
  return parts.find(
    (part) => part.partId !== partId && !isDemo(part.partId) && asWritten(part.label) === sought,
  );
}
