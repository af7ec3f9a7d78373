import { join } from 'node:path';

interface Modules {
  getModuleInfo(id: string): { importedIds: readonly string[] } | null;
}

/** What the first screen imports at once; it stays in the first script and nothing is added to it. */
function firstLoad(entry: string, modules: Modules): Set<string> {
  const found = new Set<string>();
  const open = [entry];
  for (let id = open.pop(); id !== undefined; id = open.pop()) {
    if (found.has(id)) continue;
    found.add(id);
    open.push(...(modules.getModuleInfo(id)?.importedIds ?? []));
  }
  return found;
}

const OFTEN = /\/src\/(controls|sensing|planning|screens\/(?!fit|workings)|mechanics\/(units|quantity|torquePlausible))/;

/**
 * Groups what several screens share into one script. Left alone, every control would be a file of its own,
 * and a phone spends longer on asking for forty small files than on reading one.
 * @param src absolute path of the page's sources
 */
export function sharedChunk(src: string) {
  let first: Set<string> | undefined;
  return {
    includeDependenciesRecursively: false,
    groups: [
      {
        minShareCount: 3,
        name(id: string, modules: Modules): string | null {
          first ??= firstLoad(join(src, 'main.tsx'), modules);
          return OFTEN.test(id) && !first.has(id) && !/\.css/.test(id) ? 'shared' : null;
        },
      },
    ],
  };
}
