import { describe, expect, test } from 'vitest';
import { pageScripts } from '../../../../sw/build/chunks.ts';

/** What imports what, in a page of eleven files. */
const IMPORTS: Record<string, string[]> = {
  'main.tsx': ['logbook.ts'],
  'logbook.ts': [],
  'screens/home/Home.tsx': ['controls/Row.tsx', 'controls/Tile.tsx'],
  'screens/bench/Bench.tsx': ['controls/Row.tsx', 'controls/Bolt.tsx'],
  'controls/Row.tsx': [],
  'controls/Tile.tsx': [],
  'controls/Bolt.tsx': [],
  'screens/tools/Tools.tsx': ['logbook.ts', 'controls/Chip.tsx', 'controls/Pile.tsx'],
  'controls/Chip.tsx': ['controls/Row.tsx'],
  'controls/Pile.tsx': ['controls/Chip.tsx', 'controls/Long.tsx'],
  'controls/Long.tsx': [],
};

const LONG = ['screens/tools/Tools.tsx', 'controls/Row.tsx', 'controls/Long.tsx'];
const codeOf = (path: string) => 'x'.repeat(LONG.includes(path) ? 9000 : 900);

/** The script each file of the page goes into, with a bundler that names its modules in its own way. */
function scripts(src: string, idOf: (path: string) => string) {
  const infos = new Map(
    Object.entries(IMPORTS).map(([path, to]) => [
      idOf(path),
      { importedIds: to.map(idOf), code: codeOf(path) },
    ]),
  );
  const modules = { getModuleInfo: (id: string) => infos.get(id) ?? null };
  const { groups } = pageScripts(src);
  return Object.fromEntries(
    Object.keys(IMPORTS).map((path) => [
      path,
      groups.map(({ name }) => name(idOf(path), modules)).find((name) => name !== null) ?? null,
    ]),
  );
}

const WANTED = {
  'main.tsx': 'main',
  'logbook.ts': 'main',
  'screens/home/Home.tsx': 'home',
  'screens/bench/Bench.tsx': 'bench',
  'controls/Row.tsx': 'main',
  'controls/Tile.tsx': 'home',
  'controls/Bolt.tsx': 'bench',
  'screens/tools/Tools.tsx': null,
  // What it imports is begun with already.
  'controls/Chip.tsx': 'shared',
  // Short, but not what it brings along.
  'controls/Pile.tsx': null,
  'controls/Long.tsx': null,
};

describe('pageScripts', () => {
  test.each([
    ['Linux', '/home/me/my shop/src', (path: string) => `/home/me/my shop/src/${path}`],
    ['macOS, slash at the end', '/Users/me/p/src/', (path: string) => `/Users/me/p/src/${path}`],
    ['Windows', 'C:\\my shop\\p\\src', (path: string) => `C:/my shop/p/src/${path}`],
    ['Windows, small drive letter', 'C:\\my shop\\p\\src', (path: string) => `c:/my shop/p/src/${path}`],
    ['Windows, both small', 'd:\\p\\src', (path: string) => `d:/p/src/${path}`],
    ['Windows, back slashes', 'C:\\p\\src', (path: string) => `C:\\p\\src\\${path.replaceAll('/', '\\')}`],
  ])('cuts the page alike on %s', (_system, src, idOf) => {
    expect(scripts(src, idOf)).toEqual(WANTED);
  });

  test('a style sheet follows the script that needs it, and is put into none', () => {
    const [main] = pageScripts('/p/src').groups;
    const modules = { getModuleInfo: () => ({ importedIds: [], code: '' }) };
    expect(main?.name('/p/src/controls/Row.css?inline', modules)).toBeNull();
  });

  test('an entry that the bundler does not know stops the build', () => {
    const [main] = pageScripts('/p/src').groups;
    expect(() => main?.name('/q/src/main.tsx', { getModuleInfo: () => null })).toThrow(/\/p\/src\/main\.tsx/);
  });
});
