import { expect, test } from 'vitest';
import { jointNamed } from '../../../../src/practice/log/jointNamed.ts';
import { jointKinds } from '../../../../src/standards/jointKinds.ts';

// Common practice, no source: what the trade calls each place.
test.each([
  ['stem', { kind: 'stem-steerer' }],
  ['Stem clamp on steerer', { kind: 'stem-steerer' }],
  ['STEERER CLAMP', { kind: 'stem-steerer' }],
  ['quill stem', { kind: 'stem-quill' }],
  ['stem face plate', { kind: 'bar-clamp' }],
  ['handlebar', { kind: 'bar-clamp' }],
  ['rotor bolts', { kind: 'rotor' }],
  ['front disc bolts', { kind: 'rotor' }],
  ['rotor adapter', { kind: 'brake-mount' }],
  ['post mount', { kind: 'brake-mount' }],
  ['caliper', { kind: 'caliper' }],
  ['brake lever', { kind: 'lever-clamp' }],
  ['brake cable', { kind: 'cable-anchor' }],
  ['saddle', { kind: 'saddle-rails' }],
  ['seat rails', { kind: 'saddle-rails' }],
  ['seatpost', { kind: 'seatpost' }],
  ['seat clamp', { kind: 'seatpost' }],
  ['seat collar', { kind: 'seatpost' }],
  ['crank bolt', { kind: 'crank' }],
  ['left crank', { kind: 'crank', side: 'left' }],
  ['cranks', { kind: 'crank' }],
  ['crank pinch bolts', { kind: 'crank-pinch' }],
  ['pinch bolts of the left crank', { kind: 'crank-pinch', side: 'left' }],
  ['right pedal', { kind: 'pedal', side: 'right' }],
  ['chainring bolts', { kind: 'chainring' }],
  ['chain', { kind: 'chain' }],
  ['quick link', { kind: 'chain' }],
  ['BB', { kind: 'bottom-bracket' }],
  ['bottom bracket, drive side', { kind: 'bottom-bracket', side: 'right' }],
  ['track lockring', { kind: 'lockring' }],
  ['cassette', { kind: 'sprocket' }],
  ['freewheel', { kind: 'freewheel' }],
  ['top cap', { kind: 'headset' }],
  ['crown race', { kind: 'crown-race' }],
  ['front axle nuts', { kind: 'front-axle' }],
  ['dropout', { kind: 'rear-axle' }],
  ['front dropout', { kind: 'front-axle' }],
  ['rear wheel nuts', { kind: 'rear-axle' }],
  ['thru-axle', { kind: 'thru-axle' }],
  ['front thru axle', { kind: 'thru-axle' }],
  ['rear tyre', { kind: 'bead' }],
  ['front tire', { kind: 'bead' }],
  ['spokes', { kind: 'spokes' }],
  ['grips', { kind: 'grip' }],
  ['mudguard stay', { kind: 'mudguard' }],
  ['fender', { kind: 'mudguard' }],
  ['front rack', { kind: 'rack' }],
  ['fork', { kind: 'fork' }],
  ['barrel adjuster', { kind: 'other' }],
  ['bell', { kind: 'other' }],
  ['', { kind: 'other' }],
] as const)('%s', (name, meant) => {
  expect(jointNamed(name)).toEqual(meant);
});

test('the name each kind of joint has in the app is read as that kind', () => {
  const misread = jointKinds.filter(({ kind, label }) => jointNamed(label).kind !== kind);
  expect(misread.map(({ label }) => label)).toEqual([]);
});
