import { readFileSync } from 'node:fs';
import { join } from 'node:path';

/**
 * The scripts a first visit needs before its first screen can be drawn: those the page names, the first screen's
 * own, which the page's first script asks for, and what all of them need at once.
 */
export function firstScripts(dist = 'dist') {
  const read = (name) => readFileSync(join(dist, name), 'utf8');
  const found = new Set(read('index.html').match(/assets\/[\w.-]+\.js/g) ?? []);
  for (const name of found) {
    const text = read(name);
    const needs = text.match(/System\.register\((\[[^\]]*\]|`[^`]*`)/)?.[1] ?? '';
    const first = text.match(/\.import\([`"']\.\/home-[\w.-]+\.js[`"']\)/g) ?? [];
    for (const [, next] of [needs, ...first].join(' ').matchAll(/\.\/([\w.-]+\.js)/g))
      found.add(`assets/${next}`);
  }
  return [...found].map((name) => join(dist, name));
}
