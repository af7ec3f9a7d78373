import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { shippedFiles } from '../../../../sw/build/precache.ts';

let dist = '';
beforeAll(() => {
  dist = mkdtempSync(join(tmpdir(), 'pinchbolt dist '));
  mkdirSync(join(dist, 'assets'));
  for (const name of ['sw.js', 'index.html', 'assets/main-1.js', 'assets/main-1.js.map', 'assets_of.txt'])
    writeFileSync(join(dist, name), name);
});
afterAll(() => rmSync(dist, { recursive: true, force: true }));

test('paths have forward slashes and one order on every system; the page goes by the path of its folder', () => {
  expect(Object.keys(shippedFiles(dist, ['sw.js']))).toEqual(['/assets/main-1.js', '/assets_of.txt', '/']);
});

test('a folder that is left out is left out whole, and no other file that begins like it', () => {
  expect(Object.keys(shippedFiles(dist, ['sw.js', 'assets']))).toEqual(['/assets_of.txt', '/']);
});

// The first signs of what `printf index.html | openssl dgst -sha256 -binary | base64` prints (OpenSSL 3).
test('a file is known by the beginning of its SHA-256', () => {
  expect(shippedFiles(dist, [])['/']).toBe('DrVHMEZ');
});
