import { useEffect, useRef, useState } from 'preact/hooks';
import { Button } from '../../controls/Button.tsx';
import { bell } from '../../sensing/sound.ts';
import { showTestMessage, testReminder } from '../../sensing/testReminder.ts';
import { testOutcomeWords } from '../../words/testOutcomeWords.ts';

const MINUTE_MS = 60_000;

/** Tries a reminder in a minute, and says what got through. */
export function TestReminder() {
  const [outcome, setOutcome] = useState<string>();
  const stop = useRef<() => void>(undefined);
  useEffect(() => () => stop.current?.(), []);
  const begin = () => {
    const ringer = bell();
    void ringer.unlock();
    stop.current?.();
    setOutcome('In one minute. Lock the phone or switch apps to see what gets through.');
    stop.current = testReminder(
      MINUTE_MS,
      {
        now: Date.now,
        ring: ringer.ring,
        show: () => showTestMessage('Pinchbolt', 'Test reminder'),
        after: (ms, then) => {
          const timer = setTimeout(then, ms);
          return () => clearTimeout(timer);
        },
      },
      (how) => setOutcome(testOutcomeWords(how)),
    );
  };
  return (
    <Button icon="clock" wide under={outcome} onPress={begin}>
      Test in one minute
    </Button>
  );
}
