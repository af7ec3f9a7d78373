import { describe, expect, test } from 'vitest';
import { flawsOf, heldWords, lostWords } from '../../../src/words/checkWords.ts';

const whole = { gaps: 0, noEntry: [], newer: 0, rows: [], places: [], photosMissing: [], versionLost: false };
const same = { missing: [], missingPhotos: [], differing: [], differingPhotos: [], unreadable: 0 };

describe('what was lost', () => {
  test('with the count of the mark', () => {
    expect(lostWords({ entries: 3, atMs: 0 }, 'UTC')).toMatch(
      /^It held 3 entries on 1 January 1970, 00:00\. /,
    );
  });

  test('where only the second copy tells of it', () => {
    expect(lostWords({ entries: 0, atMs: 0 })).toMatch(/^The browser has deleted its store/);
  });
});

describe('what is wrong with the logbook', () => {
  test('nothing', () => {
    expect(flawsOf(whole, same)).toEqual([]);
    expect(flawsOf(whole, undefined)).toEqual([]);
  });

  test.each([
    [{ ...whole, gaps: 1 }, '1 line of the journal missing', 'saved copy'],
    [{ ...whole, noEntry: [4, 5] }, '2 lines of the journal damaged', 'saved copy'],
    [{ ...whole, rows: ['bike/b1'] }, '1 row not as the journal says', 'sorting'],
    [{ ...whole, places: ['e1', 'e2'] }, '2 entries not found in the history', 'sorting'],
    [{ ...whole, versionLost: true }, 'Not known which version of the app sorted the logbook', 'sorting'],
    [{ ...whole, photosMissing: ['p1'] }, '1 photo missing', 'saved copy'],
    [{ ...whole, unfoldable: 'why' }, 'The journal cannot be sorted: why', 'second copy'],
  ])('in the store: %j', (store, words, by) => {
    expect(flawsOf(store, same)).toEqual([{ words, by }]);
  });

  test.each([
    [{ ...same, missing: ['e1'], missingPhotos: ['p1'] }, 'Only in the second copy: 1 entry and 1 photo'],
    [{ ...same, differingPhotos: ['p1', 'p2'] }, 'Different in the second copy: 2 photos'],
    [{ ...same, unreadable: 1 }, '1 line of the second copy unreadable'],
  ])('against the second copy: %j', (copy, words) => {
    expect(flawsOf(whole, copy).map((flaw) => flaw.words)).toEqual([words]);
  });
});

describe('what can be had from the second copy', () => {
  const whole = { entries: 3, photos: 0, unreadable: 0, lacking: 0 };

  test('example of the docstring: how much it holds', () => {
    expect(heldWords(whole).title).toBe('The second copy holds 3 entries');
  });

  test('when it was written, what could not be read and what it lacks, before what to do', () => {
    const { text } = heldWords({ ...whole, unreadable: 1, lacking: 2, writtenAtMs: 0 }, 'UTC');
    expect(text).toMatch(
      /^Last written 1 January 1970, 00:00\. 1 line of it could not be read\. 2 entries logged on this phone not in it\. Save/,
    );
    expect(heldWords(whole).text).toMatch(/^Save it as a file first\./);
  });
});
