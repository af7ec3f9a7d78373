import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { allotShelf } from '../../../src/fit/allotShelf.ts';
import { ofLinks } from '../../../src/fit/bridges/bridge.ts';
import { linksOf } from '../../../src/fit/bridges/links.ts';
import { mates } from '../../../src/fit/bridges/mates.ts';
import { bridgingPart } from '../../../src/fit/bridges/shelfAdapter.ts';
import { checkPile } from '../../../src/fit/checkPile.ts';
import { type Finding, findingIdOf } from '../../../src/fit/finding.ts';
import type { PilePart } from '../../../src/fit/pile.ts';
import { face, part } from '../../fixtures/pileParts.ts';

/** Parts of the shelf each finding would put between. */
const partsIn = ({ bridges }: Pick<Finding, 'bridges'>): string[] => [
  ...new Set(
    bridges.flatMap(({ links }) =>
      links.flatMap(({ adapter }) => (adapter.partId === null ? [] : [adapter.partId])),
    ),
  ),
];

const shim = (partId: string, diameterMm: number, boreMm: number): PilePart =>
  part(partId, 'shim', [face('bar-centre', { diameterMm }), face('bar-clamp', { boreMm })]);

/** Joints of a bar in a clamp, one each, with the shims at hand. */
function joints(sizes: readonly (readonly [number, number])[], shims: readonly PilePart[]): Finding[] {
  const links = linksOf(shims.map(bridgingPart).filter((bridging) => bridging !== undefined));
  return sizes.flatMap(([boreMm, diameterMm], index) => {
    const faces = [
      { partId: `stem-${index}`, faceId: 'bar-clamp' },
      { partId: `bar-${index}`, faceId: 'bar-centre' },
    ];
    const verdict = mates(face('bar-clamp', { boreMm }), face('bar-centre', { diameterMm }), links);
    if (!verdict) return [];
    return [
      { ...verdict, asks: [], topic: 'bar-in-stem', findingId: findingIdOf('bar-in-stem', faces), faces },
    ];
  });
}

const sizes = fc.constantFrom<(readonly [number, number])[]>(
  [31.8, 25.4],
  [31.8, 26],
  [26, 25.4],
  [29, 25.4],
);
const shelves = fc
  .array(sizes, { maxLength: 4 })
  .map((shims) => shims.map(([outsideMm, insideMm], index) => shim(`own-${index}`, outsideMm, insideMm)));

/** How many joints could have a single piece of their own at once: every way of giving them out tried. */
function mostServed(wanted: readonly (readonly string[])[], taken: readonly string[] = []): number {
  const [first, ...rest] = wanted;
  if (!first) return 0;
  const given = first
    .filter((partId) => !taken.includes(partId))
    .map((partId) => 1 + mostServed(rest, [...taken, partId]));
  return Math.max(mostServed(rest, taken), ...given);
}

describe('[F3] what is on the shelf goes into one joint each', () => {
  test('of two joints that want the one shim, the second is told that another is needed', () => {
    const two = allotShelf(
      joints(
        [
          [29, 25.4],
          [29, 25.4],
        ],
        [shim('drawer', 29, 25.4)],
      ),
    );
    expect(two.map(({ bridges }) => bridges[0]?.bridgeId)).toEqual(['part:drawer', 'another:drawer']);
    expect(two[1]?.bridges[0]?.discouraged).toEqual([
      'Another joint takes drawer: to make both, one more like it is needed.',
    ]);
    expect(two[1]?.outcome).toBe('fits-with');
  });

  test('two stems to choose from for one bar are told the same: only to make both wants another', () => {
    const stem = (partId: string) => part(partId, 'stem', [face('bar-clamp', { boreMm: 29 })]);
    const bar = part('bar', 'bar', [face('bar-centre', { diameterMm: 25.4 })]);
    const { findings } = checkPile([stem('stem-a'), stem('stem-b'), bar, shim('drawer', 29, 25.4)]);
    const said = findings.map(({ bridges }) => [bridges[0]?.bridgeId, bridges[0]?.discouraged]);
    expect(said).toEqual([
      ['part:drawer', []],
      ['another:drawer', ['Another joint takes drawer: to make both, one more like it is needed.']],
    ]);
  });

  test('one that is on the table and would have to be got anyway stands before one more like the own', () => {
    const two = allotShelf(
      joints(
        [
          [31.8, 26],
          [31.8, 26],
        ],
        [shim('drawer', 31.8, 26)],
      ),
    );
    expect(two[1]?.bridges.map(({ bridgeId }) => bridgeId)).toEqual(['bar-shim-31.8-26', 'another:drawer']);
  });

  test('as many joints served as can be, in any order of wants (oracle: every way of giving out tried)', () => {
    const wants = fc.array(fc.subarray(['a', 'b', 'c', 'd']), { maxLength: 5 });
    fc.assert(
      fc.property(wants, (wanted) => {
        const [joint] = joints([[29, 25.4]], [shim('any', 29, 25.4)]);
        const [link] = joint?.bridges[0]?.links ?? [];
        if (!joint || !link) throw new Error('a shim does not bridge');
        const before = wanted.map((partIds, index) => ({
          ...joint,
          findingId: `joint-${index}`,
          bridges: partIds.map((partId) =>
            ofLinks([{ ...link, adapter: { ...link.adapter, id: `part:${partId}`, partId } }]),
          ),
        }));
        const served = allotShelf(before).filter((finding) => partsIn(finding).length > 0);
        expect(served.length).toBe(mostServed(wanted));
      }),
      { numRuns: 200 },
    );
  });

  test('no part in two findings, and no way over one is lost or longer than it was', () => {
    fc.assert(
      fc.property(fc.array(sizes, { maxLength: 4 }), shelves, (pairs, shims) => {
        const before = joints(pairs, shims);
        const after = allotShelf(before);
        const given = after.flatMap(partsIn);
        expect(new Set(given).size).toBe(given.length);
        expect(after.map(({ bridges }) => bridges.length)).toEqual(
          before.map(({ bridges }) => bridges.length),
        );
        expect(after.map(({ bridges }) => bridges[0]?.links.length)).toEqual(
          before.map(({ bridges }) => bridges[0]?.links.length),
        );
      }),
      { numRuns: 150 },
    );
  });

  test('who gets what does not hang on the order', () => {
    fc.assert(
      fc.property(fc.array(sizes, { maxLength: 4 }), shelves, (pairs, shims) => {
        const before = joints(pairs, shims);
        const ids = (findings: readonly Finding[]) =>
          Object.fromEntries(
            findings.map(({ findingId, bridges }) => [findingId, bridges.map(({ bridgeId }) => bridgeId)]),
          );
        expect(ids(allotShelf([...before].reverse()))).toEqual(ids(allotShelf(before)));
      }),
      { numRuns: 100 },
    );
  });

  test('in the check of a pile: two valves, one sleeve', () => {
    const rim = (position: 'front' | 'rear') =>
      part(`rim-${position}`, 'rim', [face('valve-hole', { diameterMm: 8.4 })], { position });
    const valve = (position: 'front' | 'rear') =>
      part(`valve-${position}`, 'valve', [face('valve-stem', { diameterMm: 6 })], { position });
    const sleeve = part('sleeve', 'sleeve', [
      face('valve-stem', { diameterMm: 8 }, { faceId: 'outside' }),
      face('valve-hole', { diameterMm: 6.4 }, { faceId: 'inside' }),
    ]);
    const { findings } = checkPile([rim('front'), rim('rear'), valve('front'), valve('rear'), sleeve]);
    expect(findings.map(partsIn)).toEqual([['sleeve'], []]);
  });
});
