import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { brotliCompressSync } from 'node:zlib';
import { expect, test } from 'vitest';

/** What the first screen needs before it can be drawn: the scripts the page names, and what those name at once. */
function firstScripts(): string[] {
  const html = readFileSync('dist/index.html', 'utf8');
  const found = new Set(html.match(/assets\/[\w.-]+\.js/g) ?? []);
  for (const name of found) {
    const text = readFileSync(join('dist', name), 'utf8');
    for (const [, next = ''] of text.matchAll(/^import[^"']*["']\.\/([\w.-]+\.js)["']/gm))
      found.add(`assets/${next}`);
    for (const [, next = ''] of text.matchAll(/(?:^|[;}])import(?:[^"'()]*from)?["']\.\/([\w.-]+\.js)["']/g))
      found.add(`assets/${next}`);
  }
  return [...found];
}

const brotli = (path: string) => brotliCompressSync(readFileSync(path)).length;

test('first-load JavaScript is at most 30 kB, brotli', () => {
  const scripts = firstScripts();
  expect(scripts.length).toBeGreaterThan(0);
  const bytes = scripts.reduce((sum, name) => sum + brotli(join('dist', name)), 0);
  expect(bytes).toBeLessThanOrEqual(30_000);
});

test('the service worker is at most 8 kB, brotli', () => {
  expect(brotli('dist/sw.js')).toBeLessThanOrEqual(8000);
});
