import { describe, expect, test } from 'vitest';
import { sheetText } from '../../../src/documents/sheetLine.ts';
import { sheetLines } from '../../../src/documents/sheetLines.ts';
import type { Logbook } from '../../../src/logbook.ts';
import { lockerWait } from '../../../src/planning/lockerWait.ts';
import { lockerOn } from '../../../src/practice/bench/lockerCommand.ts';
import { fitText, gapOf, measuredFit } from '../../../src/practice/joint/measuredFit.ts';
import { mm, nm } from '../logbook/aBike.ts';
import { done, openTestLogbook } from '../logbook/openTestLogbook.ts';

const HOUR = 3_600_000;
const put = { surface: 'steel', primer: false, temperatureC: 20, nearDiscBrake: false } as const;
const retaining = {
  ...({
    type: 'apply-locker',
    jointId: 'sleeve',
    grade: 'retaining',
    surface: 'steel',
    primer: false,
  } as const),
  ...{ gap: mm(0.08), waitMs: 24 * HOUR },
} as const;
const cups = {
  ...({
    type: 'apply-torque',
    jointId: 'cups',
    applied: nm(40),
    entered: 'keypad',
    bolts: 2,
    passes: 1,
  } as const),
} as const;

/** A sleeve bonded into a bored shell, and threaded cups in that sleeve. */
async function aSleeve() {
  const opened = await openTestLogbook();
  const { logbook } = opened;
  await done(logbook, { type: 'start-bike', bikeId: 'b1', name: 'Dabchick' });
  const part = { type: 'add-part', place: { on: 'bike', bikeId: 'b1' }, origin: 'found' } as const;
  for (const [partId, kind] of [
    ['frame', 'frame'],
    ['tube', 'sleeve'],
    ['bb', 'bottom-bracket'],
    ['post', 'seatpost'],
  ] as const)
    await done(logbook, { ...part, partId, label: partId, name: partId, kind });
  const bare = { targets: [], between: [], fasteners: [] };
  const joint = { ...bare, type: 'make-joint' as const, bikeId: 'b1' };
  await done(logbook, {
    ...{
      ...joint,
      jointId: 'sleeve',
      name: 'Sleeve in the shell',
      kind: 'other',
      partIds: ['frame', 'tube'],
    },
    ...{
      between: [{ kind: 'retaining-compound' as const }],
      diameters: { bore: mm(40.08), outside: mm(40) },
    },
  });
  const screwed = [{ thread: 'ISO 1.37 × 24', count: 2, hand: 'left' as const }];
  await done(logbook, {
    ...joint,
    jointId: 'cups',
    name: 'Cups',
    kind: 'bottom-bracket',
    partIds: ['tube', 'bb'],
    fasteners: screwed,
  });
  await done(logbook, {
    ...joint,
    jointId: 'post',
    name: 'Post',
    kind: 'seatpost',
    partIds: ['frame', 'post'],
  });
  return opened;
}
const stopping = async (logbook: Logbook) =>
  ((await logbook.read('release', { bikeId: 'b1' }))?.open ?? [])
    .filter(({ blocks, what }) => blocks && what === 'uncured')
    .map(({ words }) => words);

describe('a compound in a bore', () => {
  test('[T9] cures by gap, metal and warmth; the widest drawn gap counts where none is measured', () => {
    const wait = (gapMm?: number, more = {}) => lockerWait({ ...put, grade: 'retaining', gapMm, ...more });
    const hours = (one: ReturnType<typeof wait>) => (one.ok ? one.waitMs / HOUR : Number.NaN);
    expect(hours(wait(0.25))).toBeGreaterThan(hours(wait(0.05)));
    expect(hours(wait(0.15, { temperatureC: 8 }))).toBeGreaterThan(hours(wait(0.15)));
    expect(hours(wait(0.15, { surface: 'anodised' }))).toBeGreaterThan(hours(wait(0.15)));
    expect(wait()).toEqual(wait(0.25));
    // A press fit has no gap; and from about 30 mil on the film never cures (adhesives handbook).
    expect(wait(-0.03)).toEqual(wait(0));
    expect(wait(0.4)).toEqual({ ok: false, reason: 'gap-too-wide-for-grade' });
    expect(wait(0.77)).toEqual({ ok: false, reason: 'never-cures' });
    expect(lockerWait({ ...put, grade: 'medium' })).toEqual(
      lockerWait({ ...put, grade: 'medium', gapMm: 0.05 }),
    );
  });

  test('[T9] interference by two measured diameters is worked out and kept with the joint, on page and sheet', async () => {
    // δ = outside − bore; each reading may be off by 0.03 mm (definition of an interference).
    const fit = measuredFit({ diameters: { bore: mm(40.08), outside: mm(40) } });
    expect(fit?.interferenceMm.mid).toBeCloseTo(-0.08, 9);
    expect(fit?.interferenceMm.lo).toBeCloseTo(-0.14, 9);
    expect(gapOf({ diameters: { bore: mm(40.08), outside: mm(40) } })).toBeCloseTo(0.08, 9);
    expect(fitText({ diameters: { bore: mm(29.9), outside: mm(30) } })).toBe(
      'interference 0.10 mm, 0.04 to 0.16 mm as interference: holds by press',
    );
    expect(fitText({})).toBeUndefined();
    const { logbook, clock } = await aSleeve();
    const seen = await logbook.read('joint', { jointId: 'sleeve' });
    expect(seen?.joint.diameters).toEqual({ bore: mm(40.08), outside: mm(40) });
    expect(lockerOn({ ...put, grade: 'retaining' }, seen?.joint)?.gap).toMatchObject({
      value: 0.08,
      unit: 'mm',
    });
    await done(logbook, retaining);
    const built = await logbook.read('as-built', { bikeId: 'b1', atMs: clock.nowMs });
    const none = () => undefined;
    const text = sheetText(sheetLines(built, { zone: 'UTC', names: { bike: none, part: none } as never }));
    expect(text).toContain('Fit, measured: bore 40.08 mm, outside 40 mm, gap 0.08 mm');
    expect(text).toContain('retaining, on steel, without primer, gap 0.08 mm, put on');
    logbook.close();
  });
});

