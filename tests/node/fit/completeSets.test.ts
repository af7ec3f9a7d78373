import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { checkPile } from '../../../src/fit/checkPile.ts';
import { completeSets } from '../../../src/fit/completeSets.ts';
import type { PilePart } from '../../../src/fit/pile.ts';
import { brakeSlots, candidatesFor, rollingSlots, type SetSlot } from '../../../src/fit/setSlots.ts';
import { magpie } from '../../fixtures/magpie.ts';
import { face, named, part } from '../../fixtures/pileParts.ts';

const [frame, ...shelf] = magpie;
if (!frame) throw new Error('the pile is empty');

const idsOf = (set: { filled: readonly { parts: readonly PilePart[] }[] } | undefined): string[] =>
  (set?.filled ?? []).flatMap(({ parts }) => parts.map(({ partId }) => partId));

describe('the invented pile as a shelf', () => {
  test('makes one whole bike: four bridges, one one-way change, the hub of 28 holes left out', () => {
    const { sets, toBuy } = completeSets(shelf, frame);
    expect(sets.map(({ cost }) => [cost.missingCount, cost.oneWayCount, cost.bridgeCount])).toEqual([
      [0, 1, 4],
    ]);
    expect(idsOf(sets[0])).toContain('front-hub-b');
    expect(toBuy).toEqual([]);
  });

  test('with a front disc the caliper brings its adapter', () => {
    const front = brakeSlots.filter(({ position }) => position === 'front');
    const { sets } = completeSets(shelf, frame, { slots: [...rollingSlots, ...front] });
    expect(sets[0]?.cost.bridgeCount).toBe(5);
    expect(idsOf(sets[0])).toEqual(expect.arrayContaining(['rotor', 'caliper']));
  });

  test('a hub of 28 holes alone: front hub or front rim has to be bought, so neither is named as the one', () => {
    const { sets, toBuy } = completeSets(
      shelf.filter(({ partId }) => partId !== 'front-hub-b'),
      frame,
    );
    expect(sets.every(({ missing }) => missing.length === 1)).toBe(true);
    expect(sets.map(({ missing }) => missing[0]).sort()).toEqual(['front-hub', 'rim-front']);
    expect(toBuy).toEqual([]);
  });

  test('without a headset none can do, and what it must suit is told', () => {
    const { toBuy } = completeSets(
      shelf.filter(({ kind }) => kind !== 'headset'),
      frame,
    );
    expect(toBuy.map(({ slot }) => slot)).toEqual(['headset']);
    expect(toBuy[0]?.wanted.map(({ kind, against }) => [kind, against.kind])).toEqual([
      ['headset-cup-upper', 'head-tube-upper'],
      ['headset-cup-lower', 'head-tube-lower'],
      ['headset-bore', 'steerer'],
      ['crown-race', 'crown-seat'],
    ]);
  });

  test('a second rear hub that needs no cold-setting is taken, though it costs a washer on each side', () => {
    const narrow = part('narrow-hub', 'rear-hub', [
      face('hub-spacing', { spacingMm: 116 }),
      named('axle', 'axle-3/8', { traits: { type: 'solid' } }),
      face('hub-holes', { holesCount: 32 }),
      named('driver-mount', '1.375x24'),
    ]);
    const { sets } = completeSets([...shelf, narrow], frame);
    expect(idsOf(sets[0])).toContain('narrow-hub');
    expect(sets[0]?.cost).toMatchObject({ oneWayCount: 0, bridgeCount: 5 });
  });

  test('among equals the lighter one, or the one adjusted already', () => {
    const twin = (partId: string, rest: { massG: number; adjusted?: boolean }): PilePart =>
      part(partId, 'saddle', [named('saddle-mount', 'two-rail')], rest);
    const two = [
      ...shelf.filter(({ kind }) => kind !== 'saddle'),
      twin('light', { massG: 200 }),
      twin('set-up', { massG: 300, adjusted: true }),
    ];
    expect(idsOf(completeSets(two, frame, { tie: 'mass' }).sets[0])).toContain('light');
    expect(idsOf(completeSets(two, frame, { tie: 'adjusted' }).sets[0])).toContain('set-up');
  });

  test('a steerer too short for the whole stack is passed over, which no two parts alone can tell', () => {
    const tall: PilePart = {
      ...frame,
      faces: frame.faces.map((one) =>
        one.kind === 'head-tube-upper' ? { ...one, nominal: { ...one.nominal, lengthMm: 150 } } : one,
      ),
    };
    const measured = shelf.map((one) => ({
      ...one,
      faces: one.faces.map((of) => {
        const more: Record<string, number> =
          of.kind === 'steerer-clamp'
            ? { heightMm: 40 }
            : of.kind.startsWith('headset-cup')
              ? { stackMm: 12 }
              : of.kind === 'steerer'
                ? { lengthMm: 180 }
                : {};
        return { ...of, nominal: { ...of.nominal, ...more } };
      }),
    }));
    const { sets } = completeSets(measured, tall);
    expect(sets.length).toBeGreaterThan(0);
    for (const set of sets) expect(set.missing.length).toBe(1);
  });
});

