import { describe, expect, test } from 'vitest';
import { hoursToReach } from '../../../../src/mechanics/cures/cureCurve.ts';
import { cureGrid } from '../../../../src/standards/screws/cureGrid.ts';
import { type LockerGrade, lockerRow, lockers } from '../../../../src/standards/screws/lockers.ts';

test('example of the docstring', () => expect(lockerRow('medium').breakawayNm).toBe(12));

describe('grades', () => {
  test('each stands once and says how it comes apart', () => {
    expect(new Set(lockers.map((row) => row.grade)).size).toBe(lockers.length);
    for (const row of lockers) expect(row.source).toMatch(/\S{4}/);
  });
  test('heat-resistant means beyond the usual 149 °C (encyclopedia article on thread-locking fluid)', () => {
    for (const row of lockers) expect(row.heatResistant, row.grade).toBe(row.hottestServiceC > 149);
  });
  test('stronger grades break away later (encyclopedia article on thread-locking fluid)', () => {
    const order = (['low', 'medium', 'medium-oil-tolerant', 'high'] as const).map(
      (grade) => lockerRow(grade).breakawayNm ?? 0,
    );
    expect(order).toEqual([...order].sort((a, b) => a - b));
  });
  test('an unknown grade is a programmer error', () =>
    expect(() => lockerRow('superglue' as LockerGrade)).toThrow(RangeError));
});

describe('the cure grid', () => {
  const curves = [
    cureGrid.reference,
    ...Object.values(cureGrid.surfaces).flatMap((row) => (row.curve ? [row.curve] : [])),
    ...cureGrid.gaps.map((row) => row.curve),
    ...cureGrid.temperatures.map((row) => row.curve),
  ];
  test('strength rises with time on every curve, and every surface gets to riding strength', () => {
    for (const { percent } of curves) {
      for (const side of [0, 1] as const) {
        const values = percent.map((point) => point[side]);
        expect(values).toEqual([...values].sort((a, b) => a - b));
      }
    }
    for (const curve of curves) expect(hoursToReach(curve, 75)).not.toBeNull();
  });
  test('copper is quicker than steel (paper on cure rate by substrate, adhesion journal 1997)', () =>
    expect(hoursToReach(cureGrid.surfaces.brass.curve, 75)!.hi).toBeLessThan(
      hoursToReach(cureGrid.surfaces.steel.curve, 75)!.lo,
    ));
  test('it says that it is remembered', () => expect(cureGrid.known).toBe('memory'));
});
