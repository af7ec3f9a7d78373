const TABLE = Uint32Array.from({ length: 256 }, (_, byte) => {
  let rest = byte;
  for (let bit = 0; bit < 8; bit += 1) rest = rest & 1 ? (rest >>> 1) ^ 0xedb88320 : rest >>> 1;
  return rest;
});

/**
 * CRC-32 of some bytes, as in ISO 3309 and ITU-T V.42: reflected polynomial 0xEDB88320. It tells a torn or bent line
 * from a whole one; against a person who means harm it is no help.
 * @example crc32(new TextEncoder().encode('123456789')) //=> 0xcbf43926
 */
export function crc32(bytes: Uint8Array): number {
  let sum = 0xffffffff;
  for (const byte of bytes) sum = (sum >>> 8) ^ (TABLE[(sum ^ byte) & 0xff] ?? 0);
  return (sum ^ 0xffffffff) >>> 0;
}
