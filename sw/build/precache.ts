import { createHash } from 'node:crypto';
import { readdirSync, readFileSync, statSync } from 'node:fs';
import { join, relative, resolve } from 'node:path';
import { build, type Plugin, type ResolvedConfig } from 'vite';
import { slashed } from './slashed.ts';

/** One shipped file: its address and the hash that tells one version of it from the next. */
export interface PrecacheEntry {
  url: string;
  revision: string;
}

function filesBelow(folder: string): string[] {
  return readdirSync(folder).flatMap((name) => {
    const path = join(folder, name);
    return statSync(path).isDirectory() ? filesBelow(path) : [path];
  });
}

/**
 * The shipped files, sorted by address, so that the same files give the same list on every system.
 * @param dist folder of the built page
 * @returns every file in it but source maps and the worker itself
 */
export function precacheEntries(dist: string): PrecacheEntry[] {
  return filesBelow(dist)
    .map((path) => ({ path, url: `/${slashed(relative(dist, path))}` }))
    .filter(({ url }) => !/\.map$|\/sw\.js$/.test(url))
    .sort((a, b) => (a.url < b.url ? -1 : 1))
    .map(({ path, url }) => ({
      url,
      revision: createHash('sha256').update(readFileSync(path)).digest('hex').slice(0, 12),
    }));
}

/**
 * Vite plugin: after the page is built, builds the service worker as one classic script and hands it the list of
 * shipped files. The version is a hash of all their bytes: the same build always gives the same worker.
 * @param options.sw path of the worker's source, from the project's top level
 */
export function precacheList(options: { sw: string }): Plugin {
  let config: ResolvedConfig;
  return {
    name: 'precache',
    apply: 'build',
    configResolved(resolved) {
      config = resolved;
    },
    // Only when all files are written; a failed build has none.
    async writeBundle() {
      const dist = resolve(config.root, config.build.outDir);
      const entries = precacheEntries(dist);
      const version = createHash('sha256').update(JSON.stringify(entries)).digest('hex').slice(0, 12);
      await build({
        configFile: false,
        root: config.root,
        logLevel: 'warn',
        publicDir: false,
        define: {
          __PRECACHE__: JSON.stringify(entries),
          __VERSION__: JSON.stringify(version),
        },
        build: {
          outDir: dist,
          emptyOutDir: false,
          target: ['es2022', 'safari16.4'],
          rolldownOptions: {
            input: resolve(config.root, '..', options.sw),
            output: { format: 'iife', entryFileNames: 'sw.js' },
          },
        },
      });
    },
  };
}
