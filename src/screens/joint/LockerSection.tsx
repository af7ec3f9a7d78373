import { Countdown } from '../../controls/figures/Countdown.tsx';
import { Ruler } from '../../controls/figures/Ruler.tsx';
import { ListRow } from '../../controls/lists/ListRow.tsx';
import type { Locked, WaitRow } from '../../journal/rows.ts';
import { cureGrid } from '../../standards/screws/cureGrid.ts';
import { lockers } from '../../standards/screws/lockers.ts';
import { whenText } from '../../words/dayText.ts';
import { useNow } from '../door.tsx';

/** Grades of the table are told by their label; others as they were written. */
const gradeText = (grade: string) => lockers.find((row) => row.grade === grade)?.label ?? grade;

const surfaceText = (surface: string) =>
  Object.entries(cureGrid.surfaces).find(([key]) => key === surface)?.[1].label ?? surface;

/** Threadlocker in the joint, and how far it has cured. */
export function LockerSection({ locked, waits }: { locked: Locked; waits: WaitRow[] }) {
  const nowMs = useNow(1000);
  const wait = waits.find(({ waitId }) => waitId === locked.waitId);
  const { grade, surface, primer, atMs } = locked;
  // A wait that ended is not among the running ones; what is left then is when the cure was due.
  const dueAtMs = wait?.dueAtMs;
  const running = dueAtMs !== undefined && dueAtMs > nowMs;
  return (
    <>
      <Ruler label="Threadlocker" />
      <ListRow
        title={gradeText(grade)}
        detail={`${whenText(atMs)}, on ${surfaceText(surface).toLowerCase()}${primer ? ', with primer' : ''}`}
        state={running ? 'waits' : dueAtMs === undefined ? 'noted' : 'due'}
        stateWord={running ? 'Curing' : dueAtMs === undefined ? 'Wait ended' : 'Time is over: look at it'}
      />
      {running && <Countdown label="Cure" dueAtMs={dueAtMs} nowMs={nowMs} sinceMs={wait?.startedAtMs} />}
      <p class="small">Turning it now breaks the bond. At a re-check, look at the mark instead.</p>
    </>
  );
}
