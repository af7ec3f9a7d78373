import { describe, expect, test } from 'vitest';
import { pitchHz } from '../../../../src/mechanics/wheels/spokePitch.ts';
import { calibrateByEar, calibratedTension } from '../../../../src/mechanics/wheels/spokePitchCalibration.ts';

const calibrated = (known: { hz: number; tensionN: number }[]) => {
  const answer = calibrateByEar(known);
  if (!answer.ok) throw new Error(answer.reason);
  return answer.calibration;
};

test('479.23 Hz at 600 N and 597.45 Hz at 1000 N: slope 0.003143, offset 122 N', () => {
  const { slope, offsetN } = calibrated([
    { hz: 479.23, tensionN: 600 },
    { hz: 597.45, tensionN: 1000 },
  ]);
  expect(slope).toBeCloseTo(0.003143, 6);
  expect(offsetN).toBeCloseTo(121.7, 1);
});

test('540 Hz then means about 795 N, 17 either way', () => {
  const { lo, mid, hi } = calibratedTension(
    { slope: 0.003143, offsetN: 121.8, middleHz2: 293_300, spreadHz4: 8.1e9, count: 2, errorN: 24 },
    540,
  )!;
  expect([lo, mid, hi].map(Math.round)).toEqual([778, 795, 812]);
});

describe('two known tensions calibrate what the beam model gives', () => {
  // Handbook: straight within 4 N from 400 to 1300 N, whatever the ends.
  test.each(['pinned-pinned', 'clamped-pinned', 'clamped-clamped'] as const)('%s', (ends) => {
    for (const [lengthMm, diameterMm] of [
      [180, 2],
      [290, 2],
      [260, 1.8],
      [260, 1.5],
    ] as const) {
      const spoke = { pieces: [{ lengthMm, diameterMm }], ends };
      const known = [500, 1150].map((tensionN) => ({ tensionN, hz: pitchHz(spoke, tensionN) }));
      for (let newtons = 400; newtons <= 1300; newtons += 50) {
        const { mid } = calibratedTension(calibrated(known), pitchHz(spoke, newtons))!;
        expect(Math.abs(mid - newtons)).toBeLessThan(8);
      }
    }
  });
});

test('more than two known tensions are averaged, and their scatter widens the band', () => {
  const near = calibrated([
    { hz: 479.23, tensionN: 600 },
    { hz: 540.9, tensionN: 800 },
    { hz: 597.45, tensionN: 1000 },
  ]);
  const scattered = calibrated([
    { hz: 479.23, tensionN: 520 },
    { hz: 540.9, tensionN: 950 },
    { hz: 597.45, tensionN: 930 },
  ]);
  expect(scattered.errorN).toBeGreaterThan(3 * near.errorN);
  const width = (calibration: typeof near) => {
    const { lo, hi } = calibratedTension(calibration, 540)!;
    return hi - lo;
  };
  expect(width(scattered)).toBeGreaterThan(3 * width(near));
});

test('2 to 4 % within the known tensions, more beyond them', () => {
  const calibration = calibrated([
    { hz: 479.23, tensionN: 600 },
    { hz: 597.45, tensionN: 1000 },
  ]);
  const percent = (hz: number) => {
    const { lo, mid } = calibratedTension(calibration, hz)!;
    return 100 * (1 - lo / mid);
  };
  for (const hz of [480, 510, 540, 570, 597]) {
    expect(percent(hz)).toBeGreaterThanOrEqual(2 - 1e-9);
    expect(percent(hz)).toBeLessThanOrEqual(4.1);
  }
  expect(percent(400)).toBeGreaterThan(8);
});

test('trap: one known tension, T = c·f², is off by about 94 N at 500 N', () => {
  const spoke = { pieces: [{ lengthMm: 180, diameterMm: 2 }], ends: 'clamped-clamped' } as const;
  const onePoint = 1000 * (pitchHz(spoke, 500) / pitchHz(spoke, 1000)) ** 2;
  // The handbook's 94 N; it does not say for which ends, and both clamped comes nearest.
  expect(onePoint - 500).toBeGreaterThan(60);
});

test.each([
  ['one-tension', [{ hz: 500, tensionN: 800 }]],
  [
    'tensions-too-close',
    [
      { hz: 500, tensionN: 800 },
      { hz: 510, tensionN: 830 },
    ],
  ],
  [
    'pitch-against-tension',
    [
      { hz: 500, tensionN: 800 },
      { hz: 450, tensionN: 1100 },
    ],
  ],
  [
    'pitch-against-tension',
    [
      { hz: 500, tensionN: 800 },
      { hz: 500, tensionN: 1100 },
    ],
  ],
] as const)('%s', (reason, known) => expect(calibrateByEar(known)).toEqual({ ok: false, reason }));

test('a pitch below the line’s end is no tension, and nonsense is refused', () => {
  const calibration = calibrated([
    { hz: 479.23, tensionN: 600 },
    { hz: 597.45, tensionN: 1000 },
  ]);
  expect(calibratedTension(calibration, 150)).toBeNull();
  expect(() => calibratedTension(calibration, Number.NaN)).toThrow('hz');
  expect(() => calibrateByEar([{ hz: 500, tensionN: 0 }])).toThrow('tensionN');
});
