import type { DueLine } from '../logbook.ts';

export interface DueNotice {
  /** Same tag, same notice: a second one takes its place. */
  tag: string;
  title: string;
  body: string;
  /** Where a tap leads. */
  href: string;
}

function bodyOf(line: DueLine): string {
  if (line.is === 'wait') {
    if (line.kind === 'seal') return `Re-check the seal: ${line.title}`;
    if (line.kind === 'cure' || line.kind === 'adhesive') return `Cured by the clock: ${line.title}`;
    return `The wait is over: ${line.title}`;
  }
  return line.is === 'recheck' ? `Re-check: ${line.title}` : `A limit has come: ${line.title}`;
}

/**
 * The words for one due line.
 * @example noticeOf({ is: 'wait', kind: 'seal', bikeName: 'Magpie', title: 'Rear tyre on rim', ... }).body //=> 'Re-check the seal: Rear tyre on rim'
 */
export function noticeOf(line: DueLine): DueNotice {
  const seal = line.is === 'wait' && line.kind === 'seal' && line.jointId !== undefined;
  const href = seal
    ? `#/seal/${encodeURIComponent(line.jointId ?? '')}`
    : line.is === 'recheck'
      ? `#/rechecks/${encodeURIComponent(line.bikeId)}`
      : `#/bike/${encodeURIComponent(line.bikeId)}`;
  return { tag: `${line.key}@${line.dueAtMs}`, title: line.bikeName, body: bodyOf(line), href };
}