test('sixty-six parts and one frame in a few seconds', () => {
  const many = [0, 1, 2].flatMap((copy) => shelf.map((one) => ({ ...one, partId: `${one.partId}-${copy}` })));
  const started = performance.now();
  const { sets } = completeSets(many.slice(0, 66), frame);
  expect(performance.now() - started).toBeLessThan(5000);
  expect(sets[0]?.cost).toMatchObject({ missingCount: 0, oneWayCount: 1, bridgeCount: 4 });
});

describe('oracle: every choice of a small pile, checked as a whole', () => {
  const slots: SetSlot[] = (['fork', 'headset', 'stem', 'bar', 'seatpost'] as const).map((kind) => ({
    slot: kind,
    kinds: [kind],
  }));
  const steererMm = fc.constantFrom(25.4, 28.6);
  const clampMm = fc.constantFrom(22.2, 25.4, 26, 31.8);
  const code = fc.constantFrom('EC30/25.4', 'EC34/28.6', 'ZS44/28.6', 'IS41/28.6');
  const somePart = (index: number) =>
    fc.oneof(
      fc
        .tuple(steererMm, fc.constantFrom(26.4, 30))
        .map(([diameterMm, seatMm]) =>
          part(`p${index}`, 'fork', [
            face('steerer', { diameterMm }),
            face('crown-seat', { diameterMm: seatMm }),
          ]),
        ),
      code.map((standard) =>
        part(`p${index}`, 'headset', [
          named('headset-cup-upper', standard),
          named('headset-cup-lower', standard),
          named('headset-bore', standard),
          named('crown-race', standard),
        ]),
      ),
      fc
        .tuple(steererMm, clampMm)
        .map(([boreMm, barMm]) =>
          part(`p${index}`, 'stem', [
            face('steerer-clamp', { boreMm }),
            face('bar-clamp', { boreMm: barMm }),
          ]),
        ),
      clampMm.map((diameterMm) => part(`p${index}`, 'bar', [face('bar-centre', { diameterMm })])),
      fc
        .constantFrom(25.4, 27.2, 27.4, 30.9)
        .map((diameterMm) => part(`p${index}`, 'seatpost', [face('post', { diameterMm })])),
    );
  const shelves = fc
    .nat(6)
    .chain((count) => fc.tuple(...Array.from({ length: count }, (_, i) => somePart(i))));
  const frames = fc
    .tuple(code, fc.constantFrom(25.4, 27.2, 31.6))
    .map(([standard, boreMm]) =>
      part('frame', 'frame', [
        named('head-tube-upper', standard),
        named('head-tube-lower', standard),
        face('seat-tube', { boreMm }),
      ]),
    );

  function best(pile: readonly PilePart[], of: PilePart): number[] {
    let least: number[] = [Number.POSITIVE_INFINITY, 0, 0];
    const choose = (index: number, taken: PilePart[], missing: number): void => {
      const slot = slots[index];
      if (slot) {
        for (const parts of candidatesFor(slot, pile)) choose(index + 1, [...taken, ...parts], missing);
        choose(index + 1, taken, missing + 1);
        return;
      }
      const { findings } = checkPile([of, ...taken]);
      if (findings.some(({ outcome }) => outcome === 'does-not-fit')) return;
      const cost = [
        missing,
        findings.filter(({ outcome }) => outcome === 'one-way-only').length,
        findings
          .filter(({ outcome }) => outcome === 'fits-with')
          .reduce((sum, { bridges }) => sum + (bridges[0]?.links.length || 1), 0),
      ];
      const at = cost.findIndex((value, position) => value !== least[position]);
      if (at >= 0 && (cost[at] ?? 0) < (least[at] ?? 0)) least = cost;
    };
    choose(0, [], 0);
    return least;
  }

  test('the search finds the same least cost', () => {
    fc.assert(
      fc.property(shelves, frames, (pile, of) => {
        const [found] = completeSets(pile, of, { slots }).sets;
        expect([found?.cost.missingCount, found?.cost.oneWayCount, found?.cost.bridgeCount]).toEqual(
          best(pile, of),
        );
      }),
      { numRuns: 40 },
    );
  }, 30_000);
});
