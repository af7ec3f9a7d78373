// Measures against floors taken in the same run. Prints one JSON object.
import { benchDay } from './day.mjs';
import { benchEar } from './ear.mjs';
import { benchExchange } from './exchange.mjs';
import { benchFit } from './fit.mjs';
import { benchProduct } from './product.mjs';
import { benchSeal } from './seal.mjs';
import { benchWheels } from './wheels.mjs';

const parts = {
  product: benchProduct,
  fit: benchFit,
  exchange: benchExchange,
  seal: benchSeal,
  wheels: benchWheels,
  ear: benchEar,
  day: benchDay,
};
const only = process.env.BENCH_ONLY;
if (only && !(only in parts)) throw new Error(`BENCH_ONLY is one of ${Object.keys(parts).join(', ')}`);

const results = [];
for (const [name, bench] of Object.entries(parts))
  if (!only || only === name) results.push(...(await bench()));

console.log(JSON.stringify({ measured: new Date().toISOString(), results }, null, 2));
process.exit(results.every(({ ratio, limit }) => limit === null || ratio <= limit) ? 0 : 1);
