import type { Face } from '../../src/fit/faces/face.ts';
import type { PartKind } from '../../src/fit/partKinds.ts';
import type { PilePart } from '../../src/fit/pile.ts';

/** Piles of invented parts of mixed standards, the same for the same seed, for what takes time. */

type Dice = <T>(...of: readonly [T, ...T[]]) => T;

/** A linear congruential generator with the constants of "Numerical Recipes", from memory; any would do. */
function diceOf(seed: number): Dice {
  let state = seed >>> 0;
  return (first, ...more) => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    const at = Math.floor((state / 2 ** 32) * (more.length + 1));
    return at === 0 ? first : (more[at - 1] ?? first);
  };
}

type Sketch = Pick<Face, 'kind'> & Partial<Pick<Face, 'standard' | 'nominal' | 'traits'>>;

const sized = (
  kind: Face['kind'],
  nominal: Record<string, number>,
  traits?: Record<string, string>,
): Sketch => ({
  kind,
  nominal,
  ...(traits ? { traits } : {}),
});
const named = (kind: Face['kind'], standard: string, nominal: Record<string, number> = {}): Sketch => ({
  kind,
  standard,
  nominal,
});

const rim = (dice: Dice): Sketch[] => [
  sized(
    'rim-seat',
    { beadSeatMm: dice(622, 622, 584), innerWidthMm: dice(19, 21, 23), maxPressureBar: 5 },
    { bead: 'hooked' },
  ),
  sized('rim-holes', { holesCount: dice(32, 32, 36, 28) }),
];
const tyre = (dice: Dice): Sketch[] => [
  sized(
    'tyre-bead',
    { widthMm: dice(32, 38, 42), beadSeatMm: dice(622, 622, 584), maxPressureBar: 4 },
    { tubeless: dice('yes', 'no'), run: 'tube' },
  ),
];
const rotor = (dice: Dice): Sketch[] => [
  named('rotor-mount', dice('six-bolt', 'centre-lock')),
  sized('rotor-size', { diameterMm: dice(160, 160, 180, 203) }),
];
const caliper = (dice: Dice): Sketch[] => [named('caliper-mount', dice('post', 'is'))];

const code = (dice: Dice): string => dice('EC30/25.4', 'EC34/28.6', 'EC34/28.6');

