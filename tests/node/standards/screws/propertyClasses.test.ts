import { expect, test } from 'vitest';
import {
  propertyClasses,
  propertyClassRow,
  unmarkedClasses,
} from '../../../../src/standards/screws/propertyClasses.ts';

test('examples: 8.8 has a proof stress of 580 MPa, and unmarked steel may be 4.6 to 5.8', () => {
  expect(propertyClassRow('8.8').proofMPa).toBe(580);
  expect(unmarkedClasses('steel').map((row) => row.propertyClass)).toEqual(['4.6', '5.8']);
});

// ISO 898-1:1999 mechanical properties, course page: tensile, yield, proof.
// The weaker ones: the same course page and a fastener seller’s page on EN ISO 898-1 agree.
test.each([
  ['4.6', 400, 240, 225],
  ['5.8', 520, 420, 380],
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

// ISO 898-1 wants the class on the head from 8.8 upwards (quoted on an engineering forum), ISO 3506-1 from class 70.
test('no screw without a mark is taken for one that must bear it', () => {
  for (const row of unmarkedClasses('steel')) expect(row.tensileMPa).toBeLessThan(800);
  expect(unmarkedClasses('stainless').map((row) => row.propertyClass)).toEqual(['A2-50']);
  for (const screw of ['aluminium', 'titanium', 'unknown'] as const)
    expect(unmarkedClasses(screw)).toEqual([]);
  expect(() => propertyClassRow('14.9')).toThrow(RangeError);
});
