import { crc32 as crcOfZlib } from 'node:zlib';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { crc32 } from '../../../src/mirror/crc32.ts';
import { contentOf, lineOf, readLines } from '../../../src/mirror/lines.ts';

const bytesOf = (text: string) => new TextEncoder().encode(text);
const textOf = (bytes: Uint8Array) => new TextDecoder().decode(bytes);

function streamOf(bytes: Uint8Array, piece: number): ReadableStream<Uint8Array> {
  return new ReadableStream({
    start(controller) {
      for (let at = 0; at < bytes.length; at += piece) controller.enqueue(bytes.slice(at, at + piece));
      controller.close();
    },
  });
}

async function readAll(stream: ReadableStream<Uint8Array>) {
  const contents: unknown[] = [];
  const read = await readLines(stream, (content) => contents.push(content));
  return { contents, ...read };
}

describe('the checksum of a line', () => {
  // The check value of CRC-32 in the catalogue of parametrised CRC algorithms (CRC-32/ISO-HDLC).
  test('crc32 of 123456789', () => {
    expect(crc32(bytesOf('123456789'))).toBe(0xcbf43926);
  });

  test('of any bytes is what zlib gives, where Node has it', () => {
    fc.assert(
      fc.property(fc.uint8Array({ maxLength: 300 }), (bytes) => {
        expect(crc32(bytes)).toBe(crcOfZlib(bytes));
      }),
    );
  });
});

describe('a file of lines', () => {
  test('a line is its checksum, a space, its content and an end', () => {
    expect(textOf(lineOf(1))).toBe('83dcefb7 1\n');
  });

  test('what is written is read, in whatever pieces it comes', async () => {
    await fc.assert(
      fc.asyncProperty(fc.array(fc.jsonValue()), fc.integer({ min: 1, max: 50 }), async (values, piece) => {
        const contents = values.map((value) => JSON.parse(JSON.stringify(value)));
        const file = Uint8Array.from(contents.flatMap((content) => [...lineOf(content)]));
        const read = await readAll(streamOf(file, piece));
        expect(read).toEqual({ contents, unreadable: 0, bytes: file.length });
      }),
    );
  });

  test('any single changed bit makes its line unreadable', () => {
    fc.assert(
      fc.property(fc.string({ maxLength: 40 }), fc.nat(), fc.nat(7), (value, place, bit) => {
        const line = lineOf(value).slice(0, -1);
        const at = place % line.length;
        line[at] = (line[at] ?? 0) ^ (1 << bit);
        expect(contentOf(line)).toBeUndefined();
      }),
    );
  });

  test('cut off anywhere it keeps every whole line before', async () => {
    const values = ['a', 'bb', 'ccc'];
    const file = Uint8Array.from(values.flatMap((value) => [...lineOf(value)]));
    for (let length = 0; length <= file.length; length += 1) {
      const { contents, unreadable } = await readAll(streamOf(file.slice(0, length), 7));
      expect(contents).toEqual(values.slice(0, contents.length));
      const ends = file.slice(0, length).filter((byte) => byte === 0x0a).length;
      expect(contents).toHaveLength(ends);
      expect(unreadable).toBe(length > 0 && file[length - 1] !== 0x0a ? 1 : 0);
    }
  });
});
