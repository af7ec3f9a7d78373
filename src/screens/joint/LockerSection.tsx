import { Countdown } from '../../controls/figures/Countdown.tsx';
import { Ruler } from '../../controls/figures/Ruler.tsx';
import { ListRow } from '../../controls/lists/ListRow.tsx';
import type { JointRow, Locked, WaitRow } from '../../journal/rows.ts';
import { bondBroken } from '../../planning/bondBroken.ts';
import { cureGrid } from '../../standards/screws/cureGrid.ts';
import { lockers } from '../../standards/screws/lockers.ts';
import { whenText } from '../../words/dayText.ts';
import { useNow } from '../door.tsx';

/** Grades of the table are told by their label; others as they were written. */
const gradeText = (grade: string) => lockers.find((row) => row.grade === grade)?.label ?? grade;

const surfaceText = (surface: string) =>
  Object.entries(cureGrid.surfaces).find(([key]) => key === surface)?.[1].label ?? surface;

/** Threadlocker in the joint, and how far it has cured. */
export function LockerSection({
  joint,
  locked,
  waits,
}: {
  joint: JointRow;
  locked: Locked;
  waits: WaitRow[];
}) {
  const nowMs = useNow(1000);
  const wait = waits.find(({ waitId }) => waitId === locked.waitId);
  const { grade, surface, primer, atMs } = locked;
  // A wait that ended is not among the running ones; what is left then is when the cure was due.
  const dueAtMs = wait?.dueAtMs;
  const broken = bondBroken(joint, wait);
  const running = dueAtMs !== undefined && dueAtMs > nowMs;
  return (
    <>
      <Ruler label="Threadlocker" />
      <ListRow
        title={gradeText(grade)}
        detail={`${whenText(atMs)}, on ${surfaceText(surface).toLowerCase()}${primer ? ', with primer' : ''}`}
        state={broken ? 'due' : running ? 'waits' : dueAtMs === undefined ? 'noted' : 'due'}
        stateWord={
          broken
            ? 'Broken: re-apply'
            : running
              ? 'Curing'
              : dueAtMs === undefined
                ? 'Timer ended'
                : 'Time is up: check it'
        }
      />
      {joint.lockedBefore?.map((one) => (
        <p key={one.entryId} class="small">
          Before that: {gradeText(one.grade).toLowerCase()}, {whenText(one.atMs)}. Its cure ended with the
          next.
        </p>
      ))}
      {running && !broken && (
        <Countdown label="Cure" dueAtMs={dueAtMs} nowMs={nowMs} sinceMs={wait?.startedAtMs} />
      )}
      <p class="small">Turning it now breaks the bond. At a re-check, check the paint mark instead.</p>
    </>
  );
}
