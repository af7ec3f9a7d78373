import { slashed } from './slashed.ts';

interface Modules {
  getModuleInfo(id: string): { importedIds: readonly string[] } | null;
}

/** The bundler may write a drive letter small and, with a plugin's help, slashes the other way. */
function spellings(path: string): string[] {
  const small = path.replace(/^[A-Z]:/, (letter) => letter.toLowerCase());
  return [path, small, path.replaceAll('/', '\\'), small.replaceAll('/', '\\')];
}

/** A module and all that it imports statically, and so on to the last; compared as `slashed` paths. */
function withImports(entry: string, modules: Modules): Set<string> {
  const first = spellings(entry).find((id) => modules.getModuleInfo(id));
  if (first === undefined) throw new Error(`the bundler does not know ${entry}`);
  const found = new Set<string>();
  const open = [first];
  for (let id = open.pop(); id !== undefined; id = open.pop()) {
    if (found.has(slashed(id))) continue;
    found.add(slashed(id));
    open.push(...(modules.getModuleInfo(id)?.importedIds ?? []));
  }
  return found;
}

/** Scripts a start begins with; the earlier takes what the later needs as well. */
const BEGUN = ['main', 'home', 'bench'] as const;
type Begun = (typeof BEGUN)[number];

/**
 * How the page is cut into scripts. Left alone, every control would be a file of its own, and a phone spends
 * longer on asking for forty small files than on reading one. So what every start needs is one script: the door
 * to the data and the frame around every screen. A second is either the first screen or the bench, which must
 * be there at once when an interrupted step is taken up again; what these two share goes with the first.
 * @param src absolute path of the page's sources
 */
export function pageScripts(src: string) {
  const root = slashed(src);
  let sets: Record<Begun, Set<string>> | undefined;
  function scriptOf(module: string, modules: Modules): Begun | undefined {
    sets ??= {
      main: withImports(`${root}/main.tsx`, modules),
      home: withImports(`${root}/screens/home/Home.tsx`, modules),
      bench: withImports(`${root}/screens/bench/Bench.tsx`, modules),
    };
    const { main, home, bench } = sets;
    const id = slashed(module);
    if (id.endsWith('.css')) return undefined;
    if (main.has(id) || (home.has(id) && bench.has(id))) return 'main';
    if (home.has(id)) return 'home';
    return bench.has(id) ? 'bench' : undefined;
  }
  // A group takes along what its modules import, unless a group before it has it already.
  const groups = BEGUN.map((script, at) => ({
    debugName: script,
    priority: BEGUN.length - at,
    name: (id: string, modules: Modules) => (scriptOf(id, modules) === script ? script : null),
  }));
  return { groups };
}
