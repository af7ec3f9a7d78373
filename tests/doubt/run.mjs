// Doubts the tests: changes one literal or operator at a time and sees whether any test notices.
//   npm run doubt -- --seed 1 --sample 300            by all tests of the fast half and the outside checks
//   npm run doubt -- --seed 1 --sample 300 --checks   by the outside checks alone
//   --only src/standards/screws          keeps to files whose path begins so
//   --tests tests/node/fit,tests/node/checks   keeps to those tests: quicker, and what only others notice survives
import { fork } from 'node:child_process';
import { readdirSync, statSync } from 'node:fs';
import { availableParallelism } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { parseArgs } from 'node:util';
import { allPlaces, sample } from './changes.mjs';

const top = fileURLToPath(new URL('../..', import.meta.url));
/** A test that takes this much longer than ever before hangs on the change: that is noticing it too. */
const PATIENCE_MS = 60_000;
const CHECKS = 'tests/node/checks/everyCheck.test.ts';

const { values } = parseArgs({
  options: {
    seed: { type: 'string', default: '1' },
    sample: { type: 'string', default: '300' },
    checks: { type: 'boolean', default: false },
    only: { type: 'string', default: '' },
    tests: { type: 'string', default: 'tests/node' },
    workers: { type: 'string', default: String(Math.min(4, availableParallelism())) },
  },
});
const whole = (name) => {
  const number = Number(values[name]);
  if (!Number.isInteger(number) || number < 0) throw new Error(`--${name} must be a whole number`);
  return number;
};

const testsBelow = (path) => {
  if (statSync(join(top, path)).isDirectory())
    return readdirSync(join(top, path)).flatMap((name) => testsBelow(`${path}/${name}`));
  return path.endsWith('.test.ts') ? [path] : [];
};

/** One warm worker that takes a task at a time; it is put down and started afresh where a change makes it hang. */
class Bench {
  #child = null;

  async #start() {
    this.#child = fork(join(top, 'tests/doubt/worker.mjs'), {
      stdio: ['ignore', 'ignore', 'inherit', 'ipc'],
    });
    const child = this.#child;
    await new Promise((resolve, reject) => {
      child.once('message', resolve);
      child.once('exit', (code) => reject(new Error(`the worker left with ${code}`)));
    });
  }

  async ask(task) {
    if (this.#child === null) await this.#start();
    const child = this.#child;
    return new Promise((resolve) => {
      let running;
      let timer;
      const end = (answer) => {
        clearTimeout(timer);
        child.removeAllListeners();
        resolve(answer);
      };
      const giveUp = (failure) => {
        this.stop();
        end({ caught: true, by: running ?? task.file, failure, ms: PATIENCE_MS, reach: {} });
      };
      const wait = () => {
        clearTimeout(timer);
        timer = setTimeout(() => giveUp('does not come to an end'), PATIENCE_MS);
      };
      child.on('message', (message) => {
        if (message.done) return end(message.done);
        running = message.running;
        wait();
      });
      child.once('exit', () => giveUp('the process ended'));
      wait();
      child.send(task);
    });
  }

  stop() {
    this.#child?.removeAllListeners();
    this.#child?.kill('SIGKILL');
    this.#child = null;
  }
}

const benches = Array.from({ length: Math.max(1, whole('workers')) }, () => new Bench());
process.on('exit', () => {
  for (const bench of benches) bench.stop();
});
for (const signal of ['SIGINT', 'SIGTERM']) process.on(signal, () => process.exit(1));

/** All tasks, each by the next free bench; answers in the order of the tasks. */
async function share(tasks, each) {
  const answers = [];
  let next = 0;
  await Promise.all(
    benches.map(async (bench) => {
      while (next < tasks.length) {
        const at = next;
        next += 1;
        answers[at] = await each(bench, tasks[at]);
      }
    }),
  );
  return answers;
}

const tests = values.checks
  ? [CHECKS]
  : values.tests
      .split(',')
      .flatMap(testsBelow)
      .filter((path) => path !== 'tests/node/architecture.test.ts');
const measured = await share(tests, (bench, file) => bench.ask({ task: 'measure', file }));
const usable = tests
  .map((file, at) => ({ file, ...measured[at] }))
  .filter(({ file, failure }) => {
    if (failure) console.log(`left out, fails unchanged: ${file}: ${failure}`);
    return !failure;
  });
if (usable.length === 0) throw new Error('no test runs here');

const places = allPlaces(top).filter(({ file }) => file.startsWith(values.only));
const changes = sample(places, whole('seed'), whole('sample'));
/** Nearest tests first, and quick ones before slow ones. */
const dependents = (file) =>
  usable
    .filter(({ reach }) => file in reach)
    .sort((a, b) => a.reach[file] - b.reach[file] || a.ms - b.ms)
    .map((test) => test.file);

const began = performance.now();
const outcomes = await share(changes, (bench, change) => {
  const { file, start, end, to } = change;
  return bench.ask({ task: 'try', file, start, end, to, tests: dependents(file) });
});
const survivors = changes.filter((_, at) => !outcomes[at].caught);
for (const { file, line, from, to, safety } of survivors)
  console.log(`${safety ? 'SAFETY ' : ''}${file}:${line}  ${from} → ${to === '' ? '(nothing)' : to}`);
const inSafety = survivors.filter(({ safety }) => safety).length;
console.log(
  `seed ${values.seed}, ${places.length} places, ${values.checks ? 'outside checks alone' : `${usable.length} test files`}, ` +
    `${Math.round((performance.now() - began) / 1000)} s; survivors in what matters to safety: ${inSafety}`,
);
console.log(`${changes.length} changes, ${changes.length - survivors.length} caught`);
process.exit(0);
