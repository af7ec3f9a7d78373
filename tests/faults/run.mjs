// Attacks the built product in a real browser. Prints its seed; ends with "N attacks, N lost, N wrong".
//   --seed N       throw the same dice again
//   --only NAME    one attack alone
//   --share 0..1   a part of each attack
//   --minutes N    begin nothing new after so many minutes; what ran counts
//   --self-test    plant faults, and see that each of them is reported
import { execFileSync } from 'node:child_process';
import { parseArgs } from 'node:util';
import { createServer } from 'vite';
import { findBrowser } from '../browser/findBrowser.mjs';

const { values } = parseArgs({
  options: {
    seed: { type: 'string', default: String(Math.floor(Math.random() * 1e9)) },
    only: { type: 'string' },
    share: { type: 'string', default: '1' },
    minutes: { type: 'string', default: 'Infinity' },
    'self-test': { type: 'boolean', default: false },
  },
});
const share = Number(values.share);
if (!(share > 0 && share <= 1)) throw new Error('--share is above 0 and at most 1');

const minutes = Number(values.minutes);
if (!(minutes > 0)) throw new Error('--minutes is above 0');

const browser = findBrowser({ install: true });
if (!browser.path) throw new Error(browser.why);
console.log(`seed ${values.seed}`);
execFileSync(process.execPath, ['node_modules/vite/bin/vite.js', 'build', '--logLevel', 'error'], {
  stdio: ['ignore', 'ignore', 'inherit'],
  env: { ...process.env, NODE_ENV: 'production' },
});
const vite = await createServer({
  configFile: false,
  server: { middlewareMode: true, hmr: false, ws: false },
  appType: 'custom',
  logLevel: 'error',
});
const { runFaults } = await vite.ssrLoadModule('/tests/faults/main.ts');
const code = await runFaults({
  ...{ seed: values.seed, only: values.only, share, minutes, selfTest: values['self-test'] },
});
await vite.close();
process.exit(code);
