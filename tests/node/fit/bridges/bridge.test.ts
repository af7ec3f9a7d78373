import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { adapterBridges, LINKS_MOST } from '../../../../src/fit/bridges/bridge.ts';
import { linksOf } from '../../../../src/fit/bridges/links.ts';
import { mates } from '../../../../src/fit/bridges/mates.ts';
import { fitRules, meet } from '../../../../src/fit/bridges/meet.ts';
import { bridgingPart, tableAdapters } from '../../../../src/fit/bridges/shelfAdapter.ts';
import { whyNot } from '../../../../src/fit/bridges/whyNot.ts';
import type { Face } from '../../../../src/fit/faces/face.ts';
import { standardsFor } from '../../../../src/fit/faces/standardOf.ts';
import { faceKinds } from '../../../../src/standards/faces/faceKinds.ts';
import { everyRow, sits } from '../../../fixtures/everyRow.ts';
import { face, part } from '../../../fixtures/pileParts.ts';

/** Sizes that bikes really have, so that random faces come near each other often enough. */
const sizes = [
  5, 6, 8, 8.4, 9, 9.525, 10, 14, 19, 22, 22.2, 24, 25.4, 26, 26.4, 27.2, 28.6, 30, 30.1, 30.2, 30.9, 31.6,
  31.8, 34, 35, 44,
];

/** Any face of a kind: by standard, by size, or with things left out. */
const anyFace = (kind: Face['kind']): fc.Arbitrary<Face> => {
  const row = faceKinds[kind];
  const standard = fc.constantFrom(null, ...standardsFor(kind).map(({ id }) => id));
  const nominal = fc.tuple(
    ...row.dimensions.map(({ key, min, max }) => {
      const near = sizes.filter((size) => size >= min && size <= max);
      const value =
        key.endsWith('Mm') && near.length > 0
          ? fc.constantFrom(...near)
          : fc.integer({ min: Math.ceil(min), max: Math.floor(max) });
      return fc.option(value, { nil: undefined }).map((of) => [key, of] as const);
    }),
  );
  const traits = fc.tuple(
    ...(row.traits ?? []).map(({ key, choices }) =>
      fc.option(fc.constantFrom(...choices), { nil: undefined }).map((of) => [key, of] as const),
    ),
  );
  return fc.tuple(standard, nominal, traits).map(([of, sizesOf, looks]) =>
    face(kind, Object.fromEntries(sizesOf.filter((row): row is [string, number] => row[1] !== undefined)), {
      standard: of,
      traits: Object.fromEntries(looks.filter((row): row is [string, string] => row[1] !== undefined)),
    }),
  );
};

const anyPair = fc
  .constantFrom(...fitRules)
  .chain(({ first, second }) => fc.tuple(anyFace(first), anyFace(second)));

/** Bar and stem, post and tube, axle and slot: pairs the table has rows of shims for, and shims at hand. */
const tubes = fc
  .constantFrom(
    ['bar-clamp', 'boreMm', 'bar-centre', 'diameterMm', [22.2, 25.4, 26, 31.8, 35]] as const,
    ['seat-tube', 'boreMm', 'post', 'diameterMm', [25.4, 27.2, 30.9, 31.6, 34.9]] as const,
    ['axle-slot', 'widthMm', 'axle', 'diameterMm', [9, 9.525, 10, 14]] as const,
  )
  .chain(([hole, holeKey, rod, rodKey, of]) => {
    const size = fc.constantFrom<number>(...of);
    const shim = fc.tuple(size, size).filter(([outside, inside]) => outside > inside);
    return fc.tuple(size, size, fc.array(shim, { maxLength: 2 })).map(
      ([holeMm, rodMm, shims]) =>
        [
          face(hole, { [holeKey]: holeMm }),
          face(rod, { [rodKey]: rodMm }),
          shims.flatMap(([outside, inside], index) => {
            const own = bridgingPart(
              part(`own-${index}`, 'shim', [
                face(rod, { [rodKey]: outside }),
                face(hole, { [holeKey]: inside }),
              ]),
            );
            return own ? [own] : [];
          }),
        ] as const,
    );
  });

