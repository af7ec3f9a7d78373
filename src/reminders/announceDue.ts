import type { DueLine, Logbook } from '../logbook.ts';
import { type DueNotice, noticeOf } from './notice.ts';

/**
 * Announces what fell due, each instant once: page and worker call this, and the claim decides who speaks.
 * The due list is computed from the data, so an announcement that fails loses no duty.
 * @param show puts one notice before the person; when it fails, the others are still shown
 * @returns the lines that were this caller's
 */
export async function announceDue(
  logbook: Pick<Logbook, 'claimDue'>,
  show: (notice: DueNotice, line: DueLine) => Promise<void> | void,
): Promise<DueLine[]> {
  const lines = await logbook.claimDue();
  await Promise.allSettled(lines.map(async (line) => show(noticeOf(line), line)));
  return lines;
}
