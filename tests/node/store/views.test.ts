import { describe, expect, test } from 'vitest';
import type { Command } from '../../../src/journal/commands.ts';
import type { Entry } from '../../../src/journal/entries.ts';
import { foldWhole } from '../../../src/journal/foldWhole.ts';
import type { Row } from '../../../src/journal/rows.ts';
import type { Logbook } from '../../../src/logbook.ts';
import { openDatabase } from '../../../src/store/database.ts';
import { rebuildIfOld } from '../../../src/store/rebuild.ts';
import { openTestLogbook } from '../logbook/openTestLogbook.ts';

/** Seeds that once failed stay here for good; the others are as good as any. */
const SEEDS = [1, 2, 3, 5, 8, 13, 21, 34, 55, 89, 144, 233];
const COMMANDS = 140;

/** A small generator with a seed (mulberry32, public domain), so that a failure can be run again. */
function generator(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4_294_967_296;
  };
}

async function everything(name: string): Promise<{ rows: Row[]; entries: Entry[] }> {
  const db = await openDatabase(name);
  const [rows, lines] = await Promise.all([db.getAll('views'), db.getAll('journal')]);
  db.close();
  return { rows, entries: lines.map(({ entry }) => entry) };
}

const sorted = (rows: Iterable<Row>) =>
  [...rows].map((row) => JSON.parse(JSON.stringify(row)) as Row).sort((a, b) => (a.key < b.key ? -1 : 1));

/** Some command that may or may not be refused; most of them make sense now and then. */
async function randomCommand(logbook: Logbook, random: () => number, nowMs: number): Promise<Command> {
  const one = <T>(list: readonly T[]): T => list[Math.floor(random() * list.length)] as T;
  const bikeId = one(['a', 'b']);
  const view = await logbook.read('bike', { bikeId });
  const partId = one(['p1', 'p2', 'p3', 'p4', 'p5']);
  const joint = one(view?.joints ?? []);
  const jointId = joint?.jointId ?? 'none';
  const step = one(view?.steps ?? []);
  const stepId = step?.stepId ?? 'none';
  const { lines } = await logbook.read('history', { place: `b:${bikeId}`, limit: 12 });
  const entry = one(lines)?.entry;
  const entryId = entry?.id ?? 'none';
  const applied = { value: 3 + Math.floor(random() * 9), unit: 'N.m' as const, typed: 'x' };
  const late = random() < 0.25 ? { happenedAtMs: nowMs - Math.floor(random() * 86_400_000) } : {};
  const place = one([
    { on: 'shelf' as const },
    { on: 'bike' as const, bikeId: 'a' },
    { on: 'bike' as const, bikeId: 'b' },
  ]);
  const commands: Command[] = [
    { type: 'move-part', partId, to: place, ...late },
    { type: 'move-part', partId, to: { on: 'bike', bikeId } },
    {
      ...{ type: 'describe-part', partId, condition: `c${Math.floor(random() * 9)}`, ...late },
      // Decided by the clock, not by the dice: the kept seeds keep their sequences.
      ...(nowMs % 3 === 0 ? { condition: undefined, cleared: ['condition'] } : {}),
    },
    {
      type: 'make-joint',
      bikeId,
      name: 'J',
      kind: one(['stem-steerer', 'bead', 'rotor', 'rack', 'spokes'] as const),
      partIds: [partId, one(['p1', 'p2', 'p3'])],
      between: random() < 0.3 ? [{ kind: 'threadlocker' }] : [],
      fasteners: [{ thread: 'M5', count: 2, hand: 'right' }],
      targets: [],
    },
    {
      ...{ type: 'describe-joint', jointId, note: `n${Math.floor(random() * 9)}`, ...late },
      ...(nowMs % 3 === 0 ? { note: undefined, cleared: ['note'] } : {}),
    },
    { type: 'take-joint-apart', jointId, why: 'x', ...late },
    { type: 'plan-steps', bikeId },
    { type: 'open-step', stepId },
    { type: 'split-step', stepId, titles: ['one', 'two'] },
    { type: 'move-step', stepId, afterStepId: null },
    { type: 'skip-step', stepId, why: 'no time', ...late },
    { type: 'reopen-step', stepId, why: 'again' },
    { type: 'finish-step', stepId, ...late },
    {
      type: 'apply-torque',
      jointId: step?.jointId ?? jointId,
      ...(random() < 0.5 && step ? { stepId } : {}),
      applied,
      entered: 'keypad',
      bolts: 2,
      passes: 1,
      ...late,
    },
    { type: 'apply-torque', jointId, applied, entered: 'tap', bolts: 2, passes: 1, ...late },
    { type: 'hand-tighten', jointId, bolts: 2, ...late },
    {
      type: 'apply-locker',
      jointId,
      grade: 'medium',
      surface: 'steel',
      primer: false,
      waitMs: 3_600_000,
      ...late,
    },
    { type: 'start-wait', bikeId, kind: 'other', title: 'w', waitMs: 60_000 },
    { type: 'end-wait', waitId: one(view?.waits ?? [])?.waitId ?? 'none', outcome: 'looked', ...late },
    { type: 'shift-waits', byMs: 1000, changeId: String(nowMs) },
    {
      type: 'mark-seal',
      jointId,
      mark: { mark: 'reading', reading: { pressure: { value: 2, unit: 'bar', typed: '2' } } },
      lookAgainMs: 60_000,
      ...late,
    },
    { type: 'mark-seal', jointId, mark: { mark: 'burped' }, ...late },
    { type: 'log-ride', bikeId, km: 1 + Math.floor(random() * 30), ...late },
    {
      type: 'find-torque',
      jointId,
      outcome: 'moved',
      way: 'tightening',
      movedAt: applied,
      broughtTo: applied,
      ...late,
    },
    {
      type: 'answer-recheck',
      recheckId: one(view?.rechecks ?? [])?.recheckId ?? 'none',
      outcome: 'as-it-should',
      ...late,
    },
    {
      type: 'change-recheck',
      recheckId: one(view?.rechecks ?? [])?.recheckId ?? 'none',
      dueKm: 12,
      why: 'x',
    },
    { type: 'find-defect', bikeId, words: 'd', area: 'other', decision: 'do-not-ride' },
    { type: 'close-defect', defectId: one(view?.defects ?? [])?.defectId ?? 'none', how: 'mended' },
    { type: 'release-bike', bikeId, statement: 'not-to-ride', covers: 'x', by: 'y' },
    { type: 'undo', entryIds: [entryId] },
    { type: 'correct', entryId, reason: 'x', becomes: null },
    { type: 'correct', entryId, reason: 'x', becomes: { happenedAtMs: nowMs - 3_600_000 } },
    ...(entry?.type === 'torque-applied'
      ? ([{ type: 'correct', entryId, reason: 'misread', becomes: { applied } }] satisfies Command[])
      : []),
    ...(entry?.type === 'ride-logged'
      ? ([{ type: 'correct', entryId, reason: 'x', becomes: { km: 3 } }] satisfies Command[])
      : []),
  ];
  return one(commands);
}

