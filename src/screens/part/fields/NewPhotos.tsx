import { useState } from 'preact/hooks';
import { Notice } from '../../../controls/frames/Notice.tsx';
import { PhotoFull } from '../../../controls/lists/PhotoFull.tsx';
import { PhotoStrip } from '../../../controls/lists/PhotoStrip.tsx';
import type { TakenPhotos as Taken } from '../../useNewPhotos.ts';

export interface NewPhotosProps {
  taken: Taken;
  /** What they will show. */
  alt: string;
}

/** Photos of a form before it is saved. */
export function NewPhotos({ taken, alt }: NewPhotosProps) {
  const [index, setIndex] = useState<number>();
  const strip = taken.photos.map((photo, at) => ({ id: photo.photoId, photo, alt: `${alt}, ${at + 1}` }));
  return (
    <>
      <PhotoStrip photos={strip} onOpen={setIndex} onAdd={taken.add} />
      <PhotoFull photos={strip} index={index} onIndex={setIndex} onClose={() => setIndex(undefined)} />
      {taken.trouble && <Notice kind="error" title={taken.trouble} />}
    </>
  );
}
