import { useState } from 'preact/hooks';
import { Button } from '../../controls/Button.tsx';
import type { MarkState } from '../../controls/figures/Mark.tsx';
import { Ruler } from '../../controls/figures/Ruler.tsx';
import { Notice } from '../../controls/frames/Notice.tsx';
import { ListRow } from '../../controls/lists/ListRow.tsx';
import type { Id } from '../../journal/entries.ts';
import type { DueLine } from '../../logbook.ts';
import { dueAhead } from '../../practice/rechecks/dueAhead.ts';
import { dueSections } from '../../practice/rechecks/dueSections.ts';
import { dueWords } from '../../words/dueWords.ts';
import { lateText } from '../../words/lateText.ts';
import { spanShort } from '../../words/timeLeft.ts';
import { overWord } from '../../words/waitWords.ts';
import { useNow, useView } from '../door.tsx';
import { hrefOf } from '../route.ts';

/** More than these at once stand in the way of the bikes below. */
const SHOWN = 5;

function hrefOfDue({ is, kind, bikeId, jointId }: DueLine): string {
  if (is === 'wait' && kind === 'seal' && jointId) return hrefOf({ at: 'seal', jointId });
  if (is === 'recheck') return hrefOf({ at: 'rechecks', bikeId });
  return hrefOf({ at: 'bike', bikeId });
}

/** How a line stands by the clock. */
function stateOf({ is, kind, dueAtMs }: DueLine, nowMs: number): { state: MarkState; stateWord: string } {
  const leftMs = dueAtMs - nowMs;
  const span = spanShort(Math.abs(leftMs));
  if (leftMs > 0)
    return is === 'wait'
      ? { state: 'waits', stateWord: `${span} left` }
      : { state: 'noted', stateWord: `Due in ${span}` };
  const over = is === 'wait' ? overWord(kind) : undefined;
  return over
    ? { state: 'done', stateWord: `${over} ${span} ago` }
    : { state: 'due', stateWord: lateText(-leftMs) };
}

function DutyRow({ line, nowMs }: { line: DueLine; nowMs: number }) {
  return (
    <ListRow title={dueWords(line)} detail={line.bikeName} {...stateOf(line, nowMs)} href={hrefOfDue(line)} />
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
        <Button wide onPress={() => setAll(true)}>
          {`Show ${lines.length - shown.length} more`}
        </Button>
      )}
    </>
  );
}

/** What is due, what waits, and what falls due within a week. */
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
  const { late, waits, soon } = dueSections(due.value, away, nowMs);
  return (
    <>
      <Section label="Due" lines={late} nowMs={nowMs} />
      <Section label="Timers" lines={waits} nowMs={nowMs} />
      <Section label="Due within a week" lines={soon} nowMs={nowMs} />
    </>
  );
}
