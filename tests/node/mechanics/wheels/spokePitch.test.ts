import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { centsBetween } from '../../../../src/mechanics/sound/cents.ts';
import { buttedPieces } from '../../../../src/mechanics/wheels/spokeCrossing.ts';
import {
  pitchHz,
  pitchWindow,
  tensionBandByPitch,
  tensionByPitch,
} from '../../../../src/mechanics/wheels/spokePitch.ts';
import type { SoundingSpoke, SpokeEnds } from '../../../../src/mechanics/wheels/spokeVibration.ts';
import { partialsHz } from '../../../fixtures/wheels/pluckedSpoke.ts';

const plain = (lengthMm: number, diameterMm: number, ends?: SpokeEnds): SoundingSpoke => ({
  pieces: [{ lengthMm, diameterMm }],
  ...(ends && { ends }),
});
const tensionN = (spoke: SoundingSpoke, hz: number): number => {
  const answer = tensionByPitch(spoke, hz);
  return answer.ok ? answer.tensionN : Number.NaN;
};

test('180 mm of 2 mm at 1000 N sounds at 612.29 Hz, and back', () => {
  expect(pitchHz(plain(180, 2), 1000)).toBeCloseTo(612.287, 3);
  expect(tensionN(plain(180, 2), 612.287)).toBeCloseTo(1000, 2);
});

describe('a finite-element beam of the handbook on wheels: pinned, clamped at the hub, clamped at both ends', () => {
  test.each([
    [262, 2, 1190, 421.69, 440.71, 461.48],
    [184, 2, 1000, 557.38, 597.45, 643.29],
    [184, 2, 600, 437.79, 479.23, 528.25],
    [290, 1.8, 1000, 386.78, 400.57, 415.37],
    [290, 1.5, 800, 414.18, 425.55, 437.56],
    [121, 2, 1000, 870.81, 969.23, 1088.38],
    [180, 2, 1000, 570.31, 612.29, 660.43],
  ])('%d mm, %d mm thick, %d N: %d, %d, %d Hz', (mm, thick, newtons, pinned, one, both) => {
    const hz = (['pinned-pinned', 'clamped-pinned', 'clamped-clamped'] as const).map((ends) =>
      pitchHz(plain(mm, thick, ends), newtons),
    );
    for (const [at, published] of [pinned, one, both].entries())
      expect(Math.abs(hz[at]! - published)).toBeLessThanOrEqual(0.0055);
  });
});

describe('the exact equation of a uniform beam, solved in the tests', () => {
  test('agrees from 60 to 320 mm, 1.5 to 2.3 mm, 50 to 2000 N', () => {
    const throws = fc.tuple(
      fc.double({ min: 60, max: 320, noNaN: true }),
      fc.double({ min: 1.5, max: 2.3, noNaN: true }),
      fc.double({ min: 50, max: 2000, noNaN: true }),
    );
    fc.assert(
      fc.property(throws, ([mm, thick, newtons]) => {
        const hz = pitchHz(plain(mm, thick), newtons);
        expect(hz / partialsHz(mm, thick, newtons, 1)[0]!).toBeCloseTo(1, 9);
        expect(tensionN(plain(mm, thick), hz) / newtons).toBeCloseTo(1, 5);
      }),
    );
  });
});

/** The closed form of the handbook, derived from a series: within 1.1 % of the exact one down to 121 mm. */
function closedFormN(hz: number, mm: number, thick: number, [c1, c2]: [number, number]): number {
  const mass = (7900 * Math.PI * (thick / 1000) ** 2) / 4;
  const s = Math.sqrt((193e9 * Math.PI * (thick / 1000) ** 4) / 64) / (mm / 1000);
  const limp = 2 * (mm / 1000) * hz * Math.sqrt(mass);
  return ((limp - c1 * s + Math.sqrt((limp - c1 * s) ** 2 - 4 * c2 * s * s)) / 2) ** 2;
}