async function randomLogbook(seed: number) {
  const random = generator(seed);
  const { logbook, clock, name } = await openTestLogbook();
  for (const bikeId of ['a', 'b']) await logbook.run({ type: 'start-bike', bikeId, name: bikeId });
  for (const partId of ['p1', 'p2', 'p3', 'p4', 'p5']) {
    const place = { on: 'bike' as const, bikeId: 'a' };
    await logbook.run({
      type: 'add-part',
      partId,
      place,
      label: partId,
      name: partId,
      kind: 'other',
      origin: 'found',
    });
  }
  let written = 0;
  for (let at = 0; at < COMMANDS; at += 1) {
    clock.nowMs += Math.floor(random() * 600_000);
    const result = await logbook.run(await randomCommand(logbook, random, clock.nowMs));
    if ('entries' in result) written += 1;
  }
  logbook.close();
  return { name, written };
}

describe.each(SEEDS)('random commands, seed %i', (seed) => {
  test('[J3] the stored views equal a fresh fold of the journal, and a rebuild changes nothing', async () => {
    const { name, written } = await randomLogbook(seed);
    expect(written).toBeGreaterThan(30);
    const { rows, entries } = await everything(name);
    expect(sorted(foldWhole(entries).rows.rows.values())).toEqual(sorted(rows));
    // [J8] The order in which entries arrive decides nothing.
    const shuffled = entries.toSorted((a, b) => (a.id.slice(-6) < b.id.slice(-6) ? -1 : 1));
    expect(sorted(foldWhole(shuffled).rows.rows.values())).toEqual(sorted(rows));

    const db = await openDatabase(name);
    await db.put('meta', { name: 'views-version', value: 0 });
    await rebuildIfOld(db, () => {});
    const rebuilt = await db.getAll('views');
    db.close();
    expect(sorted(rebuilt)).toEqual(sorted(rows));
  }, 60_000);
});
