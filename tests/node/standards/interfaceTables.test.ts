import { describe, expect, test } from 'vitest';
import { spanOf, standardsFor } from '../../../src/fit/faces/standardOf.ts';
import { type FaceKind, faceKindIds, faceKinds } from '../../../src/standards/faces/faceKinds.ts';
import type { InterfaceRow } from '../../../src/standards/faces/interfaceRow.ts';
import { axles } from '../../../src/standards/interfaces/axles.ts';
import { brakeMounts, isNativeRotorMm } from '../../../src/standards/interfaces/brakeMounts.ts';
import { chains } from '../../../src/standards/interfaces/chains.ts';
import { clamps } from '../../../src/standards/interfaces/clamps.ts';
import { driveThreads } from '../../../src/standards/interfaces/driveThreads.ts';
import { headsets } from '../../../src/standards/interfaces/headsets.ts';
import { mounts } from '../../../src/standards/interfaces/mounts.ts';
import { pedals } from '../../../src/standards/interfaces/pedals.ts';
import { ringMounts } from '../../../src/standards/interfaces/ringMounts.ts';
import { seatposts } from '../../../src/standards/interfaces/seatposts.ts';
import { shells } from '../../../src/standards/interfaces/shells.ts';
import { spacings } from '../../../src/standards/interfaces/spacings.ts';
import { spindles, systemWidths } from '../../../src/standards/interfaces/spindles.ts';

const tables: Record<string, readonly InterfaceRow[]> = {
  shells,
  spindles,
  headsets,
  clamps,
  seatposts,
  axles,
  spacings,
  ringMounts,
  pedals,
  driveThreads,
  chains,
  brakeMounts,
};

describe.each(Object.entries(tables))('%s', (_, rows) => {
  test('ids are their own, every row has a source', () => {
    expect(new Set(rows.map(({ id }) => id)).size).toBe(rows.length);
    for (const { source } of rows) expect(source.trim()).not.toBe('');
  });

  test('every size belongs to a dimension of its face kind and is plausible there', () => {
    for (const { id, faces } of rows)
      for (const [kind, sizes] of Object.entries(faces))
        for (const [key, span] of Object.entries(sizes)) {
          const row = faceKinds[kind as FaceKind].dimensions.find((dimension) => dimension.key === key);
          const [lo, hi] = spanOf(span);
          expect(row, `${id} ${kind} ${key}`).toBeDefined();
          expect(lo, id).toBeLessThanOrEqual(hi);
          expect(lo, `${id} ${key}`).toBeGreaterThanOrEqual(row?.min ?? Number.POSITIVE_INFINITY);
          expect(hi, `${id} ${key}`).toBeLessThanOrEqual(row?.max ?? Number.NEGATIVE_INFINITY);
        }
  });
});

test.each(faceKindIds)('every standard of a %s is told from the others by its name', (kind) => {
  const labels = standardsFor(kind).map(({ label }) => label);
  expect(labels).not.toContain('');
  expect(new Set(labels).size).toBe(labels.length);
});

test('what is known by its size alone has the size in its name', () => {
  for (const { label, faces } of [...clamps, ...spacings])
    for (const size of Object.values(faces).flatMap((sizes) => Object.values(sizes)))
      expect(label).toContain(String(size));
});

const row = (id: string): InterfaceRow => {
  const found = Object.values(tables)
    .flat()
    .find((candidate) => candidate.id === id);
  if (!found) throw new Error(`no row ${id}`);
  return found;
};

