import { resolve } from 'node:path';
import { rollup, VERSION } from 'rollup';
import { build, minify, type Plugin, type ResolvedConfig, type Rolldown } from 'vite';
import { withPolicy } from './policy.ts';

type Bundle = Rolldown.OutputBundle;

/** The script the page begins with; see pageScripts. */
const isFirst = ({ name }: Rolldown.OutputChunk) => name === 'main';

const chunksOf = (bundle: Bundle) => Object.values(bundle).filter((file) => file.type === 'chunk');

/** The page's modules as classic scripts in the System.register format, by file name. */
async function registered(bundle: Bundle): Promise<Map<string, string>> {
  const texts = new Map(chunksOf(bundle).map(({ fileName, code }) => [fileName, code]));
  const nameOf = (path: string) => path.replace(/\.js$/, '');
  const isRuntime = (path: string) => path.includes('/rolldown-runtime-');
  const main = chunksOf(bundle).find(isFirst)?.fileName;
  if (!main) throw new Error('the page has no first script');
  const all = await rollup({
    input: Object.fromEntries(
      [...texts.keys()].filter((path) => !isRuntime(path)).map((path) => [nameOf(path), path]),
    ),
    preserveEntrySignatures: 'allow-extension',
    // What is dead has been taken out already.
    treeshake: false,
    plugins: [
      {
        name: 'from-the-bundle',
        resolveId: (to, from) => (from ? to.replace(/^\.\//, 'assets/') : to),
        load: (path) => texts.get(path) ?? null,
      },
    ],
  });
  const { output } = await all.generate({
    format: 'system',
    entryFileNames: '[name].js',
    // A helper of the bundler's is no file of its own: every start would ask for it.
    manualChunks: (path) => (path === main || isRuntime(path) ? nameOf(main) : undefined),
    compact: true,
    minifyInternalExports: false,
    generatedCode: 'es2015',
  });
  return new Map(
    output.flatMap((file) => (file.type === 'chunk' ? [[file.fileName, file.code] as const] : [])),
  );
}

/** The piece that puts the scripts together; it stands before the first of them. */
async function prelude(source: string, config: ResolvedConfig): Promise<string> {
  const built = await build({
    configFile: false,
    root: config.root,
    logLevel: 'warn',
    publicDir: false,
    build: {
      write: false,
      target: ['es2022', 'safari16.4'],
      rolldownOptions: { input: source, output: { format: 'iife' } },
    },
  });
  const [chunk] = (built as Rolldown.RolldownOutput).output;
  return chunk.code;
}

/**
 * Vite plugin: turns the page's modules into classic scripts, and puts its one sheet into the page. A browser of the
 * Chromium family compiles a classic script when the worker puts it by, and each start takes it up as compiled; a
 * module it compiles anew on every start. The sheet is a file less to ask for, and the policy allows it by its hash.
 * @param source path of the piece that puts the scripts together, from the page's root
 */
export function classicScripts(source: string): Plugin {
  let config: ResolvedConfig;
  let before = '';
  return {
    name: 'classic-scripts',
    apply: 'build',
    enforce: 'post',
    configResolved(resolved) {
      config = resolved;
    },
    async buildStart() {
      before = await prelude(resolve(config.root, source), config);
    },
    // A file's name tells of all that makes its text.
    augmentChunkHash: () => `${VERSION} ${before}`,
    transformIndexHtml: {
      order: 'post',
      handler: (html, { bundle = {} }) =>
        withPolicy(
          html
            .replace(
              /<script [^>]*type="module"[^>]* src="([^"]+)"><\/script>/,
              '<script async src="$1"></script>',
            )
            .replace(/<link rel="stylesheet"[^>]* href="\/([^"]+)">/, (link, path: string) => {
              const sheet = bundle[path];
              if (sheet?.type !== 'asset') return link;
              delete bundle[path];
              return `<style>${sheet.source}</style>`;
            }),
        ),
    },
    async generateBundle(_options, bundle) {
      const texts = await registered(bundle);
      for (const chunk of chunksOf(bundle)) {
        const text = texts.get(chunk.fileName);
        if (text === undefined) {
          delete bundle[chunk.fileName];
          continue;
        }
        if (/execute: ?\(?async/.test(text)) this.error(`${chunk.fileName} waits at its top level`);
        const { code } = await minify(chunk.fileName, text, { module: false });
        chunk.code = isFirst(chunk) ? `${before}${code}` : code;
      }
    },
  };
}
