import { createHash } from 'node:crypto';
import { deflateRawSync } from 'node:zlib';
import { unzipSync, Zip, ZipPassThrough } from 'fflate';

export type Bytes = Uint8Array<ArrayBuffer>;

/** The files of an archive by name, in order; a test may put anything in their place. */
export type Files = [path: string, bytes: Bytes][];

export const filesOf = (archive: Bytes): Files => Object.entries(unzipSync(archive)) as Files;

class Packed extends ZipPassThrough {
  constructor(path: string) {
    super(path);
    this.compression = 8;
  }
  protected override process(chunk: Bytes): void {
    this.ondata(null, new Uint8Array(deflateRawSync(chunk)), true);
  }
}

/** A ZIP laid out as the app does it, of whatever files: only what is in it is hostile. */
export function zipOf(files: Files): Bytes {
  const pieces: Bytes[] = [];
  const zip = new Zip((error, bytes) => {
    if (error) throw error;
    pieces.push(bytes as Bytes);
  });
  for (const [path, bytes] of files) {
    const file = path.startsWith('photos/') ? new ZipPassThrough(path) : new Packed(path);
    zip.add(file);
    file.push(bytes, true);
  }
  zip.end();
  return joined(pieces);
}

export function joined(pieces: readonly Bytes[]): Bytes {
  const all = new Uint8Array(pieces.reduce((sum, { length }) => sum + length, 0));
  let at = 0;
  for (const piece of pieces) {
    all.set(piece, at);
    at += piece.length;
  }
  return all;
}

export const textOf = (bytes: Bytes): string => new TextDecoder().decode(bytes);
export const bytesOf = (text: string): Bytes => new TextEncoder().encode(text);

const SUMS = 'checksums.sha256';

/** With checksums that are right again: a changed archive can have them too. */
export function signed(files: Files): Files {
  const others = files.filter(([path]) => path !== SUMS);
  const lines = others.map(
    ([path, bytes]) => `${createHash('sha256').update(bytes).digest('hex')}  ${path}\n`,
  );
  return [...others, [SUMS, bytesOf(lines.join(''))]];
}

/** One file put otherwise. */
export const changed = (files: Files, path: string, change: (text: string) => string): Files =>
  files.map(([name, bytes]) => [name, name === path ? bytesOf(change(textOf(bytes))) : bytes]);