/** Figures as the source prints them; a span has to hold the printed figure, a size has to be it. */
test.each<[source: string, id: string, kind: FaceKind, key: string, printed: number]>([
  ['bottom bracket thread table: hole from 33.6', 'iso', 'shell', 'boreMm', 33.6],
  ['bottom bracket thread table: hole to 33.9', 'iso', 'shell', 'boreMm', 33.9],
  ['bottom bracket thread table: cup from 34.6', 'iso', 'bb-cup', 'diameterMm', 34.6],
  ['1.37 in, by definition of the inch', 'iso', 'bb-cup', 'diameterMm', 1.37 * 25.4],
  ['bottom bracket thread table: Italian hole', 'italian', 'shell', 'boreMm', 34.6],
  ['bottom bracket thread table: Italian cup', 'italian', 'bb-cup', 'diameterMm', 35.9],
  ['personal page on bottom bracket standards: 51.3', 'american', 'shell', 'boreMm', 51.3],
  ['personal page on bottom bracket standards: also printed 51.4', 'american', 'shell', 'boreMm', 51.4],
  ['personal page on bottom bracket standards: 41.96', 'bb30', 'shell', 'boreMm', 41.96],
  ["spacer chart and bearing maker's drawings: 46", 'pf30', 'shell', 'boreMm', 46],
  ['spacer chart: 41', 'pf41', 'shell', 'boreMm', 41],
  ['personal page on bottom bracket standards: 37', 'direct37', 'shell', 'boreMm', 37],
  ['Spanish bottom bracket page: bearing 37 outside', 'spanish', 'bb-cup', 'diameterMm', 37],
  ['headset guide of 2010: 1 in JIS from 29.85', 'EC29/25.4', 'head-tube-upper', 'boreMm', 29.85],
  ['headset guide of 2010: 1 in ISO to 30.10', 'EC30/25.4', 'head-tube-upper', 'boreMm', 30.1],
  ['headset notes of 2022: JIS cup 30.0', 'EC29/25.4', 'headset-cup-upper', 'diameterMm', 30],
  ['headset notes of 2022: JIS race 27.0', 'EC29/25.4', 'crown-race', 'boreMm', 27],
  ['headset notes of 2022: ISO race 26.4', 'EC30/25.4', 'crown-race', 'boreMm', 26.4],
  ['head tube bore table of an encyclopaedia mirror: 32.5', 'EC32/25.4', 'head-tube-lower', 'boreMm', 32.5],
  ['head tube bore table of an encyclopaedia mirror: 33.8', 'EC34/28.6', 'head-tube-lower', 'boreMm', 33.8],
  ['headset guide of 2010: cup 34.10', 'EC34/28.6', 'headset-cup-lower', 'diameterMm', 34.1],
  ['copy of a Q&A on straight forks: 30 at the crown', 'EC34/28.6', 'crown-race', 'boreMm', 30],
  ['head tube bore table of an encyclopaedia mirror: 36.8', 'EC37/31.8', 'head-tube-lower', 'boreMm', 36.8],
  ['head tube bore table of an encyclopaedia mirror: 49.6', 'EC49/38.1', 'head-tube-lower', 'boreMm', 49.6],
  ['head tube bore table of an encyclopaedia mirror: 43.9', 'ZS44/28.6', 'head-tube-lower', 'boreMm', 43.9],
  ['head tube bore table of an encyclopaedia mirror: 41.1', 'IS41/28.6', 'head-tube-lower', 'boreMm', 41.1],
  ['head tube bore table of an encyclopaedia mirror: 41.9', 'IS42/28.6', 'head-tube-lower', 'boreMm', 41.9],
  ['3/8 in, by definition of the inch', 'axle-3/8', 'axle', 'diameterMm', (3 / 8) * 25.4],
  ['workshop thread list: slot for 3/8 from 9.6', 'axle-3/8', 'axle-slot', 'widthMm', 9.6],
  ['BMX axle pages: 14', 'axle-14', 'axle', 'diameterMm', 14],
  ['9/16 in, by definition of the inch', '9/16x20', 'pedal-spindle', 'diameterMm', (9 / 16) * 25.4],
  ['1/2 in, by definition of the inch', '1/2x20', 'pedal-spindle', 'diameterMm', 12.7],
  ['1.375 in, by definition of the inch', '1.375x24', 'driver-mount', 'diameterMm', 1.375 * 25.4],
  ['3/4 in, by definition of the inch', 'round-19', 'spindle', 'diameterMm', 19.05],
  ['shop’s article on IS and post mounts: 51 apart', 'is', 'caliper-mount', 'holeSpacingMm', 51],
  ['shop’s article on IS and post mounts: 74 apart', 'post', 'disc-mount', 'holeSpacingMm', 74],
  ['seller’s article on saddle rails: 7', 'two-rail', 'saddle-mount', 'railMm', 7],
  ['seller’s article on saddle rails: 7 × 9', 'two-rail-oval', 'saddle-mount', 'railHeightMm', 9],
])('%s', (_, id, kind, key, printed) => {
  const span = row(id).faces[kind]?.[key];
  expect(span).toBeDefined();
  const [lo, hi] = spanOf(span ?? Number.NaN);
  // Half a unit of the last digit these pages print.
  expect(printed).toBeGreaterThanOrEqual(lo - 0.005);
  expect(printed).toBeLessThanOrEqual(hi + 0.005);
});