test.each([
  ['pinned-pinned', [0, Math.PI ** 2 / 2], 440, 262, 2, 1297.4],
  ['clamped-pinned', [1, 1 + Math.PI ** 2 / 2], 440, 262, 2, 1187.2],
  ['clamped-clamped', [2, 4 + Math.PI ** 2 / 2], 440, 262, 2, 1072.4],
  ['pinned-pinned', [0, Math.PI ** 2 / 2], 600, 184, 2, 1165.4],
  ['clamped-pinned', [1, 1 + Math.PI ** 2 / 2], 600, 184, 2, 1013.4],
  ['clamped-clamped', [2, 4 + Math.PI ** 2 / 2], 600, 184, 2, 851.6],
  ['pinned-pinned', [0, Math.PI ** 2 / 2], 400, 290, 1.8, 1070.3],
  ['clamped-pinned', [1, 1 + Math.PI ** 2 / 2], 400, 290, 1.8, 997.6],
  ['clamped-clamped', [2, 4 + Math.PI ** 2 / 2], 400, 290, 1.8, 922.4],
] as [SpokeEnds, [number, number], number, number, number, number][])(
  '%s: the closed form of the handbook at %j, %d Hz is near the exact tension',
  (ends, factors, hz, mm, thick, closed) => {
    expect(Math.abs(closedFormN(hz, mm, thick, factors) - closed)).toBeLessThanOrEqual(0.2);
    // A series cut off: worst with both ends clamped, 1.5 % on 184 mm.
    expect(Math.abs(tensionN(plain(mm, thick, ends), hz) / closed - 1)).toBeLessThan(0.016);
  },
);

/** Article on spoke tension by ear (1987/1997), table of plain spokes: mm, semitones above 440 Hz. */
const PUBLISHED = [
  ...[308, 292, 276, 262, 248, 236, 224, 212, 201, 191, 181, 172, 163, 156, 147].map(
    (mm, at) => [mm, at - 3] as const,
  ),
];

describe('published table of spoke pitches, 15 plain spokes', () => {
  const rms = (ends: SpokeEnds, newtons: number) => {
    const cents = PUBLISHED.map(([mm, semitones]) =>
      centsBetween(440 * 2 ** (semitones / 12), pitchHz(plain(mm, 2, ends), newtons)),
    );
    return {
      rms: Math.sqrt(cents.reduce((sum, off) => sum + off * off, 0) / cents.length),
      least: Math.min(...cents),
      most: Math.max(...cents),
    };
  };
  test('clamped at the hub at 1190 N: rms 7 cents, −18 to +7', () => {
    const fit = rms('clamped-pinned', 1190);
    expect(fit.rms).toBeLessThanOrEqual(7);
    expect(fit.least).toBeGreaterThan(-18);
    expect(fit.most).toBeLessThan(7.5);
  });
  test('no other way of holding the ends comes near, at any tension', () => {
    for (const ends of ['pinned-pinned', 'clamped-clamped'] as const) {
      const best = Math.min(...Array.from({ length: 80 }, (_, at) => rms(ends, 900 + 10 * at).rms));
      expect(best).toBeGreaterThan(25);
    }
  });
  test.each([
    [308, 120.3],
    [262, 120.9],
    [224, 122.4],
    [191, 122.4],
    [163, 121.8],
    [147, 121.6],
  ])('%d mm: %d kgf by the handbook, within 1 %%', (mm, kgf) => {
    const semitones = PUBLISHED.find(([length]) => length === mm)![1];
    const newtons = tensionN(plain(mm, 2), 440 * 2 ** (semitones / 12));
    expect(Math.abs(newtons / 9.80665 / kgf - 1)).toBeLessThan(0.01);
  });
});

test('a hobbyist’s published beam model: 279 mm of 2 mm at 100 kgf, both ends pinned, about 360 Hz', () => {
  const spoke = { ...plain(279, 2, 'pinned-pinned'), wire: { gpa: 200, densityKgM3: 7850 } };
  expect(pitchHz(spoke, 980.665)).toBeCloseTo(360.98, 2);
});

describe('butted spokes', () => {
  // The handbook's string of three pieces, without stiffness; a soft steel comes near it.
  test.each([
    [276, 1.7, 425.413],
    [180, 1.8, 612.337],
    [276, 1.5, 479.3],
    [180, 1.5, 714.8],
  ])('%d mm, %d mm in the middle: %d Hz as a limp string', (mm, thin, hz) => {
    const limp = pitchHz(
      { pieces: buttedPieces(mm, thin, 2), ends: 'pinned-pinned', wire: { gpa: 50, densityKgM3: 7900 } },
      1000,
    );
    const half = pitchHz(
      { pieces: buttedPieces(mm, thin, 2), ends: 'pinned-pinned', wire: { gpa: 100, densityKgM3: 7900 } },
      1000,
    );
    // Stiffness adds in proportion to itself: carried on to none at all.
    expect(Math.abs((2 * limp - half) / hz - 1)).toBeLessThan(0.001);
  });
  test('cut into pieces of one thickness, a spoke sounds as before', () => {
    const whole = pitchHz(plain(180, 2), 1000);
    const cut = [30, 90, 60].map((lengthMm) => ({ lengthMm, diameterMm: 2 }));
    expect(pitchHz({ pieces: cut }, 1000)).toBeCloseTo(whole, 9);
  });
  test('trap: the average thickness reads 2.5 to 9 % low', () => {
    const pieces = buttedPieces(184, 1.8, 2);
    const average = pieces.reduce((sum, piece) => sum + piece.lengthMm * piece.diameterMm, 0) / 184;
    const hz = pitchHz({ pieces }, 1000);
    expect(pitchHz(plain(184, average), 1000) / hz).toBeLessThan(0.985);
  });
});

