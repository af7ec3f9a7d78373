import { expect, test } from 'vitest';
import {
  erdFromNipplesMm,
  erdFromReadings,
  erdFromRodsMm,
} from '../../../../src/mechanics/wheels/spokeLengthErd.ts';

test('rods of 200 mm with 184 mm between them: 584 mm', () => expect(erdFromRodsMm(200, 184)).toBe(584));
test('560 mm between nipples of 12 mm: 584 mm', () => expect(erdFromNipplesMm(560, 12)).toBe(584));

test('the mean of several places, doubted when they lie more than a millimetre apart (limit from memory)', () => {
  expect(erdFromReadings([584, 584.4])).toEqual({
    meanMm: expect.closeTo(584.2, 9),
    spreadMm: expect.closeTo(0.4, 9),
    doubtful: false,
    limitKnown: 'memory',
  });
  expect(erdFromReadings([584, 584.4, 585.2]).doubtful).toBe(true);
});

test.each([
  ['rods of no length', () => erdFromRodsMm(0, 184)],
  ['no gap', () => erdFromRodsMm(200, Number.NaN)],
  ['nipples of a metre', () => erdFromNipplesMm(560, 1000)],
  ['no reading', () => erdFromReadings([])],
  ['an inch among millimetres', () => erdFromReadings([584, 23])],
])('%s is refused', (_, call) => expect(call).toThrow(RangeError));