test.each([
  ['scope of ISO 6696: fixed cup left-handed, adjustable cup right-handed', 'iso', 'left'],
  ["bearing maker's drawings", 't47', 'left'],
  ['bottom bracket thread table', 'italian', 'right'],
  ['bottom bracket thread table', 'french', 'right'],
])('hand of the drive side, %s: %s %s', (_, id, hand) => {
  expect(shells.find((shell) => shell.id === id)?.driveSide).toBe(hand);
});

// Two shop pages: frames for 140 and for 160 exist; which one is stamped or in the frame's sheet.
test('a flat mount, like a post, is asked for its rotor: frames differ by age', () => {
  for (const { id, nativeRotorMm } of mounts)
    if (id !== 'is') expect(nativeRotorMm, id).toEqual({ front: null, rear: null });
});

// 86.5 = 68 + 2 × 9.25 and 91.5 = 73 + 2 × 9.25: the cups are the same (a rider’s blog on two-piece cranks).
test('the two printed widths of two-piece cranks name two things, told apart by the cups', () => {
  for (const { underCupsMm, overBearingsMm } of systemWidths)
    expect(overBearingsMm - underCupsMm).toBeCloseTo(2 * 9.25, 9);
  expect(systemWidths.map(({ systemWidthMm }) => systemWidthMm)).toEqual([68 + 18.5, 73 + 18.5]);
  expect(systemWidths[1]!.overBearingsMm - systemWidths[1]!.systemWidthMm).toBeCloseTo(
    systemWidths[1]!.spacerMm,
    9,
  );
});

// Encyclopaedia’s crib sheet of spacings: 110 back-pedal, 114 three- and four-speed; the rest from memory, and says so.
test.each([
  [110, 'seen'],
  [112, 'memory'],
  [114, 'seen'],
  [117, 'memory'],
  [118, 'memory'],
  [127, 'memory'],
  [132, 'memory'],
])('a gear or back-pedal hub of %d has a row, %s', (spacingMm, known) => {
  const row = spacings.find(({ id }) => id === `rear-${spacingMm}`);
  expect(row?.faces['hub-spacing']).toEqual({ spacingMm });
  expect(row?.label).toMatch(/gear|back-pedal/);
  expect(row?.known).toBe(known);
});

test('front IS takes 160, rear 140: they differ by 20 (Q&A on IS adapters; shop’s article on IS and post mounts)', () => {
  expect(isNativeRotorMm.front - isNativeRotorMm.rear).toBe(20);
});

describe('face kinds', () => {
  test.each(faceKindIds)('%s says how each of its sizes is taken', (kind) => {
    const { dimensions, traits = [], named } = faceKinds[kind];
    expect(dimensions.length + traits.length + (named ? 1 : 0)).toBeGreaterThan(0);
    for (const { key, how, min, max } of dimensions) {
      expect(key).toMatch(/(Mm|Count|Bar)$/);
      expect(how.length).toBeGreaterThan(8);
      expect(min).toBeLessThan(max);
    }
    for (const { choices, how } of traits) {
      expect(choices.length).toBeGreaterThan(1);
      expect(how.length).toBeGreaterThan(8);
    }
  });

  test('a face that has to be named has names to choose from', () => {
    for (const kind of faceKindIds)
      if (faceKinds[kind].named) expect(standardsFor(kind).length, kind).toBeGreaterThan(0);
  });
});