/** One part of each kind a bike needs, and what may lie between; a shelf goes through the list again and again. */
const order: readonly (readonly [PartKind, (dice: Dice) => Sketch[], ('front' | 'rear')?])[] = [
  [
    'fork',
    (dice) => [
      sized(
        'steerer',
        { diameterMm: dice(28.6, 28.6, 25.4), lengthMm: dice(210, 230, 260) },
        { tube: 'plain', material: 'steel' },
      ),
      sized('crown-seat', { diameterMm: dice(30, 30, 26.4) }, { race: 'loose' }),
      named('end-spacing', 'front-100'),
      sized('axle-slot', { widthMm: 9 }, { material: 'steel', shape: 'open' }),
      named('disc-mount', dice('is', 'post'), { nativeRotorMm: 160 }),
      sized('tyre-room', { widthMm: dice(40, 50) }),
    ],
  ],
  [
    'headset',
    (dice) => {
      const standard = code(dice);
      return [
        named('headset-cup-upper', standard, { stackMm: dice(12, 16) }),
        named('headset-cup-lower', standard, { stackMm: dice(10, 12) }),
        named('headset-bore', standard),
        named('crown-race', standard),
      ];
    },
  ],
  [
    'stem',
    (dice) => [
      sized('steerer-clamp', { boreMm: 28.6, heightMm: 40 }),
      sized('bar-clamp', { boreMm: dice(31.8, 26, 25.4) }),
    ],
  ],
  [
    'bar',
    (dice) => [sized('bar-centre', { diameterMm: dice(31.8, 26, 25.4) }), named('grip-area', 'grip-22.2')],
  ],
  ['grips', () => [named('grip-bore', 'grip-22.2')]],
  ['bottom-bracket', () => [named('bb-cup', 'iso'), named('bb-bore', 'round-24', { systemWidthMm: 91.5 })]],
  [
    'cranks',
    (dice) => [
      named('spindle', dice('round-24', 'round-24', 'round-22')),
      named('spider', dice('104/4', '104/4', '130/5')),
      named('pedal-hole', dice('9/16x20', '9/16x20', '1/2x20')),
    ],
  ],
  [
    'chainring',
    (dice) => [
      named('ring-mount', dice('104/4', '104/4', '130/5')),
      sized('ring-teeth', { teethCount: dice(34, 38, 42), chainWidthMm: 2.38 }),
    ],
  ],
  ['chain', (dice) => [sized('chain', { chainWidthMm: dice(3.175, 2.38), pitchesCount: dice(104, 112) })]],
  [
    'sprocket',
    (dice) => [
      named('sprocket-mount', '1.375x24'),
      sized('sprocket-teeth', { teethCount: dice(15, 16, 17, 18), chainWidthMm: 2.38 }),
    ],
  ],
  ['pedals', (dice) => [named('pedal-spindle', dice('9/16x20', '9/16x20', '1/2x20'))]],
  [
    'rear-hub',
    (dice) => [
      named('hub-spacing', dice('rear-120', 'rear-130', 'rear-135')),
      sized('axle', { diameterMm: dice(9.525, 10) }, { type: 'solid' }),
      sized('hub-holes', { holesCount: dice(32, 32, 36) }),
      named('driver-mount', '1.375x24'),
      named('rotor-seat', dice('six-bolt', 'centre-lock')),
    ],
  ],
  ['rim', rim, 'rear'],
  ['tyre', tyre, 'rear'],
  [
    'front-hub',
    (dice) => [
      named('hub-spacing', 'front-100'),
      sized('axle', { diameterMm: 9 }, { type: 'hollow' }),
      sized('hub-holes', { holesCount: dice(32, 32, 36, 28) }),
      named('rotor-seat', dice('six-bolt', 'centre-lock')),
    ],
  ],
  ['rim', rim, 'front'],
  ['tyre', tyre, 'front'],
  [
    'seatpost',
    (dice) => [sized('post', { diameterMm: dice(27.2, 27.2, 25.4) }), named('post-head', 'two-rail')],
  ],
  ['saddle', () => [named('saddle-mount', 'two-rail')]],
  ['rotor', rotor],
  ['caliper', caliper],
  [
    'shim',
    (dice) => {
      const [outsideMm, insideMm] = dice([31.8, 26], [31.8, 25.4], [26, 25.4]);
      return [sized('bar-centre', { diameterMm: outsideMm }), sized('bar-clamp', { boreMm: insideMm })];
    },
  ],
  ['rotor', rotor],
  ['caliper', caliper],
  [
    'adapter',
    () => [
      named('caliper-mount', 'is', { rotorMm: 160 }),
      named('disc-mount', 'post', { nativeRotorMm: 180 }),
    ],
  ],
];

const built = (partId: string, kind: PartKind, sketches: readonly Sketch[]): PilePart => ({
  partId,
  kind,
  name: partId.replaceAll('-', ' '),
  faces: sketches.map((sketch) => ({
    faceId: sketch.kind,
    standard: null,
    nominal: {},
    measured: {},
    ...sketch,
  })),
});

/** A steel frame that nearly everything on the shelf meets, some of it only with something between. */
export const frame: PilePart = built('frame', 'frame', [
  named('head-tube-upper', 'EC34/28.6', { lengthMm: 120 }),
  named('head-tube-lower', 'EC34/28.6'),
  named('shell', 'iso', { widthMm: 68 }),
  sized('seat-tube', { boreMm: 27.2 }),
  { ...named('end-spacing', 'rear-130'), traits: { material: 'steel' } },
  sized('axle-slot', { widthMm: 10, nearestMm: 395, farthestMm: 420 }, { material: 'steel', shape: 'open' }),
  named('disc-mount', 'is'),
  sized('tyre-room', { widthMm: 45 }),
]);

/**
 * A shelf of parts with masses and sizes thrown by a fixed seed.
 * @param count parts, whole, ≥ 0
 * @example shelfOfParts(60).length //=> 60
 */
export function shelfOfParts(count: number, seed = 41): PilePart[] {
  const dice = diceOf(seed);
  return Array.from({ length: count }, (_, at) => {
    const row = order[at % order.length];
    if (!row) throw new RangeError('the order of parts is empty');
    const [kind, facesOf, position] = row;
    const part = built(`${position ? `${position}-` : ''}${kind}-${at}`, kind, facesOf(dice));
    return {
      ...part,
      massG: 100 + dice(0, 7, 19, 35, 52, 70, 88, 103, 121, 140, 177, 210, 233, 251, 262, 290),
      ...(position ? { position } : {}),
    };
  });
}
