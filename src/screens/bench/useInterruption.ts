import { useEffect, useState } from 'preact/hooks';
import { useLogbook } from '../door.tsx';
import { interrupted, lastSitting, sitAt } from './sitting.ts';

const BEAT_MS = 10_000;

/**
 * Whether to ask what became of the open step: the page was opened anew, or nothing was touched at the bench
 * for a while.
 * @param inHandId the step shown, while it is open
 * @param openStepId the step the logbook holds as open
 * @returns whether to ask, and how to say that it is answered
 */
export function useInterruption(
  bikeId: string,
  inHandId: string | undefined,
  openStepId: string | undefined,
): [boolean, () => void] {
  const logbook = useLogbook();
  const away = (stepId: string) =>
    interrupted(lastSitting(bikeId), stepId, logbook.now(), performance.timeOrigin);
  const [asked, setAsked] = useState(
    () => openStepId !== undefined && openStepId === inHandId && away(openStepId),
  );
  useEffect(() => {
    if (asked || inHandId === undefined) return;
    const sit = () => sitAt(bikeId, inHandId, logbook.now());
    // A phone that slept may run the timer before it says that the page is back: so both look first.
    const look = () => {
      if (document.visibilityState === 'visible' && away(inHandId)) setAsked(true);
      else if (document.visibilityState === 'visible') sit();
    };
    sit();
    const beat = setInterval(look, BEAT_MS);
    document.addEventListener('visibilitychange', look);
    return () => {
      clearInterval(beat);
      document.removeEventListener('visibilitychange', look);
    };
  }, [asked, bikeId, inHandId, logbook]);
  return [asked, () => setAsked(false)];
}
