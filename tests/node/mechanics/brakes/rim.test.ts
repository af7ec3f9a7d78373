import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { rimWear, wallStrengthLeft } from '../../../../src/mechanics/brakes/rim.ts';
import { channelWidthMm, tapeLengthM, tapeWidthMm } from '../../../../src/mechanics/tyres/rimTape.ts';
import { valveInHole, valveLengthMm } from '../../../../src/mechanics/tyres/rimValve.ts';
import { valveLengths, valves } from '../../../../src/standards/tyres/valves.ts';

describe('examples of the docstrings', () => {
  test('wall', () => expect(rimWear(1.2, false).wear).toBe('watch'));
  test('strength', () => expect(wallStrengthLeft(1)).toBeCloseTo(0.296, 3));

  test('tape', () => expect(tapeWidthMm(23)).toEqual({ lo: 25, mid: 26.5, hi: 28 }));
  test('channel', () => expect(channelWidthMm(25, 4, 4)).toBeCloseTo(28.3, 1));
  test('length', () => expect(tapeLengthM(2, 622)).toBeCloseTo(4.16, 2));
  test('valve', () => expect(valveInHole(6, 8.3)).toEqual({ ok: true, how: 'sleeve', playMm: 2.3 }));
  test('valve length', () => expect(valveLengthMm(45, [40, 60, 80])).toBe(60));
});

describe('rim wall (wheel builder’s note: replace at 1.00 mm)', () => {
  test.each([
    [0.9, false, 'replace'],
    [1, false, 'replace'],
    [1.01, false, 'watch'],
    [1.21, false, 'good'],
    [1.5, true, 'replace'],
    [0, false, 'replace'],
  ])('%s mm, damaged %s: %s', (wallMm, damaged, wear) => expect(rimWear(wallMm, damaged).wear).toBe(wear));
});

// Regression rows, computed from circle and profile.
test.each([
  [19, 4, 3, 21.0],
  [30, 5, 4, 32.8],
])('channel %s wide, flank %s, depth %s: %s mm (computed)', (inner, flank, depth, width) =>
  expect(channelWidthMm(inner, flank, depth)).toBeCloseTo(width, 1),
);
test('two turns on 406: 2.80 m (computed)', () => expect(tapeLengthM(2, 406)).toBeCloseTo(2.8, 2));

test('a flat channel needs no more than its width, a deeper one always more', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 10, max: 60, noNaN: true }),
      fc.double({ min: 0, max: 0.5, noNaN: true }),
      fc.double({ min: 0.1, max: 10, noNaN: true }),
      (innerMm, share, depthMm) => {
        const flankMm = innerMm * share;
        expect(channelWidthMm(innerMm, flankMm, 0)).toBeCloseTo(innerMm, 9);
        expect(channelWidthMm(innerMm, flankMm, depthMm)).toBeGreaterThan(innerMm);
      },
    ),
  );
});

describe('valve in its hole', () => {
  test.each(valves)('$label fits the hole it is sold for ($source)', ({ stemMm, holeMm }) =>
    expect(valveInHole(stemMm, holeMm)).toMatchObject({ ok: true, how: 'fits' }),
  );
  test.each(valves)('$label: the inch drill is the same hole within a tenth', ({ holeMm, drillIn }) =>
    expect(Math.abs(drillIn * 25.4 - holeMm)).toBeLessThanOrEqual(0.051),
  );
  test('a car valve in a narrow hole is refused, not drilled (article: enlarging strongly advised against)', () =>
    expect(valveInHole(8, 6.4)).toMatchObject({ ok: false, reason: 'hole-too-small' }));
  test('a narrow valve in a hole of 8.4 wants a sleeve', () =>
    expect(valveInHole(6, 8.4)).toMatchObject({ how: 'sleeve' }));
  test.each([
    [6.1, 'hole-too-small'],
    [6.2, 'fits'],
    [6.6, 'fits'],
    [6.7, 'sleeve'],
  ])('6 mm in %s: %s (own limits)', (holeMm, said) => {
    const found = valveInHole(6, holeMm);
    expect(found.ok ? found.how : found.reason).toBe(said);
  });
  test('a stem as wide as its hole does not go in', () => expect(valveInHole(6, 6).ok).toBe(false));
  test('a rim deeper than every valve on sale', () =>
    expect(valveLengthMm(90, valveLengths.lengthsMm)).toBeNull());
});
