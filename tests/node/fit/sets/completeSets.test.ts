import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { PilePart } from '../../../../src/fit/pile.ts';
import { completeSets } from '../../../../src/fit/sets/completeSets.ts';
import { brakeSlots, rollingSlots, type SetSlot } from '../../../../src/fit/sets/setSlots.ts';
import { everySet } from '../../../fixtures/everySet.ts';
import { magpie } from '../../../fixtures/magpie.ts';
import { face, named, part } from '../../../fixtures/pileParts.ts';

const [frame, ...shelf] = magpie;
if (!frame) throw new Error('the pile is empty');

const idsOf = (set: { filled: readonly { parts: readonly PilePart[] }[] } | undefined): string[] =>
  (set?.filled ?? []).flatMap(({ parts }) => parts.map(({ partId }) => partId));

describe('the invented pile as a shelf', () => {
  test('makes one whole bike: five bridges, one one-way change, the hub of 28 holes left out', () => {
    const { sets, toBuy } = completeSets(shelf, frame);
    expect(sets.map(({ cost }) => [cost.missingCount, cost.oneWayCount, cost.bridgeCount])).toEqual([
      [0, 1, 5],
    ]);
    expect(idsOf(sets[0])).toContain('front-hub-b');
    expect(toBuy).toEqual([]);
  });

  test('the fork has a mount: rotor and caliper are among it, and the caliper brings its adapter', () => {
    const [best] = completeSets(shelf, frame).sets;
    expect(idsOf(best)).toEqual(expect.arrayContaining(['rotor', 'caliper']));
    expect(best?.check.findings.find(({ topic }) => topic === 'caliper-on-mount')?.outcome).toBe('fits-with');
    expect(completeSets(shelf, frame, { slots: rollingSlots }).sets[0]?.cost.bridgeCount).toBe(4);
  });

  test('the frame has none: no brake is asked for behind, and none is put there', () => {
    const behind = shelf.map((one) =>
      one.kind === 'rotor' || one.kind === 'caliper' ? { ...one, position: 'rear' as const } : one,
    );
    const { sets, toBuy } = completeSets(behind, frame);
    expect(idsOf(sets[0])).not.toContain('caliper');
    expect(sets[0]?.missing).toEqual(['rotor-caliper-front']);
    expect(toBuy.map(({ slot }) => slot)).toEqual(['rotor-caliper-front']);
  });

  test('a rotor that is there is not named among what to buy', () => {
    const { toBuy } = completeSets(
      shelf.filter(({ kind }) => kind !== 'caliper'),
      frame,
    );
    expect(toBuy.map(({ kinds, wanted }) => [kinds, wanted.map(({ against }) => against.kind)])).toEqual([
      [['caliper'], ['disc-mount']],
    ]);
  });

  test('a fork without a mount does without the brake, so no brake has to be bought', () => {
    const fork = shelf.find(({ kind }) => kind === 'fork');
    if (!fork) throw new Error('the pile has no fork');
    const bare = { ...fork, partId: 'bare', faces: fork.faces.filter(({ kind }) => kind !== 'disc-mount') };
    const { sets, toBuy } = completeSets([...shelf.filter(({ kind }) => kind !== 'caliper'), bare], frame);
    expect(idsOf(sets[0])).toContain('bare');
    expect(sets[0]?.missing).toEqual([]);
    expect(toBuy).toEqual([]);
  });

  test('without a fork the brake at it is not what to buy: the fork to come may have no mount', () => {
    const { toBuy } = completeSets(
      shelf.filter(({ kind }) => kind !== 'fork' && kind !== 'caliper'),
      frame,
    );
    expect(toBuy.map(({ slot }) => slot)).toEqual(['fork']);
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
    expect(sets[0]?.cost).toMatchObject({ oneWayCount: 0, bridgeCount: 6 });
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

test('twins on the shelf are refused', () => {
  expect(() => completeSets([...shelf, ...shelf], frame)).toThrow(RangeError);
});

test('sixty-six parts, three of each: what was best of one of each still is', () => {
  const many = [0, 1, 2].flatMap((copy) => shelf.map((one) => ({ ...one, partId: `${one.partId}-${copy}` })));
  const { sets } = completeSets(many.slice(0, 66), frame);
  expect(sets[0]?.cost).toMatchObject({ missingCount: 0, oneWayCount: 1, bridgeCount: 5 });
});

describe('[F2] oracle: every choice of a small pile, checked as a whole', () => {
  const tieOf = (parts: readonly PilePart[]): number =>
    parts.reduce((sum, { massG }) => sum + (massG ?? 5000), 0);
  const massG = fc.constantFrom(undefined, 100, 200, 300);
  const steererMm = fc.constantFrom(25.4, 28.6);
  const clampMm = fc.constantFrom(22.2, 25.4, 26, 31.8);
  const code = fc.constantFrom('EC30/25.4', 'EC34/28.6', 'ZS44/28.6', 'IS41/28.6');
  const rotorSide = fc.constantFrom('six-bolt', 'centre-lock');
  const mount = fc.option(fc.constantFrom('is', 'post'), { nil: undefined });
  const some = <T extends unknown[]>(
    kind: PilePart['kind'],
    of: { [K in keyof T]: fc.Arbitrary<T[K]> },
    facesOf: (...sizes: T) => ReturnType<typeof face>[],
  ) => fc.tuple(...of).map((sizes) => ({ kind, faces: facesOf(...(sizes as T)) }));

  /** As many parts as given of some kinds, with masses, some of them adjusted. */
  const shelvesOf = (most: number, kinds: fc.Arbitrary<Pick<PilePart, 'kind' | 'faces'>>[]) =>
    fc
      .array(fc.tuple(fc.oneof(...kinds), massG), { maxLength: most })
      .map((parts) =>
        parts.map(([{ kind, faces }, grams], index) =>
          part(`p${index}`, kind, faces, grams === undefined ? {} : { massG: grams }),
        ),
      );

  /** The costs of the first sets, which places no set has, and where that can be said. */
  function compare(pile: readonly PilePart[], of: PilePart, slots: readonly SetSlot[]): void {
    const tried = everySet(pile, of, slots, tieOf);
    const least = tried[0]?.cost[0];
    const best = tried.filter(({ cost }) => cost[0] === least);
    const { sets, toBuy } = completeSets(pile, of, { slots, limit: 6 });
    expect(
      sets.map(({ cost }) => [
        cost.missingCount,
        cost.oneWayCount,
        cost.bridgeCount,
        cost.openCount,
        cost.tie,
      ]),
    ).toEqual(best.slice(0, 6).map(({ cost }) => cost));
    for (const { check } of sets) {
      const own = check.findings.map(({ bridges }) =>
        bridges.flatMap(({ links }) => links.flatMap(({ adapter }) => adapter.partId ?? [])),
      );
      const once = own.flatMap((ids) => [...new Set(ids)]);
      expect(new Set(once).size).toBe(once.length);
    }
    const never = slots
      .map(({ slot }) => slot)
      .filter((slot) => best.length > 0 && best.every(({ missing }) => missing.includes(slot)));
    expect(never).toEqual(expect.arrayContaining(toBuy.map(({ slot }) => slot)));
    // Whether a fork to be bought asks for a brake is not known; everything else has to be named.
    const brake = slots.filter(({ restsOn }) => restsOn).map(({ slot }) => slot);
    expect(toBuy.map(({ slot }) => slot).filter((slot) => !brake.includes(slot))).toEqual(
      never.filter((slot) => !brake.includes(slot)),
    );
  }

  test('steering and seat, with the length of the steerer and shims at hand', () => {
    const slots = rollingSlots.filter(({ slot }) =>
      ['fork', 'headset', 'stem', 'bar', 'seatpost'].includes(slot),
    );
    const pile = shelvesOf(7, [
      some(
        'fork',
        [steererMm, fc.constantFrom(26.4, 30), fc.constantFrom(150, 190, undefined)],
        (diameterMm, seatMm, lengthMm) => [
          face('steerer', { diameterMm, ...(lengthMm ? { lengthMm } : {}) }),
          face('crown-seat', { diameterMm: seatMm }),
        ],
      ),
      some('headset', [code, fc.constantFrom(10, 20)], (standard, stackMm) => [
        named('headset-cup-upper', standard, { nominal: { stackMm } }),
        named('headset-cup-lower', standard, { nominal: { stackMm: 10 } }),
        named('headset-bore', standard),
        named('crown-race', standard),
      ]),
      some('stem', [steererMm, clampMm], (boreMm, barMm) => [
        face('steerer-clamp', { boreMm, heightMm: 40 }),
        face('bar-clamp', { boreMm: barMm }),
      ]),
      some('bar', [clampMm], (diameterMm) => [face('bar-centre', { diameterMm })]),
      some('seatpost', [fc.constantFrom(25.4, 27.2, 27.4, 30.9)], (diameterMm) => [
        face('post', { diameterMm }),
      ]),
      some('shim', [clampMm, clampMm], (diameterMm, boreMm) => [
        face('bar-centre', { diameterMm }),
        face('bar-clamp', { boreMm }),
      ]),
    ]);
    const frames = fc
      .tuple(code, fc.constantFrom(25.4, 27.2, 31.6))
      .map(([standard, boreMm]) =>
        part('frame', 'frame', [
          named('head-tube-upper', standard, { nominal: { lengthMm: 110 } }),
          named('head-tube-lower', standard),
          face('seat-tube', { boreMm }),
        ]),
      );
    fc.assert(
      fc.property(pile, frames, (parts, of) => compare(parts, of, slots)),
      { numRuns: 60 },
    );
  }, 60_000);

  test('disc brakes at both ends, with forks and frames that have no mount', () => {
    const slots = [
      ...rollingSlots.filter(({ slot }) => ['fork', 'front-hub', 'rear-hub'].includes(slot)),
      ...brakeSlots,
    ];
    const mountOf = (standard: string | undefined) => (standard ? [named('disc-mount', standard)] : []);
    const seat = fc.option(rotorSide, { nil: undefined });
    const hub = (kind: 'front-hub' | 'rear-hub') =>
      some(kind, [seat, fc.constantFrom(28, 32)], (standard, holesCount) => [
        ...(standard ? [named('rotor-seat', standard)] : []),
        face('hub-holes', { holesCount }),
      ]);
    const pile = shelvesOf(7, [
      some('fork', [mount], mountOf),
      hub('front-hub'),
      hub('rear-hub'),
      some('rotor', [rotorSide, fc.constantFrom(140, 160, 180)], (standard, diameterMm) => [
        named('rotor-mount', standard),
        face('rotor-size', { diameterMm }),
      ]),
      some('caliper', [mount], (standard) => [named('caliper-mount', standard ?? 'flat-rear')]),
    ]);
    const frames = mount.map((standard) => part('frame', 'frame', mountOf(standard)));
    fc.assert(
      fc.property(pile, frames, (parts, of) => compare(parts, of, slots)),
      { numRuns: 80 },
    );
  }, 60_000);

  test('the drive, with the length and the line of the chain', () => {
    const slots = rollingSlots.filter(({ slot }) =>
      ['cranks', 'chainring', 'chain', 'sprocket', 'rear-hub'].includes(slot),
    );
    const pile = shelvesOf(7, [
      some('cranks', [fc.constantFrom(42, 45, undefined)], (chainlineMm) => [
        named('spider', '104/4', chainlineMm ? { nominal: { chainlineMm } } : {}),
      ]),
      some(
        'chainring',
        [fc.constantFrom('104/4', '130/5'), fc.constantFrom(30, 36, 40)],
        (standard, teethCount) => [
          named('ring-mount', standard),
          face('ring-teeth', { teethCount, chainWidthMm: 2.38 }),
        ],
      ),
      some('chain', [fc.constantFrom(80, 112)], (pitchesCount) => [
        face('chain', { chainWidthMm: 3.175, pitchesCount }),
      ]),
      some('sprocket', [fc.constantFrom(12, 15, 18)], (teethCount) => [
        named('sprocket-mount', '1.375x24'),
        face('sprocket-teeth', { teethCount, chainWidthMm: 2.38 }),
      ]),
      some('rear-hub', [fc.constantFrom('rear-120', 'rear-130', 'rear-135')], (standard) => [
        named('hub-spacing', standard),
        named('driver-mount', '1.375x24', { nominal: { toothCentreMm: 20 } }),
      ]),
    ]);
    const frames = fc
      .constantFrom(384, 386, 398)
      .map((nearestMm) =>
        part('frame', 'frame', [
          named('end-spacing', 'rear-130', { traits: { material: 'steel' } }),
          face(
            'axle-slot',
            { widthMm: 10, nearestMm, farthestMm: nearestMm + 5 },
            { traits: { material: 'steel' } },
          ),
        ]),
      );
    fc.assert(
      fc.property(pile, frames, (parts, of) => compare(parts, of, slots)),
      { numRuns: 60 },
    );
  }, 60_000);
});
