import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { rollup } from 'rollup';
import { afterAll, describe, expect, test } from 'vitest';
import { linker, type Offered, type Registered } from '../../src/linker.ts';

/** Small pages by file; the first is the one that is run. */
type Page = Record<string, string>;

const pages: [string, Page][] = [
  ['names that are offered', { 'a.mjs': 'export const one = 1; export function two() { return 2 }' }],
  [
    'what is needed runs first, and once',
    {
      'a.mjs':
        'import { log } from "./log.mjs"; import "./b.mjs"; import "./c.mjs"; log("a"); export { log }',
      'b.mjs': 'import { log } from "./log.mjs"; log("b");',
      'c.mjs': 'import { log } from "./log.mjs"; import "./b.mjs"; log("c");',
      'log.mjs': 'export const said = []; export const log = (word) => said.push(word);',
    },
  ],
  [
    'a name that changes later changes for everybody',
    {
      'a.mjs': 'import { count, more } from "./b.mjs"; more(); more(); export const seen = count;',
      'b.mjs': 'export let count = 0; export const more = () => { count += 1 };',
    },
  ],
  [
    'two that need each other',
    {
      'a.mjs':
        'import { odd } from "./b.mjs"; export function even(n) { return n === 0 || odd(n - 1) } export const answer = even(10);',
      'b.mjs': 'import { even } from "./a.mjs"; export function odd(n) { return n !== 0 && even(n - 1) }',
    },
  ],
  [
    'names passed on',
    {
      'a.mjs': 'export * from "./b.mjs"; export { one as uno } from "./b.mjs"',
      'b.mjs': 'export const one = 1;',
    },
  ],
  [
    'a script fetched when it is wanted, and the same one again',
    {
      'a.mjs':
        'export const later = Promise.all([import("./b.mjs"), import("./b.mjs")]).then(([b, again]) => [b.made, b.made === again.made]);',
      'b.mjs': 'import { start } from "./c.mjs"; export const made = { start };',
      'c.mjs': 'export const start = 7;',
    },
  ],
];

const folder = mkdtempSync(join(tmpdir(), 'pinchbolt-linker-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

/** The page's files in the System.register format, as the build makes them. */
async function registeredTexts(page: Page): Promise<Map<string, string>> {
  const names = Object.keys(page);
  const all = await rollup({
    input: Object.fromEntries(names.map((name) => [name, name])),
    preserveEntrySignatures: 'strict',
    onwarn() {},
    plugins: [{ name: 'page', resolveId: (to) => to.replace('./', ''), load: (path) => page[path] ?? null }],
  });
  const { output } = await all.generate({ format: 'system', entryFileNames: '[name]' });
  return new Map(
    output.flatMap((file) => (file.type === 'chunk' ? [[file.fileName, file.code] as const] : [])),
  );
}

function registeredBy(text: string): Registered {
  let registered: Registered | undefined;
  const System = { register: (...given: Registered) => (registered = given) };
  new Function('System', text)(System);
  if (!registered) throw new Error('nothing registered');
  return registered;
}

const address = (name: string) => `https://page.test/${name}`;
/** What is offered and can be compared, once it is there. */
async function plain(offered: Offered): Promise<Offered> {
  const values = Object.entries(offered).filter(([, value]) => typeof value !== 'function');
  return Object.fromEntries(await Promise.all(values.map(async ([name, value]) => [name, await value])));
}

describe('scripts put together give what modules give', () => {
  // Against Node's own loader of ECMAScript modules, which follows the standard.
  test.each(pages)('%s', async (name, page) => {
    const place = join(folder, name.replaceAll(/\W/g, '-'));
    const [first = ''] = Object.keys(page);
    mkdirSync(place);
    for (const [file, text] of Object.entries(page)) writeFileSync(join(place, file), text);
    const asModule = (await import(/* @vite-ignore */ pathToFileURL(join(place, first)).href)) as Offered;
    const texts = await registeredTexts(page);
    const { run } = linker(async (url) => registeredBy(texts.get(url.replace(address(''), '')) ?? ''));
    const asScript = await run(address(first));
    expect(await plain(asScript)).toEqual(await plain(asModule));
    expect(Object.keys(asScript).sort()).toEqual(Object.keys(asModule).sort());
  });
});

const giving = (offered: Offered, needs: string[] = []): Registered => [
  needs,
  (offer) => ({ setters: needs.map(() => undefined), execute: () => void offer(offered) }),
];

describe('a script that cannot be had', () => {
  test('is asked for again the next time', async () => {
    let there = false;
    const { run } = linker(async (url) => {
      if (url.endsWith('b.js') && !there) throw new Error('no network');
      return url.endsWith('a.js') ? giving({ a: 1 }, ['./b.js']) : giving({ b: 2 });
    });
    await expect(run(address('a.js'))).rejects.toThrow('no network');
    there = true;
    expect(await run(address('a.js'))).toEqual({ a: 1 });
  });

  test('takes nothing from one that runs already', async () => {
    const ran: string[] = [];
    const { run } = linker(async (url) => {
      if (url.endsWith('bad.js')) throw new Error('gone');
      ran.push(url);
      return giving({ name: url }, url.endsWith('both.js') ? ['./good.js', './bad.js'] : []);
    });
    const good = await run(address('good.js'));
    await expect(run(address('both.js'))).rejects.toThrow('gone');
    expect(await run(address('good.js'))).toBe(good);
    expect(ran.filter((url) => url.endsWith('good.js'))).toHaveLength(1);
  });

  test('that fails as it runs fails all that need it, and is run anew', async () => {
    let fails = true;
    const { run } = linker(async (url) =>
      url.endsWith('a.js')
        ? giving({ a: 1 }, ['./b.js'])
        : [
            [],
            (offer) => ({
              setters: [],
              execute() {
                if (fails) throw new Error('broken');
                offer('b', 2);
              },
            }),
          ],
    );
    await expect(run(address('a.js'))).rejects.toThrow('broken');
    fails = false;
    expect(await run(address('a.js'))).toEqual({ a: 1 });
  });
});

test('a script that is there already is not fetched', async () => {
  const { run, take } = linker(async () => {
    throw new Error('fetched');
  });
  take(address('a.js'), giving({ a: 1 }));
  expect(await run(address('a.js'))).toEqual({ a: 1 });
});
