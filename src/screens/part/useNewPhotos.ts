import { useState } from 'preact/hooks';
import type { Photo } from '../../logbook.ts';
import { photoFromFile } from '../../sensing/photo.ts';
import { photoWords } from '../bike/photoWords.ts';
import { useLogbook } from '../door.tsx';

/**
 * Photos taken in a form and not yet saved. They live as long as the form is open: a picture is too heavy
 * to be mirrored with the words of the draft.
 */
export function useNewPhotos(): {
  photos: Photo[];
  trouble: string | undefined;
  add(file: File): void;
  clear(): void;
} {
  const logbook = useLogbook();
  const [photos, setPhotos] = useState<Photo[]>([]);
  const [trouble, setTrouble] = useState<string>();
  const add = async (file: File) => {
    const made = await photoFromFile(file);
    setTrouble(made.ok ? undefined : photoWords[made.reason]);
    if (made.ok) setPhotos((old) => [...old, { photoId: logbook.newId(), ...made.photo }]);
  };
  return {
    photos,
    trouble,
    add: (file) => void add(file),
    clear: () => setPhotos([]),
  };
}
