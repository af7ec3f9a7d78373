import { describe, expect, test } from 'vitest';
import { emptyFace } from '../../../src/drafts/faceDraft.ts';
import { isUnusualSeat, readTyreMarking, withMarking } from '../../../src/drafts/tyreSizeDraft.ts';

test('examples', () => {
  expect(readTyreMarking('47-622')).toEqual({ offers: [{ beadSeatMm: 622, widthMm: 47 }] });
  expect(isUnusualSeat('585')).toBe(true);
});

describe('a marking read into sizes', () => {
  test('a name of several rims offers each, and asks for the number', () => {
    const read = readTyreMarking('20 x 1 3/8');
    expect(read.offers.map(({ beadSeatMm }) => beadSeatMm)).toEqual([438, 440, 451]);
    expect(read.words).toMatch(/Which three-digit number/);
  });
  test('an unusual number can be taken and is to be read again', () => {
    expect(readTyreMarking('47-585').offers).toHaveLength(1);
    expect(readTyreMarking('47-585').words).toMatch(/Read it again/);
  });
  test.each(['', 'big', '23x1.9', '47-999'])('"%s" offers nothing', (text) =>
    expect(readTyreMarking(text).offers).toEqual([]),
  );
});

test('what is taken stands as printed; a rim keeps its own width', () => {
  const offer = { beadSeatMm: 349, widthMm: 35 };
  expect(withMarking(emptyFace('t', 'tyre-bead'), offer).sizes).toEqual({
    beadSeatMm: { typed: '349', unit: 'mm', printed: true },
    widthMm: { typed: '35', unit: 'mm', printed: true },
  });
  expect(Object.keys(withMarking(emptyFace('r', 'rim-seat'), offer).sizes)).toEqual(['beadSeatMm']);
});

test.each(['254', '622', '', 'x'])('"%s" is nothing unusual', (typed) =>
  expect(isUnusualSeat(typed)).toBe(false),
);
