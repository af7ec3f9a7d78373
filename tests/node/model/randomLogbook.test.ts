import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import type { Entry } from '../../../src/journal/entries.ts';
import { keptSequences } from './keptSequences.ts';
import { modelAnswers } from './modelAnswers.ts';
import { playActs, playSeed, shortened } from './sequences.ts';

// The same throws every time, so that a green run stays green on another machine. MODEL_SEED throws others and
// MODEL_RUNS more of them; `npm run model` prints what it finds, shortened, and that goes into keptSequences.ts.
const from = Number(process.env['MODEL_SEED'] ?? 1);
const runs = Number(process.env['MODEL_RUNS'] ?? 100);
const LENGTH = 25;
const AT_ONCE = 10;

/** Plays sequences and says of each that failed how it fails when it is made as short as it can be. */
async function failuresOf(seeds: readonly number[], length: number): Promise<string[]> {
  const failures: string[] = [];
  for (const seed of seeds) {
    const played = await playSeed(seed, length);
    expect(played.commands).toBeGreaterThan(0);
    if (played.mismatches.length === 0) continue;
    const short = await shortened(played, seed);
    const [first] = short.mismatches;
    failures.push(`seed ${seed}\n${short.log.join('\n')}\n${JSON.stringify(first)}`);
  }
  return failures;
}

const batches = Array.from({ length: Math.ceil(runs / AT_ONCE) }, (_one, at) => from + at * AT_ONCE);

test.each(batches)(
  'random commands from two tabs and a worker leave what the naive model says: ten seeds from %i',
  { timeout: 60_000 + AT_ONCE * 20_000 },
  async (first) => {
    const seeds = Array.from({ length: Math.min(AT_ONCE, from + runs - first) }, (_one, at) => first + at);
    expect(await failuresOf(seeds, LENGTH)).toEqual([]);
  },
);

test.each(keptSequences)(
  'what a sequence showed stays mended: $what',
  { timeout: 60_000 },
  async ({ acts }) => {
    const played = await playActs(acts, 1);
    expect(played.mismatches.map((mismatch) => JSON.stringify(mismatch))).toEqual([]);
    expect(played.done).toBeGreaterThan(0);
  },
);

test('the model shares no code with what it judges: of the journal it takes types alone', () => {
  const folder = import.meta.dirname;
  const models = readdirSync(folder).filter((name) => /(Model|Answers)\.ts$|^reading\.ts$/.test(name));
  expect(models.length).toBeGreaterThanOrEqual(5);
  for (const name of models) {
    const imports = readFileSync(join(folder, name), 'utf8').match(/^import (?!type ).*src\//gm);
    expect(imports, name).toBeNull();
  }
});

/** Lines as they would stand in a journal, one second apart. */
const lines = (...bodies: object[]): Entry[] =>
  bodies.map((body, at) => {
    const atMs = 1000 * (at + 1);
    return {
      id: `e${at}`,
      v: 2,
      writtenAtMs: atMs,
      happenedAtMs: atMs,
      zone: 'UTC',
      ...body,
    } as unknown as Entry;
  });

const joint = {
  ...{ type: 'joint-made', jointId: 'j', bikeId: 'b', name: 'Stem', kind: 'stem-steerer', partIds: [] },
  ...{ between: [], fasteners: [], targets: [], matters: true },
};
const torque = (value: number) => ({
  ...{ type: 'torque-applied', jointId: 'j', bikeId: 'b', bolts: 2, passes: 1, matters: true },
  applied: { value, unit: 'N.m', typed: String(value) },
});
const bike = { type: 'bike-started', bikeId: 'b', name: 'Bike' };
const released = { type: 'bike-released', bikeId: 'b', releaseId: 'r', statement: 'ride', open: [] };
const strike = (corrects: string) => ({ type: 'entry-corrected', corrects, becomes: null, bikeId: 'b' });

test('[J10] the model strikes out, and takes a strike back when that is struck out itself', () => {
  const struck = modelAnswers(lines(bike, joint, torque(5), strike('e2')));
  expect(struck.joints.get('j')).toMatchObject({ state: 'open', appliedTimes: 0 });
  const back = modelAnswers(lines(bike, joint, torque(5), strike('e2'), strike('e3')));
  expect(back.joints.get('j')).toMatchObject({ state: 'torqued', appliedTimes: 1 });
});

test('[J9] the model counts what stands before the beginning of its joint, and says how many', () => {
  const all = lines(bike, joint, torque(5), torque(6)).map((entry) =>
    entry.id === 'e2' ? { ...entry, happenedAtMs: 500 } : entry,
  );
  expect(modelAnswers(all).joints.get('j')).toMatchObject({
    ...{ state: 'torqued', appliedTimes: 2, applied: { value: 6 } },
    early: { least: 1 },
  });
});

test('[L2] the model revokes a release by what stands after it, whichever way the entries come', () => {
  const all = lines(bike, joint, torque(5), released, torque(6));
  expect(modelAnswers(all).bikes.get('b')?.revokedBy).toBe('e4');
  expect(modelAnswers(all.toReversed()).bikes.get('b')?.revokedBy).toBe('e4');
  expect(modelAnswers(all.slice(0, 4)).bikes.get('b')?.revokedBy).toBeUndefined();
});

test('[R4, L6] the model counts rides where they stand: one written down late falls before what it was set after', () => {
  const due = { type: 'recheck-set', recheckId: 'c', bikeId: 'b', turn: 0, dueKm: 10 };
  const limit = { type: 'defect-found', defectId: 'd', bikeId: 'b', decision: 'ride-limited', untilKm: 10 };
  const ride = { type: 'ride-logged', bikeId: 'b', km: 12 };
  const all = lines(bike, due, limit, ride);
  expect(modelAnswers(all).rechecks.get('c')).toMatchObject({ dueAtMs: 4000, ridesThen: 0 });
  expect(modelAnswers(all).defects.get('d')).toMatchObject({ dueAtMs: 4000 });
  const late = all.map((entry) => (entry.id === 'e3' ? { ...entry, happenedAtMs: 1500 } : entry));
  expect(modelAnswers(late).rechecks.get('c')).toMatchObject({ ridesThen: 1, kmThen: 12 });
  expect(modelAnswers(late).rechecks.get('c')?.dueAtMs).toBeUndefined();
  expect(modelAnswers(late).defects.get('d')?.dueAtMs).toBeUndefined();
});
