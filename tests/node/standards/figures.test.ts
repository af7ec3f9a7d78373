import { describe, expect, test } from 'vitest';
import { mates } from '../../../src/fit/bridges/mates.ts';
import { elasticMaterials } from '../../../src/standards/interfaces/elasticMaterials.ts';
import { shells } from '../../../src/standards/interfaces/shells.ts';
import { lockers } from '../../../src/standards/screws/lockers.ts';
import { nutFactorDefaults } from '../../../src/standards/screws/nutFactors.ts';
import { propertyClasses } from '../../../src/standards/screws/propertyClasses.ts';
import { engagementRules } from '../../../src/standards/screws/threadEngagement.ts';
import {
  type BikeSide,
  type Hand,
  handOf,
  threadRow,
  threads,
} from '../../../src/standards/screws/threads.ts';
import { bandsThatFit, placeIn, torqueBands } from '../../../src/standards/screws/torqueBands.ts';
import { caliper, named } from '../../fixtures/pileParts.ts';

// Figures of tables, typed again row by row: a decision changes here and there, a slip of the finger only there.

test('how many origins print each nut factor', () =>
  expect(nutFactorDefaults.map(({ origins }) => origins)).toEqual([
    ...[2, 1, 2, 2, 0, 0, 0, 1, 2, 2, 2, 1, 0, 1, 1, 0],
  ]));

test('how many origins print each depth of engagement', () =>
  expect(engagementRules.map(({ female, origins }) => `${female} ${origins}`)).toEqual([
    ...['steel 2', 'stainless 1', 'cast-iron 1', 'brass 2', 'aluminium 2', 'magnesium 0', 'titanium 0'],
  ]));

test('the pace of each locker, beside the medium grade', () =>
  expect(lockers.map(({ grade, pace }) => `${grade} ${pace.lo} ${pace.mid} ${pace.hi}`)).toEqual([
    ...['low 0.5 1 2', 'medium 0.7 1 1.5', 'medium-oil-tolerant 0.7 1 1.5', 'high 0.5 1 2'],
    ...['high-temperature 0.5 1 2', 'wicking 0.5 1 2', 'retaining 0.5 1 2', 'retaining-removable 0.5 1 2'],
    'retaining-hot 0.5 1 2',
  ]));

test('the widest film of each locker, mm', () =>
  expect(lockers.map(({ widestGapMm }) => widestGapMm)).toEqual([
    ...[0.25, 0.25, 0.25, 0.25, 0.25, 0.05, 0.38, 0.38, 0.38],
  ]));

// ISO 898-1: 8.8 has a proof stress of 580 up to M16 and more above it; the rest from the tables named in the rows.
test('strengths of the classes, MPa', () =>
  expect(
    propertyClasses.map((row) =>
      [row.propertyClass, row.proofMPa ?? '-', row.yieldMPa, row.tensileMPa, row.largestMm ?? '']
        .join(' ')
        .trim(),
    ),
  ).toEqual([
    ...[
      '4.6 225 240 400',
      '5.8 380 420 520',
      '8.8 580 640 800 16',
      '10.9 830 940 1040',
      '12.9 970 1100 1220',
    ],
    ...['A2-50 - 210 500', 'A2-70 - 450 700', 'A4-70 - 450 700', 'A2-80 - 600 800', 'A4-80 - 600 800'],
  ]));

