import type { DueLine } from '../logbook.ts';
import { curesByClock } from '../planning/curesByClock.ts';

export interface DueNotice {
  /** Same tag, same notice: a second one takes its place. */
  tag: string;
  title: string;
  body: string;
  /** Where a tap leads. */
  href: string;
  /** What can be asked for from the notice, where the phone shows it: it goes behind the address. */
  actions?: { action: string; title: string }[];
}

const sealActions = [
  { action: 'again', title: 'Look again in 30 min' },
  { action: 'verdict', title: 'It holds' },
];

function bodyOf(line: DueLine): string {
  if (line.is === 'wait') {
    if (line.kind === 'seal') return `Re-check the seal: ${line.title}`;
    if (curesByClock(line.kind)) return `Curing time over: ${line.title}`;
    return `Timer ended: ${line.title}`;
  }
  return line.is === 'recheck' ? `Re-check: ${line.title}` : `Limit reached: ${line.title}`;
}

/**
 * The words for one due line, and the way to the very step.
 * @example noticeOf({ is: 'wait', kind: 'seal', bikeName: 'Magpie', title: 'Rear tyre on rim', ... }).body //=> 'Re-check the seal: Rear tyre on rim'
 */
export function noticeOf(line: DueLine): DueNotice {
  const { is, kind, id, bikeId, jointId, key, dueAtMs, bikeName } = line;
  const about = { tag: `${key}@${dueAtMs}`, title: bikeName, body: bodyOf(line) };
  const at = (screen: string, ...ids: string[]) => `#/${[screen, ...ids.map(encodeURIComponent)].join('/')}`;
  if (is === 'wait' && kind === 'seal' && jointId !== undefined)
    return { ...about, href: at('seal', jointId), actions: sealActions };
  return { ...about, href: at(is === 'recheck' ? 'rechecks' : 'bike', bikeId, id) };
}
