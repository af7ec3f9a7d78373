import { readdirSync, readFileSync, statSync } from 'node:fs';
import { join, relative } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';
import { slashed } from '../../sw/build/slashed.ts';

const top = fileURLToPath(new URL('../..', import.meta.url));

/** Path from the top, with forward slashes on every system. */
const fromTop = (path: string) => slashed(relative(top, path));

function filesBelow(folder: string): string[] {
  return readdirSync(folder).flatMap((name) => {
    const path = join(folder, name);
    return statSync(path).isDirectory() ? filesBelow(path) : [path];
  });
}

const sources = ['src', 'sw']
  .flatMap((folder) => filesBelow(join(top, folder)))
  .filter((path) => /\.tsx?$/.test(path));

interface Wall {
  folder: string;
  may: string[];
  mayTypes: string[];
  packages: string[];
}

/** The import table of DEVELOPERS.md: what is written there is what holds. */
function readTable(): Wall[] {
  const whole = readFileSync(join(top, 'DEVELOPERS.md'), 'utf8');
  const text = /\| folder +\| may import[\s\S]*?\n\n/.exec(whole)?.[0] ?? '';
  const rows = [...text.matchAll(/^\| (src\/\S+|sw) *\|(.*)\|$/gm)];
  return rows.map(([, folder = '', cell = '']) => {
    const wall: Wall = { folder, may: [], mayTypes: [], packages: [] };
    for (const clause of cell.split(';').map((part) => part.trim())) {
      const types = clause.startsWith('types of ');
      for (const name of clause
        .replace('types of ', '')
        .split(',')
        .map((part) => part.trim())) {
        if (name === '') continue;
        if (types) wall.mayTypes.push(name);
        else if (name.startsWith('src/') || name === 'sw') wall.may.push(name);
        else wall.packages.push(name);
      }
    }
    return wall;
  });
}

interface Import {
  from: string;
  /** Path from the top, or the name of a package. */
  to: string;
  typesOnly: boolean;
}

