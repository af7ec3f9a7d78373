import { Zip, ZipPassThrough } from 'fflate';
import type { ByteSink } from '../byteSink.ts';
import { deflate } from './deflate.ts';
import { sha256 } from './digest.ts';
import { archivePaths, MOST_ARCHIVE_BYTES, MOST_FILES } from './layout.ts';

/** A file that was packed beforehand, by the browser: the library puts it into the archive. */
class PackedFile extends ZipPassThrough {
  readonly #packed: Uint8Array<ArrayBuffer>;

  constructor(path: string, packed: Uint8Array<ArrayBuffer>) {
    super(path);
    this.compression = 8;
    this.#packed = packed;
  }

  protected override process(_unpacked: Uint8Array<ArrayBuffer>, final: boolean): void {
    this.ondata(null, this.#packed, final);
  }
}

/** A ZIP as it is written, file by file; a file is let go as soon as the sink has taken it. */
export class ZipOut {
  readonly #sink: ByteSink;
  readonly #mtime: number;
  readonly #sums: string[] = [];
  readonly #pictures = new Set<string>();
  #waiting: Uint8Array<ArrayBuffer>[] = [];
  #failed: Error | undefined;
  #bytes = 0;
  readonly #zip = new Zip((error, bytes) => {
    if (error) this.#failed = error;
    else this.#waiting.push(bytes as Uint8Array<ArrayBuffer>);
  });

  /** @param atMs the time that every file of the archive bears */
  constructor(sink: ByteSink, atMs: number) {
    this.#sink = sink;
    this.#mtime = atMs;
  }

  get bytes(): number {
    return this.#bytes;
  }

  /**
   * Adds a text, packed.
   * @throws RangeError when the archive grows beyond what every phone can open
   */
  async addText(path: string, bytes: Uint8Array<ArrayBuffer>): Promise<void> {
    const [sum, packed] = await Promise.all([sha256(bytes), deflate(bytes)]);
    await this.#add(path, sum, bytes, packed);
  }

  /**
   * Adds a picture as it is, since it is packed already, under a name made of its checksum; one that is there is
   * not added again.
   * @returns the SHA-256 of the picture
   */
  async addPicture(bytes: Uint8Array<ArrayBuffer>, pathOf: (sum: string) => string): Promise<string> {
    const sum = await sha256(bytes);
    const path = pathOf(sum);
    if (!this.#pictures.has(path)) {
      this.#pictures.add(path);
      await this.#add(path, sum, bytes);
    }
    return sum;
  }

  async #add(
    path: string,
    sum: string,
    bytes: Uint8Array<ArrayBuffer>,
    packed?: Uint8Array<ArrayBuffer>,
  ): Promise<void> {
    this.#put(path, bytes, packed);
    this.#sums.push(`${sum}  ${path}`);
    await this.#drain();
  }

  /** The checksums of every file, and the end of the archive. */
  async end(): Promise<void> {
    const bytes = new TextEncoder().encode(`${this.#sums.join('\n')}\n`);
    this.#put(archivePaths.sums, bytes, await deflate(bytes));
    this.#zip.end();
    await this.#drain();
  }

  #put(path: string, bytes: Uint8Array<ArrayBuffer>, packed?: Uint8Array<ArrayBuffer>): void {
    if (this.#sums.length > MOST_FILES) throw new RangeError('too many files for one archive');
    const file = packed ? new PackedFile(path, packed) : new ZipPassThrough(path);
    file.mtime = this.#mtime;
    this.#zip.add(file);
    file.push(bytes, true);
  }

  async #drain(): Promise<void> {
    const waiting = this.#waiting;
    this.#waiting = [];
    if (this.#failed) throw this.#failed;
    for (const bytes of waiting) {
      this.#bytes += bytes.length;
      if (this.#bytes > MOST_ARCHIVE_BYTES) throw new RangeError('an archive ends at 4 GB');
      await this.#sink.write(bytes);
    }
  }
}
