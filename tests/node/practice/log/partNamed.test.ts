import { expect, test } from 'vitest';
import { partKindIds, partKinds } from '../../../../src/fit/partKinds.ts';
import { partNamed } from '../../../../src/practice/log/partNamed.ts';

// Common practice, no source: what the trade calls each part.
test.each([
  ['saddle', { kind: 'saddle' }],
  ['Old leather seat', { kind: 'saddle' }],
  ['seat tube', { kind: 'frame' }],
  ['seatpost', { kind: 'seatpost' }],
  ['seat collar', { kind: 'seat-clamp' }],
  ['dropout', { kind: 'frame' }],
  ['rear dropouts', { kind: 'frame', position: 'rear' }],
  ['front dropout', { kind: 'fork', position: 'front' }],
  ['head tube', { kind: 'frame' }],
  ['BB shell', { kind: 'frame' }],
  ['BB', { kind: 'bottom-bracket' }],
  ['chain stay', { kind: 'frame' }],
  ['chain', { kind: 'chain' }],
  ['chainring', { kind: 'chainring' }],
  ['steerer', { kind: 'fork' }],
  ['front hub', { kind: 'front-hub', position: 'front' }],
  ['hub axle', { kind: 'rear-hub' }],
  ['inner tube', { kind: 'tube' }],
  ['rear tire', { kind: 'tyre', position: 'rear' }],
  ['tubeless valve', { kind: 'valve' }],
  ['rim strip', { kind: 'rim-tape' }],
  ['bar tape', { kind: 'tape' }],
  ['handlebar', { kind: 'bar' }],
  ['quill stem', { kind: 'stem' }],
  ['brake lever', { kind: 'lever' }],
  ['brake hose', { kind: 'cable' }],
  ['left crank arm', { kind: 'cranks' }],
  ['track cog', { kind: 'sprocket' }],
  ['headset spacer', { kind: 'spacer' }],
  ['disc adapter', { kind: 'adapter' }],
  ['bell', { kind: 'other' }],
  ['', { kind: 'other' }],
] as const)('%s', (name, meant) => {
  expect(partNamed(name)).toEqual(meant);
});

test('the name each kind of part has in the app is read as that kind', () => {
  const misread = partKindIds.filter((kind) => partNamed(partKinds[kind].label).kind !== kind);
  expect(misread).toEqual([]);
});
