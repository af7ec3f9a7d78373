import { useCallback, useState } from 'preact/hooks';

/** Where drafts lie while no page is open. */
export interface DraftPlace {
  /** What lay there when this page was opened. */
  texts: ReadonlyMap<string, string>;
  keep(key: string, text: string | undefined): void;
}

/** Drafts of this page: a form reads its own before it is drawn, so they are at hand at once. */
const texts = new Map<string, string>();
let place: DraftPlace | undefined;

/** Takes up what an earlier page left half typed, and mirrors every draft there from now on. */
export function keepDraftsIn(given: DraftPlace): void {
  place = given;
  for (const [key, text] of given.texts) texts.set(key, text);
}

function put(key: string, text: string): void {
  texts.set(key, text);
  place?.keep(key, text);
}

function stored<T>(key: string): T | undefined {
  try {
    const text = texts.get(key);
    return text === undefined ? undefined : (JSON.parse(text) as T);
  } catch {
    // A damaged draft is no reason to lose the form.
    return undefined;
  }
}

/** Whether anything typed anywhere is not saved yet; an update waits for it. */
export function hasDrafts(): boolean {
  return texts.size > 0;
}

/** Lets a draft go that nobody will come back to, as that of a step taken out of the list. */
export function forgetDraft(key: string): void {
  if (texts.delete(key)) place?.keep(key, undefined);
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
        put(key, JSON.stringify(next));
        return next;
      }),
    [key],
  );
  const clear = useCallback(() => forgetDraft(key), [key]);
  return [draft, change, clear];
}
