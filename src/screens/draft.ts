import { useCallback, useState } from 'preact/hooks';
import type { Photo } from '../logbook.ts';

/** Where drafts lie while no page is open. */
export interface DraftPlace {
  /** The words that lay there when this page was opened, by the key of their form. */
  texts: ReadonlyMap<string, string>;
  /** The photos that lay there. */
  photos: ReadonlyMap<string, Photo[]>;
  /** Keeps words or photos of a form, each in place of what it had before; or lets the form's go, both. */
  keep(key: string, kept: string | Photo[] | undefined): void;
}

/** Drafts of this page: a form reads its own before it is drawn, so they are at hand at once. */
const texts = new Map<string, string>();
const photos = new Map<string, Photo[]>();
let place: DraftPlace | undefined;

/** Takes up what an earlier page left half done, and mirrors every draft there from now on. */
export function keepDraftsIn(given: DraftPlace): void {
  place = given;
  for (const [key, text] of given.texts) texts.set(key, text);
  for (const [key, taken] of given.photos) photos.set(key, taken);
}

function put(key: string, text: string): void {
  texts.set(key, text);
  place?.keep(key, text);
}

/** Photos taken in a form and not yet saved. */
export const photosOf = (key: string): Photo[] => photos.get(key) ?? [];

/** Keeps the photos of a form until it is saved. */
export function putPhotos(key: string, taken: Photo[]): void {
  if (taken.length === 0 && !photos.has(key)) return;
  if (taken.length === 0) photos.delete(key);
  else photos.set(key, taken);
  place?.keep(key, taken);
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

/** Whether anything typed or taken anywhere is not saved yet; an update waits for it. */
export function hasDrafts(): boolean {
  return texts.size > 0 || photos.size > 0;
}

/** Lets a draft go that nobody will come back to, as that of a step taken out of the list. */
export function forgetDraft(key: string): void {
  const words = texts.delete(key);
  const pictures = photos.delete(key);
  if (words || pictures) place?.keep(key, undefined);
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

/**
 * Photos taken in a form, kept as its words are: a killed browser gives them back.
 * @param key of the form's draft; letting that go lets the photos go
 * @returns the photos, and a way to change them
 */
export function usePhotoDraft(key: string): [Photo[], (change: (old: Photo[]) => Photo[]) => void] {
  const [, redraw] = useState(0);
  const change = useCallback(
    (changed: (old: Photo[]) => Photo[]) => {
      putPhotos(key, changed(photosOf(key)));
      redraw((times) => times + 1);
    },
    [key],
  );
  return [photosOf(key), change];
}
