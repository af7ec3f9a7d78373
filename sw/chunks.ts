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

/** Scripts a start begins with; the earlier takes what the later needs as well. */
const BEGUN = ['main', 'logbook', 'frame', 'home', 'bench'] as const;
type Begun = (typeof BEGUN)[number];

/**
 * How the page is cut into scripts. Left alone, every control would be a file of its own, and a phone spends
 * longer on asking for forty small files than on reading one. So a few begin together: the page's first script,
 * which is small and sets the others off; the door to the data; the frame around every screen; and either the
 * first screen or the bench, which must be there at once when an interrupted step is taken up again. What these
 * two share goes with the frame.
 * @param src absolute path of the page's sources
 */
export function pageScripts(src: string) {
  let sets: Record<Begun, Set<string>> | undefined;
  function scriptOf(id: string, modules: Modules): Begun | undefined {
    sets ??= {
      main: withImports(join(src, 'main.ts'), modules),
      logbook: withImports(join(src, 'logbook.ts'), modules),
      frame: withImports(join(src, 'screens/frame.tsx'), modules),
      home: withImports(join(src, 'screens/Home.tsx'), modules),
      bench: withImports(join(src, 'screens/Bench.tsx'), modules),
    };
    const { main, logbook, frame, home, bench } = sets;
    if (id.includes('.css')) return undefined;
    if (main.has(id)) return 'main';
    if (logbook.has(id)) return 'logbook';
    if (frame.has(id) || (home.has(id) && bench.has(id))) return 'frame';
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

/** Begun on every start, whatever it is opened at, so the page's head names them. */
const ALWAYS = new Set(['logbook', 'frame', 'rolldown-runtime']);

/** What to ask for along with a script that is loaded later: all it imports but what every start has begun with. */
export const withoutBegun = (_script: string, imports: string[]): string[] =>
  imports.filter((path) => !['main', ...ALWAYS].some((name) => path.startsWith(`assets/${name}-`)));

/** Vite plugin: names what every start begins with in the page's head. */
export function beginEarly(): Plugin {
  return {
    name: 'begin-early',
    apply: 'build',
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
