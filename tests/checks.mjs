// Prints every outside check beside what the code computes today; leaves with 1 when any is off.
import { fileURLToPath } from 'node:url';
import { createServer } from 'vite';

const server = await createServer({
  configFile: false,
  root: fileURLToPath(new URL('..', import.meta.url)),
  appType: 'custom',
  logLevel: 'error',
  optimizeDeps: { noDiscovery: true },
  server: { middlewareMode: true, ws: false, watch: null },
});

/** Enough digits to see a difference, without the noise of a double. */
const digits = (value) => (Number.isFinite(value) ? String(Number(value.toPrecision(7))) : String(value));

let off = 0;
let rows = [];
let kinds = {};
let weak = 0;
let synthetic = [];
try {
  const { outsideChecks } = await server.ssrLoadModule('/tests/fixtures/outside/index.ts');
  const { compare, countByKind } = await server.ssrLoadModule('/tests/fixtures/outside/outsideCheck.ts');
  const { placeOf } = await server.ssrLoadModule('/tests/fixtures/places.ts');
  kinds = countByKind(outsideChecks);
  const { countSyntheticLeaks, syntheticLines } = await server.ssrLoadModule(
    '/tests/fixtures/syntheticLeaks.ts',
  );
  synthetic = syntheticLines(countSyntheticLeaks(2000, 7));
  rows = outsideChecks.map((check) => {
    const { ours, difference, passed } = compare(check);
    if (!passed) off += 1;
    const place = placeOf(check.source);
    if (place === undefined && check.kind !== 'copied') weak += 1;
    const value = `${digits(check.expected)} ± ${digits(check.tolerance)} ${check.unit}`;
    return [
      check.kind,
      place === undefined ? 'weak' : 'found',
      check.source,
      check.quantity,
      check.negative ? `not ${value}` : value,
      digits(ours),
      digits(difference),
      passed ? 'pass' : 'OFF',
    ];
  });
} finally {
  await server.close();
}

const head = ['kind', 'source is', 'source', 'quantity', 'value', 'ours', 'difference', 'pass'];
const widths = head.map((_, column) => Math.max(...[head, ...rows].map((row) => row[column].length)));
for (const row of [head, ...rows])
  console.log(
    row
      .map((cell, column) => cell.padEnd(widths[column]))
      .join(' | ')
      .trimEnd(),
  );
for (const { text, passed } of synthetic) {
  if (!passed) off += 1;
  console.log(`${passed ? 'pass' : 'OFF '} | ${text}`);
}
console.log(
  `${kinds.computed} computed, ${kinds.behaviour} behaviour, ${kinds.copied} copied ` +
    `(a figure typed again is no outside check); ${weak} of the first two stand on a source that cannot be found again`,
);
console.log(`${kinds.computed + kinds.behaviour} outside checks, ${off} off`);
process.exitCode = off > 0 || rows.length === 0 ? 1 : 0;
