import { readFileSync } from 'node:fs';
import { join } from 'node:path';

/**
 * The scripts a first visit needs before its first screen can be drawn: those the page names, the first screen's
 * own, which the page's first script asks for, and what all of them import at once.
 */
export function firstScripts(dist = 'dist') {
  const read = (name) => readFileSync(join(dist, name), 'utf8');
  const found = new Set(read('index.html').match(/assets\/[\w.-]+\.js/g) ?? []);
  for (const name of found) {
    const text = read(name);
    for (const [, next] of text.matchAll(
      /(?:^|[;}\n])(?:import|export)(?:[^"'`()]*from)?["']\.\/([\w.-]+\.js)["']/g,
    ))
      found.add(`assets/${next}`);
    for (const [, next] of text.matchAll(/import\([`"']\.\/(home-[\w.-]+\.js)[`"']\)/g))
      found.add(`assets/${next}`);
  }
  return [...found].map((name) => join(dist, name));
}