describe('threads', () => {
  test.each([
    ['M14x1', 14, 1],
    ['M15x1.5', 15, 1.5],
    ['M14x1.5', 14, 1.5],
    ['M14x1.25', 14, 1.25],
    ['M9x1', 9, 1],
    ['M10x1', 10, 1],
    ['M35x1', 35, 1],
    ['M47x1', 47, 1],
    ['M30x1', 30, 1],
    ['M8x0.75', 8, 0.75],
    ['M8x1', 8, 1],
    ['M12x1', 12, 1],
    ['M36-24', 36, 25.4 / 24],
    ['1.29-24', 1.29 * 25.4, 25.4 / 24],
    ['1.32-24', 1.32 * 25.4, 25.4 / 24],
  ])('%s', (id, diameterMm, pitchMm) => {
    expect(threadRow(id).diameterMm).toBeCloseTo(diameterMm, 9);
    expect(threadRow(id).pitchMm).toBeCloseTo(pitchMm, 9);
  });
  test('a metric thread is what its name says', () => {
    const pitches: Record<string, number> = {
      M3: 0.5,
      M4: 0.7,
      M5: 0.8,
      M6: 1,
      M8: 1.25,
      M10: 1.5,
      M12: 1.75,
    };
    for (const { id, diameterMm, pitchMm } of threads.filter((row) => /^M[\d.]+(x[\d.]+)?$/.test(row.id))) {
      const [size, pitch] = id.slice(1).split('x');
      expect(diameterMm, id).toBe(Number(size));
      expect(pitchMm, id).toBe(pitch ? Number(pitch) : pitches[id]);
    }
  });
  // A lockring locks because pedalling backwards tightens it; on a hub driven from the left that is the other hand.
  test.each<[string, BikeSide, Hand]>([
    ['1.29-24', 'drive', 'left'],
    ['1.29-24', 'non-drive', 'right'],
    ['1.32-24', 'drive', 'left'],
    ['1.32-24', 'non-drive', 'right'],
  ])('lockring %s, %s side, is %s-handed', (id, side, hand) =>
    expect(handOf(threadRow(id), side)).toBe(hand),
  );
});

test('both ends of every printed torque lie inside it, and nothing beyond does', () => {
  for (const row of torqueBands)
    for (const print of row.prints) {
      const one = { ...row, prints: [print] };
      const places = [print.loNm, print.hiNm, print.loNm - 0.01, print.hiNm + 0.01].map(
        (nm) => placeIn(one, nm).place,
      );
      expect(places, `${row.joint} ${row.variant}`).toEqual(['inside', 'inside', 'below', 'above']);
    }
});

test('a cup’s own thread is no screw: 16 mm is the widest', () => {
  const rows = (thread: string) => bandsThatFit('headset', { thread }).map(({ variant }) => variant);
  expect(rows('M15x1.5')).toEqual([]);
  expect(rows('1-24')).toEqual(['threaded headset, locknut']);
});

test('widths of the shells, mm', () =>
  expect(shells.map(({ id, widthsMm }) => `${id}: ${widthsMm.join(' ')}`)).toEqual([
    ...['iso: 68 73 83 100', 'italian: 70', 'french: 68', 't47: 68 73 77 85.5 86.5', 'american: 65 68 73'],
    ...['mid: 68 73', 'spanish: 68 73', 'bb30: 68 73 83', 'pf30: 68 73', 'pf46-wide: 86.5'],
    ...[
      'pf41: 86.5 89.5 91.5 92 104.5 107 121',
      'direct37: 90 95',
      'thompson: 65 68 70',
      'thompson-30: 65 68 70',
    ],
    ...['thompson-33: 65 68 70', 'thompson-35: 65 68 70', 'thompson-38: 65 68 70', 'thompson-45: 65 68 70'],
    'american-small: 65',
  ]));

test('stiffness, narrowing and expansion of materials', () =>
  expect(
    Object.entries(elasticMaterials).map(
      ([id, { modulusGpa, poisson, expansionPerK }]) =>
        `${id} ${modulusGpa} ${poisson} ${(expansionPerK * 1e6).toFixed(1)}`,
    ),
  ).toEqual([
    ...['steel 205 0.29 11.7', 'stainless 193 0.29 16.5', 'aluminium 70 0.33 23.0', 'titanium 110 0.33 8.8'],
    'brass 105 0.34 19.0',
  ]));

test('where a caliper cannot tell a press, only what was measured is asked for again', () => {
  const tube = (measured: object) => named('head-tube-upper', 'EC34/28.6', { measured: { ...measured } });
  const cup = (measured: object) => named('headset-cup-upper', 'EC34/28.6', { measured: { ...measured } });
  const asked = (one: object, other: object) => mates(tube(one), cup(other))?.asks.map(({ kind }) => kind);
  const bore = { boreMm: caliper(34, 0.1) };
  const outside = { diameterMm: caliper(34.25, 0.1) };
  expect(asked(bore, {})).toEqual(['head-tube-upper']);
  expect(asked(bore, outside)).toEqual(['head-tube-upper', 'headset-cup-upper']);
});
