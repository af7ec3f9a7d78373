import { useEffect, useState } from 'preact/hooks';

/** Bytes of a picture as the logbook keeps them. */
export interface PhotoBytes {
  buf: ArrayBuffer;
  type: string;
}

/** A kind that shows a picture and nothing else; bytes that say they are a page or a drawing are shown as no page. */
const mediaType = (type: string) => (/^image\/(jpeg|png|webp|avif)$/.test(type) ? type : '');

/**
 * An address the page can draw a stored picture from; it is given back when the picture leaves the page.
 * @param photo the bytes, or undefined or without bytes while they are still being read or made
 */
export function usePhotoUrl(photo: PhotoBytes | undefined): string | undefined {
  const [url, setUrl] = useState<string>();
  useEffect(() => {
    if (!photo || photo.buf.byteLength === 0) return setUrl(undefined);
    const made = URL.createObjectURL(new Blob([photo.buf], { type: mediaType(photo.type) }));
    setUrl(made);
    return () => URL.revokeObjectURL(made);
  }, [photo]);
  return url;
}