describe('traps', () => {
  test('the bare string formula reads a short thick spoke more than 20 % too tight', () => {
    const stringN = 0.024819 * (2 * 0.18 * pitchHz(plain(180, 2), 1000)) ** 2;
    expect(stringN).toBeGreaterThan(1200);
  });
  test('the second partial taken for the first reads several times too tight, or nothing', () => {
    const second = partialsHz(290, 2, 300, 2)[1]!;
    expect(tensionN(plain(290, 2), second) / 300).toBeGreaterThan(4);
  });
});

describe('the honest band', () => {
  const width = (mm: number, thick: number, hz: number) => {
    const { lo, mid, hi } = tensionBandByPitch(plain(mm, thick), hz)!;
    return [100 * (1 - lo / mid), 100 * (hi / mid - 1)] as const;
  };
  test('184 mm, 2 mm at 600 Hz: 839, 1010, 1166 N', () => {
    const { lo, mid, hi } = tensionBandByPitch(plain(184, 2), 600)!;
    expect([lo, mid, hi].map(Math.round)).toEqual([839, 1010, 1166]);
  });
  // The handbook's own estimates of what is realistic.
  test.each([
    ['a long thin spoke, 5 to 8 %', 290, 1.8, 400, 5, 8],
    ['a 20-inch spoke, full length, 10 to 17 %', 184, 2, 600, 10, 17],
    ['its outer piece, 20 % or more', 121, 2, 969, 20, 35],
  ])('%s', (_what, mm, thick, hz, least, most) => {
    for (const percent of width(mm, thick, hz)) {
      expect(percent).toBeGreaterThanOrEqual(least);
      expect(percent).toBeLessThanOrEqual(most);
    }
  });
  test('no spoke, however long and thin, is read closer than 5 %', () => {
    for (const percent of width(310, 1.5, 450)) expect(percent).toBeGreaterThanOrEqual(5 - 1e-9);
  });
  test('a pitch that no such spoke has gives nothing', () => {
    expect(tensionBandByPitch(plain(180, 2), 90)).toBeNull();
    expect(tensionByPitch(plain(180, 2), 90)).toEqual({ ok: false, reason: 'too-low-for-spoke' });
    expect(tensionByPitch(plain(180, 2), 5000)).toEqual({ ok: false, reason: 'too-high-for-spoke' });
  });
});

test('the window is an octave at most, holds the expected pitch and leaves the second partial out', () => {
  const throws = fc.tuple(
    fc.double({ min: 80, max: 310, noNaN: true }),
    fc.double({ min: 1.5, max: 2.3, noNaN: true }),
    fc.double({ min: 100, max: 1500, noNaN: true }),
  );
  fc.assert(
    fc.property(throws, ([mm, thick, newtons]) => {
      const { lowHz, highHz } = pitchWindow(plain(mm, thick), newtons);
      expect(highHz).toBeLessThan(2 * lowHz);
      const [first, second] = partialsHz(mm, thick, newtons, 2) as [number, number];
      expect(first).toBeGreaterThan(lowHz);
      expect(first).toBeLessThan(highHz);
      expect(second).toBeGreaterThan(highHz);
      // Even of the slackest spoke that is looked for.
      expect(partialsHz(mm, thick, 0.4 * newtons, 2)[1]).toBeGreaterThan(highHz);
    }),
  );
});

test('pitch rises with tension, falls with length, and gives no number that is none', () => {
  const throws = fc.tuple(
    fc.double({ min: 50, max: 390, noNaN: true }),
    fc.double({ min: 1, max: 4, noNaN: true }),
    fc.double({ min: 1, max: 2900, noNaN: true }),
    fc.constantFrom('pinned-pinned', 'clamped-pinned', 'clamped-clamped'),
  );
  fc.assert(
    fc.property(throws, ([mm, thick, newtons, ends]) => {
      const hz = pitchHz(plain(mm, thick, ends as SpokeEnds), newtons);
      expect(Number.isFinite(hz)).toBe(true);
      expect(pitchHz(plain(mm, thick, ends as SpokeEnds), newtons * 1.02)).toBeGreaterThan(hz);
      expect(pitchHz(plain(mm * 1.02, thick, ends as SpokeEnds), newtons)).toBeLessThan(hz);
    }),
  );
});