describe('bridges', () => {
  test('example of the docstring', () => {
    const bridges = adapterBridges(
      face('steerer-clamp', { boreMm: 28.6 }),
      face('steerer', { diameterMm: 25.4 }),
    );
    expect(bridges[0]?.bridgeId).toBe('steerer-shim-28.6-25.4');
  });

  test('[F1] no bridge whose faces do not sit on each other, one by one, and none longer than three', () => {
    fc.assert(
      fc.property(anyPair, ([one, other]) => {
        for (const { links } of adapterBridges(one, other)) {
          expect(links.length).toBeLessThanOrEqual(LINKS_MOST);
          let open = one;
          for (const { near, far, adapter } of links) {
            expect(sits(open, near)).toBe(true);
            // Either way round: an adapter has no first face.
            expect(new Set(adapter.faces)).toEqual(new Set([near, far]));
            open = far;
          }
          expect(sits(open, other)).toBe(true);
        }
      }),
      { numRuns: 400 },
    );
  });

  test('[F1] no single adapter is missed (oracle: every adapter tried both ways round)', () => {
    fc.assert(
      fc.property(anyPair, ([one, other]) => {
        const tried = (meet(one, other)?.final ? [] : tableAdapters)
          .filter(({ faces: [a, b] }) => (sits(one, a) && sits(b, other)) || (sits(one, b) && sits(a, other)))
          .map(({ id }) => id);
        const found = adapterBridges(one, other)
          .filter(({ links }) => links.length === 1)
          .map(({ bridgeId }) => bridgeId);
        expect(found.sort()).toEqual(tried.sort());
      }),
      { numRuns: 600 },
    );
  });

  test('[F1] no row of up to three is missed and none is offered with an idle piece (oracle: every row tried)', () => {
    fc.assert(
      fc.property(tubes, ([one, other, shelf]) => {
        const rows = adapterBridges(one, other, linksOf(shelf)).map(({ links }) =>
          links.map(({ adapter }) => adapter.id).join('+'),
        );
        expect(rows.sort()).toEqual(everyRow(one, other, shelf));
      }),
      { numRuns: 60 },
    );
  }, 60_000);

  test('from either side the same bridges under the same names, and in the same order', () => {
    fc.assert(
      fc.property(
        fc.oneof(
          tubes,
          anyPair.map(([one, other]) => [one, other, []] as const),
        ),
        ([one, other, shelf]) => {
          const names = (a: Face, b: Face) =>
            adapterBridges(a, b, linksOf(shelf)).map(({ bridgeId }) => bridgeId);
          expect(names(one, other)).toEqual(names(other, one));
          expect(
            adapterBridges(one, other, linksOf([...shelf].reverse())).map(({ bridgeId }) => bridgeId),
          ).toEqual(names(one, other));
        },
      ),
      { numRuns: 300 },
    );
  });

  test('shims inside shims are offered last and said to be a poor way', () => {
    const bridges = adapterBridges(
      face('bar-clamp', { boreMm: 31.8 }),
      face('bar-centre', { diameterMm: 22.2 }),
    );
    expect(bridges.map(({ bridgeId }) => bridgeId)).toEqual([
      'bar-shim-25.4-22.2+bar-shim-31.8-25.4',
      'bar-shim-25.4-22.2+bar-shim-26-25.4+bar-shim-31.8-26',
    ]);
    expect(bridges[0]?.discouraged.some((said) => said.includes('Shims inside shims'))).toBe(true);
  });

  test('every rule answers any two faces without a number that is none', () => {
    fc.assert(
      fc.property(anyPair, ([one, other]) => {
        const verdict = mates(one, other);
        const turned = mates(other, one);
        expect(turned?.outcome).toBe(verdict?.outcome);
        expect(JSON.stringify(verdict ?? {})).not.toContain('NaN');
        expect(verdict?.because ?? '').not.toContain('NaN');
        if (verdict?.outcome === 'not-known') expect(verdict.asks.length).toBeGreaterThan(0);
        if (verdict?.outcome === 'fits-with') expect(verdict.bridges[0]?.reversible).toBe(true);
        if (verdict?.outcome === 'does-not-fit') expect(verdict.bridges).toEqual([]);
      }),
      { numRuns: 1000 },
    );
  });
});

describe('why not', () => {
  const clamp = face('bar-clamp', { boreMm: 31.8 });
  const bar = face('bar-centre', { diameterMm: 25.4 });
  const row = (id: string) => {
    const found = tableAdapters.find((adapter) => adapter.id === id);
    if (!found) throw new Error(`no adapter ${id}`);
    return found;
  };
  test.each([
    ['bar-shim-31.8-25.4', 'it-fits', ''],
    [
      'bar-shim-31.8-26',
      'second-does-not-sit',
      'The 25.4 mm bar is too thin for the 26 mm clamp: 0.6 mm of play.',
    ],
    [
      'bar-shim-26-25.4',
      'first-does-not-sit',
      'The 26 mm bar is too thin for the 31.8 mm clamp: 5.8 mm of play.',
    ],
    ['steerer-shim-28.6-25.4', 'no-face-for-first', ''],
  ])('%s between 31.8 and 25.4: %s', (id, reason, because) => {
    expect(whyNot(clamp, bar, row(id))).toEqual({ adapterId: id, reason, because });
  });

  test('an adapter that meets only the first face', () => {
    expect(whyNot(clamp, face('steerer', { diameterMm: 25.4 }), row('bar-shim-31.8-26')).reason).toBe(
      'no-face-for-second',
    );
  });

  test('a part with one face goes between nothing', () => {
    expect(bridgingPart(part('ring', 'shim', [clamp]))).toBeUndefined();
  });
});
