import { expect, test } from 'vitest';
import { bandSentence, seriesSentence, spokenReading } from '../../../../src/words/wheel/earWords.ts';

test('the plucks that are missing', () => {
  expect(seriesSentence({ state: 'more', missing: 3 })).toBe('Pluck three times.');
  expect(seriesSentence({ state: 'more', missing: 2 })).toBe('Heard. Pluck twice more.');
  expect(seriesSentence({ state: 'more', missing: 1 })).toBe('Heard. Pluck once more.');
});

test('the honest band: 839, 1010, 1166 N', () => {
  expect(bandSentence({ lo: 839, mid: 1010, hi: 1166 }, false)).toBe(
    'By itself within −17 to +15 %. Spokes of one side compare within 2 %.',
  );
  expect(bandSentence({ lo: 870, mid: 900, hi: 930 }, true)).toBe(
    'Calibrated: within 3 %. Spokes of one side compare within 2 %.',
  );
});

test('what is said aloud', () => {
  expect(spokenReading(3, '1010', 5)).toBe('Spoke 3: 1010. Next: 5.');
  expect(spokenReading(36, '980', undefined)).toBe('Spoke 36: 980. All done.');
});
