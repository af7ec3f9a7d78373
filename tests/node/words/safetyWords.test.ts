import { describe, expect, test } from 'vitest';
import { missingWords, onlyHereWords, secondCopyWords } from '../../../src/words/safetyWords.ts';

const DAY_MS = 86_400_000;
const MAY_3 = Date.UTC(2026, 4, 3, 12);

describe('how the second copy stands', () => {
  test('there is none', () => {
    expect(secondCopyWords({ is: 'none', entries: 0, photos: 0 }).title).toBe('No second copy on this phone');
  });

  test('how much it holds and when it was written', () => {
    const copy = { is: 'level', entries: 12, photos: 1, writtenAtMs: MAY_3 } as const;
    expect(secondCopyWords(copy, 'UTC').detail).toMatch(
      /^12 entries and 1 photo, last written 3 May 2026, 12:00\. /,
    );
  });

  test('that it is left alone while the logbook cannot be read', () => {
    expect(secondCopyWords({ is: 'unread', entries: 3, photos: 0 }).detail).toBe(
      'It stays as it is while the logbook cannot be read.',
    );
  });

  test('why it could not be written', () => {
    const copy = { is: 'failed', entries: 3, photos: 0, why: 'no room' } as const;
    expect(secondCopyWords(copy).detail).toBe('no room. Save a copy now.');
  });
});

describe('entries on this phone only', () => {
  test.each([
    [3, 10, '3 entries are on this phone only, the oldest for 10 days.'],
    [1, 7, '1 entry is on this phone only, the oldest for 7 days.'],
    [5001, 8, 'More than 5000 entries are on this phone only, the oldest for 8 days.'],
    [900, 6.9, undefined],
  ])('%i of them, the oldest %d days old', (entries, days, words) => {
    expect(onlyHereWords({ entries, sinceMs: 0 }, days * DAY_MS)).toBe(words);
  });
});

test.each([
  [1, '1 entry is missing from the logbook'],
  [2, '2 entries are missing from the logbook'],
])('%i missing', (count, title) => {
  expect(missingWords(count, true).title).toBe(title);
});
