import { useEffect, useRef } from 'preact/hooks';
import { type BenchCommand, listenForKeys } from '../../sensing/keys.ts';

export type KeyActs = Partial<Record<BenchCommand, (() => void) | undefined>>;

/** Keyboard, presenter and foot switch at the bench; what has no act here does nothing. */
export function useBenchKeys(acts: KeyActs): void {
  const latest = useRef(acts);
  latest.current = acts;
  useEffect(() => listenForKeys((command) => latest.current[command]?.()), []);
}
