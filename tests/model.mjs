// Plays random sequences against a second, naive model of the logbook and prints where the two differ, each
// failing sequence shortened: npm run model -- --runs 3000 --seed 7 [--length 40]
import { fileURLToPath } from 'node:url';
import { parseArgs } from 'node:util';
import { createServer } from 'vite';

const number = { type: 'string' };
const { values } = parseArgs({ options: { runs: number, seed: number, length: number } });
const runs = Number(values.runs ?? process.env.MODEL_RUNS ?? 300);
const from = Number(values.seed ?? process.env.MODEL_SEED ?? Date.now() % 1_000_000);
const length = Number(values.length ?? 40);

const server = await createServer({
  configFile: false,
  root: fileURLToPath(new URL('..', import.meta.url)),
  appType: 'custom',
  logLevel: 'error',
  optimizeDeps: { noDiscovery: true },
  server: { middlewareMode: true, ws: false, watch: null },
});

let commands = 0;
let done = 0;
let failing = 0;
const begun = Date.now();
try {
  const { playSeed, shortened } = await server.ssrLoadModule('/tests/node/model/sequences.ts');
  for (let seed = from; seed < from + runs; seed += 1) {
    const played = await playSeed(seed, length);
    commands += played.commands;
    done += played.done;
    if (played.mismatches.length === 0) continue;
    failing += 1;
    console.log(`\nseed ${seed}: ${played.mismatches[0].what}`);
    if (failing > 12) continue;
    const short = await shortened(played, seed);
    console.log(short.log.join('\n'));
    console.log(JSON.stringify(short.mismatches[0]));
    console.log(`acts: ${JSON.stringify(short.acts)}`);
  }
} finally {
  await server.close();
}
const seconds = Math.round((Date.now() - begun) / 1000);
console.log(
  `seeds ${from} to ${from + runs - 1}: ${runs} sequences, ${commands} commands, ${done} carried out, ${failing} sequences with mismatches, ${seconds} s`,
);
process.exit(failing > 0 || commands === 0 ? 1 : 0);