function importsOf(path: string): Import[] {
  const text = readFileSync(path, 'utf8');
  const from = fromTop(path);
  const found = [
    ...[...text.matchAll(/^(?:import|export) ([^'"]*?)from '([^']+)'/gm)].map(([, names = '', to = '']) => ({
      to,
      typesOnly: onlyTypes(names),
    })),
    ...[...text.matchAll(/^import '([^']+)'/gm)].map(([, to = '']) => ({ to, typesOnly: false })),
    ...[...text.matchAll(/(typeof )?\bimport\('([^']+)'\)/g)].map(([, type, to = '']) => ({
      to,
      typesOnly: type !== undefined,
    })),
  ];
  return found.map(({ to, typesOnly }) => ({
    from,
    to: to.startsWith('.') ? fromTop(join(path, '..', to)) : to.startsWith('node:') ? to : packageName(to),
    typesOnly,
  }));
}

function packageName(specifier: string): string {
  return specifier
    .split('/')
    .slice(0, specifier.startsWith('@') ? 2 : 1)
    .join('/');
}

/** Neither `import type` nor `import { type A, type B }` brings code along. */
function onlyTypes(names: string): boolean {
  if (names.startsWith('type ')) return true;
  const listed = /^\{([^}]*)\} $/.exec(names)?.[1]?.split(',') ?? [''];
  return listed.map((name) => name.trim()).every((name, at) => name.startsWith('type ') || (at > 0 && !name));
}

/** Files of the page's own root, which belong to no folder. */
const ROOT = new Set(
  ['main.tsx', 'beside.ts', 'prelude.ts', 'linker.ts', 'scriptNames.ts', 'workerName.ts', 'safety.ts'].map(
    (name) => `src/${name}`,
  ),
);

const walls = readTable();
const wallOf = (path: string) => walls.find(({ folder }) => path === folder || path.startsWith(`${folder}/`));

describe('the import table of DEVELOPERS.md', () => {
  test('names every folder there is, and none that is not', () => {
    const folders = new Set(
      sources
        .map(fromTop)
        .map((path) => (path.startsWith('sw/') ? 'sw' : path.split('/').slice(0, 2).join('/')))
        .filter((path) => !ROOT.has(path)),
    );
    expect([...folders].sort()).toEqual(walls.map(({ folder }) => folder).sort());
  });

  test.each(walls.map((wall) => [wall.folder, wall] as const))('%s imports nothing else', (folder, wall) => {
    const strays = sources
      .filter((path) => wallOf(fromTop(path))?.folder === folder && !fromTop(path).startsWith('sw/build/'))
      .flatMap(importsOf)
      .filter(({ to, typesOnly }) => {
        if (to === folder || to.startsWith(`${folder}/`)) return false;
        const inside = (names: string[]) => names.some((name) => to === name || to.startsWith(`${name}/`));
        if (inside(wall.may) || wall.packages.includes(to)) return false;
        return !(typesOnly && inside(wall.mayTypes));
      })
      .map(({ from, to }) => `${from} → ${to}`);
    expect(strays).toEqual([]);
  });
});

describe('pure folders', () => {
  const pure = [
    ...['mechanics', 'standards', 'fit', 'workings', 'planning', 'journal'],
    ...['practice', 'drafts', 'words', 'documents'],
  ].map((name) => `src/${name}/`);
  const files = sources.map(fromTop).filter((path) => pure.some((folder) => path.startsWith(folder)));

  test.each([
    ['the clock', /\bDate\.now\b/],
    ['today', /new Date\(\s*\)/],
    ['chance', /Math\.random/],
    ['the page', /\b(document|window|navigator|localStorage|indexedDB)\.[a-z]/],
  ])('read no %s', (_name, pattern) => {
    const strays = files.filter((path) =>
      pattern.test(withoutComments(readFileSync(join(top, path), 'utf8'))),
    );
    expect(strays).toEqual([]);
  });
});

function withoutComments(text: string): string {
  return text.replaceAll(/\/\*[\s\S]*?\*\//g, '').replaceAll(/(?<!:)\/\/.*$/gm, '');
}

describe('the house', () => {
  const all = ['src', 'sw', 'tests', 'public']
    .flatMap((folder) => filesBelow(join(top, folder)))
    .map(fromTop);

  test('no file is called util, helpers, common, misc or types', () => {
    expect(all.filter((path) => /(^|\/)(utils?|helpers?|common|misc|types)\.\w+$/.test(path))).toEqual([]);
  });

  test('every name can be checked out on Windows and macOS', () => {
    const reserved = /(^|\/)(con|prn|aux|nul|com\d|lpt\d)(\.|\/|$)|[<>:"|?*\\]|[ .](\/|$)/i;
    expect(all.filter((path) => reserved.test(path))).toEqual([]);
    const seen = new Map(all.map((path) => [path.toLowerCase(), path]));
    expect(all.filter((path) => seen.get(path.toLowerCase()) !== path)).toEqual([]);
  });

  test('nothing is left open or switched off', () => {
    const marks = /\b(TODO|FIXME|XXX|HACK)\b|@ts-ignore|@ts-nocheck|\b(describe|test|it)\.(skip|only|todo)\b/;
    const strays = all
      .filter((path) => /\.(tsx?|mjs|css|html)$/.test(path) && path !== 'tests/node/architecture.test.ts')
      .filter((path) => marks.test(readFileSync(join(top, path), 'utf8')));
    expect(strays).toEqual([]);
  });

  test('no address of another origin stands in what is shipped', () => {
    const strays = [...sources, ...filesBelow(join(top, 'public'))]
      .filter((path) => /\.(tsx?|css|html|webmanifest)$/.test(path))
      .filter((path) =>
        /https?:\/\/(?!www\.w3\.org\/|json-schema\.org\/draft\/)/.test(
          withoutComments(readFileSync(path, 'utf8')),
        ),
      );
    expect(strays.map(fromTop)).toEqual([]);
  });

  test('no text becomes a page or a script', () => {
    const sinks =
      /\b(innerHTML|outerHTML|insertAdjacentHTML|dangerouslySetInnerHTML|srcdoc|setHTML\w*|DOMParser)\b|document\.write|\beval\(|new Function\b/;
    const strays = [
      ...sources,
      ...all.filter((path) => /^(src|sw)\/.*\.html$/.test(path)).map((path) => join(top, path)),
    ]
      .filter((path) => sinks.test(withoutComments(readFileSync(path, 'utf8'))))
      .map(fromTop);
    expect(strays).toEqual([]);
    const pages = all.filter((path) => /^(src|sw)\/.*\.html$/.test(path));
    expect(pages.length).toBeGreaterThan(1);
    for (const page of pages) {
      const text = readFileSync(join(top, page), 'utf8');
      expect(text, page).not.toMatch(/<script(?![^>]* src=)|\son\w+=|javascript:|\sstyle=/);
    }
  });

  test('no file of the source is longer than 400 lines', () => {
    const long = sources.filter((path) => readFileSync(path, 'utf8').split('\n').length > 400);
    expect(long.map(fromTop)).toEqual([]);
  });
});

describe('names', () => {
  /** Words for the fields of entries: each is a check in the one folder and a part of the schema in the other. */
  const fieldWords = ['src/journal/checks/', 'src/exchange/schema/'];
  const exported = /^export (?:async )?(?:function\*?|const|class|interface|type|enum) (\w+)/gm;

  test('an exported name is declared in one file, so that it means one thing', () => {
    const declaredIn = new Map<string, Set<string>>();
    for (const path of sources.map(fromTop)) {
      if (fieldWords.some((folder) => path.startsWith(folder))) continue;
      for (const [, name = ''] of readFileSync(join(top, path), 'utf8').matchAll(exported))
        declaredIn.set(name, (declaredIn.get(name) ?? new Set()).add(path));
    }
    const twice = [...declaredIn].filter(([, paths]) => paths.size > 1);
    expect(twice.map(([name, paths]) => `${name}: ${[...paths].join(', ')}`)).toEqual([]);
  });

  test('a name that one file exports means nothing else in another', () => {
    const own = /^(?:async )?(?:function\*?|const|let|class|interface|type|enum) (\w+)/gm;
    const outside = sources
      .map(fromTop)
      .filter((path) => !fieldWords.some((folder) => path.startsWith(folder)))
      .map((path) => [path, withoutComments(readFileSync(join(top, path), 'utf8'))] as const);
    const exportedBy = new Map(
      outside.flatMap(([path, text]) => [...text.matchAll(exported)].map(([, name = '']) => [name, path])),
    );
    const strays = outside.flatMap(([path, text]) =>
      [...text.matchAll(own)].flatMap(([, name = '']) =>
        exportedBy.has(name) ? [`${name}: ${path}, exported by ${exportedBy.get(name)}`] : [],
      ),
    );
    expect(strays).toEqual([]);
  });

  test('nothing is called told or said', () => {
    const declared =
      /\b(?:const|let|var|function) (?:told|said|setTold|setSaid)\b|\b(?:told|said)\(|[[{,] ?(?:told|said),/;
    const strays = sources.filter((path) => declared.test(withoutComments(readFileSync(path, 'utf8'))));
    expect(strays.map(fromTop)).toEqual([]);
  });
});

describe('each test', () => {
  const tests = filesBelow(join(top, 'tests/node'))
    .map(fromTop)
    .filter((path) => path.endsWith('.test.ts') && path.split('/').length > 3)
    .map((path) => path.slice('tests/node/'.length, -'.test.ts'.length));
  const known = new Set([...sources, ...filesBelow(join(top, 'tests'))].map(fromTop));
  const bare = [...known].map((path) => path.replace(/\.\w+$/, ''));
  const isFolder = (folder: string) => [...known].some((path) => path.startsWith(`${folder}/`));

  test('stands in a folder that mirrors one of the sources, or of the tools of the tests', () => {
    const strays = tests.filter((name) => {
      const folder = name.slice(0, name.lastIndexOf('/'));
      const places = [`src/${folder}`, folder, `tests/${folder}`];
      return (
        !['checks', 'exchange/mutated'].includes(folder) &&
        !places.some((place) => isFolder(place) || bare.includes(place))
      );
    });
    expect(strays).toEqual([]);
  });

  test('that is called as a source of its room stands where that source stands', () => {
    const strays = tests.filter((name) => {
      const room = `src/${name.split('/')[0]}/`;
      const word = name.slice(name.lastIndexOf('/'));
      const sameWord = bare.filter((path) => path.startsWith(room) && path.endsWith(word));
      return sameWord.length > 0 && !sameWord.includes(`src/${name}`);
    });
    expect(strays).toEqual([]);
  });
});