describe('a bond that has not set', () => {
  test('[T9] 40 N·m on the cups in the sleeve is asked for a word, which the journal keeps', async () => {
    const { logbook, clock } = await aSleeve();
    // Not even put on yet: that is asked as well.
    expect(await logbook.run(cups)).toEqual({ refused: 'bond-not-set', about: 'Sleeve in the shell' });
    await done(logbook, retaining);
    clock.nowMs += HOUR;
    expect(await logbook.run(cups)).toMatchObject({ refused: 'bond-not-set' });
    expect(await logbook.run({ ...cups, despite: '  ' })).toMatchObject({ refused: 'bond-not-set' });
    clock.nowMs += HOUR;
    const [torque] = await done(logbook, { ...cups, despite: 'only to try the thread' });
    expect(torque).toMatchObject({ type: 'torque-applied', despite: 'only to try the thread' });
    expect(await stopping(logbook)).toEqual(['Sleeve in the shell: retaining compound not cured']);
    logbook.close();
  });

  test('[T9] once it has set nothing is asked, and a word that was not asked for is not kept', async () => {
    const { logbook, clock } = await aSleeve();
    await done(logbook, retaining);
    clock.nowMs += 25 * HOUR;
    const [torque] = await done(logbook, { ...cups, despite: 'all the same' });
    expect(torque).not.toHaveProperty('despite');
    expect(await stopping(logbook)).toEqual([]);
    logbook.close();
  });

  test('[T9] late work is asked as of its day, a cut cure stays unset, and the frame alone loads nothing', async () => {
    const { logbook, clock } = await aSleeve();
    const [on] = await done(logbook, retaining);
    clock.nowMs += 30 * HOUR;
    const early = { ...cups, happenedAtMs: clock.nowMs - 20 * HOUR };
    expect(await logbook.run(early)).toMatchObject({ refused: 'bond-not-set' });
    const waitId = on?.type === 'locker-applied' ? on.waitId : '';
    await done(logbook, { type: 'end-wait', waitId, outcome: 'cut-short' });
    expect(await logbook.run(cups)).toMatchObject({ refused: 'bond-not-set' });
    expect(await stopping(logbook)).toEqual(['Sleeve in the shell: cure ended early']);
    await done(logbook, { ...cups, jointId: 'post', bolts: 1, applied: nm(6) });
    logbook.close();
  });

  test('[T9] pressing into it is asked as well, and the plan puts the compound on before the faces meet', async () => {
    const { logbook, clock } = await aSleeve();
    await done(logbook, { type: 'plan-steps', bikeId: 'b1' });
    const steps = (await logbook.read('bench', { bikeId: 'b1' }))?.steps ?? [];
    expect(steps.filter(({ jointId }) => jointId === 'sleeve').map(({ kind }) => kind)).toEqual([
      'lock',
      'fit',
    ]);
    await done(logbook, {
      type: 'add-step',
      stepId: 'p',
      bikeId: 'b1',
      kind: 'press',
      title: 'Cups',
      jointId: 'cups',
    });
    clock.nowMs += HOUR;
    expect(await logbook.run({ type: 'finish-step', stepId: 'p' })).toMatchObject({
      refused: 'bond-not-set',
    });
    const [step] = await done(logbook, { type: 'finish-step', stepId: 'p', despite: 'a dry fit' });
    expect(step).toMatchObject({ type: 'step-done', despite: 'a dry fit' });
    logbook.close();
  });

  test('[T9] a bond that was never made stops a release', async () => {
    const { logbook } = await aSleeve();
    expect(await stopping(logbook)).toEqual(['Sleeve in the shell: no retaining compound applied']);
    logbook.close();
  });
});
