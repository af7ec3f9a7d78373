import { type PictureSize, pictureSize } from './pictureSize.ts';

/** Longest edge kept, CSS px of the picture itself. */
const LONGEST_EDGE_PX = 1600;
/** Most bytes a kept picture may take. */
const MOST_BYTES = 300_000;
/** A file larger than this is refused before a phone runs out of memory over it. */
const MOST_FILE_BYTES = 60_000_000;
/** A file says its size in its first bytes; those of a JPEG may stand behind a preview and colour tables. */
const HEAD_BYTES = 1_000_000;
/** Most pixels a browser is asked to lay out whole, at four bytes each. A phone's own camera gives up to about 50 million. */
const MOST_WHOLE_PX = 64_000_000;
/** Most pixels where the browser can decode smaller than the file is: 16320 × 12240, the largest of any phone, and some. */
const MOST_REDUCED_PX = 250_000_000;
const QUALITIES = [0.82, 0.7, 0.58, 0.46, 0.34] as const;
/** How much smaller the picture gets when the lowest quality is still too heavy. */
const SHRINK = 0.75;

/** A picture as the logbook keeps it. Being drawn anew, it carries no place, no camera and no other hidden data. */
export interface ShrunkPhoto {
  buf: ArrayBuffer;
  type: 'image/jpeg';
  widthPx: number;
  heightPx: number;
}

export type PhotoResult =
  | { ok: true; photo: ShrunkPhoto }
  | { ok: false; reason: 'not-a-picture' | 'too-large' | 'too-many-pixels' | 'no-decoder' };

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

/**
 * The smallest size a JPEG can be decoded at without losing detail of the picture to keep: its blocks of eight give
 * one to eight pixels each.
 * @example reducedTo(7300, 5500, 1600) //=> { widthPx: 1825, heightPx: 1375 }
 */
export function reducedTo(
  widthPx: number,
  heightPx: number,
  leastPx: number,
): { widthPx: number; heightPx: number } {
  const eighths = Math.min(8, Math.ceil((8 * leastPx) / Math.max(widthPx, heightPx)));
  const reduced = (edgePx: number) => Math.ceil((edgePx * eighths) / 8);
  return { widthPx: reduced(widthPx), heightPx: reduced(heightPx) };
}

/** Whether this browser decodes a JPEG smaller than it is, and turns it upright as its camera says. */
const decodesReduced = (): boolean =>
  'ImageDecoder' in globalThis && 'VideoFrame' in globalThis && 'rotation' in VideoFrame.prototype;

/** A JPEG decoded at a part of its size: 200 megapixels take 40 MB this way instead of 770 (measured in Chromium). */
async function decodeReduced(file: Blob, size: PictureSize): Promise<VideoFrame | undefined> {
  const { widthPx, heightPx } = reducedTo(size.widthPx, size.heightPx, LONGEST_EDGE_PX);
  const decoder = new ImageDecoder({
    ...{ data: file.stream(), type: 'image/jpeg' },
    ...{ desiredWidth: widthPx, desiredHeight: heightPx },
  });
  try {
    return (await decoder.decode()).image;
  } catch {
    return undefined;
  } finally {
    decoder.close();
  }
}

/** How a picture of this size can be laid out: reduced, whole, or not without more memory than a phone has. */
export function wayToDecode(size: PictureSize | undefined, reduces: boolean): 'reduced' | 'whole' | 'refuse' {
  if (!size) return 'whole';
  const pixels = size.widthPx * size.heightPx;
  if (size.kind === 'jpeg' && reduces) return pixels > MOST_REDUCED_PX ? 'refuse' : 'reduced';
  return pixels > MOST_WHOLE_PX ? 'refuse' : 'whole';
}

async function decodeWhole(file: Blob): Promise<ImageBitmap | HTMLImageElement | undefined> {
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

/** One picture at a time: two large ones at once would need the memory of both. */
let lastMade: Promise<unknown> = Promise.resolve();

/**
 * Makes of a taken or chosen file the picture to keep: upright, at most 1600 px and 300 kB, JPEG drawn anew.
 * @param file what the file field gave
 * @returns the picture, or why there is none
 */
export function photoFromFile(file: Blob): Promise<PhotoResult> {
  const made = lastMade.then(() => makePhoto(file));
  lastMade = made.catch(() => {});
  return made;
}

async function makePhoto(file: Blob): Promise<PhotoResult> {
  if (file.size > MOST_FILE_BYTES) return { ok: false, reason: 'too-large' };
  if (file.type !== '' && !file.type.startsWith('image/')) return { ok: false, reason: 'not-a-picture' };
  const size = pictureSize(new Uint8Array(await file.slice(0, HEAD_BYTES).arrayBuffer()));
  const way = wayToDecode(size, decodesReduced());
  if (way === 'refuse') return { ok: false, reason: 'too-many-pixels' };
  const reduced = way === 'reduced' && size ? await decodeReduced(file, size) : undefined;
  const source = reduced ?? (wayToDecode(size, false) === 'refuse' ? undefined : await decodeWhole(file));
  // A file that says it is a picture and cannot be drawn is in a format this browser lacks (or is broken).
  if (!source) return { ok: false, reason: file.type === '' ? 'not-a-picture' : 'no-decoder' };

  const canvas = document.createElement('canvas');
  const drawn = async (longestPx: number, quality: number) => {
    const [wide, high] =
      'displayWidth' in source ? [source.displayWidth, source.displayHeight] : [source.width, source.height];
    const { widthPx, heightPx } = fitWithin(wide, high, longestPx);
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
