import { useState } from 'preact/hooks';
import { Button } from '../../controls/Button.tsx';
import type { MarkState } from '../../controls/figures/Mark.tsx';
import { Ruler } from '../../controls/figures/Ruler.tsx';
import { Notice } from '../../controls/frames/Notice.tsx';
import { ListRow } from '../../controls/lists/ListRow.tsx';
import type { Duty } from '../../journal/answers.ts';
import type { Id } from '../../journal/entries.ts';
import { dueAhead } from '../../practice/rechecks/dueAhead.ts';
import { dueSections } from '../../practice/rechecks/dueSections.ts';
import { dueWords } from '../../words/dueWords.ts';
import { lateText } from '../../words/lateText.ts';
import { spanShort } from '../../words/timeLeft.ts';
import { overWord } from '../../words/waitWords.ts';
import { useNow, useView } from '../door.tsx';
import { useReminders } from '../reminders/useReminders.ts';
import { hrefOf } from '../route.ts';

/** More than these at once stand in the way of the bikes below. */
const SHOWN = 5;
function hrefOfDue({ is, kind, id: open, bikeId, jointId }: Duty): string {
  if (is === 'wait' && kind === 'seal' && jointId) return hrefOf({ at: 'seal', jointId });
  if (bikeId === undefined) return hrefOf({ at: 'tools' });
  if (is === 'recheck') return hrefOf({ at: 'rechecks', bikeId, open });
  return hrefOf({ at: 'bike', bikeId, open });
}

/** How a line stands by the clock, or by what may still be ridden. */
function stateOf(duty: Duty, { nowMs, toCome }: DutiesProps): { state: MarkState; stateWord: string } {
  const { is, kind, dueAtMs } = duty;
  const leftMs = dueAtMs === undefined ? undefined : dueAtMs - nowMs;
  const span = spanShort(Math.abs(leftMs ?? 0));
  if (leftMs === undefined || leftMs > 0) {
    if (is === 'wait') return { state: 'waits', stateWord: `${span} left` };
    return { state: 'noted', stateWord: toCome(duty) };
  }
  const over = is === 'wait' ? overWord(kind) : undefined;
  return over
    ? { state: 'done', stateWord: `${over} ${span} ago` }
    : { state: 'due', stateWord: lateText(-leftMs) };
}

interface DutiesProps {
  nowMs: number;
  /** What is left until it falls due. */
  toCome: (duty: Duty) => string;
}

function DutyLine({ duty, ...known }: DutiesProps & { duty: Duty }) {
  const detail = duty.bikeName === '' ? undefined : duty.bikeName;
  return <ListRow title={dueWords(duty)} {...{ detail }} {...stateOf(duty, known)} href={hrefOfDue(duty)} />;
}

function Section({ label, duties, ...known }: DutiesProps & { label: string; duties: Duty[] }) {
  const [all, setAll] = useState(false);
  if (duties.length === 0) return null;
  const shown = all ? duties : duties.slice(0, SHOWN);
  return (
    <>
      <Ruler label={label} end={<b>{duties.length}</b>} />
      {shown.map((duty) => (
        <DutyLine key={duty.key} duty={duty} {...known} />
      ))}
      {shown.length < duties.length && (
        <Button wide onPress={() => setAll(true)}>
          {`Show ${duties.length - shown.length} more`}
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
  const reminders = useReminders();
  if (due.is === 'failed') {
    return (
      <Notice kind="error" title="What is due could not be read">
        Reload the page. What is recorded is safe.
      </Notice>
    );
  }
  if (due.is === 'reading') return null;
  const lists = (duties?: readonly Duty[], toCome?: DutiesProps['toCome']) => {
    const { late, waits, soon } = dueSections(due.value, duties, away, nowMs);
    const known = { nowMs, toCome: toCome ?? (({ likelyMs }) => `Due in ${spanShort(likelyMs - nowMs)}`) };
    return (
      <>
        <Section label="Due" duties={late} {...known} />
        <Section label="Timers" duties={waits} {...known} />
        <Section label="Due within a week" duties={soon} {...known} />
        {waits.length + soon.length > 0 && reminders && <reminders.CalendarButton />}
      </>
    );
  };
  return reminders ? <reminders.AllDuties {...{ nowMs }} draw={lists} /> : lists();
}
