import { useState } from 'preact/hooks';
import { Button, type ButtonSize } from '../../controls/Button.tsx';
import { useLogbook } from '../door.tsx';
import { handToCalendar } from './handToCalendar.ts';

export interface CalendarButtonProps {
  /** The row whose time is handed over; all of them where it is left out. */
  of?: string | undefined;
  size?: ButtonSize;
}

/** Hands what is due to the phone's calendar, which rings with this app closed; says what became of it. */
export function CalendarButton({ of, size = 'hand' }: CalendarButtonProps) {
  const logbook = useLogbook();
  const [outcome, setOutcome] = useState<string>();
  const hand = async () => {
    try {
      const [all, { distanceUnit }] = await Promise.all([
        logbook.read('duties', {}),
        logbook.read('settings', {}),
      ]);
      const duties = of === undefined ? all : all.filter(({ key }) => key === of);
      setOutcome(await handToCalendar(duties, distanceUnit, logbook.now()));
    } catch {
      setOutcome('Not added. Try again.');
    }
  };
  return (
    <Button icon="calendar" size={size} wide under={outcome} onPress={() => void hand()}>
      {of === undefined ? 'Add all to the calendar' : 'Add to the calendar'}
    </Button>
  );
}
