// The whole test: format and lint, types, node tests in four time zones, and the built product in a real browser.
// Ends with one line that counts everything: N passed, N failed.
import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { findBrowser } from './browser/findBrowser.mjs';

process.chdir(fileURLToPath(new URL('..', import.meta.url)));
let passed = 0;
let failed = 0;
const scratch = mkdtempSync(join(tmpdir(), 'pinchbolt-'));

/** A tool that only says yes or no counts as one test. */
function tool(name, file, args) {
  const run = spawnSync(process.execPath, [file, ...args], { encoding: 'utf8' });
  const ok = run.status === 0;
  console.log(`${ok ? 'passed' : 'FAILED'}  ${name}`);
  if (!ok) console.log(`${run.stdout}${run.stderr}`);
  if (ok) passed += 1;
  else failed += 1;
}

function vitest(name, args, env = {}) {
  const report = join(scratch, `${name.replaceAll(/\W+/g, '-')}.json`);
  const run = spawnSync(
    process.execPath,
    [
      'node_modules/vitest/vitest.mjs',
      'run',
      '--reporter=default',
      '--reporter=json',
      `--outputFile.json=${report}`,
      ...args,
    ],
    { stdio: ['ignore', 'inherit', 'inherit'], env: { ...process.env, ...env } },
  );
  try {
    const { numPassedTests, numFailedTests, success } = JSON.parse(readFileSync(report, 'utf8'));
    passed += numPassedTests;
    failed += numFailedTests;
    // A file that could not even be loaded has no test of its own to fail.
    if (!success && numFailedTests === 0) failed += 1;
    if (numPassedTests + numFailedTests === 0) failed += 1;
  } catch {
    console.log(`FAILED  ${name}: no report (exit ${run.status})`);
    failed += 1;
  }
}

const biome = 'node_modules/@biomejs/biome/bin/biome';
const tsc = 'node_modules/typescript/bin/tsc';
tool('format and lint', biome, ['check', '.']);
tool('types: pure folders, without a browser', tsc, ['-p', 'src/tsconfig.pure.json']);
tool('types: page', tsc, ['-p', 'src']);
tool('types: worker', tsc, ['-p', 'sw']);
tool('types: tests', tsc, ['-p', 'tests']);
vitest('node', ['--project', 'node']);
vitest('outside checks', ['--project', 'checks']);
for (const zone of ['Pacific/Apia', 'America/Santiago', 'Asia/Kolkata', 'Europe/Berlin']) {
  vitest(`zone ${zone}`, ['--project', 'node', 'tests/node/planning', 'tests/node/reminders'], { TZ: zone });
}
const browser = findBrowser({ install: true });
if (browser.path) vitest('browser', ['--project', 'browser'], { CHROME_PATH: browser.path });
else {
  console.log(`FAILED  browser: ${browser.why}`);
  failed += 1;
}
rmSync(scratch, { recursive: true, force: true });
console.log(`${passed} passed, ${failed} failed`);
process.exit(failed === 0 && passed > 0 ? 0 : 1);
