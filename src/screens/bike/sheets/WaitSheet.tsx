import { Button } from '../../../controls/Button.tsx';
import { Countdown } from '../../../controls/figures/Countdown.tsx';
import { Notice } from '../../../controls/frames/Notice.tsx';
import { Sheet } from '../../../controls/frames/Sheet.tsx';
import type { EntryOf } from '../../../journal/entries.ts';
import type { WaitRow } from '../../../journal/rows.ts';
import { waitWords } from '../../../words/waitWords.ts';
import { useNow, useRun } from '../../door.tsx';
import { useReminders } from '../../reminders/useReminders.ts';
import { hrefOf } from '../../route.ts';
import { SaveNotice } from './SaveNotice.tsx';

type WaitOutcome = EntryOf<'wait-ended'>['outcome'];

export interface WaitSheetProps {
  wait: WaitRow;
  jointName: string | undefined;
  onClose: () => void;
}

/** One wait: how long still, and how it ended. */
export function WaitSheet({ wait, jointName, onClose }: WaitSheetProps) {
  const nowMs = useNow(1000);
  const reminders = useReminders();
  const { run, save } = useRun();
  const { waitId, title, dueAtMs = nowMs, startedAtMs, jointId, waitKind } = wait;
  const over = dueAtMs <= nowMs;
  const end = async (outcome: WaitOutcome, undo: string) => {
    if (await run({ type: 'end-wait', waitId, outcome }, { undo })) onClose();
  };
  return (
    <Sheet open title={waitWords(waitKind, title)} onClose={onClose}>
      <div class="stack">
        <SaveNotice save={save} />
        <Countdown
          label={waitKind === 'cure' ? 'Cure' : 'Timer'}
          dueAtMs={dueAtMs}
          nowMs={nowMs}
          sinceMs={startedAtMs}
        />
        {!over && reminders && <reminders.WhenOver wait={wait} />}
        {over ? (
          <Button kind="main" wide icon="check" onPress={() => end('looked', `${title}: checked`)}>
            Checked, cured
          </Button>
        ) : (
          <>
            {waitKind === 'cure' && (
              <Notice kind="caution" title="Not cured yet">
                If you end it early the joint stays listed as not cured until you re-apply threadlocker.
              </Notice>
            )}
            <Button wide icon="stop" onPress={() => end('cut-short', `${title}: ended early`)}>
              End early
            </Button>
          </>
        )}
        {(over || waitKind !== 'cure') && (
          <Button wide onPress={() => end('no-longer-needed', `${title}: no longer needed`)}>
            No longer needed
          </Button>
        )}
        {jointId && (
          <Button
            wide
            icon="bolt"
            under={jointName === title ? undefined : jointName}
            href={hrefOf({ at: 'joint', jointId })}
          >
            To the joint
          </Button>
        )}
      </div>
    </Sheet>
  );
}
