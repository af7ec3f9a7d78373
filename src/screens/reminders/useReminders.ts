import { useEffect, useState } from 'preact/hooks';

type Pieces = typeof import('./pieces.ts');
let pieces: Pieces | undefined;

/** The pieces about reminders: a screen is drawn without them first, and they come a moment later. */
export function useReminders(): Pieces | undefined {
  const [, redraw] = useState(false);
  useEffect(() => {
    if (pieces) return;
    import('./pieces.ts').then(
      (loaded) => {
        pieces = loaded;
        redraw(true);
      },
      // Not there now: the next screen asks again.
      () => {},
    );
  }, []);
  return pieces;
}
