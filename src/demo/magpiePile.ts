import type { Face } from '../fit/faces/face.ts';
import type { PilePart } from '../fit/pile.ts';

/** The pile of an invented bike: a steel track frame, and what was in the boxes. Every figure is made up. */

type FaceSketch = Partial<Pick<Face, 'standard' | 'nominal' | 'traits'>> & Pick<Face, 'kind'>;

const part = (
  partId: string,
  kind: PilePart['kind'],
  name: string,
  faces: FaceSketch[],
  position?: PilePart['position'],
): PilePart => ({
  partId,
  kind,
  name,
  faces: faces.map((face) => ({ faceId: face.kind, standard: null, nominal: {}, measured: {}, ...face })),
  ...(position ? { position } : {}),
});

const rim = (position: 'front' | 'rear'): PilePart =>
  part(
    `rim-${position}`,
    'rim',
    `rim, ${position}`,
    [
      {
        kind: 'rim-seat',
        nominal: { beadSeatMm: 584, innerWidthMm: 23, maxPressureBar: 4 },
        traits: { bead: 'hooked' },
      },
      { kind: 'rim-holes', nominal: { holesCount: 32 } },
      { kind: 'valve-hole', nominal: { diameterMm: 8.4 } },
    ],
    position,
  );

const tyre = (position: 'front' | 'rear'): PilePart =>
  part(
    `tyre-${position}`,
    'tyre',
    `tyre, ${position}`,
    [
      {
        kind: 'tyre-bead',
        nominal: { widthMm: 47, beadSeatMm: 584, maxPressureBar: 3.5 },
        traits: { tubeless: 'no', run: 'sealant' },
      },
    ],
    position,
  );

const valvePart = (position: 'front' | 'rear'): PilePart =>
  part(
    `valve-${position}`,
    'valve',
    `valve, ${position}`,
    [{ kind: 'valve-stem', nominal: { diameterMm: 6 } }],
    position,
  );

const frontHub = (letter: 'a' | 'b', holesCount: number): PilePart =>
  part(`front-hub-${letter}`, 'front-hub', `front hub ${letter.toUpperCase()}`, [
    { kind: 'hub-spacing', standard: 'front-100' },
    { kind: 'axle', standard: 'axle-9', traits: { type: 'hollow' } },
    { kind: 'hub-holes', nominal: { holesCount } },
    { kind: 'rotor-seat', standard: 'six-bolt' },
  ]);

export const magpiePile: readonly PilePart[] = [
  part('frame', 'frame', 'steel track frame', [
    { kind: 'head-tube-upper', standard: 'EC30/25.4', nominal: { boreMm: 30.1 } },
    { kind: 'head-tube-lower', standard: 'EC30/25.4', nominal: { boreMm: 30.1 } },
    { kind: 'shell', standard: 'iso', nominal: { widthMm: 68, toFrontAxleMm: 592 } },
    { kind: 'seat-tube', nominal: { boreMm: 27.2, lengthMm: 540 } },
    { kind: 'end-spacing', standard: 'rear-120', traits: { material: 'steel' } },
    {
      kind: 'axle-slot',
      nominal: { widthMm: 10, nearestMm: 398, farthestMm: 420 },
      traits: { material: 'steel', shape: 'open' },
    },
    { kind: 'tyre-room', nominal: { widthMm: 50 } },
  ]),
  part('fork', 'fork', 'steel fork', [
    { kind: 'steerer', nominal: { diameterMm: 25.4 }, traits: { tube: 'plain', material: 'steel' } },
    { kind: 'crown-seat', nominal: { diameterMm: 26.4 }, traits: { race: 'loose' } },
    { kind: 'end-spacing', standard: 'front-100', traits: { material: 'steel' } },
    { kind: 'axle-slot', nominal: { widthMm: 9 }, traits: { material: 'steel', shape: 'open' } },
    { kind: 'disc-mount', standard: 'is' },
    { kind: 'tyre-room', nominal: { widthMm: 52 } },
  ]),
  part('headset', 'headset', 'external headset', [
    { kind: 'headset-cup-upper', standard: 'EC30/25.4' },
    { kind: 'headset-cup-lower', standard: 'EC30/25.4' },
    { kind: 'headset-bore', standard: 'EC30/25.4' },
    { kind: 'crown-race', standard: 'EC30/25.4', nominal: { boreMm: 26.4 } },
  ]),
  part('stem', 'stem', 'stem', [
    { kind: 'steerer-clamp', nominal: { boreMm: 28.6 } },
    { kind: 'bar-clamp', standard: 'bar-31.8' },
  ]),
  part('bar', 'bar', 'bar', [
    { kind: 'bar-centre', standard: 'bar-26', traits: { shape: 'swept' } },
    { kind: 'grip-area', standard: 'grip-22.2' },
  ]),
  part('bottom-bracket', 'bottom-bracket', 'threaded cups', [
    { kind: 'bb-cup', standard: 'iso' },
    { kind: 'bb-bore', standard: 'round-24', nominal: { systemWidthMm: 91.5 } },
  ]),
  part('cranks', 'cranks', 'two-piece cranks', [
    { kind: 'spindle', standard: 'round-24' },
    { kind: 'spider', standard: '104/4' },
    { kind: 'pedal-hole', standard: '9/16x20', nominal: { crankMm: 165 }, traits: { side: 'both' } },
  ]),
  part('chainring', 'chainring', 'chainring', [
    { kind: 'ring-mount', standard: '104/4' },
    { kind: 'ring-teeth', nominal: { teethCount: 36, chainWidthMm: 2.38 } },
  ]),
  part('chain', 'chain', 'chain', [{ kind: 'chain', nominal: { chainWidthMm: 3.175, pitchesCount: 112 } }]),
  part('sprocket', 'sprocket', 'freewheel', [
    { kind: 'sprocket-mount', standard: '1.375x24' },
    { kind: 'sprocket-teeth', nominal: { teethCount: 15, chainWidthMm: 2.38 } },
  ]),
  part('rear-hub', 'rear-hub', 'rear hub', [
    { kind: 'hub-spacing', standard: 'rear-130' },
    { kind: 'axle', standard: 'axle-3/8', traits: { type: 'solid' } },
    { kind: 'hub-holes', nominal: { holesCount: 32 } },
    { kind: 'driver-mount', standard: '1.375x24' },
  ]),
  frontHub('a', 28),
  frontHub('b', 32),
  rim('front'),
  rim('rear'),
  tyre('front'),
  tyre('rear'),
  valvePart('front'),
  valvePart('rear'),
  part(
    'rotor',
    'rotor',
    'rotor',
    [
      { kind: 'rotor-mount', standard: 'six-bolt' },
      { kind: 'rotor-size', nominal: { diameterMm: 180 } },
    ],
    'front',
  ),
  part('caliper', 'caliper', 'caliper', [{ kind: 'caliper-mount', standard: 'post' }], 'front'),
  part('seatpost', 'seatpost', 'seatpost', [
    { kind: 'post', standard: 'post-25.4', nominal: { outMm: 140 } },
    { kind: 'post-head', standard: 'two-rail' },
  ]),
  part('saddle', 'saddle', 'saddle', [{ kind: 'saddle-mount', standard: 'two-rail' }]),
  part('pedals', 'pedals', 'pedals', [
    { kind: 'pedal-spindle', standard: '9/16x20', traits: { side: 'both' } },
  ]),
  part('grips', 'grips', 'lock-on grips', [{ kind: 'grip-bore', standard: 'grip-22.2' }]),
];
