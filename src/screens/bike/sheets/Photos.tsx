import { useEffect, useState } from 'preact/hooks';
import { PhotoFull } from '../../../controls/lists/PhotoFull.tsx';
import { PhotoStrip, type StripPhoto } from '../../../controls/lists/PhotoStrip.tsx';
import type { Id } from '../../../journal/entries.ts';
import type { Photo } from '../../../logbook.ts';
import { useLogbook } from '../../door.tsx';

export interface PhotosProps {
  photoIds: readonly Id[];
  /** What they show. */
  alt: string;
  onAdd?: ((file: File) => void) | undefined;
  addLabel?: string;
}

/** Photos of the logbook by their ids: as prints, and over the whole screen at a tap. */
export function Photos({ photoIds, alt, onAdd, addLabel }: PhotosProps) {
  const logbook = useLogbook();
  const [read, setRead] = useState<ReadonlyMap<Id, Photo | 'unreadable'>>(new Map());
  const [index, setIndex] = useState<number>();
  const wanted = photoIds.join(' ');
  useEffect(() => {
    let current = true;
    const ids = wanted === '' ? [] : wanted.split(' ');
    for (const photoId of ids) {
      // One that cannot be read says so in its place; the others are shown.
      const put = (photo: Photo | undefined) =>
        current && setRead((old) => new Map([...old, [photoId, photo ?? 'unreadable']]));
      logbook.read('photo', { photoId }).then(put, () => put(undefined));
    }
    return () => {
      current = false;
    };
  }, [logbook, wanted]);
  const strip: StripPhoto[] = photoIds.map((id, at) => ({
    id,
    photo: read.get(id),
    alt: photoIds.length > 1 ? `${alt}, ${at + 1}` : alt,
  }));
  return (
    <>
      <PhotoStrip photos={strip} onOpen={setIndex} onAdd={onAdd} {...(addLabel ? { addLabel } : {})} />
      <PhotoFull photos={strip} index={index} onIndex={setIndex} onClose={() => setIndex(undefined)} />
    </>
  );
}
