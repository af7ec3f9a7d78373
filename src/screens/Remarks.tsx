import './remarks.css';
import { useState } from 'preact/hooks';
import { Button } from '../controls/Button.tsx';
import { Notice } from '../controls/frames/Notice.tsx';
import { Icon } from '../controls/Icon.tsx';
import type { DueLine } from '../logbook.ts';
import { spanText } from '../words/dayText.ts';
import { dueWords } from '../words/dueWords.ts';
import type { Beside } from './App.tsx';
import { hasDrafts } from './draft.ts';
import { hrefOf } from './route.ts';

/** What it is before where it is: a long name of the bike must not push it out of the line. */
function wordsOf(lines: DueLine[]): string {
  const [first] = lines;
  if (!first) return '';
  const words = `${dueWords(first)}, ${first.bikeName}`;
  return lines.length === 1 ? words : `${lines.length} due: ${words}`;
}

/** What fell due, a clock that was set, a newer version: said above the screen, whichever it is. */
export function Remarks({ beside, atBench }: { beside: Beside; atBench: boolean }) {
  const { update, fellDue, clockMoved, missing } = beside;
  const [putOff, setPutOff] = useState<Beside['update']>();
  if (!fellDue && !clockMoved && !update && !missing) return null;
  return (
    <aside class="remarks" aria-label="Remarks">
      {fellDue && (
        <div class="fell-due" role="status">
          <a class="fell-due-words" href={hrefOf({ at: 'home' })} onClick={fellDue.seen}>
            <Icon name="bell" label="Due now:" />
            <span>{wordsOf(fellDue.lines)}</span>
          </a>
          <Button onPress={fellDue.seen}>Dismiss</Button>
        </div>
      )}
      {missing && (
        <Notice
          kind="caution"
          title={missing.title}
          action={<Button href="#/check">Check the logbook</Button>}
        >
          {missing.text}
        </Notice>
      )}
      {clockMoved && (
        <Notice
          kind="caution"
          title={`The phone's clock is ${spanText(Math.abs(clockMoved.byMs))} ${clockMoved.byMs > 0 ? 'ahead of' : 'behind'} where it was`}
          action={
            <>
              <Button onPress={clockMoved.shift}>I changed the clock: shift the timers</Button>
              <Button onPress={clockMoved.leave}>Leave the timers alone</Button>
            </>
          }
        >
          If the clock was changed, timers end at the wrong time. If the phone was only asleep, ignore this.
        </Notice>
      )}
      {/* Never in the middle of a step, and never over something half typed. */}
      {update && update !== putOff && !atBench && !hasDrafts() && (
        <Notice
          kind="note"
          title="A newer version is ready"
          action={
            <>
              <Button onPress={update.takeOver}>Use it now</Button>
              <Button onPress={() => setPutOff(update)}>Later</Button>
            </>
          }
        >
          Or it updates itself when every tab of the app is closed. Your log is not affected.
        </Notice>
      )}
    </aside>
  );
}
