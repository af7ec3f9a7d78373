import { useState } from 'preact/hooks';
import type { Photo } from '../logbook.ts';
import { photoFromFile } from '../sensing/photo.ts';
import { photoWords } from './bike/sheets/photoWords.ts';
import { useLogbook } from './door.tsx';
import { photoBeingMade, usePhotoDraft } from './draft.ts';

export interface TakenPhotos {
  photos: Photo[];
  /** One sentence when a file did not become a photo. */
  trouble: string | undefined;
  add(file: File): void;
  clear(): void;
}

/**
 * Photos taken in a form and not yet saved. They are kept with the words of its draft, and go with them.
 * @param key of the form's draft
 */
export function useNewPhotos(key: string): TakenPhotos {
  const logbook = useLogbook();
  const [photos, change] = usePhotoDraft(key);
  const [trouble, setTrouble] = useState<string>();
  const add = async (file: File) => {
    setTrouble(undefined);
    const photoId = logbook.newId();
    const result = photoFromFile(file).catch(() => ({ ok: false, reason: 'no-decoder' }) as const);
    const made = result.then((one) => (one.ok ? { photoId, ...one.photo } : undefined));
    const waiting = photoBeingMade(photoId, made);
    change((old) => [...old, waiting]);
    const photo = await made;
    // Where the form was saved or left meanwhile, it is in no form any more.
    change((old) => old.flatMap((one) => (one === waiting ? (photo ?? []) : one)));
    const { ok, ...failed } = await result;
    if (!ok && 'reason' in failed) setTrouble(photoWords[failed.reason]);
  };
  return { photos, trouble, add: (file) => void add(file), clear: () => change(() => []) };
}
