import { expect, test } from 'vitest';
import { pluckSeries } from '../../../../src/mechanics/sound/pluckSeries.ts';

test('440, 441 and 440.5 Hz agree: 440.5 Hz', () => {
  expect(pluckSeries([440, 441, 440.5])).toMatchObject({ state: 'heard', hz: 440.5 });
});

test('fewer than three are not enough', () => {
  expect(pluckSeries([])).toEqual({ state: 'more', missing: 3 });
  expect(pluckSeries([440, 440])).toEqual({ state: 'more', missing: 1 });
});

test('more than 10 cents apart: again, and an outlier drops out as plucks follow', () => {
  expect(pluckSeries([440, 443, 440])).toMatchObject({ state: 'again', often: false });
  expect(pluckSeries([440, 443, 440, 440.2])).toMatchObject({ state: 'again' });
  expect(pluckSeries([440, 443, 440, 440.2, 440.1])).toMatchObject({ state: 'heard', hz: 440.1 });
  // 10 cents of 440 Hz are 2.55 Hz.
  expect(pluckSeries([440, 442.5, 440]).state).toBe('heard');
  expect(pluckSeries([440, 442.6, 440]).state).toBe('again');
});

test('six that do not agree are worth a word', () => {
  expect(pluckSeries([440, 450, 440, 450, 440, 450])).toMatchObject({ state: 'again', often: true });
});
