import { join } from 'node:path';

interface Modules {
  getModuleInfo(id: string): { importedIds: readonly string[] } | null;
}

/** A module and all it imports at once, to the end. */
function withImports(entry: string, modules: Modules): Set<string> {
  const found = new Set<string>();
  const open = [entry];
  for (let id = open.pop(); id !== undefined; id = open.pop()) {
    if (found.has(id)) continue;
    found.add(id);
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
  let sets: Record<Begun, Set<string>> | undefined;
  function scriptOf(id: string, modules: Modules): Begun | undefined {
    sets ??= {
      main: withImports(join(src, 'main.tsx'), modules),
      home: withImports(join(src, 'screens/home/Home.tsx'), modules),
      bench: withImports(join(src, 'screens/bench/Bench.tsx'), modules),
    };
    const { main, home, bench } = sets;
    if (id.includes('.css')) return undefined;
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
