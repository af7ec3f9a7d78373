import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { checkPile } from '../../../src/fit/checkPile.ts';
import { contradictions } from '../../../src/fit/contradictions.ts';
import type { Measured } from '../../../src/fit/faces/face.ts';
import { readingOf } from '../../../src/fit/faces/reading.ts';
import { topicName } from '../../../src/fit/openFindings.ts';
import { faceKinds } from '../../../src/standards/faces/faceKinds.ts';
import { magpie } from '../../fixtures/magpie.ts';
import { caliper, face, named, part } from '../../fixtures/pileParts.ts';

test('an ISO shell that measures 41 is not one (bottom bracket thread table: 33.6 to 33.9)', () => {
  const shell = named('shell', 'iso', { measured: { boreMm: caliper(41.2) } });
  expect(contradictions(shell)).toEqual([
    {
      reason: 'measured-beside-standard',
      key: 'boreMm',
      measuredMm: 41.2,
      standardMm: [33.6, 33.9],
      suits: ['mid'],
    },
  ]);
  const check = checkPile([part('frame', 'frame', [shell])]);
  expect(check.toMeasure.map(({ because }) => because)).toEqual([
    'The bore measures 41.2 mm, but ISO thread, 1.37 in × 24 per inch has 33.6 to 33.9 mm. By its size it would be mid BMX shell.',
  ]);
});

test.each([33.5, 33.6, 33.75, 33.9, 34])('%f mm passes as an ISO shell', (boreMm) => {
  expect(contradictions(named('shell', 'iso', { measured: { boreMm: caliper(boreMm) } }))).toEqual([]);
});

test('printed 31.8, measured 26.0', () => {
  const bar = face('bar-centre', { diameterMm: 31.8 }, { measured: { diameterMm: caliper(26) } });
  expect(contradictions(bar)).toEqual([
    { reason: 'measured-beside-printed', key: 'diameterMm', measuredMm: 26, printedMm: 31.8 },
  ]);
});

test('a slot whose front lies behind its back', () => {
  const slot = face('axle-slot', { widthMm: 10, nearestMm: 420, farthestMm: 398 });
  expect(contradictions(slot)).toEqual([{ reason: 'order', key: 'nearestMm', beforeKey: 'farthestMm' }]);
  expect(contradictions(face('axle-slot', { widthMm: 10, nearestMm: 398, farthestMm: 420 }))).toEqual([]);
});

describe('a size no such part has, kept as it was typed', () => {
  const inches = (value: number): Measured => ({
    value,
    unit: '[in_i]',
    typed: `${value} in`,
    uncertaintyMm: 0.05,
  });
  // 1-1/8 in is 28.575 mm and 9/16 in is 14.2875 mm by definition of the inch.
  test.each([
    ['28.6 as 286', face('steerer', {}, { measured: { diameterMm: caliper(286) } }), 28.6],
    ['inches as mm', face('steerer', {}, { measured: { diameterMm: caliper(1.125) } }), 28.575],
    [
      'a pedal in inches as mm',
      face('pedal-spindle', {}, { measured: { diameterMm: caliper(0.5625) } }),
      14.288,
    ],
    ['mm as inches', face('steerer', {}, { measured: { diameterMm: inches(28.6) } }), null],
    ['a printed slip', face('bar-clamp', { boreMm: 318 }), 31.8],
    ['4.0 bar as 40', face('rim-seat', { beadSeatMm: 584, maxPressureBar: 40 }), 4],
    ['a metre', face('shell', {}, { measured: { boreMm: caliper(1000) } }), null],
  ])('%s', (_, slipped, suggestion) => {
    const [found] = contradictions(slipped);
    expect(found?.reason).toBe('implausible');
    if (found?.reason !== 'implausible') return;
    // The last two figures of a factor-of-ten guess at 28.6 inches are not worth a suggestion.
    if (suggestion === null && found.suggestion !== null) {
      const row = faceKinds[slipped.kind].dimensions.find(({ key }) => key === found.key);
      expect(found.suggestion).toBeLessThanOrEqual(row?.max ?? 0);
    } else expect(found.suggestion).toBe(suggestion);
  });

  test('its finding has a name a mechanic can read', () => {
    expect(topicName('contradiction-lengthMm')).toBe('A size in doubt');
    expect(topicName('bar-in-stem')).toBe('Bar in stem');
  });

  test('it is told in one sentence with what was meant, and no calculation uses it', () => {
    const pile = [
      part('fork', 'fork', [face('steerer', {}, { measured: { diameterMm: caliper(286) } })]),
      part('stem', 'stem', [face('steerer-clamp', { boreMm: 28.6 })]),
    ];
    const { toMeasure, findings, fitting } = checkPile(pile);
    expect(toMeasure.map(({ because }) => because)).toEqual([
      'The outside diameter is entered as 286 mm, which cannot be. Such parts have 20 to 39 mm. Perhaps 28.6 mm was meant.',
      'The steerer has no size yet.',
    ]);
    expect([...findings, ...fitting]).toEqual([]);
  });

  test('a printed size does not step in for a measured one that cannot be', () => {
    const bar = face('bar-centre', { diameterMm: 31.8 }, { measured: { diameterMm: caliper(318) } });
    expect(readingOf(bar, 'diameterMm')).toBeUndefined();
    expect(contradictions(bar)).toHaveLength(1);
  });
});

test('whatever is kept as typed, the check of the whole pile gives an answer', () => {
  const size = fc.oneof(
    fc.double({ min: 0, max: 1e6, noNaN: true }),
    fc.integer({ min: 0, max: 700 }),
    fc.constantFrom(0, 1e-9, 0.5, 999999),
  );
  const slips = fc.array(
    fc.record({ at: fc.nat(), of: fc.nat(), key: fc.nat(), value: size, printed: fc.boolean() }),
    { minLength: 1, maxLength: 12 },
  );
  fc.assert(
    fc.property(slips, (changes) => {
      const pile = magpie.map((one) => ({ ...one, faces: [...one.faces] }));
      for (const { at, of, key, value, printed } of changes) {
        const one = pile[at % pile.length];
        const index = of % (one?.faces.length ?? 1);
        const old = one?.faces[index];
        const rows = old ? faceKinds[old.kind].dimensions : [];
        const row = rows[key % Math.max(1, rows.length)];
        if (!one || !old || !row) continue;
        one.faces[index] = printed
          ? { ...old, nominal: { ...old.nominal, [row.key]: value } }
          : {
              ...old,
              measured: {
                ...old.measured,
                [row.key]: row.key.endsWith('Mm')
                  ? caliper(value)
                  : { ...caliper(value, 0), unit: row.key.endsWith('Bar') ? 'bar' : '1' },
              },
            };
      }
      const { findings, fitting, toMeasure } = checkPile(pile);
      for (const { because } of [...findings, ...fitting, ...toMeasure])
        expect(because).not.toMatch(/NaN|Infinity|undefined/);
    }),
    { numRuns: 60 },
  );
}, 60_000);
