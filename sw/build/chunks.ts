import { slashed } from './slashed.ts';

interface Modules {
  getModuleInfo(id: string): { importedIds: readonly string[]; code: string | null } | null;
}

/** The bundler may write a drive letter small and, with a plugin's help, slashes the other way. */
function spellings(path: string): string[] {
  const small = path.replace(/^[A-Z]:/, (letter) => letter.toLowerCase());
  return [path, small, path.replaceAll('/', '\\'), small.replaceAll('/', '\\')];
}

/** A module and all that it imports statically, and so on to the last, with the signs in each; by `slashed` paths. */
function withImports(entry: string, modules: Modules): Map<string, number> {
  const first = spellings(entry).find((id) => modules.getModuleInfo(id));
  if (first === undefined) throw new Error(`the bundler does not know ${entry}`);
  const found = new Map<string, number>();
  const open = [first];
  for (let id = open.pop(); id !== undefined; id = open.pop()) {
    if (found.has(slashed(id))) continue;
    const info = modules.getModuleInfo(id);
    found.set(slashed(id), info?.code?.length ?? 0);
    open.push(...(info?.importedIds ?? []));
  }
  return found;
}

/** What several screens share goes into one script as long as a piece, with what it imports, has no more signs. */
const SMALL = 3400;

/** Scripts a start begins with; the earlier takes what the later needs as well. */
const BEGUN = ['main', 'home', 'bench'] as const;
type Begun = (typeof BEGUN)[number];

/**
 * How the page is cut into scripts. Left alone, every control would be a file of its own, and a phone spends
 * longer on asking for forty small files than on reading one. So what every start needs is one script: the door
 * to the data and the frame around every screen. A second is either the first screen or the bench, which must
 * be there at once when an interrupted step is taken up again; what these two share goes with the first. Of the rest, the small
 * pieces that several screens share are one script more: as files of their own they would be half of the worker's list.
 * @param src absolute path of the page's sources
 */
export function pageScripts(src: string) {
  const root = slashed(src);
  let sets: Record<Begun, Map<string, number>> | undefined;
  const begunBy = (modules: Modules) => {
    sets ??= {
      main: withImports(`${root}/main.tsx`, modules),
      home: withImports(`${root}/screens/home/Home.tsx`, modules),
      bench: withImports(`${root}/screens/bench/Bench.tsx`, modules),
    };
    return sets;
  };
  function scriptOf(module: string, modules: Modules): Begun | undefined {
    const { main, home, bench } = begunBy(modules);
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
  /** Signs in a module and in what it imports beyond what is begun with. */
  function signsIn(module: string, modules: Modules): number {
    const begun = Object.values(begunBy(modules));
    const own = [...withImports(module, modules)].filter(([id]) => !begun.some((set) => set.has(id)));
    return own.reduce((sum, [, signs]) => sum + signs, 0);
  }
  const shared = {
    debugName: 'shared',
    priority: 0,
    minShareCount: 2,
    name: (id: string, modules: Modules) =>
      !id.includes('.css') && !scriptOf(id, modules) && signsIn(id, modules) <= SMALL ? 'shared' : null,
  };
  return { groups: [...groups, shared] };
}
