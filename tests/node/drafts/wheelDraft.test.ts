import { describe, expect, test } from 'vitest';
import {
  changedWheel,
  draftOfWheel,
  emptyWheel,
  erdByPieces,
  filledFromParts,
  readWheelForm,
} from '../../../src/drafts/wheelDraft.ts';
import { emptyReading, readReadings, typedTension } from '../../../src/drafts/wheelReadingDraft.ts';
import type { PartRow, WheelRow } from '../../../src/journal/rows.ts';
import { anotherLike } from '../../../src/practice/wheel/anotherLike.ts';
import { dishedRear, mm, newtons } from '../../fixtures/wheels/someWheels.ts';

const row = { ...dishedRear, wheelId: 'w1', readings: [] } as unknown as WheelRow;

describe('the form of a wheel', () => {
  test('the example: a name is enough, sizes may follow', () => {
    expect(readWheelForm({ ...emptyWheel, name: 'Rear' }).ok).toBe(true);
    expect(readWheelForm(emptyWheel)).toEqual({ ok: false, wrong: { name: 'Enter a name.' } });
  });

  test('a wheel laid out for editing and read again is unchanged', () => {
    const full = {
      ...dishedRear,
      ...{
        target: newtons(1000),
        limit: newtons(1200),
        rimOffset: { value: -3, unit: 'mm' as const, typed: '-3' },
      },
      ...{ hubHole: mm(2.6), gauge: [{ reading: 1, tensionN: 1200 }], note: 'spare' },
      ear: {
        ...({ ends: 'pinned-pinned', sounds: 'outer' } as const),
        known: [
          { hz: 479.23, tensionN: 600 },
          { hz: 597.45, tensionN: 1000 },
        ],
      },
    };
    const read = readWheelForm(draftOfWheel(full), full.parts);
    expect(read).toEqual({ ok: true, about: full });
    expect(changedWheel({ ...row, ...full }, full)).toEqual({});
  });

  test('inches, decimal commas and a minus are taken; what is emptied is cleared', () => {
    const read = readWheelForm({
      ...draftOfWheel(dishedRear),
      erds: ['15,12 in'],
      rimOffset: '−2,5',
      erdEnd: 'printed',
    });
    if (!read.ok) throw new Error('refused');
    expect(read.about.erds?.[0]).toEqual({ value: 15.12, unit: '[in_i]', typed: '15,12 in' });
    expect(read.about.rimOffset).toEqual({ value: -2.5, unit: 'mm', typed: '−2,5' });
    const emptied = readWheelForm({ ...draftOfWheel(dishedRear), erds: [''] });
    if (!emptied.ok) throw new Error('refused');
    expect(changedWheel(row, emptied.about).cleared).toEqual(['erds', 'erdEnd']);
  });

  test('two rods or two nipples in opposite holes give the rim diameter', () => {
    expect(erdByPieces({ erdBy: 'rods', erdPiece: '200', erdGap: '184' })).toEqual({ ok: true, mm: 584 });
    // Twice the piece and the gap, by hand: 2 × 12 + 560.
    expect(erdByPieces({ erdBy: 'nipples', erdPiece: '12', erdGap: '560' })).toEqual({ ok: true, mm: 584 });
    expect(erdByPieces({ erdBy: 'rods', erdPiece: '200', erdGap: '' })).toBeUndefined();
    expect(erdByPieces({ erdBy: 'nipples', erdPiece: '200', erdGap: '184' })?.ok).toBe(false);
    expect(erdByPieces({ erdBy: 'rods', erdPiece: 'a', erdGap: '184' })?.ok).toBe(false);
  });

  test('the usual way to listen is not kept, another is, and back to the usual clears it', () => {
    const usual = readWheelForm(draftOfWheel(dishedRear), dishedRear.parts);
    expect(usual.ok && usual.about.ear).toBeUndefined();
    const outer = readWheelForm({ ...draftOfWheel(dishedRear), sounds: 'outer' }, dishedRear.parts);
    expect(outer.ok && outer.about.ear).toEqual({ ends: 'clamped-pinned', sounds: 'outer' });
    if (!usual.ok || !outer.ok) throw new Error('both can be read');
    expect(changedWheel({ ...row, ...outer.about }, usual.about)).toEqual({ cleared: ['ear'] });
  });

  test('each field that cannot be taken has its sentence', () => {
    const read = readWheelForm({
      ...draftOfWheel(dishedRear),
      ...{ erds: ['384', 'about 384'], left: { ...emptyWheel.left, spokes: '40', pcd: '45 N' } },
      gauge: [{ reading: '0', tension: '100' }],
    });
    expect(read.ok).toBe(false);
    if (!read.ok)
      expect(Object.keys(read.wrong).sort()).toEqual(['erds.1', 'gauge.0', 'left.pcd', 'left.spokes']);
  });

  test('what was measured of hub and rim is filled in, and what was typed stays', () => {
    const faced = (partId: string, kind: string, nominal: Record<string, number>, measured = {}) =>
      ({ partId, faces: [{ faceId: 'f', kind, standard: null, nominal, measured }] }) as unknown as PartRow;
    const parts = [
      faced(
        'h',
        'hub-holes',
        { holesCount: 32, leftCircleMm: 45, driveCircleMm: 45, leftFlangeMm: 34 },
        {
          driveFlangeMm: { value: 2, unit: 'cm', typed: '2 cm', uncertaintyMm: 0.05 },
        },
      ),
      faced('r', 'rim-holes', { holesCount: 32, erdMm: 567 }),
    ];
    const filled = filledFromParts({ ...emptyWheel, hub: 'h', rim: 'r' }, parts);
    expect(filled.erds).toEqual(['567']);
    expect(filled.left).toMatchObject({ spokes: '16', pcd: '45', flange: '34' });
    expect(filled.drive).toMatchObject({ pcd: '45', flange: '2 cm' });
    expect(filledFromParts({ ...emptyWheel, rim: 'r', erds: ['560'] }, parts).erds).toEqual(['560']);
  });
});

