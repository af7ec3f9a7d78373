import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type GaugeRow, gaugeTension } from '../../../../src/mechanics/wheels/spokeTensionGauge.ts';

const table: GaugeRow[] = [
  { reading: 2, tensionN: 500 },
  { reading: 1, tensionN: 1200 },
];

test('half way between 1 (1200 N) and 2 (500 N) lie 733 N, not 850', () => {
  const answer = gaugeTension(table, 1.5);
  expect(answer.ok && answer.tensionN).toBeCloseTo(733.333, 3);
});
test('a row of the table is given back as printed', () =>
  expect(gaugeTension(table, 2)).toEqual({ ok: true, tensionN: 500, interpolated: false }));

test.each([
  ['outside-table', table, 0.5],
  ['outside-table', table, 2.5],
  ['table-too-short', table.slice(1), 1],
  ['not-a-number', table, Number.NaN],
  ['table-not-in-order', [...table, { reading: 3, tensionN: 900 }], 1.5],
  ['table-not-in-order', [...table, { reading: 1, tensionN: 900 }], 1.5],
  ['table-not-in-order', [...table, { reading: 0, tensionN: 2000 }], 1.5],
] as const)('%s', (reason, rows, reading) =>
  expect(gaugeTension(rows, reading)).toEqual({ ok: false, reason }),
);

describe('properties', () => {
  test('T = a/δ + b, the law of the dissertation, is met exactly between any rows drawn from it', () => {
    const a = fc.double({ min: 100, max: 3000, noNaN: true });
    const b = fc.double({ min: 0, max: 500, noNaN: true });
    const between = fc.double({ min: 0.01, max: 0.99, noNaN: true });
    fc.assert(
      fc.property(a, b, between, (slope, offset, share) => {
        const law = (reading: number) => slope / reading + offset;
        const rows = [0.8, 1.3, 2.1, 3].map((reading) => ({ reading, tensionN: law(reading) }));
        const reading = 0.8 + share * 2.2;
        const answer = gaugeTension(rows, reading);
        expect(answer.ok && answer.tensionN).toBeCloseTo(law(reading), 6);
      }),
    );
  });
  test('also a gauge whose figures rise with tension is read, one way only', () => {
    const rising = [10, 15, 20, 25].map((reading) => ({ reading, tensionN: reading * 50 }));
    fc.assert(
      fc.property(fc.double({ min: 10, max: 24, noNaN: true }), (reading) => {
        const here = gaugeTension(rising, reading);
        const more = gaugeTension(rising, reading + 0.5);
        if (!here.ok || !more.ok) throw new Error('inside the table');
        expect(more.tensionN).toBeGreaterThan(here.tensionN);
      }),
    );
  });
});
