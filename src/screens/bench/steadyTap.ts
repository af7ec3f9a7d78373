import { useMemo } from 'preact/hooks';

/** Two touches closer than this are one touch of a trembling knuckle; no bolt is tightened as fast. */
const STEADY_MS = 500;

/**
 * Lets through only touches that can be meant: not those right behind another, nor those that were on their
 * way when the step under the finger changed.
 * @returns a wrapper for what a touch does
 */
export function useSteadyTap(): (act: () => void) => () => void {
  return useMemo(() => {
    let lastMs = performance.now();
    return (act: () => void) => () => {
      const nowMs = performance.now();
      if (nowMs - lastMs < STEADY_MS) return;
      lastMs = nowMs;
      act();
    };
  }, []);
}
