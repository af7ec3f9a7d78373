import { expect, test } from 'vitest';
import { faceKindIds, faceKinds } from '../../../../src/standards/faces/faceKinds.ts';

// Between these a size is taken as typed. Our own choice around the sizes of the tables, typed again: a decision changes
// here and there, a slip of the finger only there.
const ranges = [
  ['head-tube-upper', 'boreMm 28 62, lengthMm 60 260'],
  ['head-tube-lower', 'boreMm 28 66'],
  ['headset-cup-upper', 'diameterMm 28 62, stackMm 0 60'],
  ['headset-cup-lower', 'diameterMm 28 66, stackMm 0 60'],
  ['headset-bore', 'boreMm 20 39'],
  ['crown-race', 'boreMm 25 41'],
  ['steerer', 'diameterMm 20 39, lengthMm 80 420'],
  ['steerer-inside', 'boreMm 19 34'],
  ['quill', 'diameterMm 19 32'],
  ['crown-seat', 'diameterMm 25 41'],
  ['steerer-clamp', 'boreMm 20 40, heightMm 20 80'],
  ['bar-clamp', 'boreMm 20 36.5, widthMm 25 80'],
  ['bar-centre', 'diameterMm 20 36.5'],
  ['grip-area', 'diameterMm 20 26'],
  ['grip-bore', 'boreMm 20 26'],
  ['lever-clamp', 'boreMm 20 26'],
  ['end-spacing', 'spacingMm 70 205'],
  ['axle-slot', 'widthMm 7 22, nearestMm 250 600, farthestMm 250 650'],
  ['disc-mount', 'holeSpacingMm 18 82, nativeRotorMm 120 230, largestRotorMm 120 230'],
  ['tyre-room', 'widthMm 15 140'],
  ['seat-tube', 'boreMm 20 36, lengthMm 60 750'],
  ['seat-tube-outside', 'diameterMm 22 42'],
  ['seat-clamp', 'boreMm 22 42'],
  ['post', 'diameterMm 20 36, insertionMm 40 200, outMm 20 650'],
  ['post-head', 'railMm 5 12, railHeightMm 5 12'],
  ['saddle-mount', 'railMm 5 12, railHeightMm 5 12'],
  ['shell', 'boreMm 28 54, widthMm 60 130, toFrontAxleMm 350 2500, toRearAxleMm 250 1200'],
  ['bb-cup', 'diameterMm 28 54, flangeMm 0 20'],
  ['bb-bore', 'boreMm 15 31.5, systemWidthMm 60 140'],
  ['spindle', 'diameterMm 15 31.5, systemWidthMm 60 140'],
  ['taper', 'tipMm 11.5 14'],
  ['spider', 'boltCircleMm 40 160, boltsCount 1 8, chainlineMm 30 70'],
  ['ring-mount', 'boltCircleMm 40 160, boltsCount 1 8'],
  ['ring-teeth', 'teethCount 16 70, chainWidthMm 1.5 5.5'],
  ['chain', 'chainWidthMm 1.5 8, pitchesCount 40 200'],
  ['sprocket-teeth', 'teethCount 8 60, chainWidthMm 1.5 5.5'],
  ['sprocket-mount', 'boreMm 20 40'],
  ['driver-mount', 'diameterMm 20 40, toothCentreMm 2 60'],
  ['pedal-hole', 'boreMm 11 16, crankMm 60 230'],
  ['pedal-spindle', 'diameterMm 11 16'],
  ['hub-spacing', 'spacingMm 70 205'],
  ['axle', 'diameterMm 4.5 21, overCapsMm 70 205'],
  [
    'hub-holes',
    'holesCount 12 56, leftCircleMm 12 390, leftFlangeMm 0 125, driveCircleMm 12 390, driveFlangeMm 0 125, holeMm 1.5 5',
  ],
  ['rotor-seat', 'rotorGapMm 0 30'],
  ['rim-holes', 'holesCount 12 56, erdMm 100 700'],
  ['rim-seat', 'beadSeatMm 130 800, innerWidthMm 10 110, maxPressureBar 0.5 12'],
  ['valve-hole', 'diameterMm 5 10'],
  ['valve-stem', 'diameterMm 5 9'],
  ['tyre-bead', 'widthMm 18 130, beadSeatMm 130 800, maxPressureBar 0.5 12'],
  ['rotor-size', 'diameterMm 120 230, thicknessMm 0.8 4, minimumMm 0.8 3.5'],
  ['caliper-mount', 'holeSpacingMm 18 82, rotorMm 120 230'],
] as const;

test.each(ranges)('%s: %s', (kind, told) =>
  expect(faceKinds[kind].dimensions.map(({ key, min, max }) => `${key} ${min} ${max}`).join(', ')).toBe(told),
);

test('every kind with a size is here', () => {
  const measured = faceKindIds.filter((kind) => faceKinds[kind].dimensions.length > 0);
  expect([...ranges.map(([kind]) => kind)].sort()).toEqual([...measured].sort());
});

// A left pedal in the left arm: the two sides are named alike on both, or nothing would ever match.
test('both sides are told on arm and pedal, the left one first', () => {
  for (const kind of ['pedal-hole', 'pedal-spindle'] as const)
    expect(faceKinds[kind].traits?.find(({ key }) => key === 'side')?.choices).toEqual([
      'left',
      'right',
      'both',
    ]);
});
