import { describe, expect, test } from 'vitest';
import { sheetText } from '../../../src/documents/sheetLine.ts';
import { sheetLines } from '../../../src/documents/sheetLines.ts';
import type { Logbook } from '../../../src/logbook.ts';
import { aBike, nm, torque } from '../logbook/aBike.ts';
import { done, openTestLogbook } from '../logbook/openTestLogbook.ts';

const MINUTE = 60_000;
const DAY = 86_400_000;
const warm = (value: number) => ({ value, unit: 'Cel' as const, typed: String(value) });
const medium = {
  ...{ grade: 'medium', surface: 'steel', primer: false, temperature: warm(22), waitMs: DAY },
} as const;
const strong = {
  ...{ grade: 'high', surface: 'stainless', primer: true, temperature: warm(12), waitMs: 3 * DAY },
} as const;

const openWords = async (logbook: Logbook, bikeId: string) => {
  const seen = await logbook.read('release', { bikeId });
  return (seen?.open ?? []).filter(({ what }) => what === 'uncured');
};
const jointNow = async (logbook: Logbook, jointId: string) => {
  const seen = await logbook.read('joint', { jointId });
  if (!seen) throw new Error('no joint');
  return seen;
};

const afresh = ['torque-found', 'wait-ended', 'locker-applied', 'torque-applied'];

/** A joint put together with threadlocker, cured, and met turned five days later. */
async function metTurned() {
  const opened = await openTestLogbook();
  const { logbook, clock } = opened;
  const { bikeId, jointId } = await aBike(logbook, 'b1', { between: [{ kind: 'threadlocker' }] });
  await done(logbook, { type: 'apply-locker', jointId, ...medium });
  clock.nowMs += 5 * MINUTE;
  await torque(logbook, jointId);
  clock.nowMs += 5 * DAY;
  return { ...opened, bikeId, jointId };
}

describe('fresh threadlocker', () => {
  test('[T7] a joint met turned and tightened again with threadlocker cures anew, with its grade, surface and warmth', async () => {
    const { logbook, clock, bikeId, jointId } = await metTurned();
    await done(logbook, { type: 'find-torque', jointId, outcome: 'turned', way: 'mark' });
    clock.nowMs += 10 * MINUTE;
    const wet = {
      type: 'apply-torque',
      jointId,
      applied: nm(5),
      entered: 'keypad',
      bolts: 2,
      passes: 1,
    } as const;
    await done(logbook, { ...wet, between: 'threadlocker', locker: strong });
    const { joint, waits } = await jointNow(logbook, jointId);
    const { waitMs: _, ...put } = strong;
    expect(joint.locked).toMatchObject({ ...put, atMs: clock.nowMs, curedAtMs: clock.nowMs + 3 * DAY });
    expect(joint.locked?.brokenAtMs).toBeUndefined();
    expect(joint.lockedBefore).toMatchObject([{ grade: 'medium' }]);
    expect(waits.filter(({ endedAtMs }) => endedAtMs === undefined)).toHaveLength(1);
    expect(await openWords(logbook, bikeId)).toMatchObject([
      { words: 'Stem on steerer: threadlocker not cured', blocks: true },
    ]);
    logbook.close();
  });

  test('[T7] what a re-check brought a joint to with threadlocker begins a cure, named or not', async () => {
    for (const on of [{ between: 'threadlocker' as const }, { locker: strong }]) {
      const { logbook, clock, jointId } = await metTurned();
      const entries = await done(logbook, {
        ...{ type: 'find-torque', jointId, outcome: 'moved', way: 'tightening' },
        ...{ movedAt: nm(3), broughtTo: nm(5), ...on },
      });
      expect(entries.map(({ type }) => type)).toEqual(afresh);
      const { joint } = await jointNow(logbook, jointId);
      expect(joint.locked?.atMs).toBe(clock.nowMs);
      expect(joint.applied?.between).toBe('threadlocker');
      logbook.close();
    }
  });

  test('[T7] threadlocker whose cure is over is wet no more: a torque with it is a new application', async () => {
    const { logbook, clock } = await openTestLogbook();
    const { jointId } = await aBike(logbook);
    await done(logbook, { type: 'apply-locker', jointId, ...medium });
    clock.nowMs += 2 * DAY;
    const entries = await done(logbook, {
      ...{ type: 'apply-torque', jointId, applied: nm(5), entered: 'tap', bolts: 2, passes: 1 },
      between: 'threadlocker',
    });
    expect(entries.some(({ type }) => type === 'locker-applied')).toBe(true);
    logbook.close();
  });

  test('[T7] the sheet dates each application, with grade, surface and temperature', async () => {
    const { logbook, clock, bikeId, jointId } = await metTurned();
    await done(logbook, { type: 'apply-locker', jointId, ...strong });
    const built = await logbook.read('as-built', { bikeId, atMs: clock.nowMs });
    const none = () => undefined;
    const names = {
      bike: none,
      part: none,
      joint: none,
      step: none,
      tool: none,
      wait: none,
      recheck: none,
      defect: none,
    };
    const text = sheetText(sheetLines(built, { zone: 'UTC', names: names as never }));
    expect(text).toContain(
      'medium, on steel, without primer, at 22 °C, put on 3 May 2026 at 09:00, replaced since',
    );
    expect(text).toContain(
      'high, on stainless, with primer, at 12 °C, put on 8 May 2026 at 09:05, curing until',
    );
    logbook.close();
  });
});

