import { onlyHere, savedCopy } from './exchange/copy/savedCopy.ts';
import { isDemo } from './journal/demoIds.ts';
import type { Logbook } from './logbook.ts';
import { linesLeft } from './mirror/copyLeft.ts';
import { heldBefore } from './mirror/mark.ts';
import { openMirror } from './mirror/mirror.ts';
import { keepSecondCopy } from './mirror/secondCopy.ts';
import url from './mirror/worker.ts?worker&url';
import type { Safeguards } from './screens/safety.tsx';
import { onlyHereWords, secondCopyWords } from './words/safetyWords.ts';
import { workerName } from './workerName.ts';

/** What tells that this phone held a logbook, by the mark or by a second copy with entries. */
export const heldHere = () =>
  heldBefore(async () => {
    const files = await navigator.storage?.getDirectory?.().catch(() => undefined);
    return linesLeft(files, globalThis.caches);
  });

/** The second copy of this page's logbook, written by a worker of its own, and what is known of saved copies. */
export function safeguardsOf(logbook: Logbook): Safeguards {
  const startWorker = () => new Worker(workerName(url));
  const copy = keepSecondCopy({
    source: logbook.copies,
    mirror: () => openMirror({ startWorker }),
    now: () => logbook.now(),
    ofDemo: isDemo,
  });
  return {
    copy,
    copyWords: secondCopyWords,
    savedCopy,
    async oldEntriesHere() {
      const found = await onlyHere(logbook.copies);
      return found && onlyHereWords(found, logbook.now());
    },
  };
}
