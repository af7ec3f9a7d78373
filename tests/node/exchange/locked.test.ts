import { createDecipheriv, pbkdf2Sync } from 'node:crypto';
import { beforeAll, describe, expect, test } from 'vitest';
import { sinkOf } from '../../../src/exchange/byteSink.ts';
import { sourceOf } from '../../../src/exchange/byteSource.ts';
import { RefusedWhileReading } from '../../../src/exchange/refusing.ts';
import { lockedSink } from '../../../src/exchange/seal/lock.ts';
import { unlocked } from '../../../src/exchange/seal/unlock.ts';
import { archiveOf, content, memory, opened, photoOf, refusal } from './aCopy.ts';

const PASSPHRASE = 'blue spoke key';
const CHUNK = 262_144;

async function locked(sizes: readonly number[], passphrase = PASSPHRASE) {
  const kept = memory();
  const sink = await lockedSink(sinkOf(kept.stream), passphrase);
  const plain = sizes.map((size, step) =>
    Uint8Array.from({ length: size }, (_, at) => (step + at * 7) % 251),
  );
  for (const bytes of plain) await sink.write(bytes);
  await sink.close();
  return { blob: kept.blob(), plain: Buffer.concat(plain) };
}

describe('a locked file', () => {
  test('opens with another implementation of PBKDF2 and AES-GCM, told only what its first line says', async () => {
    const { blob, plain } = await locked([1000, CHUNK, 5]);
    const bytes = Buffer.from(await blob.arrayBuffer());
    const end = bytes.indexOf(10) + 1;
    const told = JSON.parse(bytes.subarray('pinchbolt-locked '.length, end).toString());
    const key = pbkdf2Sync(PASSPHRASE, Buffer.from(told.salt, 'hex'), told.iterations, 32, 'sha256');
    const opened: Buffer[] = [];
    for (let at = end, chunk = 0; at < bytes.length; at += told.chunkBytes + 16, chunk += 1) {
      const part = bytes.subarray(at, at + told.chunkBytes + 16);
      const iv = Buffer.concat([Buffer.from(told.prefix, 'hex'), Buffer.alloc(5)]);
      iv.writeUInt32BE(chunk, 7);
      iv[11] = at + part.length === bytes.length ? 1 : 0;
      const open = createDecipheriv('aes-256-gcm', key, iv).setAAD(bytes.subarray(0, end));
      open.setAuthTag(part.subarray(-16));
      opened.push(open.update(part.subarray(0, -16)), open.final());
    }
    expect(Buffer.concat(opened).equals(plain)).toBe(true);
  });

  test.each([[[0]], [[CHUNK - 1]], [[CHUNK]], [[CHUNK + 1]], [[3, CHUNK, CHUNK]]])(
    'bytes in steps of %j come back, from anywhere',
    async (sizes) => {
      const { blob, plain } = await locked(sizes);
      const source = await unlocked(sourceOf(blob), PASSPHRASE);
      expect(source.size).toBe(plain.length);
      expect(Buffer.from(await source.read(0, plain.length)).equals(plain)).toBe(true);
      const from = Math.floor(plain.length / 3);
      const part = await source.read(from, plain.length + 50);
      expect(Buffer.from(part).equals(plain.subarray(from))).toBe(true);
    },
  );

  test('an accent typed in two ways is one passphrase', async () => {
    const { blob } = await locked([10], 'Ga\u0308nge');
    const source = await unlocked(sourceOf(blob), 'G\u00e4nge');
    expect(source.size).toBe(10);
    await expect(unlocked(sourceOf(blob), 'Gange')).rejects.toBeInstanceOf(RefusedWhileReading);
  });

  describe('as a copy', () => {
    let copy = new Blob([]);
    beforeAll(async () => {
      copy = await archiveOf(content(undefined, [photoOf(1, 600_000)]), PASSPHRASE);
    });

    test('without a passphrase, and with a wrong one', async () => {
      expect(await refusal(copy)).toEqual({ refused: 'passphrase-missing' });
      expect(await refusal(copy, 'blue spoke')).toEqual({ refused: 'passphrase-wrong' });
      expect((await opened(copy, PASSPHRASE)).photos).toHaveLength(1);
    });

    test('two copies of one logbook share no byte of their locked part', async () => {
      const { blob: one } = await locked([64]);
      const { blob: other } = await locked([64]);
      const [a, b] = await Promise.all(
        [one, other].map(async (blob) => Buffer.from(await blob.arrayBuffer())),
      );
      expect(a?.subarray(-80).equals(b?.subarray(-80) as Buffer)).toBe(false);
    });

    test('a chunk cut off at its very edge is missed', async () => {
      const bytes = new Uint8Array(await copy.arrayBuffer());
      const end = bytes.indexOf(10) + 1;
      const short = bytes.slice(0, end + CHUNK + 16);
      expect(await refusal(new Blob([short]), PASSPHRASE)).toEqual({ refused: 'passphrase-wrong' });
    });
  });
});