describe('a bond that is gone', () => {
  test('[T8] a joint met turned and only tightened again keeps its threadlocker as broken, and may not be released', async () => {
    const { logbook, clock, bikeId, jointId } = await metTurned();
    await done(logbook, { type: 'find-torque', jointId, outcome: 'turned', way: 'mark' });
    clock.nowMs += MINUTE;
    await torque(logbook, jointId);
    const broken = 'Stem on steerer: moved at a re-check, threadlocker not re-applied since';
    expect(await openWords(logbook, bikeId)).toMatchObject([{ words: broken, blocks: true }]);
    // A later look that finds everything as it was does not mend the bond.
    clock.nowMs += DAY;
    await done(logbook, { type: 'find-torque', jointId, outcome: 'held', way: 'mark' });
    expect(await openWords(logbook, bikeId)).toMatchObject([{ words: broken }]);
    clock.nowMs += MINUTE;
    await done(logbook, { type: 'apply-locker', jointId, ...medium });
    clock.nowMs += 2 * DAY;
    expect(await openWords(logbook, bikeId)).toEqual([]);
    logbook.close();
  });

  test('[T8] a cured joint that is tightened once more without fresh threadlocker is open until it has some', async () => {
    const { logbook, bikeId, jointId } = await metTurned();
    await torque(logbook, jointId, 5.5);
    expect(await openWords(logbook, bikeId)).toMatchObject([
      {
        words: 'Stem on steerer: tightened again after its cure, threadlocker not re-applied since',
        blocks: true,
      },
    ]);
    logbook.close();
  });

  test('[T8] a finding that is struck out breaks nothing, and one written down late breaks where it happened', async () => {
    const { logbook, clock, bikeId, jointId } = await metTurned();
    const [found] = await done(logbook, { type: 'find-torque', jointId, outcome: 'turned', way: 'mark' });
    clock.nowMs += MINUTE;
    await done(logbook, { type: 'correct', entryId: found?.id ?? '', reason: 'another bike', becomes: null });
    expect(await openWords(logbook, bikeId)).toEqual([]);
    await done(logbook, { type: 'apply-locker', jointId, ...medium });
    clock.nowMs += 2 * DAY;
    await done(logbook, {
      ...{ type: 'find-torque', jointId, outcome: 'turned', way: 'mark' },
      happenedAtMs: clock.nowMs - 2 * DAY - 10 * MINUTE,
    });
    // It was met turned before the fresh threadlocker went on: that one holds.
    expect(await openWords(logbook, bikeId)).toEqual([]);
    logbook.close();
  });
});

test('[R8] moved without a torque read is an answer, for a click wrench cannot read one', async () => {
  const { logbook } = await openTestLogbook();
  const { jointId } = await aBike(logbook);
  await torque(logbook, jointId);
  const [found] = await done(logbook, { type: 'find-torque', jointId, outcome: 'moved', way: 'tightening' });
  expect(found).not.toHaveProperty('movedAt');
  expect((await jointNow(logbook, jointId)).joint).toMatchObject({ moved: 1, found: { outcome: 'moved' } });
  logbook.close();
});
