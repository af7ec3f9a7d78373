import { useCallback, useState } from 'preact/hooks';

const PREFIX = 'draft:';

function stored<T>(key: string): T | undefined {
  try {
    const text = localStorage.getItem(PREFIX + key);
    return text === null ? undefined : (JSON.parse(text) as T);
  } catch {
    // A damaged draft is no reason to lose the form.
    return undefined;
  }
}

/** Whether anything typed anywhere is not saved yet; an update waits for it. */
export function hasDrafts(): boolean {
  try {
    return Object.keys(localStorage).some((key) => key.startsWith(PREFIX));
  } catch {
    return false;
  }
}

/** Lets a draft go that nobody will come back to, as that of a step taken out of the list. */
export function forgetDraft(key: string): void {
  try {
    localStorage.removeItem(PREFIX + key);
  } catch {
    // Nothing was mirrored then.
  }
}

/**
 * What is being typed, mirrored until it is saved: a killed browser gives it back.
 * @param key names the form and what it is about
 * @returns the draft, a way to change it, and a way to let it go after saving
 */
export function useDraft<T>(key: string, first: T): [T, (change: Partial<T>) => void, () => void] {
  const [draft, setDraft] = useState<T>(() => ({ ...first, ...stored<Partial<T>>(key) }));
  const change = useCallback(
    (changed: Partial<T>) =>
      setDraft((old) => {
        const next = { ...old, ...changed };
        try {
          localStorage.setItem(PREFIX + key, JSON.stringify(next));
        } catch {
          // Without a mirror the form still works; only a kill would lose it.
        }
        return next;
      }),
    [key],
  );
  const clear = useCallback(() => forgetDraft(key), [key]);
  return [draft, change, clear];
}
