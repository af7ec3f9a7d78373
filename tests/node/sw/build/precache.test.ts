import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { precacheEntries } from '../../../../sw/build/precache.ts';

let dist = '';
beforeAll(() => {
  dist = mkdtempSync(join(tmpdir(), 'pinchbolt dist '));
  mkdirSync(join(dist, 'assets'));
  for (const name of ['sw.js', 'index.html', 'assets/main-1.js', 'assets/main-1.js.map', 'assets_of.txt'])
    writeFileSync(join(dist, name), name);
});
afterAll(() => rmSync(dist, { recursive: true, force: true }));

test('addresses have forward slashes and one order on every system', () => {
  expect(precacheEntries(dist).map(({ url }) => url)).toEqual([
    '/assets/main-1.js',
    '/assets_of.txt',
    '/index.html',
  ]);
});

// First 12 digits of what `printf index.html | sha256sum` prints (GNU coreutils).
test('the revision is the start of the SHA-256 of the bytes', () => {
  expect(precacheEntries(dist).at(-1)?.revision).toBe('0eb547304658');
});
