import { expect, test } from 'vitest';
import { attack } from './attack.ts';

/** A few hundred in every run of the tests; `npm run mutate` asks for all. */
const COUNT = Number(process.env['MUTATED_COPIES'] ?? 300);
const SEED = Number(process.env['MUTATED_SEED'] ?? 1);

test(
  'every mutated copy is refused with a sentence, or read to the same entries',
  async () => {
    const { attacks, refused, read, wrong, slowestMs } = await attack(SEED, COUNT);
    const kinds = Object.entries(refused).map(([name, count]) => `${name} ${count}`);
    console.log(`refused: ${kinds.join(', ')}; read as it was: ${read}; slowest ${Math.round(slowestMs)} ms`);
    console.log(`seeds ${SEED} to ${SEED + COUNT - 1}`);
    console.log(`${attacks} attacks, 0 lost, ${wrong.length} wrong`);
    expect(wrong).toEqual([]);
    expect(attacks).toBe(COUNT);
  },
  COUNT * 500 + 60_000,
);
