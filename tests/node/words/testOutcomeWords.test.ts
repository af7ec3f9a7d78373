import { expect, test } from 'vitest';
import { testOutcomeWords } from '../../../src/words/testOutcomeWords.ts';

test.each([
  [200, true, true, 'In time: it rang and showed a message.'],
  [0, true, false, 'In time: it rang.'],
  [0, false, true, 'In time: it showed a message.'],
  [0, false, false, 'In time: no sound and no message came through.'],
  [25_000, true, false, '25 s late, the phone had put the app to sleep: it rang.'],
  [300_000, false, true, '5 min late, the phone had put the app to sleep: it showed a message.'],
])('%d ms late, rang %s, shown %s', (lateMs, rang, shown, words) =>
  expect(testOutcomeWords({ lateMs, rang, shown })).toBe(words),
);
