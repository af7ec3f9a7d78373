import type { ButtonSize } from '../../controls/Button.tsx';
import type { WaitRow } from '../../journal/rows.ts';
import { waitWords } from '../../words/waitWords.ts';
import { AskMessages } from './AskMessages.tsx';
import { CalendarButton } from './CalendarButton.tsx';

/** How the end of a timer that runs can reach the person: a message, and the phone's calendar. */
export function WhenOver({ wait, size }: { wait: WaitRow; size?: ButtonSize }) {
  const { key, waitKind, title } = wait;
  return (
    <>
      <AskMessages about={waitWords(waitKind, title)} />
      <CalendarButton of={key} {...(size ? { size } : {})} />
    </>
  );
}
