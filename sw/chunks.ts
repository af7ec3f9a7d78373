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

/**
 * How the page is cut into scripts. Left alone, every control would be a file of its own, and a phone spends
 * longer on asking for forty small files than on reading one. So the bench, which must be there at once when
 * an interrupted step is taken up again, is one script with all it needs.
 * The first screen's own script stays as it is: nothing is added to what it loads.
 * @param src absolute path of the page's sources
 */
export function pageScripts(src: string) {
  let first: Set<string> | undefined;
  let bench: Set<string> | undefined;
  return {
    includeDependenciesRecursively: false,
    groups: [
      {
        name(id: string, modules: Modules): string | null {
          first ??= withImports(join(src, 'main.tsx'), modules);
          bench ??= withImports(join(src, 'screens/Bench.tsx'), modules);
          if (first.has(id) || id.includes('.css')) return null;
          return bench.has(id) ? 'bench' : null;
        },
      },
    ],
  };
}
