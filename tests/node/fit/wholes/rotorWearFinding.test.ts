import { expect, test } from 'vitest';
import { checkPile } from '../../../../src/fit/checkPile.ts';
import { rotorMinimums } from '../../../../src/standards/interfaces/rotors.ts';
import { caliper, face, part } from '../../../fixtures/pileParts.ts';

const rotor = (thicknessMm?: number, minimumMm?: number) =>
  part('rotor', 'rotor', [
    face(
      'rotor-size',
      { diameterMm: 180, ...(minimumMm === undefined ? {} : { minimumMm }) },
      thicknessMm === undefined ? {} : { measured: { thicknessMm: caliper(thicknessMm, 0.01) } },
    ),
  ]);
const wear = (thicknessMm?: number, minimumMm?: number) => {
  const { findings, fitting, toMeasure } = checkPile([rotor(thicknessMm, minimumMm)]);
  return [...findings, ...fitting, ...toMeasure].find(({ topic }) => topic === 'rotor-wear');
};

// Marks of three makers, workshop tool maker's article: 1.5, 1.52 and 1.55.
test.each(rotorMinimums.map(({ minimumMm }) => minimumMm))(
  'a rotor marked %f is worn out at its mark',
  (mark) => {
    expect(wear(mark, mark)?.outcome).toBe('does-not-fit');
    expect(wear(mark + 0.05, mark)).toMatchObject({ outcome: 'fits' });
    expect(wear(mark + 0.05, mark)?.notes).toHaveLength(1);
    expect(wear(mark + 0.3, mark)?.notes).toEqual([]);
  },
);

test('a measured rotor without a mark asks for the mark; one that was not measured is left alone', () => {
  expect(wear(1.6)).toMatchObject({ outcome: 'not-known', asks: [{ kind: 'rotor-size', key: 'minimumMm' }] });
  expect(wear(undefined, 1.5)).toBeUndefined();
});
