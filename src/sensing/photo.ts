/** Longest edge kept, CSS px of the picture itself. */
const LONGEST_EDGE_PX = 1600;
/** Most bytes a kept picture may take. */
const MOST_BYTES = 300_000;
/** A file larger than this is refused before a phone runs out of memory over it. */
const MOST_FILE_BYTES = 60_000_000;
const QUALITIES = [0.82, 0.7, 0.58, 0.46, 0.34] as const;
/** How much smaller the picture gets when the lowest quality is still too heavy. */
const SHRINK = 0.75;

/** A picture as the logbook keeps it. Being drawn anew, it carries no place, no camera and no other hidden data. */
export interface Photo {
  buf: ArrayBuffer;
  type: 'image/jpeg';
  widthPx: number;
  heightPx: number;
}

export type PhotoResult =
  | { ok: true; photo: Photo }
  | { ok: false; reason: 'not-a-picture' | 'too-large' | 'no-decoder' };

/**
 * The size a picture is kept at: never larger than it is, its longest edge within a limit.
 * @param widthPx width, px, >= 1
 * @param heightPx height, px, >= 1
 * @param longestPx limit of the longer edge, px, >= 1
 * @throws RangeError when one of them is below 1 or not finite
 * @example fitWithin(4000, 3000, 1600) //=> { widthPx: 1600, heightPx: 1200 }
 */
export function fitWithin(
  widthPx: number,
  heightPx: number,
  longestPx: number,
): { widthPx: number; heightPx: number } {
  if (![widthPx, heightPx, longestPx].every((edge) => edge >= 1 && Number.isFinite(edge)))
    throw new RangeError('fitWithin: every edge must be 1 px or more');
  const factor = Math.min(1, longestPx / Math.max(widthPx, heightPx));
  const scaled = (edgePx: number) => Math.max(1, Math.round(edgePx * factor));
  return { widthPx: scaled(widthPx), heightPx: scaled(heightPx) };
}

/**
 * Encodes at falling quality, then at falling size, until the result is light enough.
 * @param encode draws and encodes at an edge and a quality; undefined when the browser gives nothing back
 * @param longestPx edge to begin with, px
 * @param mostBytes limit of the result
 * @returns the first result within the limit; undefined when the encoder fails or no size down to a tenth does
 * @example encodeWithin(async () => ({ size: 10 }), 1600, 300) //=> Promise of { size: 10 }
 */
export async function encodeWithin<B extends { size: number }>(
  encode: (longestPx: number, quality: number) => Promise<B | undefined>,
  longestPx: number,
  mostBytes: number,
): Promise<B | undefined> {
  for (let edgePx = longestPx; edgePx >= longestPx / 10; edgePx *= SHRINK)
    for (const quality of QUALITIES) {
      const made = await encode(Math.round(edgePx), quality);
      if (!made) return undefined;
      if (made.size <= mostBytes) return made;
    }
  return undefined;
}

async function decode(file: Blob): Promise<ImageBitmap | HTMLImageElement | undefined> {
  try {
    return await createImageBitmap(file, { imageOrientation: 'from-image' });
  } catch {
    // Some browsers draw formats in a page that they will not decode into a bitmap.
    const image = new Image();
    image.src = URL.createObjectURL(file);
    try {
      await image.decode();
      return image;
    } catch {
      return undefined;
    } finally {
      URL.revokeObjectURL(image.src);
    }
  }
}

/**
 * Makes of a taken or chosen file the picture to keep: upright, at most 1600 px and 300 kB, JPEG drawn anew.
 * @param file what the file field gave
 * @returns the picture, or why there is none
 */
export async function photoFromFile(file: Blob): Promise<PhotoResult> {
  if (file.size > MOST_FILE_BYTES) return { ok: false, reason: 'too-large' };
  if (file.type !== '' && !file.type.startsWith('image/')) return { ok: false, reason: 'not-a-picture' };
  const source = await decode(file);
  // A file that says it is a picture and cannot be drawn is in a format this browser lacks (or is broken).
  if (!source) return { ok: false, reason: file.type === '' ? 'not-a-picture' : 'no-decoder' };

  const canvas = document.createElement('canvas');
  const drawn = async (longestPx: number, quality: number) => {
    const { widthPx, heightPx } = fitWithin(source.width, source.height, longestPx);
    canvas.width = widthPx;
    canvas.height = heightPx;
    const pen = canvas.getContext('2d');
    if (!pen) return undefined;
    // JPEG knows no transparency; without this, clear parts would turn black.
    pen.fillStyle = '#fff';
    pen.fillRect(0, 0, widthPx, heightPx);
    pen.drawImage(source, 0, 0, widthPx, heightPx);
    return new Promise<Blob | undefined>((resolve) => {
      canvas.toBlob((blob) => resolve(blob ?? undefined), 'image/jpeg', quality);
    });
  };
  try {
    const blob = await encodeWithin(drawn, LONGEST_EDGE_PX, MOST_BYTES);
    if (blob?.type !== 'image/jpeg') return { ok: false, reason: blob ? 'no-decoder' : 'too-large' };
    const buf = await blob.arrayBuffer();
    return { ok: true, photo: { buf, type: 'image/jpeg', widthPx: canvas.width, heightPx: canvas.height } };
  } finally {
    if ('close' in source) source.close();
    // Phones keep a canvas's memory until it is emptied.
    canvas.width = 0;
  }
}
