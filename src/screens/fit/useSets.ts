import { useEffect, useState } from 'preact/hooks';
import type { PilePart } from '../../fit/pile.ts';
import { type CompleteSets, completeSets, type SetsOptions } from '../../fit/sets/completeSets.ts';

type Tie = NonNullable<SetsOptions['tie']>;

/** Not before the page has been drawn and nothing else is being done; where a browser cannot tell, a moment later. */
function whenIdle(work: () => void): () => void {
  if (typeof requestIdleCallback === 'function') {
    const handle = requestIdleCallback(work, { timeout: 1500 });
    return () => cancelIdleCallback(handle);
  }
  const timer = setTimeout(work, 60);
  return () => clearTimeout(timer);
}

/**
 * The best whole bikes that can be made of a frame and parts at hand, computed when the page is idle.
 * @param key changes when the parts or the frame do
 * @returns undefined while it is computed
 */
export function useSets(
  frame: PilePart | undefined,
  shelf: readonly PilePart[],
  { tie, key }: { tie: Tie; key: string },
): CompleteSets | undefined {
  const [sets, setSets] = useState<{ of: string; sets: CompleteSets }>();
  const of = `${tie} ${key}`;
  useEffect(() => {
    if (!frame) return;
    return whenIdle(() => setSets({ of, sets: completeSets(shelf, frame, { tie, limit: 3 }) }));
    // What it is computed of is named by the key.
  }, [of]);
  return sets?.of === of ? sets.sets : undefined;
}
