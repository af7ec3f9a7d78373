import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  beadSeatsMatch,
  overallDiameterMm,
  sectionHeightMm,
  widthOnRim,
} from '../../../../src/mechanics/tyres/tyreFit.ts';
import { beadSeatsMm } from '../../../../src/standards/tyres/beadSeats.ts';
import { widths2006, widthsLater, widthTables } from '../../../../src/standards/tyres/tyreWidths.ts';
import { widthColumns2006 } from '../../../fixtures/widthColumns.ts';

describe('examples of the docstrings', () => {
  test('height', () => expect(sectionHeightMm(23)).toBe(25.5));
  test('diameter', () => expect(overallDiameterMm(32, 597)).toBe(661));

  test('622 on 630', () =>
    expect(beadSeatsMatch(622, 630)).toEqual({ ok: false, reason: 'different-bead-seats', brakeReachMm: 4 }));
  test('50 on 17', () =>
    expect(widthOnRim(widths2006, 50, 17)).toEqual({ answer: 'inside', edition: '2006', wideForRim: true }));
});

describe('width on rim (ETRTO as of 2006, German cycling FAQ)', () => {
  test.each([
    [28, 19, 'inside'],
    [25, 19, 'outside'],
    [35, 25, 'outside'],
    [38, 25, 'outside'],
    [47, 23, 'inside'],
    [62, 29, 'inside'],
    [63, 29, 'not-in-this-table'],
    [40, 22, 'not-in-this-table'],
    [17, 13, 'not-in-this-table'],
  ])('%s on %s: %s', (tyreMm, rimMm, answer) =>
    expect(widthOnRim(widths2006, tyreMm, rimMm).answer).toBe(answer),
  );

  test('a later edition answers differently, and only for what was seen of it (38 on 17 to 27)', () => {
    expect(widthOnRim(widthsLater, 38, 25).answer).toBe('inside');
    expect(widthOnRim(widthsLater, 38, 28).answer).toBe('outside');
    expect(widthOnRim(widthsLater, 40, 25).answer).toBe('not-in-this-table');
  });

  test('wide for the rim means more than twice as wide', () => {
    expect(widthOnRim(widths2006, 34, 17).wideForRim).toBe(false);
    expect(widthOnRim(widths2006, 35, 17).wideForRim).toBe(true);
  });

  test('every run begins and ends on a printed column, and wider rims never take narrower tyres', () => {
    for (const { tyresMm } of widths2006.byRim)
      for (const end of tyresMm) expect(widthColumns2006).toContain(end);
    widths2006.byRim.slice(1).forEach((row, at) => {
      expect(row.tyresMm[0]).toBeGreaterThanOrEqual(widths2006.byRim[at]!.tyresMm[0]);
    });
    expect(new Set(widthTables.map((table) => table.edition)).size).toBe(widthTables.length);
  });
});

describe('bead seats', () => {
  test('equal or not, never close', () => {
    const seat = fc.constantFrom(...beadSeatsMm);
    fc.assert(
      fc.property(seat, seat, (tyreMm, rimMm) => {
        expect(beadSeatsMatch(tyreMm, rimMm).ok).toBe(tyreMm === rimMm);
      }),
    );
  });
});

test('the outside grows with the width', () => {
  // Not across 28 mm: there the rule itself steps down.
  const narrow = fc.double({ min: 18, max: 27.9, noNaN: true });
  fc.assert(
    fc.property(narrow, narrow, (a, b) => {
      expect(overallDiameterMm(Math.max(a, b), 622)).toBeGreaterThanOrEqual(
        overallDiameterMm(Math.min(a, b), 622),
      );
    }),
  );
});
