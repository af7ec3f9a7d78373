import { useState } from 'preact/hooks';
import { Button } from '../../controls/Button.tsx';
import { ListRow } from '../../controls/ListRow.tsx';
import { Notice } from '../../controls/Notice.tsx';
import { Ruler } from '../../controls/Ruler.tsx';
import { spanShort } from '../../controls/timeLeft.ts';
import type { Id } from '../../journal/entries.ts';
import type { DueLine } from '../../logbook.ts';
import { useNow, useView } from '../door.tsx';
import { dueAhead } from '../dueAhead.ts';
import { hrefOf } from '../route.ts';
import { waitWords } from '../waitWords.ts';
import { lateText } from './lateText.ts';

const DAY_MS = 86_400_000;
const SOON_MS = 7 * DAY_MS;
/** More than these at once stand in the way of the bikes below. */
const SHOWN = 5;

function hrefOfDue({ is, kind, bikeId, jointId }: DueLine): string {
  if (is === 'wait' && kind === 'seal' && jointId) return hrefOf({ at: 'seal', jointId });
  if (is === 'recheck') return hrefOf({ at: 'rechecks', bikeId });
  return hrefOf({ at: 'bike', bikeId });
}

function titleOf({ is, kind, title }: DueLine): string {
  if (is === 'wait') return waitWords(kind, title);
  return is === 'defect' ? `Defect: ${title}` : title;
}

function DutyRow({ line, nowMs }: { line: DueLine; nowMs: number }) {
  const leftMs = line.dueAtMs - nowMs;
  const late = leftMs <= 0;
  const span = spanShort(Math.abs(leftMs));
  const running = line.is === 'wait' && !late;
  return (
    <ListRow
      title={titleOf(line)}
      detail={line.bikeName}
      state={late ? 'due' : running ? 'waits' : 'noted'}
      stateWord={late ? lateText(-leftMs) : running ? `${span} left` : `Due in ${span}`}
      href={hrefOfDue(line)}
    />
  );
}

function Section({ label, lines, nowMs }: { label: string; lines: DueLine[]; nowMs: number }) {
  const [all, setAll] = useState(false);
  if (lines.length === 0) return null;
  const shown = all ? lines : lines.slice(0, SHOWN);
  return (
    <>
      <Ruler label={label} end={<b>{lines.length}</b>} />
      {shown.map((line) => (
        <DutyRow key={line.key} line={line} nowMs={nowMs} />
      ))}
      {shown.length < lines.length && (
        <Button kind="quiet" wide onPress={() => setAll(true)}>
          {`Show ${lines.length - shown.length} more`}
        </Button>
      )}
    </>
  );
}

/**
 * What is due, overdue first; what waits; what falls due within a week. A bike put away is not ridden, so its
 * re-checks and defects stay with it; what cures or seals on it goes on.
 */
export function DueList({ away }: { away: ReadonlySet<Id> }) {
  const nowMs = useNow(1000);
  // Rounded, so that the question stays the same from one second to the next.
  const due = useView('due', dueAhead(nowMs));
  if (due.is === 'failed') {
    return (
      <Notice kind="error" title="What is due could not be read">
        Reload the page. What is recorded is safe.
      </Notice>
    );
  }
  if (due.is === 'reading') return null;
  const lines = due.value.filter(({ is, bikeId }) => is === 'wait' || !away.has(bikeId));
  const late = lines.filter(({ dueAtMs }) => dueAtMs <= nowMs);
  const running = lines.filter(({ is, dueAtMs }) => is === 'wait' && dueAtMs > nowMs);
  const soon = lines.filter(
    ({ is, dueAtMs }) => is !== 'wait' && dueAtMs > nowMs && dueAtMs <= nowMs + SOON_MS,
  );
  return (
    <>
      <Section label="Due" lines={late} nowMs={nowMs} />
      <Section label="Waits" lines={running} nowMs={nowMs} />
      <Section label="Due within a week" lines={soon} nowMs={nowMs} />
    </>
  );
}
