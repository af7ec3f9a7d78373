import { createContext } from 'preact';
import { useContext, useEffect, useState } from 'preact/hooks';
import type { Entry } from '../journal/entries.ts';
import type { LogbookMark } from '../mirror/mark.ts';
import type { CopyState, SecondCopy } from '../mirror/secondCopy.ts';

/** What guards against the loss of the logbook. */
export interface Safeguards {
  copy: SecondCopy;
  copyWords(state: CopyState): { title: string; detail: string };
  /** Watches a copy being saved, and notes how far the journal is in it. */
  savedCopy(atMs: number): {
    passing(entries: AsyncIterable<readonly Entry[]>): AsyncIterable<readonly Entry[]>;
    note(): void;
  };
  /** A sentence about entries that no saved copy holds; nothing while they are young. */
  oldEntriesHere(): Promise<string | undefined>;
}

/** What stands beside the logbook, in case it is lost. */
export interface Safety {
  /** Whether this phone held a logbook with entries; undefined on a first day. */
  heldBefore(): Promise<LogbookMark | undefined>;
  /** Loaded when it is needed. */
  safeguards(): Promise<Safeguards>;
}

export const SafetyDoor = createContext<Safety | undefined>(undefined);

export function useSafety(): Safety {
  const safety = useContext(SafetyDoor);
  if (!safety) throw new Error('a screen stands outside the door');
  return safety;
}

/** How the second copy stands, in words as well, and again whenever that changes; undefined until it is known. */
export function useCopyState(): (CopyState & { title: string; detail: string }) | undefined {
  const safety = useSafety();
  const [state, setState] = useState<CopyState & { title: string; detail: string }>();
  useEffect(() => {
    let stop = () => {};
    let current = true;
    const watch = async () => {
      const { copy, copyWords } = await safety.safeguards();
      if (!current) return;
      const show = (next: CopyState) => setState({ ...next, ...copyWords(next) });
      show(copy.state());
      stop = copy.onState(show);
    };
    watch().catch(() => {});
    return () => {
      current = false;
      stop();
    };
  }, [safety]);
  return state;
}
