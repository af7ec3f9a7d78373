import { describe, expect, test } from 'vitest';
import { reducedTo, wayToDecode } from '../../../src/sensing/photo.ts';
import { pictureSize } from '../../../src/sensing/pictureSize.ts';

const ascii = (text: string) => [...text].map((letter) => letter.charCodeAt(0));
const be32 = (value: number) => [value >>> 24, (value >>> 16) & 255, (value >>> 8) & 255, value & 255];
const be16 = (value: number) => [value >>> 8, value & 255];
const le16 = (value: number) => be16(value).reverse();
const file = (...bytes: number[][]) => {
  const all = bytes.flat();
  return new Uint8Array([...all, ...new Array(Math.max(0, 40 - all.length)).fill(0)]);
};
const box = (kind: string, ...body: number[][]) => {
  const inside = body.flat();
  return [...be32(inside.length + 8), ...ascii(kind), ...inside];
};
const ispe = (width: number, height: number) => box('ispe', be32(0), be32(width), be32(height));

describe('the size in the header of a file', () => {
  test.each([
    // PNG specification, third edition, 5.2 and 11.2.1.
    [
      'png',
      4000,
      3000,
      file([137, 80, 78, 71, 13, 10, 26, 10], be32(13), ascii('IHDR'), be32(4000), be32(3000)),
    ],
    // GIF89a specification, sections 17 and 18; the example of the docstring.
    ['gif', 2, 1, file(ascii('GIF89a'), le16(2), le16(1))],
    // ITU-T T.81, B.2: a comment segment, a table segment, then the frame header with height before width.
    [
      'jpeg',
      640,
      480,
      file(
        [255, 216],
        [255, 254, 0, 4, 65, 66],
        [255, 196, 0, 3, 0],
        [255, 194, 0, 17, 8],
        be16(480),
        be16(640),
      ),
    ],
    // RFC 6386, 9.1 (lossy), and RFC 9649 (lossless, 14 bits each less one; extended, 24 bits each less one).
    [
      'webp',
      550,
      368,
      file(ascii('RIFF'), be32(0), ascii('WEBPVP8 '), be32(0), [0, 0, 0, 157, 1, 42], le16(550), le16(368)),
    ],
    [
      'webp',
      386,
      395,
      file(ascii('RIFF'), be32(0), ascii('WEBPVP8L'), be32(0), [0x2f], [0x81, 0x81, 0x62, 0x10]),
    ],
    [
      'webp',
      5000,
      2,
      file(ascii('RIFF'), be32(0), ascii('WEBPVP8X'), be32(0), [0, 0, 0, 0], [0x87, 0x13, 0], [1, 0, 0]),
    ],
    // ISO/IEC 14496-12, 4.2 and ISO/IEC 23008-12, 6.5.3: tiles beside the whole.
    [
      'heif',
      4032,
      3024,
      file(
        box('ftyp', ascii('heic'), be32(0)),
        box('meta', be32(0), box('iprp', box('ipco', ispe(512, 512), ispe(4032, 3024), ispe(320, 240)))),
        box('mdat', ispe(60_000, 60_000)),
      ),
    ],
  ] as const)('%s of %i by %i', (kind, widthPx, heightPx, bytes) => {
    expect(pictureSize(bytes)).toEqual({ kind, widthPx, heightPx });
  });

  test('a JPEG whose size stands behind a preview of 60 kB', () => {
    const preview = [255, 225, ...be16(60_002), ...new Array(60_000).fill(7)];
    expect(
      pictureSize(file([255, 216], preview, [255, 192, 0, 17, 8], be16(3000), be16(4000), [3, 1, 34, 0])),
    ).toMatchObject({
      ...{ widthPx: 4000, heightPx: 3000 },
    });
  });

  test.each([
    ['nothing', new Uint8Array()],
    ['words', file(ascii('no picture at all, only a line of words'))],
    ['a JPEG that ends before its frame', file([255, 216], [255, 225, 255, 0])],
    [
      'a PNG without a side',
      file([137, 80, 78, 71, 13, 10, 26, 10], be32(13), ascii('IHDR'), be32(0), be32(9)),
    ],
  ])('%s has none', (_what, bytes) => expect(pictureSize(bytes)).toBeUndefined());
});

describe('how a picture is laid out', () => {
  const sized = (kind: 'png' | 'jpeg' | 'heif', widthPx: number, heightPx: number) => ({
    kind,
    widthPx,
    heightPx,
  });

  test('400 megapixels in a PNG are refused by its header, however light the file is', () => {
    expect(wayToDecode(sized('png', 20_000, 20_000), true)).toBe('refuse');
  });

  test('a JPEG is decoded reduced where the browser can, whole where it cannot and it is not too large', () => {
    expect(wayToDecode(sized('jpeg', 16_320, 12_240), true)).toBe('reduced');
    expect(wayToDecode(sized('jpeg', 16_320, 12_240), false)).toBe('refuse');
    expect(wayToDecode(sized('jpeg', 8000, 6000), false)).toBe('whole');
    expect(wayToDecode(sized('jpeg', 60_000, 60_000), true)).toBe('refuse');
  });

  test('what a phone’s own camera gives in its own format goes through', () => {
    expect(wayToDecode(sized('heif', 8064, 6048), false)).toBe('whole');
    expect(wayToDecode(undefined, true)).toBe('whole');
  });

  test('example of the docstring: no detail of the picture to keep is lost', () => {
    expect(reducedTo(7300, 5500, 1600)).toEqual({ widthPx: 1825, heightPx: 1375 });
    expect(reducedTo(1200, 900, 1600)).toEqual({ widthPx: 1200, heightPx: 900 });
  });
});
