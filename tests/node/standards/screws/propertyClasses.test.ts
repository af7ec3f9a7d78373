import { expect, test } from 'vitest';
import {
  assumedClass,
  propertyClasses,
  propertyClassRow,
} from '../../../../src/standards/screws/propertyClasses.ts';

test('examples: 8.8 has a proof stress of 580 MPa and is what unmarked steel is taken for', () => {
  expect(propertyClassRow('8.8').proofMPa).toBe(580);
  expect(assumedClass('steel')?.propertyClass).toBe('8.8');
});

// ISO 898-1:1999 mechanical properties, course page: tensile, yield, proof.
test.each([
  ['10.9', 1040, 940, 830],
  ['12.9', 1220, 1100, 970],
])('%s: %d, %d, %d MPa', (id, tensileMPa, yieldMPa, proofMPa) => {
  expect(propertyClassRow(id)).toMatchObject({ tensileMPa, yieldMPa, proofMPa });
});

// The name of a steel class: hundredths of the nominal strength, tenths of the yield ratio (ISO 898-1, designation).
test.each(propertyClasses.filter((row) => row.screw === 'steel'))(
  '$propertyClass keeps what its name promises',
  (row) => {
    const [strength = 0, ratio = 0] = row.propertyClass.split('.').map(Number);
    expect(row.tensileMPa).toBeGreaterThanOrEqual(strength * 100);
    expect(row.yieldMPa).toBeGreaterThanOrEqual(strength * ratio * 10);
  },
);

// The name of a stainless class: tenths of the tensile strength (ISO 3506-1, designation).
test.each(propertyClasses.filter((row) => row.screw === 'stainless'))(
  '$propertyClass has the strength in its name',
  (row) => {
    expect(row.tensileMPa).toBe(Number(row.propertyClass.split('-')[1]) * 10);
  },
);

test.each(propertyClasses)(
  '$propertyClass: proof < yield < tensile',
  ({ proofMPa, yieldMPa, tensileMPa }) => {
    expect(proofMPa ?? 0).toBeLessThan(yieldMPa);
    expect(yieldMPa).toBeLessThan(tensileMPa);
  },
);

test('no class is assumed for aluminium, titanium or the unknown', () => {
  for (const screw of ['aluminium', 'titanium', 'unknown'] as const)
    expect(assumedClass(screw)).toBeUndefined();
  expect(assumedClass('stainless')?.propertyClass).toBe('A2-70');
  expect(() => propertyClassRow('14.9')).toThrow(RangeError);
});
