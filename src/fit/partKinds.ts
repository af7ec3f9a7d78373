import type { FaceKind } from '../standards/faces/faceKinds.ts';

interface PartKindRow {
  label: string;
  faces: readonly FaceKind[];
}

const kind = (label: string, ...faces: FaceKind[]): PartKindRow => ({ label, faces });

/** Part kinds and the faces each has, so that a form asks nothing else. Adapters have any two faces. */
const rows = {
  frame: kind(
    'frame',
    'head-tube-upper',
    'head-tube-lower',
    'shell',
    'seat-tube',
    'seat-tube-outside',
    'end-spacing',
    'axle-slot',
    'disc-mount',
    'tyre-room',
  ),
  fork: kind(
    'fork',
    'steerer',
    'steerer-inside',
    'crown-seat',
    'end-spacing',
    'axle-slot',
    'disc-mount',
    'tyre-room',
  ),
  headset: kind('headset', 'headset-cup-upper', 'headset-cup-lower', 'headset-bore', 'crown-race'),
  'top-cap': kind('top cap', 'steerer-cap'),
  stem: kind('stem', 'steerer-clamp', 'quill', 'bar-clamp'),
  bar: kind('bar', 'bar-centre', 'grip-area'),
  grips: kind('grips', 'grip-bore'),
  tape: kind('bar tape'),
  lever: kind('lever', 'lever-clamp'),
  'bottom-bracket': kind('bottom bracket', 'bb-cup', 'bb-bore', 'taper'),
  cranks: kind('cranks', 'spindle', 'taper-hole', 'spider', 'pedal-hole'),
  chainring: kind('chainring', 'ring-mount', 'ring-teeth'),
  chain: kind('chain', 'chain'),
  sprocket: kind('sprocket', 'sprocket-mount', 'sprocket-teeth'),
  pedals: kind('pedals', 'pedal-spindle'),
  'front-hub': kind('front hub', 'hub-spacing', 'axle', 'hub-holes', 'rotor-seat'),
  'rear-hub': kind('rear hub', 'hub-spacing', 'axle', 'hub-holes', 'driver-mount', 'rotor-seat'),
  'spoke-set': kind('spokes'),
  rim: kind('rim', 'rim-seat', 'rim-holes', 'valve-hole'),
  'rim-tape': kind('rim tape'),
  tyre: kind('tyre', 'tyre-bead'),
  tube: kind('tube', 'valve-stem'),
  valve: kind('tubeless valve', 'valve-stem'),
  rotor: kind('rotor', 'rotor-mount', 'rotor-size'),
  caliper: kind('brake caliper', 'caliper-mount'),
  cable: kind('cable or hose'),
  seatpost: kind('seatpost', 'post', 'post-head'),
  'seat-clamp': kind('seat clamp', 'seat-clamp'),
  saddle: kind('saddle', 'saddle-mount'),
  adapter: kind('adapter'),
  shim: kind('shim'),
  sleeve: kind('sleeve'),
  spacer: kind('spacer'),
  other: kind('other part'),
} as const;

/** Stored in the journal: a kind is never renamed. */
export type PartKind = keyof typeof rows;

/** Label and faces of every kind of part. */
export const partKinds: Record<PartKind, PartKindRow> = rows;

export const partKindIds = Object.keys(rows) as PartKind[];

/** Kinds whose two faces bridge two other parts. */
export const bridgingKinds: readonly PartKind[] = ['adapter', 'shim', 'sleeve'];
