// Ten thousand mutated copies of a logbook, or as many as are asked for: npm run mutate -- 500 --seed 7
import { spawnSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { parseArgs } from 'node:util';

const { values, positionals } = parseArgs({ allowPositionals: true, options: { seed: { type: 'string' } } });
const count = Number(positionals[0] ?? 10_000);
if (!Number.isInteger(count) || count < 1) throw new RangeError('how many copies: a whole number from 1');
const seed = Number(values.seed ?? 1);
if (!Number.isInteger(seed) || seed < 1) throw new RangeError('the first seed: a whole number from 1');
const run = spawnSync(
  process.execPath,
  ['node_modules/vitest/vitest.mjs', 'run', '--project', 'node', 'tests/node/exchange/mutated'],
  {
    cwd: fileURLToPath(new URL('..', import.meta.url)),
    stdio: 'inherit',
    env: { ...process.env, MUTATED_COPIES: String(count), MUTATED_SEED: String(seed) },
  },
);
process.exit(run.status ?? 1);
