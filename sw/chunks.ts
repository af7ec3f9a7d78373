import { join } from 'node:path';
import type { Plugin } from 'vite';

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
 * longer on asking for forty small files than on reading one. So a few begin together: the page's first script,
 * which is small and sets the others off; the door to the data; the frame around every screen; and either the
 * first screen or the bench, which must be there at once when an interrupted step is taken up again. What these
 * two share goes with the frame.
 * @param src absolute path of the page's sources
 */
export function pageScripts(src: string) {
  let sets: Record<'main' | 'logbook' | 'frame' | 'home' | 'bench', Set<string>> | undefined;
  function scriptOf(id: string, modules: Modules): string | null {
    sets ??= {
      main: withImports(join(src, 'main.ts'), modules),
      logbook: withImports(join(src, 'logbook.ts'), modules),
      frame: withImports(join(src, 'screens/frame.tsx'), modules),
      home: withImports(join(src, 'screens/Home.tsx'), modules),
      bench: withImports(join(src, 'screens/Bench.tsx'), modules),
    };
    if (id.includes('.css') || sets.main.has(id)) return null;
    if (sets.logbook.has(id)) return 'logbook';
    const [home, bench] = [sets.home.has(id), sets.bench.has(id)];
    if (sets.frame.has(id) || (home && bench)) return 'frame';
    if (home) return 'home';
    return bench ? 'bench' : null;
  }
  return { includeDependenciesRecursively: false, groups: [{ debugName: 'begun', name: scriptOf }] };
}

/** Scripts begun on every start: the browser is asked to compile all of them at once, beside the page's own thread. */
const BEGUN = new Set(['index', 'logbook', 'frame', 'home', 'bench']);
/** Begun on every start, whatever it is opened at, so the page's head names them. */
const ALWAYS = new Set(['logbook', 'frame', 'rolldown-runtime']);
const COMPILE_ALL = '//# allFunctionsCalledOnLoad\n';

/** Vite plugin: names what every start begins with in the page's head, and asks for the scripts of a start to be compiled whole. */
export function beginEarly(): Plugin {
  return {
    name: 'begin-early',
    apply: 'build',
    generateBundle: {
      // The browser heeds it in the first line only, so whatever else is put there comes before.
      order: 'post',
      handler(_options, bundle) {
        for (const file of Object.values(bundle))
          if (file.type === 'chunk' && BEGUN.has(file.name)) file.code = COMPILE_ALL + file.code;
      },
    },
    transformIndexHtml: {
      order: 'post',
      handler: (_html, { bundle }) =>
        Object.values(bundle ?? {})
          .filter((file) => file.type === 'chunk' && ALWAYS.has(file.name))
          .map(({ fileName }) => ({
            tag: 'link',
            attrs: { rel: 'modulepreload', crossorigin: true, href: `/${fileName}` },
            injectTo: 'head' as const,
          })),
    },
  };
}
