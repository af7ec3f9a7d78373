import { expect, test } from 'vitest';
import { belowFirstMode, vibratingSpoke } from '../../../../src/mechanics/wheels/spokeVibration.ts';

const spoke = vibratingSpoke({ pieces: [{ lengthMm: 180, diameterMm: 2 }] });

test('600 Hz lies below the first mode of 180 mm of 2 mm at 1000 N, 620 Hz above, and so does everything higher', () => {
  expect(belowFirstMode(spoke, 1000, 600)).toBe(true);
  for (let hz = 613; hz < 20_000; hz += 7) expect(belowFirstMode(spoke, 1000, hz)).toBe(false);
});

// Handbook: 7900 kg/m³, g/m.
test.each([
  [2.3, 32.823],
  [2, 24.819],
  [1.8, 20.103],
  [1.6, 15.884],
  [1.5, 13.96],
])('%d mm of steel weighs %d g a metre', (diameterMm, grams) => {
  expect(vibratingSpoke({ pieces: [{ lengthMm: 100, diameterMm }] }).heaviest * 1000).toBeCloseTo(grams, 3);
});

test('a spoke of no piece, or of nonsense, is refused', () => {
  expect(() => vibratingSpoke({ pieces: [] })).toThrow('number of pieces');
  expect(() => vibratingSpoke({ pieces: [{ lengthMm: Number.NaN, diameterMm: 2 }] })).toThrow('lengthMm');
  expect(() => vibratingSpoke({ pieces: [{ lengthMm: 100, diameterMm: 4.1 }] })).toThrow('diameterMm');
  const wire = { gpa: 193, densityKgM3: 10 };
  expect(() => vibratingSpoke({ pieces: [{ lengthMm: 100, diameterMm: 2 }], wire })).toThrow('densityKgM3');
});
