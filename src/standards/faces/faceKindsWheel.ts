import { dimension as d, faceKind, trait } from './faceKind.ts';

const beadSeat = d(
  'beadSeatMm',
  'bead seat diameter',
  [130, 800],
  'The ETRTO bead seat, e.g. 622. Ignore the inch size.',
);
/** What a spoke length needs of one flange. */
const flange = (side: 'left' | 'drive', label: string) => [
  d(
    `${side}CircleMm`,
    `${label} hole circle`,
    [12, 390],
    'Outer edge of one hole to the inner edge of the opposite one.',
    false,
  ),
  d(
    `${side}FlangeMm`,
    `${label} flange to centre`,
    [0, 125],
    'Locknut to the middle of the flange; taken from half the hub width.',
    false,
  ),
];
const pressure = d('maxPressureBar', 'maximum pressure, as marked', [0.5, 12], 'Printed on the part.', false);

/** Faces of hubs, rims, tyres and disc brakes. */
export const wheelFaces = {
  'hub-spacing': faceKind('hub width', [
    d('spacingMm', 'over the locknuts', [70, 205], 'Outside jaws over the faces that meet the dropouts.'),
  ]),
  axle: faceKind(
    'axle',
    [
      d('diameterMm', 'diameter', [4.5, 21], 'Outside jaws on the part that lies in the slot.'),
      {
        ...d(
          'overCapsMm',
          'width over end caps',
          [70, 205],
          'Caps on the hub: outside jaws over the faces that meet the dropouts.',
          false,
        ),
        between: true,
      },
    ],
    {
      traits: [
        trait(
          'type',
          'type',
          ['solid', 'hollow', 'bolts', 'through'],
          'Solid: nuts; hollow: thin skewer; bolts: threaded into the axle; thru-axle: pulls out sideways.',
        ),
      ],
    },
  ),
  'hub-holes': faceKind('hub, spoke holes', [
    d('holesCount', 'holes', [12, 56], 'Count both flanges.'),
    ...flange('left', 'left'),
    ...flange('drive', 'drive side'),
    d(
      'holeMm',
      'hole in the flange',
      [1.5, 5],
      'Inside jaws, or the shank of a drill that just goes in.',
      false,
    ),
  ]),
  'rotor-seat': faceKind(
    'hub, rotor mount',
    [
      d(
        'rotorGapMm',
        'rotor to end face',
        [0, 30],
        'Outer face of the rotor mount to the left face that meets the frame.',
        false,
      ),
    ],
    { named: true },
  ),
  'rim-holes': faceKind('rim, spoke holes', [
    d('holesCount', 'holes', [12, 56], 'Count once round.'),
    d(
      'erdMm',
      'effective rim diameter',
      [100, 700],
      'Two rods of known length in opposite holes, ends where the spokes shall end: rods plus the gap between them.',
      false,
    ),
  ]),
  'rim-seat': faceKind(
    'rim bead seat',
    [
      beadSeat,
      d(
        'innerWidthMm',
        'inner width',
        [10, 110],
        'Inside jaws between the hooks or walls, at the top.',
        false,
      ),
      pressure,
    ],
    {
      traits: [
        trait(
          'bead',
          'rim wall',
          ['hooked', 'straight'],
          'A fingernail catches under a hook; a straight wall has none.',
        ),
      ],
    },
  ),
  'valve-hole': faceKind('rim, valve hole', [
    d('diameterMm', 'hole', [5, 10], 'Inside jaws, or the shank of a drill that just goes in.'),
  ]),
  'valve-stem': faceKind('valve', [
    d('diameterMm', 'stem', [5, 9], 'Outside jaws over the thread or rubber next to the tyre side.'),
  ]),
  'tyre-bead': faceKind(
    'tyre',
    [
      d(
        'widthMm',
        'width',
        [18, 130],
        'The two- or three-digit number before the dash; inflated, measure it.',
      ),
      beadSeat,
      pressure,
    ],
    {
      traits: [
        trait('tubeless', 'marked tubeless', ['yes', 'no'], 'Only a printed mark counts.'),
        trait('run', 'run with', ['tube', 'sealant'], 'What you mean to do.'),
      ],
    },
  ),
  'rotor-mount': faceKind('rotor, mount', [], { named: true }),
  'rotor-size': faceKind('rotor', [
    d('diameterMm', 'diameter', [120, 230], 'Printed, or outside jaws over the braking ring.'),
    d(
      'thicknessMm',
      'thickness',
      [0.8, 4],
      'Outside jaws on the track the pads run on, at several places; keep the thinnest.',
      false,
    ),
    d('minimumMm', 'minimum thickness', [0.8, 3.5], 'Marked on the rotor, often as MIN TH.', false),
  ]),
  'caliper-mount': faceKind(
    'caliper mount',
    [
      d('holeSpacingMm', 'bolt hole spacing', [18, 82], 'Bolt centre to bolt centre.', false),
      d('rotorMm', 'rotor size', [120, 230], 'The rotor that goes on this wheel.', false),
    ],
    { named: true },
  ),
} as const;
