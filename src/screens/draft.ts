import { useCallback, useRef, useState } from 'preact/hooks';
import {
  type ChangedMeanwhile,
  changedMeanwhile,
  type Edit,
  editOf,
  formOf,
  withTyped,
} from '../drafts/edit.ts';
import type { Photo } from '../logbook.ts';

/** Where drafts lie while no page is open. */
export interface DraftPlace {
  /** The words that lay there when this page was opened, by the key of their form. */
  texts: ReadonlyMap<string, string>;
  /** The photos that lay there. */
  photos: ReadonlyMap<string, Photo[]>;
  /**
   * Keeps words or photos of a form, each in place of what it had before. No words or no photos lets those go;
   * undefined lets both go.
   */
  keep(key: string, kept: string | Photo[] | undefined): void;
}

/** Drafts of this page: a form reads its own before it is drawn, so they are at hand at once. */
const texts = new Map<string, string>();
const photos = new Map<string, Photo[]>();
let place: DraftPlace | undefined;

/**
 * Takes up what an earlier page left half done, and mirrors every draft there from now on. What was typed here
 * before the place answered is newer than what lay there.
 */
export function keepDraftsIn(given: DraftPlace): void {
  place = given;
  for (const [key, text] of texts) given.keep(key, text);
  for (const [key, taken] of photos) given.keep(key, taken.filter(isMade));
  for (const [key, text] of given.texts) if (!texts.has(key)) texts.set(key, text);
  for (const [key, taken] of given.photos) if (!photos.has(key)) photos.set(key, taken);
}

function put(key: string, text: string): void {
  texts.set(key, text);
  place?.keep(key, text);
}

/** Photos that are still being made smaller, each with what comes of it. */
const making = new WeakMap<Photo, Promise<Photo | undefined>>();

/** A photo in its place before it is made: its id is known, its bytes are not. */
export function photoBeingMade(photoId: string, made: Promise<Photo | undefined>): Photo {
  const photo = { photoId, buf: new ArrayBuffer(0), type: '', widthPx: 0, heightPx: 0 };
  making.set(photo, made);
  return photo;
}

/** The photos as they are to be saved, once all of them are made; one that could not be made is left out. */
export async function madePhotos(taken: readonly Photo[]): Promise<Photo[]> {
  const made = await Promise.all(taken.map((photo) => making.get(photo) ?? photo));
  return made.filter((photo) => photo !== undefined);
}

const isMade = (photo: Photo): boolean => !making.has(photo);

/** Photos taken in a form and not yet saved. */
export const photosOf = (key: string): Photo[] => photos.get(key) ?? [];

/** Keeps the photos of a form until it is saved. */
export function putPhotos(key: string, taken: Photo[]): void {
  if (taken.length === 0 && !photos.has(key)) return;
  if (taken.length === 0) photos.delete(key);
  else photos.set(key, taken);
  place?.keep(key, taken.filter(isMade));
}

/** Drafts that forms of the screen in sight have begun with. */
const begunWith = new Set<string>();

/** The drafts that the screen in sight was drawn from, in case one of them cannot be drawn. */
export const draftsRead = (): string[] => [...begunWith].filter((key) => texts.has(key) || photos.has(key));

/** Another screen comes into sight. */
export const forgetDraftsRead = (): void => begunWith.clear();

/** What lies there for a form. */
function stored(key: string): unknown {
  begunWith.add(key);
  try {
    const text = texts.get(key);
    return text === undefined ? undefined : JSON.parse(text);
  } catch {
    // A damaged draft is no reason to lose the form.
    return undefined;
  }
}

const kindOf = (value: unknown): string => (Array.isArray(value) ? 'list' : typeof value);

/** The fields of a draft that fit the form; an older version may have kept a field as something else. */
function fitting<T extends object>(first: T, draft: unknown): Partial<T> {
  if (typeof draft !== 'object' || draft === null) return {};
  const fits = ([field, value]: [string, unknown]) => {
    const begins = (first as Record<string, unknown>)[field];
    return begins === undefined || begins === null || value === null || kindOf(begins) === kindOf(value);
  };
  return Object.fromEntries(Object.entries(draft).filter(fits)) as Partial<T>;
}

/** Whether anything typed or taken anywhere is not saved yet; an update waits for it. */
export function hasDrafts(): boolean {
  return texts.size > 0 || photos.size > 0;
}

/** Deletes a draft that is not needed any more, as that of a step taken out of the list. */
export function forgetDraft(key: string): void {
  const words = texts.delete(key);
  const pictures = photos.delete(key);
  if (words || pictures) place?.keep(key, undefined);
}

/** Lets the words of a draft go and keeps its photos. */
function forgetWords(key: string): void {
  if (texts.delete(key)) place?.keep(key, '');
}

/**
 * What is being typed, mirrored until it is saved: a killed browser gives it back. A form brought back to what it
 * began with holds nothing any more.
 * @param key names the form and what it is about
 * @returns the draft, a way to change it, and a way to let it go after saving
 */
export function useDraft<T extends object>(
  key: string,
  first: T,
): [T, (change: Partial<T>) => void, () => void] {
  const [draft, setDraft] = useState<T>(() => ({ ...first, ...fitting(first, stored(key)) }));
  const begin = useRef(first);
  begin.current = first;
  const change = useCallback(
    (changed: Partial<T>) =>
      setDraft((old) => {
        const next = { ...old, ...changed };
        if (sameForm(next, begin.current)) forgetWords(key);
        else put(key, JSON.stringify(next));
        return next;
      }),
    [key],
  );
  const clear = useCallback(() => forgetDraft(key), [key]);
  return [draft, change, clear];
}

function sameForm<T extends object>(a: T, b: T): boolean {
  const fields = [...new Set([...Object.keys(a), ...Object.keys(b)])] as (keyof T)[];
  return fields.every((field) => JSON.stringify(a[field]) === JSON.stringify(b[field]));
}

export interface EditForm<T> {
  /** The form: what is known now, with what was typed laid over it. */
  draft: T;
  change(changed: Partial<T>): void;
  /** After saving. */
  clear(): void;
  /** What was changed elsewhere since the edit began. */
  meanwhile: ChangedMeanwhile<T>[];
}

/**
 * A form about a thing that is already known. Only what the person changed is kept, and what it stood for then, so
 * that facts written down elsewhere meanwhile stay.
 * @param key names the form and the thing
 * @param now the thing as it is known, as a form
 */
export function useEdit<T extends object>(key: string, now: T): EditForm<T> {
  const [edit, setEdit] = useState<Edit<T> | undefined>(() => editOf<T>(stored(key)));
  const known = useRef(now);
  known.current = now;
  const change = useCallback(
    (changed: Partial<T>) =>
      setEdit((old) => {
        const next = withTyped(known.current, old, changed);
        if (next) put(key, JSON.stringify(next));
        else forgetWords(key);
        return next;
      }),
    [key],
  );
  const clear = useCallback(() => forgetDraft(key), [key]);
  return { draft: formOf(now, edit), change, clear, meanwhile: changedMeanwhile(now, edit) };
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
