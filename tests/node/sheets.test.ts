import { readdirSync, readFileSync, statSync } from 'node:fs';
import { join, relative } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';
import { slashed } from '../../sw/build/slashed.ts';

const top = fileURLToPath(new URL('../..', import.meta.url));

function filesBelow(folder: string): string[] {
  return readdirSync(folder).flatMap((name) => {
    const path = join(folder, name);
    return statSync(path).isDirectory() ? filesBelow(path) : [slashed(relative(top, path))];
  });
}

const files = filesBelow(join(top, 'src'));
const texts = new Map(
  files
    .filter((path) => /\.(css|tsx?|html)$/.test(path))
    .map((path) => [path, withoutComments(readFileSync(join(top, path), 'utf8'))]),
);
const sheets = files.filter((path) => path.endsWith('.css'));
const drawn = files.filter((path) => path.endsWith('.tsx'));

function withoutComments(text: string): string {
  return text.replaceAll(/\/\*[\s\S]*?\*\//g, '').replaceAll(/(?<!:)\/\/.*$/gm, '');
}

/** The room of a file: one screen's, or what is made for all of them. */
function roomOf(path: string): string {
  const [, second = '', third = '', ...deeper] = path.split('/');
  return second === 'screens' && deeper.length > 0 ? `screens/${third}` : second;
}

/** Paths of what a file imports, as they stand below the top. */
function importsOf(path: string): string[] {
  const text = texts.get(path) ?? '';
  return [...text.matchAll(/(?:from|import) '(\.[^']+)'/g)].map(([, to = '']) =>
    slashed(relative(top, join(top, path, '..', to))),
  );
}

/** The classes that the rules of a sheet are for; a rule that only asks for another's class dresses it all the same. */
function classesIn(sheet: string): string[] {
  const selectors = [...(texts.get(sheet) ?? '').matchAll(/[^{}]*(?=\{)/g)].map(([text]) => text).join(' ');
  return [...new Set([...selectors.matchAll(/\.(-?[a-z][\w-]*)/gi)].map(([, name = '']) => name))];
}

/** Where the brace is closed that is open at a place. */
function closing(code: string, from: number): number {
  let depth = 1;
  for (let at = from; at < code.length; at++) {
    if (code[at] === '{') depth += 1;
    if (code[at] === '}') depth -= 1;
    if (depth === 0) return at;
  }
  return code.length;
}

/** The string literals of an expression; a zero sign stands where a template has a value. */
function literalsIn(code: string): string[] {
  const found: string[] = [];
  for (let at = 0; at < code.length; at++) {
    if (code[at] === "'") {
      const end = code.indexOf("'", at + 1);
      // What is compared with is no class.
      if (!/[!=]==\s*$/.test(code.slice(0, at))) found.push(code.slice(at + 1, end));
      at = end;
    } else if (code[at] === '`') {
      let text = '';
      for (at += 1; code[at] !== '`'; at++) {
        if (!code.startsWith('${', at)) text += code[at];
        else {
          const end = closing(code, at + 2);
          found.push(...literalsIn(code.slice(at + 2, end)));
          text += '\u0000';
          at = end;
        }
      }
      found.push(text);
    }
  }
  return found;
}

interface Given {
  /** Whole names, and beginnings that a value completes. */
  whole: string[];
  begun: string[];
}

/** The classes that a file gives to what it draws. */
function classesGiven(path: string): Given {
  const text = texts.get(path) ?? '';
  const given: Given = { whole: [], begun: [] };
  const read = (literal: string) => {
    for (const word of literal.split(/\s+/)) {
      const [beginning = '', ...more] = word.split('\u0000');
      if (beginning === '') continue;
      if (more.length > 0 && beginning.endsWith('-')) given.begun.push(beginning);
      else given.whole.push(beginning);
    }
  };
  for (const [, plain = ''] of text.matchAll(/\bclass(?:es)?="([^"]*)"/g)) read(plain);
  for (const [, added = ''] of text.matchAll(/classList\.add\('([^']*)'\)/g)) read(added);
  for (const { 0: start, index } of text.matchAll(/\bclass(?:es)?=\{/g)) {
    const from = index + start.length;
    const code = text.slice(from, closing(text, from));
    for (const literal of literalsIn(code)) read(literal);
    // A class that has a name of its own in the file, or a small function that says which.
    const name = /^(\w+)(?:\(|$)/.exec(code)?.[1];
    const declared = name && new RegExp(`\\bconst ${name} =([^;]*);`).exec(text)?.[1];
    if (declared) for (const literal of literalsIn(declared)) read(literal);
  }
  return given;
}

const defined = new Map(sheets.map((sheet) => [sheet, classesIn(sheet)]));
/** Dresses what stands in the page before anything is drawn. */
const AT_REST = 'src/late.css';
const ofControls = sheets.filter((sheet) => roomOf(sheet) === 'controls');

/** The rooms that draw with a file; what another room draws with brings its sheet along. */
const drawnWithIn = new Map<string, Set<string>>();
for (const path of drawn)
  for (const to of importsOf(path)) drawnWithIn.set(to, (drawnWithIn.get(to) ?? new Set()).add(roomOf(path)));
const lent = (path: string) => [...(drawnWithIn.get(path) ?? [])].some((room) => room !== roomOf(path));

describe('a sheet belongs to the control or screen it dresses', () => {
  test('no file takes the sheet of another room, but for those of the controls', () => {
    const strays = drawn.flatMap((path) =>
      importsOf(path)
        .filter((to) => to.endsWith('.css') && roomOf(to) !== roomOf(path) && to !== AT_REST)
        .map((to) => `${path} → ${to}`),
    );
    expect(strays).toEqual([]);
  });

  test('each class a file gives is defined in its room or in the controls; what another room draws with imports its sheet', () => {
    const strays = drawn.flatMap((path) => {
      const near = lent(path)
        ? importsOf(path).filter((to) => to.endsWith('.css'))
        : sheets.filter((sheet) => roomOf(sheet) === roomOf(path));
      const known = [...near, ...ofControls, AT_REST].flatMap((sheet) => defined.get(sheet) ?? []);
      const { whole, begun } = classesGiven(path);
      return [
        ...whole.filter((name) => !known.includes(name)),
        ...begun.filter((beginning) => !known.some((name) => name.startsWith(beginning))),
      ].map((name) => `${path}: ${name}`);
    });
    expect(strays).toEqual([]);
  });

  test('each class a sheet speaks of is given somewhere', () => {
    const given = [...drawn, 'src/index.html'].map(classesGiven);
    const whole = new Set(given.flatMap((one) => one.whole));
    const begun = given.flatMap((one) => one.begun);
    const strays = sheets.flatMap((sheet) =>
      classesIn(sheet)
        .filter((name) => !whole.has(name) && !begun.some((beginning) => name.startsWith(beginning)))
        .map((name) => `${sheet}: ${name}`),
    );
    expect(strays).toEqual([]);
  });
});
