import { crc32 } from './crc32.ts';

const LINE_END = 0x0a;
/** Eight hexadecimal digits and a space stand before the content of a line. */
const HEAD = 9;

const encoder = new TextEncoder();
const decoder = new TextDecoder('utf-8', { fatal: true });

/**
 * A line of the file: the CRC-32 of the content in eight hexadecimal digits, a space, the content as JSON, a line end.
 * @example lineOf(1) //=> the bytes of '83dcefb7 1\n'
 */
export function lineOf(content: unknown): Uint8Array {
  const json = encoder.encode(JSON.stringify(content));
  const head = encoder.encode(`${crc32(json).toString(16).padStart(8, '0')} `);
  const line = new Uint8Array(head.length + json.length + 1);
  line.set(head);
  line.set(json, head.length);
  line[line.length - 1] = LINE_END;
  return line;
}

/** The content of a line without its end; undefined when a single bit of it is not as it was written. */
export function contentOf(line: Uint8Array): unknown {
  try {
    const json = line.subarray(HEAD);
    const head = decoder.decode(line.subarray(0, HEAD));
    if (head !== `${crc32(json).toString(16).padStart(8, '0')} `) return undefined;
    return JSON.parse(decoder.decode(json));
  } catch {
    return undefined;
  }
}

/** What was read of a file of lines. */
export interface ReadLines {
  /** Lines that are not as they were written; a torn end counts as one. */
  unreadable: number;
  /** Bytes up to the end of the last line that has one. */
  bytes: number;
}

/**
 * Reads lines piece by piece, so that the file as a whole is never in memory.
 * @param visit is given the content of each line that is as it was written, and the checksum that stands before it
 */
export async function readLines(
  stream: ReadableStream<Uint8Array>,
  visit: (content: unknown, sum: number) => void,
): Promise<ReadLines> {
  const read: ReadLines = { unreadable: 0, bytes: 0 };
  let rest: Uint8Array = new Uint8Array(0);
  const reader = stream.getReader();
  for (let piece = await reader.read(); !piece.done; piece = await reader.read()) {
    const bytes = new Uint8Array(rest.length + piece.value.length);
    bytes.set(rest);
    bytes.set(piece.value, rest.length);
    let from = 0;
    for (let end = bytes.indexOf(LINE_END); end >= 0; end = bytes.indexOf(LINE_END, from)) {
      const line = bytes.subarray(from, end);
      const content = contentOf(line);
      if (content !== undefined) visit(content, headSum(line));
      // An empty line is only the end that was put behind a torn one.
      else if (line.length > 0) read.unreadable += 1;
      from = end + 1;
    }
    read.bytes += from;
    rest = bytes.slice(from);
  }
  if (rest.length > 0) read.unreadable += 1;
  return read;
}

const headSum = (line: Uint8Array): number => Number.parseInt(decoder.decode(line.subarray(0, HEAD)), 16);
