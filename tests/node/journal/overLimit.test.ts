import { describe, expect, test } from 'vitest';
import { ceilingText } from '../../../src/fit/tyreCeiling.ts';
import type { SealMark } from '../../../src/journal/entries.ts';
import type { Logbook } from '../../../src/logbook.ts';
import type { PressureUnit } from '../../../src/mechanics/units.ts';
import { unitsOfMarks } from '../../../src/practice/seal/unitsOfMarks.ts';
import { done, openTestLogbook } from '../logbook/openTestLogbook.ts';

const MINUTE = 60_000;
const read = (value: number, unit: PressureUnit): SealMark => ({
  mark: 'reading',
  reading: { pressure: { value, unit, typed: String(value) } },
});
const face = (faceId: string, kind: 'tyre-bead' | 'rim-seat', maxPressureBar: number) => ({
  ...{ faceId, kind, standard: null, nominal: { maxPressureBar }, measured: {} },
});

/** A tyre printed 3.5 bar on a rim printed 4 bar. */
async function aTyre(logbook: Logbook) {
  await done(logbook, { type: 'start-bike', bikeId: 'b1', name: 'Dabchick' });
  const part = { type: 'add-part', place: { on: 'bike', bikeId: 'b1' }, origin: 'found' } as const;
  await done(logbook, {
    ...part,
    partId: 't',
    label: 't',
    name: 'Tyre',
    kind: 'tyre',
    faces: [face('t', 'tyre-bead', 3.5)],
  });
  await done(logbook, {
    ...part,
    partId: 'r',
    label: 'r',
    name: 'Rim',
    kind: 'rim',
    faces: [face('r', 'rim-seat', 4)],
  });
  await done(logbook, {
    ...{
      type: 'make-joint',
      jointId: 'j',
      bikeId: 'b1',
      name: 'Rear tyre',
      kind: 'bead',
      partIds: ['t', 'r'],
    },
    ...{ between: [], fasteners: [], targets: [] },
  });
}

describe('a pressure above the limit', () => {
  test('[W4] is refused with both figures in the unit it was typed in, and kept once it was so', async () => {
    const { logbook, clock } = await openTestLogbook();
    await aTyre(logbook);
    const mark = { type: 'mark-seal', jointId: 'j' } as const;
    expect(await logbook.run({ ...mark, mark: read(4.5, 'bar') })).toMatchObject({
      refused: 'above-the-limit',
      about: '4.5 bar, at most 3.5 bar',
    });
    clock.nowMs += MINUTE;
    expect(await logbook.run({ ...mark, mark: read(55, '[psi]') })).toMatchObject({
      refused: 'above-the-limit',
      // 3.5 bar are 50.76 psi, cut off: 1 bar is 14.5038 psi (the pound-force and the inch are exact).
      about: '55 psi, at most 50 psi',
    });
    clock.nowMs += MINUTE;
    const [kept] = await done(logbook, { ...mark, mark: read(4.5, 'bar'), overLimit: true });
    expect(kept).toMatchObject({ overLimit: true });
    clock.nowMs += MINUTE;
    await done(logbook, { ...mark, mark: read(3.5, 'bar') });
    await done(logbook, { ...mark, mark: read(50, '[psi]') });
    logbook.close();
  });

  test('[W4] is asked of a seating, a correction and a late entry alike; a remark on an old one is not', async () => {
    const { logbook, clock } = await openTestLogbook();
    await aTyre(logbook);
    const mark = { type: 'mark-seal', jointId: 'j' } as const;
    const seated: SealMark = { mark: 'seated', dry: true, beadLine: 'even' };
    const high = { pressure: { value: 4, unit: 'bar', typed: '4' } } as const;
    expect(await logbook.run({ ...mark, mark: { ...seated, reading: high } })).toMatchObject({
      refused: 'above-the-limit',
    });
    clock.nowMs += MINUTE;
    const late = { happenedAtMs: clock.nowMs - MINUTE };
    expect(await logbook.run({ ...mark, mark: { mark: 'pumped', reading: high }, ...late })).toMatchObject({
      refused: 'above-the-limit',
    });
    const [kept] = await done(logbook, { ...mark, mark: read(3, 'bar') });
    clock.nowMs += MINUTE;
    const correct = { type: 'correct', entryId: kept?.id ?? '', reason: 'misread' } as const;
    expect(await logbook.run({ ...correct, becomes: { mark: read(4.4, 'bar') } })).toMatchObject({
      refused: 'above-the-limit',
      about: '4.4 bar, at most 3.5 bar',
    });
    await done(logbook, { ...correct, becomes: { mark: read(4.4, 'bar'), overLimit: true } });
    // The rim turns out to bear less: what is written about the old reading is not asked about again.
    await done(logbook, { type: 'describe-part', partId: 'r', faces: [face('r', 'rim-seat', 2)] });
    clock.nowMs += MINUTE;
    await done(logbook, { ...correct, becomes: { note: 'in the sun' } });
    logbook.close();
  });

  test('[W4] where no limit is written down there is nothing to ask about', async () => {
    const { logbook } = await openTestLogbook();
    await aTyre(logbook);
    for (const partId of ['t', 'r']) await done(logbook, { type: 'describe-part', partId, faces: [] });
    await done(logbook, { type: 'mark-seal', jointId: 'j', mark: read(9, 'bar') });
    logbook.close();
  });
});

describe('units', () => {
  test('[W4] the next number begins in the unit of the last reading of that wheel', () => {
    expect(unitsOfMarks([])).toEqual({});
    const warm = { value: 70, unit: '[degF]', typed: '70' } as const;
    const psi = { value: 30, unit: '[psi]', typed: '30' } as const;
    expect(
      unitsOfMarks([
        read(2, 'bar'),
        { mark: 'reading', reading: { pressure: psi, temperature: warm } },
        { mark: 'laid-left' },
        { mark: 'let-down' },
      ]),
    ).toEqual({ pressureUnit: '[psi]', temperatureUnit: '[degF]' });
  });
  test('a limit is cut off in its unit, never rounded up', () => {
    expect(ceilingText(2.75, '[psi]')).toBe('39 psi');
    expect(ceilingText(3.5, 'kPa')).toBe('350 kPa');
  });
});
