import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  type Calculated,
  inUnitOf,
  isChoice,
  type NumberAsked,
  reckon,
} from '../../../../src/workings/reckonings/reckoning.ts';
import { reckonings } from '../../../../src/workings/reckonings/reckonings.ts';

const named = (id: string) => {
  const found = reckonings.find((each) => each.id === id);
  if (!found) throw new Error(`no working ${id}`);
  return found;
};
const run = (id: string, figures: Record<string, number>, choices: Record<string, string> = {}): Calculated =>
  reckon(named(id), figures, choices);

/** The middle of the first result, or of the one with that caption. */
function result(outcome: Calculated, label?: string): number {
  if (!outcome.ok) throw new Error(outcome.reason);
  const found = label ? outcome.results.find((each) => each.label === label) : outcome.results[0];
  const value = found?.working.result ?? Number.NaN;
  return typeof value === 'number' ? value : value.mid;
}

describe('the list of workings', () => {
  test('holds every computation a hand asks for, each under its own name', () => {
    expect(reckonings.map(({ id }) => id)).toEqual([
      ...['preload', 'torque-from-preload', 'proof-load', 'wrench-extension', 'thread-engagement'],
      ...['clamp-slip', 'shim-chain', 'rider-moment'],
      ...['cure-time', 'press-fit', 'bonded-fit'],
      ...['settling', 'recheck-reading'],
      ...['rotor-and-mount', 'brake-wear', 'stopping-distance'],
      ...['pressure-ceiling', 'tyre-volume', 'spoke-length', 'gearing', 'chain-length'],
    ]);
  });

  test.each(reckonings.map((each) => [each.id, each] as const))(
    '%s asks in words and sane ranges',
    (_id, each) => {
      expect(new Set(each.asks.map(({ key }) => key)).size).toBe(each.asks.length);
      for (const asked of each.asks) {
        if (isChoice(asked)) expect(asked.options.map(({ value }) => value)).toContain(asked.first);
        else {
          expect(asked.range[0]).toBeLessThan(asked.range[1]);
          if (asked.unit) expect(asked.units).toContain(asked.unit);
          if (asked.first !== undefined) expect(Number(asked.first)).toBeGreaterThanOrEqual(asked.range[0]);
        }
      }
    },
  );
});

describe('figures that somebody else printed', () => {
  test.each([
    // ISO 898-1 proof load tables, public copies.
    ['M5 in 8.8 carries 8230 N (ISO 898-1)', 'proof-load', {}, { thread: 'M5', class: '8.8' }, 8230, 15],
    [
      'M6 in 10.9 carries 16 700 N (ISO 898-1)',
      'proof-load',
      {},
      { thread: 'M6', class: '10.9' },
      16_700,
      50,
    ],
    // Aircraft maintenance manual: L 12, E 2, a setting of 60 gives 70 at the screw.
    [
      '70 at the screw is 60 on a wrench of 12 with 2 between (maintenance manuals)',
      'wrench-extension',
      { torque: 70, lever: 12, extension: 2, angle: 0 },
      {},
      60,
      1e-9,
    ],
    // Two equal sprockets: half the teeth of each are wrapped, the rest is two straight runs.
    [
      'half-inch chain, 17 teeth on both: pitches are 2·C/p + N (definition)',
      'chain-length',
      { ring: 17, sprocket: 17, axle: 381 },
      {},
      77,
      1e-9,
    ],
    [
      'a stop from 25 km/h in 7 m is 3.44 m/s² (definition)',
      'stopping-distance',
      { speed: 25, distance: 7 },
      {},
      3.444,
      1e-3,
    ],
    ['36 by 15 on a wheel of 678 mm goes 5.11 m (definition)', 'gearing', gear(36, 15), {}, 5.112, 1e-3],
    // Q&A on IS adapters: a front 180 adapter is +20 on the bare 160.
    [
      'a rotor of 180 on a mount for 160 wants +20',
      'rotor-and-mount',
      { native: 160, rotor: 180, adapter: 20 },
      {},
      20,
      0,
    ],
    // Workshop's limit for a tyre not made to run without a tube: 40 psi.
    [
      'a tyre not marked tubeless stays under 40 psi without a tube',
      'pressure-ceiling',
      { width: 47, tyre: 3.5, rim: 4 },
      { tubeless: 'yes' },
      2.75,
      1e-9,
    ],
    [
      'with a tube the lower of tyre and rim decides',
      'pressure-ceiling',
      { width: 47, tyre: 3.5, rim: 4 },
      {},
      3.5,
      1e-9,
    ],
  ] as const)('%s', (_name, id, figures, choices, value, within) => {
    expect(Math.abs(result(run(id, figures, choices)) - value)).toBeLessThanOrEqual(within);
  });

  // Machine design textbook's worked example is the docstring's: 48.75 MPa from 0.04 mm on steel 200 GPa; ours is 205.
  test('a press fit is in proportion to the stiffness of its parts (Lamé)', () => {
    const figures = { bore: 50, part: 50.04, uncertainty: 0, outer: 80, inner: 0, length: 40 };
    const outcome = run('press-fit', figures, { outerOf: 'steel', innerOf: 'steel' });
    expect(result(outcome)).toBeCloseTo(48.75 * (205 / 200), 1);
  });
});