test('a second wheel has the sizes of the first, a name of its own, and no parts of it', () => {
  const first = {
    ...row,
    parts: [{ as: 'hub' as const, partId: 'h' }],
    leftSide: { ...row.leftSide, bought: mm(183) },
  };
  const second = anotherLike(first, ['Rear wheel', 'Rear wheel 2']);
  expect(second).toMatchObject({ name: 'Rear wheel 3', parts: [], erds: dishedRear.erds });
  expect(second.leftSide.bought).toBeUndefined();
  expect(anotherLike({ ...first, name: 'Rear wheel 3' }, ['Rear wheel', 'Rear wheel 3']).name).toBe(
    'Rear wheel 2',
  );
});

describe('a set of readings', () => {
  test('the example: 100 kgf are 980.665 N', () =>
    expect(typedTension('100', 'kgf', undefined)).toEqual({ ok: true, read: 100, tensionN: 980.665 }));

  test('a gauge’s scale goes through its own table, with one over the reading', () => {
    const gauge = [
      { reading: 1, tensionN: 1200 },
      { reading: 2, tensionN: 500 },
    ];
    const answer = typedTension('1,5', 'scale', gauge);
    expect(answer?.ok && answer.tensionN).toBeCloseTo(733.333, 3);
    expect(typedTension('3', 'scale', gauge)).toMatchObject({ ok: false });
    expect(typedTension('1', 'scale', undefined)).toMatchObject({ ok: false });
  });

  test('as many as the wheel has, empty ones left out, the rim to either side', () => {
    const begun = emptyReading('before', 'N');
    const put = (list: string[], changed: Record<number, string>) =>
      list.map((old, at) => changed[at] ?? old);
    const read = readReadings(
      {
        ...begun,
        ...{
          tension: put(begun.tension, { 0: '900', 3: '950' }),
          sideways: put(begun.sideways, { 1: '-0.3' }),
        },
        ...{ lateral: '0,4', dish: '−0,5' },
      },
      36,
      undefined,
    );
    if (!read.ok) throw new Error('refused');
    expect(read.empty).toBe(false);
    expect(read.readings.read.length).toBe(36);
    expect(read.readings.tensionsN.slice(0, 4)).toEqual([900, null, null, 950]);
    expect(read.readings.sidewaysMm?.[1]).toBe(-0.3);
    expect(read.readings.outwardMm).toBeUndefined();
    expect([read.readings.lateral?.value, read.readings.dish?.value]).toEqual([0.4, -0.5]);
  });

  test('nothing read is empty; a slip names its spoke', () => {
    const begun = emptyReading('later', 'N');
    expect(readReadings(begun, 36, undefined)).toMatchObject({ ok: true, empty: true });
    const slip = begun.tension.map((old, at) => (at === 4 ? '9..0' : old));
    expect(readReadings({ ...begun, tension: slip }, 36, undefined)).toMatchObject({
      ok: false,
      wrong: { 'tension.4': expect.any(String) },
    });
  });
});
