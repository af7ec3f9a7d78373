import { useState } from 'preact/hooks';
import { Button } from '../../../controls/Button.tsx';
import { Fold } from '../../../controls/lists/Fold.tsx';
import { ListRow } from '../../../controls/lists/ListRow.tsx';
import type { Id } from '../../../journal/entries.ts';
import type { JointRow, WaitRow } from '../../../journal/rows.ts';
import { waitInSight } from '../../../practice/bench/waitInSight.ts';
import { spanShort } from '../../../words/timeLeft.ts';
import { overWord, waitWords } from '../../../words/waitWords.ts';
import { useNow } from '../../door.tsx';
import { useReminders } from '../../reminders/useReminders.ts';
import { hrefOf } from '../../route.ts';
import { StartWait } from '../sheets/StartWait.tsx';
import { WaitSheet } from '../sheets/WaitSheet.tsx';

/** What cures, seals or settles on this bike, with the time left. */
export function WaitsSection({
  bikeId,
  open,
  waits,
  joints,
}: {
  bikeId: Id;
  /** The one to open at once. */
  open: Id | undefined;
  waits: WaitRow[];
  joints: JointRow[];
}) {
  const nowMs = useNow(1000);
  const reminders = useReminders();
  const [sheet, setSheet] = useState<'start' | Id | undefined>(open);
  const shown = waits.filter(({ waitKind, dueAtMs = nowMs }) => waitInSight(waitKind, dueAtMs, nowMs));
  const sorted = shown.toSorted((a, b) => (a.dueAtMs ?? 0) - (b.dueAtMs ?? 0));
  const opened = waits.find(({ waitId }) => waitId === sheet);
  const running = sorted.find(({ dueAtMs = 0 }) => dueAtMs > nowMs);
  const jointOf = ({ jointId }: WaitRow) => joints.find((joint) => joint.jointId === jointId)?.name;
  return (
    <Fold label="Timers" end={shown.length} open={shown.length > 0}>
      {sorted.map((wait) => {
        const leftMs = (wait.dueAtMs ?? nowMs) - nowMs;
        const span = spanShort(Math.abs(leftMs));
        const over = leftMs > 0 ? undefined : overWord(wait.waitKind);
        const atSeal = wait.waitKind === 'seal' && wait.jointId;
        return (
          <ListRow
            key={wait.waitId}
            title={waitWords(wait.waitKind, wait.title)}
            detail={jointOf(wait) === wait.title ? undefined : jointOf(wait)}
            state={over ? 'done' : leftMs > 0 ? 'waits' : 'due'}
            stateWord={over ? `${over} ${span} ago` : leftMs > 0 ? `${span} left` : `Finished ${span} ago`}
            {...(atSeal
              ? { href: hrefOf({ at: 'seal', jointId: atSeal }) }
              : { onPress: () => setSheet(wait.waitId) })}
          />
        );
      })}
      {running && reminders && <reminders.AskMessages about={waitWords(running.waitKind, running.title)} />}
      <div class="buttons">
        <Button icon="hourglass" onPress={() => setSheet('start')}>
          Start a timer
        </Button>
      </div>
      {sheet === 'start' && <StartWait {...{ bikeId, joints }} onClose={() => setSheet(undefined)} />}
      {opened && <WaitSheet wait={opened} jointName={jointOf(opened)} onClose={() => setSheet(undefined)} />}
    </Fold>
  );
}
