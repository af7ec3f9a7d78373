import { crc32, deflateSync } from 'node:zlib';

function chunk(name: string, body: Buffer): Buffer {
  const named = Buffer.concat([Buffer.from(name, 'latin1'), body]);
  const framed = Buffer.alloc(named.length + 8);
  framed.writeUInt32BE(body.length, 0);
  named.copy(framed, 4);
  framed.writeUInt32BE(crc32(named), named.length + 4);
  return framed;
}

/**
 * A picture no camera took: colours running across it, as a PNG of 8 bits a channel without transparency.
 * Source of the format: PNG specification, from memory; a browser that draws it bears it out.
 * @param widthPx whole pixels, ≥ 1
 * @param heightPx whole pixels, ≥ 1
 */
export function picture(widthPx: number, heightPx: number): Buffer {
  const head = Buffer.alloc(13);
  head.writeUInt32BE(widthPx, 0);
  head.writeUInt32BE(heightPx, 4);
  // Bit depth 8, colour type 2: red, green, blue.
  head.set([8, 2, 0, 0, 0], 8);
  const row = 1 + widthPx * 3;
  const pixels = Buffer.alloc(row * heightPx);
  for (let y = 0; y < heightPx; y += 1) {
    for (let x = 0; x < widthPx; x += 1) {
      pixels.set([(x * 255) / widthPx, (y * 255) / heightPx, (x ^ y) & 255], y * row + 1 + x * 3);
    }
  }
  const mark = Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]);
  return Buffer.concat([
    mark,
    chunk('IHDR', head),
    chunk('IDAT', deflateSync(pixels, { level: 1 })),
    chunk('IEND', Buffer.alloc(0)),
  ]);
}