function gear(ring: number, sprocket: number) {
  return { ring, sprocket, width: 47, seat: 584, crank: 170, cadence: 80 };
}

describe('refusals are sentences', () => {
  test.each([
    ['preload', { torque: 5, error: 4 }, { screw: 'titanium' }, /titanium/],
    ['preload', { torque: 5, error: 4 }, { screw: 'stainless', female: 'stainless' }, /seizes/],
    ['torque-from-preload', { preload: 5000 }, { screw: 'aluminium' }, /aluminium/],
    ['wrench-extension', { torque: 5, lever: 200, extension: 200, angle: 180 }, {}, /back to the hand/],
    ['thread-engagement', {}, { female: 'plastic' }, /creeps/],
    [
      'clamp-slip',
      { bolts: 1, force: 5000, scatter: 30, tube: 27 },
      { construction: 'one-slit-stiff' },
      /both arms/,
    ],
    [
      'shim-chain',
      { bolts: 4, force: 5000, scatter: 30, tube: 26, bore: 31.8 },
      { shim: 'closed' },
      /slit it/,
    ],
    ['shim-chain', { bolts: 4, force: 5000, scatter: 30, tube: 26, bore: 26 }, {}, /wider/],
    ['cure-time', { gap: 0.05, temperature: 2 }, {}, /Below 5/],
    ['cure-time', { gap: 0.05, temperature: 20 }, { one: 'thermoplastic' }, /plastic/],
    ['press-fit', { bore: 37, part: 40, uncertainty: 0, outer: 50, inner: 0, length: 8 }, {}, /hundredth/],
    [
      'press-fit',
      { bore: 37, part: 37, uncertainty: 0, outer: 36, inner: 0, length: 8 },
      {},
      /inside one another/,
    ],
    ['settling', { preload: 5000, grip: 8, head: 5, hole: 6, faces: 1 }, {}, /smaller than the head/],
    ['recheck-reading', { installed: 5 }, { way: 'loosening' }, /gave in/],
    ['rotor-and-mount', { native: 160, rotor: 140, adapter: 0 }, {}, /smaller/],
    ['brake-wear', {}, {}, /Measure/],
    ['stopping-distance', { speed: 60, distance: 1 }, {}, /No bicycle/],
    ['pressure-ceiling', { width: 47 }, {}, /No limit is printed/],
    ['pressure-ceiling', { width: 47, tyre: 4 }, { straight: 'yes' }, /without hooks/],
    ['spoke-length', { erd: 567, pcd: 45, flange: 34, holes: 8, crosses: 9, hole: 2.6 }, {}, /crossings/],
    ['gearing', { ...gear(120, 6), seat: 700, width: 130 }, {}, /No rider/],
    ['chain-length', { ring: 36, sprocket: 15 }, {}, /distance or the pitches/],
    ['chain-length', { ring: 36, sprocket: 15, axle: 100 }, {}, /touch/],
    ['chain-length', { ring: 36, sprocket: 15, pitches: 20 }, {}, /No chain/],
  ] as const)('%s %j %j', (id, figures, choices, why) => {
    const outcome = run(id, figures, choices);
    expect(outcome.ok ? 'computed' : outcome.reason).toMatch(why);
  });
});

test('a figure counts in the unit of its computation', () => {
  const asked = named('wrench-extension').asks.find(({ key }) => key === 'lever') as NumberAsked;
  expect(inUnitOf(asked, { value: 10, unit: '[in_i]' })).toBeCloseTo(254, 9);
  expect(inUnitOf(asked, { value: 10 })).toBe(10);
});

const numbersOf = (value: unknown): number[] =>
  typeof value === 'number'
    ? [value]
    : value && typeof value === 'object'
      ? Object.values(value).flatMap(numbersOf)
      : [];

test.each(reckonings.map((each) => [each.id, each] as const))(
  '%s gives numbers or a sentence for everything its form lets through (property)',
  (_id, reckoning) => {
    const numbers = reckoning.asks.filter((asked): asked is NumberAsked => !isChoice(asked));
    const figure = ({ range: [min, max], whole, optional }: NumberAsked) => {
      const any = whole ? fc.integer({ min, max }) : fc.double({ min, max, noNaN: true });
      return optional ? fc.option(any, { nil: undefined }) : any;
    };
    const figures = fc.record(Object.fromEntries(numbers.map((asked) => [asked.key, figure(asked)])));
    const choices = fc.record(
      Object.fromEntries(
        reckoning.asks.flatMap((asked) =>
          isChoice(asked) ? [[asked.key, fc.constantFrom(...asked.options.map(({ value }) => value))]] : [],
        ),
      ),
    );
    fc.assert(
      fc.property(figures, choices, (given, chosen) => {
        const outcome = reckon(reckoning, given, chosen);
        if (!outcome.ok) return /^\p{Lu}.*[.]$/u.test(outcome.reason);
        const inside = outcome.results.map(({ working: { result: value, inputs } }) => [value, inputs]);
        return numbersOf(inside).every(Number.isFinite);
      }),
      { numRuns: 150 },
    );
  },
);
