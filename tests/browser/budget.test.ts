import { readFileSync } from 'node:fs';
import { brotliCompressSync } from 'node:zlib';
import { expect, test } from 'vitest';
import { firstScripts } from './firstScripts.mjs';

const brotli = (path: string) => brotliCompressSync(readFileSync(path)).length;

test('first-load JavaScript is at most 30 kB, brotli', () => {
  const scripts = firstScripts();
  const named = (start: string) => scripts.some((path) => path.includes(`/${start}-`));
  expect(['main', 'home'].filter((name) => !named(name))).toEqual([]);
  const bytes = scripts.reduce((sum, path) => sum + brotli(path), 0);
  expect(bytes).toBeLessThanOrEqual(30_000);
});

test('the service worker is at most 8 kB, brotli', () => {
  expect(brotli('dist/sw.js')).toBeLessThanOrEqual(8000);
});
