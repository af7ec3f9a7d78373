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
      ...['preload', 'torque-from-preload', 'torque-from-friction', 'proof-load'],
      ...['wrench-extension', 'thread-engagement'],
      ...['clamp-slip', 'shim-chain', 'rider-moment'],
      ...['cure-time', 'press-fit', 'bonded-fit', 'fit-by-letters'],
      ...['settling', 'recheck-reading'],
      ...['rotor-and-mount', 'brake-wear', 'stopping-distance'],
      ...[
        'pressure-ceiling',
        'tyre-volume',
        'pressure-elsewhere',
        'valve',
        'rim-tape',
        'spoke-length',
        'rim-diameter',
        'hub-cut',
        'nipple-turn',
        'uneven-holes',
        'gearing',
        'chain-length',
      ],
      ...['chain-wear', 'bolt-circle', 'ring-chainline'],
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

describe('figures printed elsewhere', () => {
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
    // US Standard Atmosphere 1976: 89 874.57 Pa at 1000 m, so a gauge rises by 101 325 less that.
    [
      'up 1000 m a gauge rises by 0.1145 bar (US Standard Atmosphere 1976)',
      'pressure-elsewhere',
      { gauge: 2, from: 20, to: 20, height: 1000 },
      {},
      2.1145,
      5e-5,
    ],
    // (2.5 + 1.01325)·278.15/293.15 − 1.01325, gas of constant volume.
    [
      'from 20 to 5 °C 2.5 bar become 2.320 (gas of constant volume)',
      'pressure-elsewhere',
      { gauge: 2.5, from: 20, to: 5, height: 0 },
      {},
      2.3203,
      2e-4,
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
    // Machine manual 2164141 p. 74: M6 in 8.8, 10.4 N·m.
    [
      'an M6 of class 8.8 itself stands 10.4 N·m (machine manual, p. 74)',
      'torque-from-friction',
      { friction: 0.12 },
      { thread: 'M6', class: '8.8', head: 'socket' },
      10.4,
      0.26,
    ],
    // ISO 286-2, DIN extract, row over 30 to 50: H7 is +25 and 0.
    [
      'a bore of 37 H7 is 37.000 at least',
      'fit-by-letters',
      { size: 37 },
      { hole: 'H', holeGrade: '7', shaft: 'h', shaftGrade: '6' },
      37,
      1e-9,
    ],
    // Copy of an article on valve length by rim depth: 35 deep wants 60.
    ['a rim 35 deep wants a valve of 60', 'valve', { depth: 35 }, {}, 60, 0],
    // Cycling magazine: 254 mm of chain grown to 255.
    [
      'a chain of 20 pitches that reads 255 mm has grown by 0.39 %',
      'chain-wear',
      { measured: 255, pitches: 20, sprockets: 1 },
      {},
      0.39,
      0.005,
    ],
    // Bicycle encyclopaedia, chainring bolt circle pages: 64.7 between neighbours of 110 with five bolts.
    ['five bolts 64.7 apart are a circle of 110', 'bolt-circle', { bolts: 5, holes: 64.7 }, {}, 110, 0.1],
    [
      'a ring 27.5 from a tube of 30 has a chainline of 42.5',
      'ring-chainline',
      { tube: 30, gap: 27.5 },
      {},
      42.5,
      0,
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

describe('what a builder wants beside the first figure', () => {
  const remarks = (outcome: Calculated): string =>
    outcome.ok ? (outcome.remarks ?? []).join(' ') : outcome.reason;

  test('thread engagement says whether it reaches, and the share of torque aluminium stands', () => {
    const short = run('thread-engagement', { engaged: 8 }, { thread: 'M5', female: 'aluminium' });
    expect(result(short, 'Share of the usual torque this thread can take')).toBe(0.7);
    expect(remarks(short)).toContain('It is short');
    const strips = run('thread-engagement', { engaged: 5 }, { thread: 'M5', female: 'aluminium' });
    expect(remarks(strips)).toContain('Too short');
  });

  test('a screw of class 8.8 in M6 breaks from 16 100 N (ISO 898-1)', () => {
    const outcome = run('proof-load', {}, { thread: 'M6', class: '8.8' });
    expect(Math.abs(result(outcome, 'Breaks from') - 16_100)).toBeLessThan(60);
  });

  test('60 on a wrench of 12 with 2 between gave the screw 70 (TM 9-254)', () => {
    const outcome = run('wrench-extension', { torque: 1, lever: 12, extension: 2, angle: 0, set: 60 });
    expect(result(outcome, 'The screw got')).toBeCloseTo(70, 9);
  });

  test('loosening takes less than tightening, by twice the pitch part', () => {
    const outcome = run('torque-from-friction', { friction: 0.14, preload: 5000 }, { thread: 'M5' });
    const pitchNm = (5000 * 0.8) / (2 * Math.PI) / 1000;
    expect(result(outcome, 'Tightening') - result(outcome, 'Loosening')).toBeCloseTo(2 * pitchNm, 9);
    expect(result(outcome, 'Loosening, share of the tightening torque')).toBeCloseTo(
      result(outcome, 'Loosening') / result(outcome, 'Tightening'),
      9,
    );
  });

  test('a rim wall of 1.00 mm is replaced and keeps under a third of its strength', () => {
    const outcome = run('brake-wear', { wall: 1 });
    expect(remarks(outcome)).toContain('At the limit: replace it');
    expect(result(outcome, 'Strength of the wall, share of a new one of 1.5 mm')).toBeCloseTo(8 / 27, 9);
    expect(remarks(run('brake-wear', { wall: 1.5 }, { damaged: 'yes' }))).toContain('Replace it');
  });

  test.each([
    [6.4, 'The stem suits the hole.'],
    [8.3, 'a sleeve'],
    [5.8, 'Do not drill'],
  ])('a narrow valve in a hole of %d: %s', (hole, words) => {
    expect(remarks(run('valve', { depth: 25, hole }, { kind: 'french' }))).toContain(words);
  });

  test('37 H7 h6 always goes together with play, 44 N7 h6 may press', () => {
    const clear = run('fit-by-letters', { size: 37 }, { shaft: 'h', shaftGrade: '6' });
    expect(remarks(clear)).toContain('always go together');
    const tight = run('fit-by-letters', { size: 44 }, { hole: 'N', shaft: 'h', shaftGrade: '6' });
    expect(remarks(tight)).toContain('Play or press');
    expect(result(tight, 'Most press (below 0 is play)')).toBe(33);
  });

  test('two holes 51 apart are an IS mount, 60 apart no mount of today', () => {
    const asked = { native: 160, rotor: 180, adapter: 20 };
    expect(remarks(run('rotor-and-mount', { ...asked, spacing: 51 }))).toContain('IS');
    expect(remarks(run('rotor-and-mount', { ...asked, spacing: 60 }))).toContain('measure again');
  });

  test('a chain grown by a hundredth goes where one sprocket is at the back, and reads 307.8 mm on a foot', () => {
    const outcome = run('chain-wear', { measured: 308, pitches: 24, sprockets: 1 });
    expect(remarks(outcome)).toContain('another chain');
    expect(result(outcome, 'Reads this when it is commonly replaced')).toBeCloseTo(307.848, 9);
  });

  // Supplier's note: M4 2 N·m, M8 12 N·m, so twice the thread takes six times as much.
  test('a threadlocker on M20 breaks loose at six times what M10 takes', () => {
    const at = (thread: number) =>
      result(run('cure-time', { gap: 0.05, temperature: 20, thread }), 'Breaks loose at about');
    expect(at(20) / at(10)).toBeCloseTo(6, 9);
  });

  test('a clamp slides along its tube at the slip torque over half the diameter', () => {
    const figures = { bolts: 4, force: 5000, scatter: 0, tube: 25.4, clampLength: 40 };
    const outcome = run('clamp-slip', figures);
    // Four bolts of 5000 N on 25.4 by 40 mm: 20 000 / 1016 MPa.
    expect(result(outcome, 'Mean pressure on the tube')).toBeCloseTo(19.685, 3);
    expect(result(outcome, 'Slides along at')).toBeGreaterThan(2 * 0.12 * 20_000 - 1e-6);
  });

  test('an aluminium ring of 37 bore slides over 0.03 mm of press when it is some 70 K warmer', () => {
    const figures = { bore: 37, part: 37.03, uncertainty: 0, outer: 44, inner: 0, length: 8 };
    const outcome = run('press-fit', figures, { outerOf: 'aluminium' });
    expect(result(outcome, 'Warm the outer part by, to slide it on')).toBeCloseTo(70.5, 1);
  });
});

function gear(ring: number, sprocket: number) {
  return { ring, sprocket, width: 47, seat: 584, crank: 170, cadence: 80 };
}

// Geometry and Hooke’s law, worked out by hand beside each figure.
describe('before a wheel is laced or taped', () => {
  test.each([
    [
      'two rods of 200 with 184 between are 584',
      'rim-diameter',
      { each: 200, between: 184 },
      { way: 'rods' },
      'Diameter',
      584,
      0,
    ],
    [
      '560 between nipples of 12 are 584',
      'rim-diameter',
      { each: 12, between: 560 },
      { way: 'nipples' },
      'Diameter',
      584,
      0,
    ],
    // 135 to 120 with flanges at 34 and 20: 15/2 − 7 and 15/2 + 7; both flanges then stand at 27.
    [
      'a hub of 135 for 120, left end',
      'hub-cut',
      { now: 135, wanted: 120, left: 34, drive: 20 },
      {},
      'Off the left end',
      0.5,
      1e-9,
    ],
    [
      'a hub of 135 for 120, drive end',
      'hub-cut',
      { now: 135, wanted: 120, left: 34, drive: 20 },
      {},
      'Off the drive end',
      14.5,
      1e-9,
    ],
    [
      'a hub of 135 for 120, flanges',
      'hub-cut',
      { now: 135, wanted: 120, left: 34, drive: 20 },
      {},
      'Each flange to the middle then',
      27,
      1e-9,
    ],
    // 2 mm of 193 GPa: E·A 606 327 N; a pitch of 25.4/56 over 290 mm.
    [
      'a turn of a plain 2 mm spoke of 290',
      'nipple-turn',
      { length: 290, thin: 2, thick: 2, tension: 1000 },
      {},
      'A turn adds at most',
      948.3,
      0.5,
    ],
    [
      'that spoke is as stiff as itself',
      'nipple-turn',
      { length: 290, thin: 2, thick: 2, tension: 1000 },
      {},
      'As stiff as a plain spoke of',
      2,
      1e-9,
    ],
    // 24 spokes, 12 a side, 2 crossings: 60°, pairs of 15° where even ones stand 30° apart: 7.5° either way.
    [
      'pairs of 15° lean together',
      'uneven-holes',
      { spokes: 24, crosses: 2, gap: 15 },
      { drilling: 'paired' },
      'Pair leans together',
      52.5,
      1e-9,
    ],
    [
      'pairs of 15° lean apart',
      'uneven-holes',
      { spokes: 24, crosses: 2, gap: 15 },
      { drilling: 'paired' },
      'Pair leans apart',
      67.5,
      1e-9,
    ],
    // 24 spokes two to one: 16 on the many side, 2 crossings 45°, pair 15° where even ones stand 22.5° apart.
    [
      'two to one leans together',
      'uneven-holes',
      { spokes: 24, crosses: 2 },
      { drilling: 'two-to-one' },
      'Pair leans together',
      41.25,
      1e-9,
    ],
    [
      '350° and 50° are 60° apart',
      'uneven-holes',
      { spokes: 24, crosses: 2, rim: 350, hub: 50 },
      { drilling: 'degrees' },
      'Angle',
      60,
      1e-9,
    ],
    // Assembly article: inner width and 2 to 5 more; 2 · π · 622 and 25 cm; flanks of 4 over 4 deep are 5.657 long.
    [
      'tape for 23 inside',
      'rim-tape',
      { inner: 23, turns: 2, flank: 0, depth: 0 },
      { seat: '622' },
      'Tape as wide as',
      26.5,
      1e-9,
    ],
    [
      'two turns round 622',
      'rim-tape',
      { inner: 23, turns: 2, flank: 0, depth: 0 },
      { seat: '622' },
      'Length to cut',
      4.158,
      0.001,
    ],
    [
      'a well of 25 with flanks of 4 over 4',
      'rim-tape',
      { inner: 25, turns: 2, flank: 4, depth: 4 },
      { seat: '622' },
      'Well along its profile',
      28.314,
      0.001,
    ],
  ] as const)('%s', (_what, id, figures, choices, label, expected, tolerance) => {
    expect(Math.abs(result(run(id, { ...figures }, { ...choices }), label) - expected)).toBeLessThanOrEqual(
      tolerance,
    );
  });

  test('sealant is shown standing on the tread only where its width is given', () => {
    const at = (band?: number) =>
      run('tyre-volume', { width: 28, ...(band ? { band } : {}) }, { seat: '622', marked: 'yes' });
    const labels = (outcome: Calculated) => (outcome.ok ? outcome.results.map(({ label }) => label) : []);
    expect(labels(at())).not.toContain('Depth of sealant on the tread');
    // 50.3 mL over π · 678 · 10 mm².
    expect(result(at(10), 'Depth of sealant on the tread')).toBeCloseTo(2.36, 2);
  });

  test.each([
    ['a rod of a nipple', 'rim-diameter', { each: 12, between: 560 }, { way: 'rods' }],
    ['a nipple of a rod', 'rim-diameter', { each: 200, between: 184 }, { way: 'nipples' }],
    ['100 mm off a hub', 'hub-cut', { now: 180, wanted: 80, left: 34, drive: 20 }, {}],
    ['flanges 120 apart', 'hub-cut', { now: 190, wanted: 135, left: 120, drive: 0 }, {}],
    ['a spoke thicker in its middle', 'nipple-turn', { length: 290, thin: 2.3, thick: 2, tension: 1000 }, {}],
    ['pairs without their gap', 'uneven-holes', { spokes: 24, crosses: 2 }, { drilling: 'paired' }],
    [
      'pairs wider than even holes',
      'uneven-holes',
      { spokes: 24, crosses: 2, gap: 31 },
      { drilling: 'paired' },
    ],
    ['22 spokes in pairs', 'uneven-holes', { spokes: 22, crosses: 2, gap: 5 }, { drilling: 'paired' }],
    ['32 spokes two to one', 'uneven-holes', { spokes: 32, crosses: 2 }, { drilling: 'two-to-one' }],
    [
      'nine crossings on eight holes',
      'uneven-holes',
      { spokes: 16, crosses: 9, gap: 5 },
      { drilling: 'paired' },
    ],
    ['one angle alone', 'uneven-holes', { spokes: 24, crosses: 2, rim: 10 }, { drilling: 'degrees' }],
    ['flanks wider than the rim', 'rim-tape', { inner: 20, turns: 2, flank: 11, depth: 4 }, { seat: '622' }],
  ] as const)('%s is refused', (_what, id, figures, choices) =>
    expect(run(id, { ...figures }, { ...choices })).toMatchObject({ ok: false }),
  );
});

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
    ['cure-time', { gap: 0.05, temperature: 2 }, {}, /under 5/],
    ['cure-time', { gap: 0.05, temperature: 20 }, { one: 'thermoplastic' }, /plastic/],
    ['press-fit', { bore: 37, part: 40, uncertainty: 0, outer: 50, inner: 0, length: 8 }, {}, /hundredth/],
    [
      'press-fit',
      { bore: 37, part: 37, uncertainty: 0, outer: 36, inner: 0, length: 8 },
      {},
      /inside one another/,
    ],
    ['settling', { preload: 5000, grip: 8, head: 5, hole: 6, faces: 1 }, {}, /smaller than the head/],
    ['recheck-reading', { installed: 5 }, { way: 'loosening' }, /broke loose/],
    ['rotor-and-mount', { native: 160, rotor: 140, adapter: 0 }, {}, /smaller/],
    ['brake-wear', {}, {}, /Measure/],
    ['stopping-distance', { speed: 60, distance: 1 }, {}, /No bicycle/],
    ['pressure-ceiling', { width: 47 }, {}, /No limit is printed/],
    ['pressure-ceiling', { width: 47, tyre: 4 }, { straight: 'yes' }, /[Hh]ookless/],
    ['spoke-length', { erd: 567, pcd: 45, flange: 34, holes: 8, crosses: 9, hole: 2.6 }, {}, /crossings/],
    ['gearing', { ...gear(120, 6), seat: 700, width: 130 }, {}, /No rider/],
    ['chain-length', { ring: 36, sprocket: 15 }, {}, /distance or the links/],
    ['chain-length', { ring: 36, sprocket: 15, axle: 100 }, {}, /touch/],
    ['chain-length', { ring: 36, sprocket: 15, pitches: 20 }, {}, /No chain/],
    ['valve', { depth: 90 }, {}, /extender/],
    ['fit-by-letters', { size: 100 }, {}, /does not reach/],
    ['chain-wear', { measured: 350, pitches: 24, sprockets: 1 }, {}, /Count again/],
    ['bolt-circle', { bolts: 5 }, {}, /distance of two holes/],
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
