import { useEffect } from 'preact/hooks';
import { useLogbook } from '../door.tsx';

/** Leafing through the list opens nothing: a step is opened when it stays on the screen. */
const STAYED_MS = 1000;

/**
 * Writes down which step is open, so that a killed app can ask about it.
 * @param inHandId the step shown, while it is open
 * @param openStepId the step the logbook holds as open
 */
export function useOpenStep(inHandId: string | undefined, openStepId: string | undefined): void {
  const logbook = useLogbook();
  useEffect(() => {
    if (inHandId === undefined || inHandId === openStepId) return;
    const timer = setTimeout(() => {
      // Not written, the question after a break names an earlier step: not worth a message now.
      logbook.run({ type: 'open-step', stepId: inHandId }).catch(() => undefined);
    }, STAYED_MS);
    return () => clearTimeout(timer);
  }, [logbook, inHandId, openStepId]);
}
