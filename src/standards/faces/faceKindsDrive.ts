import { dimension as d, faceKind, trait } from './faceKind.ts';

const chainWidth = d(
  'chainWidthMm',
  'chain width it is cut for',
  [1.5, 5.5],
  'Printed (3/32 is 2.38, 1/8 is 3.18); the tooth itself is a few tenths thinner.',
  false,
);

/** Faces between the pedals and the rear hub. */
export const driveFaces = {
  shell: faceKind(
    'bottom bracket shell',
    [
      d(
        'boreMm',
        'bore',
        [28, 54],
        'Inside jaws; in a thread measure crest to crest, twice at a right angle.',
      ),
      d('widthMm', 'width', [60, 130], 'Outside jaws from face to face, paint off the faces.', false),
      d(
        'toFrontAxleMm',
        'to the front axle',
        [350, 2500],
        'Tape from the middle of the shell, for the drawing.',
        false,
      ),
      d(
        'toRearAxleMm',
        'to the rear axle',
        [250, 1200],
        'Tape from the middle of the shell, for the drawing.',
        false,
      ),
    ],
    { named: true },
  ),
  'bb-cup': faceKind(
    'bottom bracket cups',
    [
      d(
        'diameterMm',
        'outside diameter',
        [28, 54],
        'Outside jaws over the thread, or over the pressed cup or bearing.',
      ),
      {
        ...d(
          'flangeMm',
          'flange',
          [0, 20],
          'Depth rod from the outer face to the face that meets the shell, one side; 0 when it sits flush.',
          false,
        ),
        between: true,
      },
    ],
    { named: true },
  ),
  'bb-bore': faceKind('bottom bracket bore', [
    d('boreMm', 'hole', [15, 31.5], 'Inside jaws in the bearing with its sleeve in place.'),
    d(
      'systemWidthMm',
      'width printed for the crank',
      [60, 140],
      'From its sheet: 86.5 road, 91.5 mountain. Measured over the bearings the second is 94.',
      false,
    ),
  ]),
  spindle: faceKind('crank spindle', [
    d('diameterMm', 'diameter', [15, 31.5], 'Outside jaws where the bearing will sit.'),
    d(
      'systemWidthMm',
      'width printed for it',
      [60, 140],
      'From its sheet: 86.5 road, 91.5 mountain. Measured over the bearings the second is 94.',
      false,
    ),
  ]),
  taper: faceKind(
    'square-taper spindle',
    [d('tipMm', 'across flats at the tip', [11.5, 14], 'Outside jaws flat to flat at the very end.', false)],
    { named: true },
  ),
  'taper-hole': faceKind('square-taper crank', [], { named: true }),
  spider: faceKind('spider', [
    d(
      'boltCircleMm',
      'bolt circle',
      [40, 160],
      'Hole to next hole, centre to centre, then by the number of bolts.',
    ),
    d('boltsCount', 'bolts', [1, 8], 'Count them.'),
    d(
      'chainlineMm',
      'chainline of the ring',
      [30, 70],
      'Middle of the seat tube to the middle of a tooth: half the tube plus the gap.',
      false,
    ),
  ]),
  'ring-mount': faceKind('chainring, mount', [
    d('boltCircleMm', 'bolt circle', [40, 160], 'Hole to next hole, centre to centre, then by the number.'),
    d('boltsCount', 'bolts', [1, 8], 'Count them.'),
  ]),
  'ring-teeth': faceKind('chainring, teeth', [
    d('teethCount', 'teeth', [16, 70], 'Count them, or read the stamp.'),
    chainWidth,
  ]),
  chain: faceKind('chain', [
    d(
      'chainWidthMm',
      'inner width',
      [1.5, 8],
      'Inside jaws between the inner plates, or the printed nominal width.',
    ),
    d('pitchesCount', 'links', [40, 200], 'Count all the links, inner and outer.', false),
  ]),
  'sprocket-teeth': faceKind('sprocket, teeth', [
    d('teethCount', 'teeth', [8, 60], 'Count them, or read the stamp.'),
    chainWidth,
  ]),
  'sprocket-mount': faceKind(
    'sprocket, mount',
    [d('boreMm', 'thread or bore', [20, 40], 'Inside jaws crest to crest.', false)],
    { named: true },
  ),
  'driver-mount': faceKind(
    'hub thread or freehub',
    [
      d('diameterMm', 'thread or body', [20, 40], 'Outside jaws over the thread.', false),
      d(
        'toothCentreMm',
        'locknut face to cog centre',
        [2, 60],
        'From the face that meets the dropout to the middle of the teeth, sprocket on.',
        false,
      ),
    ],
    {
      named: true,
      traits: [
        trait(
          'drive',
          'pedalling backwards',
          ['freewheels', 'fixed', 'back-pedal'],
          'Turn the sprocket backwards: it runs free, takes the wheel along, or brakes it.',
        ),
      ],
    },
  ),
  'pedal-hole': faceKind(
    'crank, pedal hole',
    [
      d('boreMm', 'thread', [11, 16], 'Inside jaws crest to crest.', false),
      d(
        'crankMm',
        'crank length',
        [60, 230],
        'Spindle centre to pedal hole centre; often stamped inside.',
        false,
      ),
    ],
    { named: true, traits: [trait('side', 'side', ['left', 'right', 'both'], 'As seated on the bike.')] },
  ),
  'pedal-spindle': faceKind(
    'pedal thread',
    [d('diameterMm', 'thread', [11, 16], 'Outside jaws over the thread.', false)],
    {
      named: true,
      traits: [trait('side', 'side', ['left', 'right', 'both'], 'Stamped L or R on the spindle.')],
    },
  ),
} as const;
