/** Size of a picture, px, as its file says before anything is decoded. */
export interface PictureSize {
  kind: 'png' | 'jpeg' | 'gif' | 'webp' | 'heif' | 'bmp';
  widthPx: number;
  heightPx: number;
}

const text = (view: DataView, at: number, length: number): string => {
  let found = '';
  for (let index = at; index < Math.min(at + length, view.byteLength); index += 1)
    found += String.fromCharCode(view.getUint8(index));
  return found;
};

/** PNG, section 11.2.1: the header chunk is the first and begins with width and height. */
function png(view: DataView): PictureSize | undefined {
  if (view.getUint32(0) !== 0x89504e47 || text(view, 12, 4) !== 'IHDR') return undefined;
  return { kind: 'png', widthPx: view.getUint32(16), heightPx: view.getUint32(20) };
}

/** GIF89a, section 18: the logical screen follows the signature. */
function gif(view: DataView): PictureSize | undefined {
  if (!text(view, 0, 4).startsWith('GIF8')) return undefined;
  return { kind: 'gif', widthPx: view.getUint16(6, true), heightPx: view.getUint16(8, true) };
}

function bmp(view: DataView): PictureSize | undefined {
  if (text(view, 0, 2) !== 'BM') return undefined;
  return { kind: 'bmp', widthPx: view.getInt32(18, true), heightPx: Math.abs(view.getInt32(22, true)) };
}

/** Frame headers of ITU-T T.81, table B.1: C0 to CF but for tables (C4, C8, CC). */
const isFrame = (marker: number): boolean =>
  marker >= 0xc0 && marker <= 0xcf && marker !== 0xc4 && marker !== 0xc8 && marker !== 0xcc;

/** JPEG: segments of known length, until the frame header that holds the size. */
function jpeg(view: DataView): PictureSize | undefined {
  if (view.getUint16(0) !== 0xffd8) return undefined;
  let at = 2;
  while (at + 9 < view.byteLength) {
    if (view.getUint8(at) !== 0xff) return undefined;
    const marker = view.getUint8(at + 1);
    if (marker === 0xff) at += 1;
    else if (isFrame(marker))
      return { kind: 'jpeg', widthPx: view.getUint16(at + 7), heightPx: view.getUint16(at + 5) };
    else at += 2 + view.getUint16(at + 2);
  }
  return undefined;
}

const uint24 = (view: DataView, at: number): number =>
  view.getUint8(at) | (view.getUint8(at + 1) << 8) | (view.getUint8(at + 2) << 16);

/** WebP container, RFC 9649: extended, lossy (RFC 6386, 9.1) or lossless. */
function webp(view: DataView): PictureSize | undefined {
  if (text(view, 0, 4) !== 'RIFF' || text(view, 8, 4) !== 'WEBP') return undefined;
  const chunk = text(view, 12, 4);
  if (chunk === 'VP8X')
    return { kind: 'webp', widthPx: uint24(view, 24) + 1, heightPx: uint24(view, 27) + 1 };
  if (chunk === 'VP8 ') {
    const edge = (at: number) => view.getUint16(at, true) & 0x3fff;
    return { kind: 'webp', widthPx: edge(26), heightPx: edge(28) };
  }
  if (chunk !== 'VP8L') return undefined;
  const bits = view.getUint32(21, true);
  return { kind: 'webp', widthPx: (bits & 0x3fff) + 1, heightPx: ((bits >>> 14) & 0x3fff) + 1 };
}

const HEIF_BRANDS = ['heic', 'heix', 'heim', 'heis', 'hevc', 'mif1', 'msf1', 'avif', 'avis'];

/** Where a box of the outermost level lies, ISO/IEC 14496-12, 4.2; undefined when the file ends before it. */
function boxOf(view: DataView, kind: string): [from: number, to: number] {
  let at = 0;
  while (at + 8 <= view.byteLength) {
    const length = view.getUint32(at);
    if (text(view, at + 4, 4) === kind) return [at + 8, Math.min(at + length, view.byteLength)];
    // 1 stands for a length of 64 bits, 0 for "to the end": pictures keep neither before what is looked for.
    if (length < 8) break;
    at += length;
  }
  return [0, 0];
}

/**
 * HEIF and AVIF, ISO/IEC 23008-12, 6.5.3: each picture in the file has a property `ispe` with its size. A large one
 * is stored as tiles beside the whole, so the largest is the picture.
 */
function heif(view: DataView): PictureSize | undefined {
  if (text(view, 4, 4) !== 'ftyp' || !HEIF_BRANDS.includes(text(view, 8, 4))) return undefined;
  let largest: PictureSize | undefined;
  const [from, to] = boxOf(view, 'meta');
  for (let at = from; at + 16 <= to; at += 1) {
    if (view.getUint32(at) !== 0x69737065) continue;
    const size: PictureSize = {
      ...{ kind: 'heif', widthPx: view.getUint32(at + 8), heightPx: view.getUint32(at + 12) },
    };
    if (!largest || size.widthPx * size.heightPx > largest.widthPx * largest.heightPx) largest = size;
  }
  return largest;
}

/**
 * The size a picture file gives for itself. Sources: the file formats' own texts, named at each reader.
 * @param head the beginning of the file; the size of a JPEG may stand some hundred kB into it
 * @returns undefined when the file is of another kind, or its header does not reach far enough
 * @example pictureSize(new Uint8Array([0x47, 0x49, 0x46, 0x38, 0x39, 0x61, 2, 0, 1, 0, …])) //=> { kind: 'gif', widthPx: 2, heightPx: 1 }
 */
export function pictureSize(head: Uint8Array): PictureSize | undefined {
  if (head.byteLength < 30) return undefined;
  const view = new DataView(head.buffer, head.byteOffset, head.byteLength);
  const size = [png, jpeg, gif, webp, heif, bmp].reduce<PictureSize | undefined>(
    (found, read) => found ?? read(view),
    undefined,
  );
  return size && size.widthPx > 0 && size.heightPx > 0 ? size : undefined;
}
