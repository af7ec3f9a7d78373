import { createHash } from 'node:crypto';
import { readdirSync, readFileSync, statSync, writeFileSync } from 'node:fs';
import { dirname, join, relative, resolve } from 'node:path';
import { build, type Plugin, type ResolvedConfig } from 'vite';
import { hostFiles } from './hostFiles.ts';
import { contentPolicy, headersFor, sheetsOf, withoutPolicy } from './policy.ts';
import { rescueFiles } from './rescueFiles.ts';
import { slashed } from './slashed.ts';

function filesBelow(folder: string): string[] {
  return readdirSync(folder).flatMap((name) => {
    const path = join(folder, name);
    return statSync(path).isDirectory() ? filesBelow(path) : [path];
  });
}

/** Beginning of a hash, long enough that no wrong file has the same by chance: 42 bits, one in four million million. */
const HASH_SIGNS = 7;

/** Pictures that a shop of apps or a launcher asks for when the app is installed: with a network, and once. */
const INSTALL = 'install';

/**
 * What the worker puts by, sorted by path, so that the same files give the same list on every system. The page goes
 * by the path of its folder.
 * @param dist folder of the built page
 * @param left names of files and folders in it that the worker does not put by
 * @returns the beginning of each file's SHA-256, in base64url
 */
export function shippedFiles(dist: string, left: readonly string[]): Record<string, string> {
  const files = filesBelow(dist).map((path) => ({ path, name: slashed(relative(dist, path)) }));
  return Object.fromEntries(
    files
      .filter(
        ({ name }) =>
          !name.endsWith('.map') && !left.some((one) => name === one || name.startsWith(`${one}/`)),
      )
      .sort((a, b) => (a.name < b.name ? -1 : 1))
      .map(({ path, name }) => [
        name === 'index.html' ? '/' : `/${name}`,
        createHash('sha256').update(readFileSync(path)).digest('base64url').slice(0, HASH_SIGNS),
      ]),
  );
}

/**
 * Builds the service worker as one classic script and hands it the list of shipped files. The version is a hash of
 * all their bytes, and the same build always gives the same worker. Beside it go
 * the rescue page, which the worker also carries in itself, its script for the second copy, and the headers for the usual servers.
 * @param dist folder of the built page, where the worker is put as well
 * @param source path of the worker's source
 */
export async function shipWorker(dist: string, source: string): Promise<void> {
  const { secondCopy, ...rescue } = await rescueFiles(join(dirname(source), 'rescue'));
  writeFileSync(join(dist, 'second-copy.js'), secondCopy);
  const page = readFileSync(join(dist, 'index.html'), 'utf8');
  const headers = headersFor(contentPolicy([...sheetsOf(page), ...sheetsOf(rescue.page)]));
  const beside = { 'rescue.html': rescue.page, 'rescue.js': rescue.script, ...hostFiles(headers) };
  for (const [name, text] of Object.entries(beside)) writeFileSync(join(dist, name), text);
  const files = shippedFiles(dist, ['sw.js', INSTALL, ...Object.keys(beside)]);
  const version = createHash('sha256').update(JSON.stringify(files)).digest('hex').slice(0, 12);
  await build({
    configFile: false,
    root: dirname(source),
    logLevel: 'warn',
    publicDir: false,
    define: {
      __FILES__: JSON.stringify(files),
      __VERSION__: JSON.stringify(version),
      __HEADERS__: JSON.stringify(headers),
      __RESCUE__: JSON.stringify({ ...rescue, page: withoutPolicy(rescue.page) }),
    },
    build: {
      outDir: dist,
      emptyOutDir: false,
      target: ['es2022', 'safari16.4'],
      rolldownOptions: { input: source, output: { format: 'iife', entryFileNames: 'sw.js' } },
    },
  });
}

/**
 * Vite plugin: after the page is built, builds the worker that carries it.
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
    writeBundle: () =>
      shipWorker(resolve(config.root, config.build.outDir), resolve(config.root, '..', options.sw)),
  };
}
