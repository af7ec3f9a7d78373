// One warm process: every module is loaded once; for a change only the changed file and what stands on it are
// evaluated again. The changed text lives in memory, the source tree is never written to.
import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { createServer, createServerModuleRunner } from 'vite';
import * as suite from './suite.mjs';

const top = fileURLToPath(new URL('../..', import.meta.url));
// The test files are evaluated by the runner of Vite, this file by Node: the words they share stand here.
globalThis.doubtSuite = suite;
const words = ['test', 'it', 'describe', 'expect', 'vi', 'beforeAll', 'afterAll', 'beforeEach', 'afterEach'];
/** Path and text of the file that is changed right now. */
let changed = null;

const server = await createServer({
  configFile: false,
  root: top,
  appType: 'custom',
  logLevel: 'error',
  optimizeDeps: { noDiscovery: true },
  ssr: { noExternal: ['vitest'] },
  server: { middlewareMode: true, ws: false, watch: null, hmr: false },
  plugins: [
    {
      name: 'doubt',
      enforce: 'pre',
      resolveId: (id) => (id === 'vitest' ? '\0vitest' : null),
      load: (id) => {
        if (id === '\0vitest') return `export const { ${words.join(', ')} } = globalThis.doubtSuite;`;
        return changed?.path === id ? changed.text : null;
      },
    },
  ],
});
const environment = server.environments.ssr;
const runner = createServerModuleRunner(environment, { hmr: false });
await runner.import(`${top}tests/node/steadyDice.ts`);

/** Forget what was evaluated of a file and of everything that stands on it. */
function forget(path) {
  const seen = new Set();
  const waiting = [path];
  while (waiting.length > 0) {
    const id = waiting.pop();
    if (seen.has(id)) continue;
    seen.add(id);
    const node = runner.evaluatedModules.getModuleById(id);
    if (!node) continue;
    waiting.push(...node.importers);
    runner.evaluatedModules.invalidateModule(node);
  }
}

/** Put a text in the place of a file, or take it away again with null. */
function put(path, text) {
  const before = changed?.path;
  changed = text === null ? null : { path, text };
  for (const id of new Set([before, path].filter(Boolean))) {
    const module = environment.moduleGraph.getModuleById(id);
    if (module) module.transformResult = null;
    forget(id);
  }
}

suite.onResetModules(() => {
  for (const [id, module] of runner.evaluatedModules.idToModuleMap)
    if (id.startsWith(`${top}src/`)) runner.evaluatedModules.invalidateModule(module);
});

const run = (file) => {
  const path = `${top}${file}`;
  forget(path);
  return suite.runFile(() => runner.import(path));
};

/** Files of src that a test file stands on, with how many imports away each is. */
function reach(file) {
  const away = new Map();
  let level = [environment.moduleGraph.getModuleById(`${top}${file}`)];
  for (let distance = 0; level.length > 0; distance += 1) {
    const next = [];
    for (const module of level.filter(Boolean)) {
      if (!module.id || away.has(module.id)) continue;
      away.set(module.id, distance);
      next.push(...module.importedModules);
    }
    level = next;
  }
  return Object.fromEntries(
    [...away]
      .filter(([id]) => id.startsWith(`${top}src/`))
      .map(([id, distance]) => [id.slice(top.length), distance]),
  );
}

async function tryChange({ file, start, end, to, tests }) {
  const path = `${top}${file}`;
  const text = readFileSync(path, 'utf8');
  put(path, `${text.slice(0, start)}${to}${text.slice(end)}`);
  for (const name of tests) {
    process.send({ running: name });
    const failure = await run(name);
    if (failure) return { caught: true, by: name, failure };
  }
  return { caught: false };
}

// A promise that a changed line rejects later belongs to the change that was under way, not to this process.
process.on('unhandledRejection', () => undefined);

process.on('message', async ({ task, ...given }) => {
  if (task === 'measure') {
    const began = performance.now();
    const failure = await run(given.file);
    process.send({ done: { failure, ms: performance.now() - began, reach: reach(given.file) } });
  } else if (task === 'try') {
    process.send({ done: await tryChange(given) });
  }
});
process.send({ ready: true });
