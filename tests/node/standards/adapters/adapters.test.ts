import { describe, expect, test } from 'vitest';
import { meet, ruleFor } from '../../../../src/fit/bridges/meet.ts';
import { tableAdapters } from '../../../../src/fit/bridges/shelfAdapter.ts';
import { standardOf } from '../../../../src/fit/faces/standardOf.ts';
import { rootDiameterMm } from '../../../../src/mechanics/screws/threadGeometry.ts';
import { adapters } from '../../../../src/standards/adapters/adapters.ts';
import { faceKindIds, faceKinds } from '../../../../src/standards/faces/faceKinds.ts';
import { threadRow } from '../../../../src/standards/screws/threads.ts';

test('ids are their own', () => {
  expect(new Set(adapters.map(({ id }) => id)).size).toBe(adapters.length);
});

describe.each(adapters.map((row, index) => [row.id, row, tableAdapters[index]] as const))(
  '%s',
  (_, row, bridging) => {
    test('each face can meet some kind of face, names a known standard, and has known sizes', () => {
      for (const face of bridging?.faces ?? []) {
        expect(faceKindIds.some((kind) => ruleFor(face.kind, kind))).toBe(true);
        if (face.standard !== null) expect(standardOf(face)).toBeDefined();
        const keys = faceKinds[face.kind].dimensions.map(({ key }) => key);
        for (const key of Object.keys(face.nominal)) expect(keys).toContain(key);
      }
    });

    test('is not an adapter to itself', () => {
      const [one, other] = bridging?.faces ?? [];
      if (one && other) expect(meet(one, other)?.meets).not.toBe('yes');
    });

    test('carries a source and a caution', () => {
      expect(row.source).not.toBe('');
      expect(row.caution.length).toBeGreaterThan(20);
    });
  },
);

/** Least wall of anything cut on a lathe, mm; our own limit. */
const LEAST_WALL_MM = 0.25;

// ISO 68-1 profile: a 9/16 × 20 screw has its root at 14.2875 − 1.2269 × 1.27 = 12.73 mm, a 1/2 in crest stands at 12.70.
test('no bush has a thread inside a thread that leaves it no wall', () => {
  const root = rootDiameterMm(threadRow('9/16-20'));
  expect(root).toBeCloseTo(12.73, 2);
  expect((root - threadRow('1/2-20').diameterMm) / 2).toBeLessThan(LEAST_WALL_MM);
  const pedalAdapters = adapters.filter(({ faces }) => faces.some(({ kind }) => kind === 'pedal-spindle'));
  expect(pedalAdapters.length).toBe(1);
  for (const row of pedalAdapters) {
    expect(row.sort).toBe('adapter');
    expect(row.label).toMatch(/end to end/);
  }
  for (const { wallMm, id } of adapters) if (wallMm) expect(wallMm, id).toBeGreaterThanOrEqual(LEAST_WALL_MM);
});

/** Walls as a ring: half of outside less inside. */
test.each([
  ['steerer-shim-28.6-25.4', 1.6],
  ['bar-shim-31.8-25.4', 3.2],
  ['bar-shim-31.8-26', 2.9],
  ['bar-shim-26-25.4', 0.3],
  ['bar-shim-25.4-22.2', 1.6],
  ['bar-shim-35-31.8', 1.6],
  ['seatpost-shim-27.2-25.4', 0.9],
  ['seatpost-shim-30.9-27.2', 1.85],
  ['seatpost-shim-31.6-27.2', 2.2],
  ['seatpost-shim-31.6-30.9', 0.35],
  ['seatpost-shim-34.9-31.6', 1.65],
  ['axle-bush-14-10', 2],
  ['spindle-sleeve-22-19', 1.5],
  ['spindle-sleeve-24-22', 1],
  ['spindle-sleeve-24-19', 2.5],
])('regression: %s has a wall of %f mm', (id, wallMm) => {
  expect(adapters.find((row) => row.id === id)?.wallMm).toBeCloseTo(wallMm, 3);
});
