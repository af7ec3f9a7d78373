import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { plausibleTorque } from '../../../../src/mechanics/screws/torquePlausible.ts';
import { torqueNm } from '../../../../src/mechanics/units.ts';
import { torqueBands } from '../../../../src/standards/screws/torqueBands.ts';
import { refusesBadNumbers } from '../badNumbers.ts';

describe('what is asked about', () => {
  test.each([
    ['500 N·m on M5', 500, 5, { ok: false, reason: 'absurd' }],
    ['500 N·m on anything', 500, undefined, { ok: false, reason: 'absurd' }],
    ['a key held down', 5e300, undefined, { ok: false, reason: 'absurd' }],
    ['a key held down, on M5', 5e300, 5, { ok: false, reason: 'absurd' }],
    ['nothing at all', 0, 5, { ok: false, reason: 'zero' }],
    ['a thousandth of a newton metre on M10', 0.001, 10, { ok: false, reason: 'absurd' }],
    ['5 N·m on M5', 5, 5, { ok: true }],
    ['40 N·m on a 35 mm cup', 40, 34.8, { ok: true }],
    ['2 N·m on a 35 mm cup', 2, 34.8, { ok: true }],
  ] as const)('%s', (_, nm, diameterMm, expected) => {
    expect(plausibleTorque(nm, diameterMm)).toEqual(expected);
  });

  // Where our own lines are drawn: 1.5 times the 12.9 torque of a screw, 120 N·m where the screw is not known.
  test.each([
    [16.2, 5, true],
    [16.3, 5, false],
    [120, undefined, true],
    [121, undefined, false],
    [0.32, 5, true],
    [0.31, 5, false],
  ])('%d N·m on %s mm: %s', (nm, diameterMm, ok) => expect(plausibleTorque(nm, diameterMm).ok).toBe(ok));

  test('44 on M5 in foot-pounds was meant in inch-pounds', () => {
    const doubt = plausibleTorque(torqueNm(44, '[ft_i].[lbf_av]'), 5);
    expect(doubt).toMatchObject({ ok: false, reason: 'perhaps-inch-pounds' });
    expect(!doubt.ok && doubt.perhapsNm).toBeCloseTo(torqueNm(44, '[in_i].[lbf_av]'), 9);
  });

  test('a pedal at 30 inch-pounds was meant in foot-pounds', () => {
    const doubt = plausibleTorque(torqueNm(30, '[in_i].[lbf_av]'), 14.2875);
    expect(doubt).toMatchObject({ ok: false, reason: 'perhaps-foot-pounds' });
    expect(!doubt.ok && doubt.perhapsNm).toBeCloseTo(torqueNm(30, '[ft_i].[lbf_av]'), 9);
  });

  test('1800 in·lbf typed as 1800 ft·lbf is beyond asking', () => {
    expect(plausibleTorque(torqueNm(1800, '[ft_i].[lbf_av]'))).toEqual({ ok: false, reason: 'absurd' });
  });
});

// Printed bicycle torques (sources in the table) must never be doubted.
test.each(
  torqueBands.flatMap(({ joint, variant, prints }) => prints.map((print) => ({ joint, variant, ...print }))),
)('$joint, $variant: $loNm to $hiNm N·m is not doubted', ({ loNm, hiNm }) => {
  expect(plausibleTorque(loNm)).toEqual({ ok: true });
  expect(plausibleTorque(hiNm)).toEqual({ ok: true });
});

// Machine manual 2164141 p. 74: the 12.9 column is the most an ordinary screw is ever given.
test.each([
  [4, 5.3],
  [5, 10.4],
  [6, 17.9],
  [8, 44],
  [10, 86],
])('12.9 on M%d, %d N·m, is not doubted', (diameterMm, nm) => {
  expect(plausibleTorque(nm, diameterMm)).toEqual({ ok: true });
});

test('a suspected slip is never itself doubted, and is a factor of twelve away', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 1e-3, max: 1e4, noNaN: true }),
      fc.double({ min: 2, max: 50, noNaN: true }),
      (nm, d) => {
        const doubt = plausibleTorque(nm, d);
        if (doubt.ok || doubt.perhapsNm === undefined) return;
        expect([12, 1 / 12].some((f) => Math.abs(doubt.perhapsNm! / nm / f - 1) < 1e-9)).toBe(true);
        expect(plausibleTorque(doubt.perhapsNm, d).ok).toBe(true);
      },
    ),
  );
});

refusesBadNumbers({ nm: 'or-zero', threadDiameterMm: 'positive' }, (name, value) =>
  name === 'nm' ? plausibleTorque(value, 5) : plausibleTorque(5, value),
);
