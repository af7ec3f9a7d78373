import { dimension as d, faceKind, trait } from './faceKind.ts';

const material = trait(
  'material',
  'material',
  ['steel', 'titanium', 'aluminium', 'carbon'],
  'A magnet sticks to steel only; a knock on carbon sounds dull.',
);
const angle = trait(
  'angle',
  'bearing angle',
  ['36', '45', 'none'],
  'Read it on the edge of the bearing; cups that are pressed in have none.',
);

/** Faces from the grips down to the crown. */
export const steeringFaces = {
  'head-tube-upper': faceKind('head tube, upper end', [
    d('boreMm', 'bore', [28, 62], 'Inside jaws at the upper rim, twice at a right angle; keep the smaller.'),
    d('lengthMm', 'head tube length', [60, 260], 'Outside jaws from rim to rim, cups out.', false),
  ]),
  'head-tube-lower': faceKind('head tube, lower end', [
    d('boreMm', 'bore', [28, 66], 'Inside jaws at the lower rim, twice at a right angle; keep the smaller.'),
  ]),
  'headset-cup-upper': faceKind(
    'headset, upper cup or bearing',
    [
      d(
        'diameterMm',
        'outside diameter',
        [28, 62],
        'Outside jaws on the pressed part of the cup, or across the bearing.',
      ),
      d(
        'stackMm',
        'height above the tube',
        [0, 60],
        'Depth rod from cover to the rim that meets the tube.',
        false,
      ),
    ],
    { traits: [angle] },
  ),
  'headset-cup-lower': faceKind(
    'headset, lower cup or bearing',
    [
      d(
        'diameterMm',
        'outside diameter',
        [28, 66],
        'Outside jaws on the pressed part of the cup, or across the bearing.',
      ),
      d('stackMm', 'height below the tube', [0, 60], 'From the rim that meets the tube to the crown.', false),
    ],
    { traits: [angle] },
  ),
  'headset-bore': faceKind('headset inner diameter', [
    d(
      'boreMm',
      'hole',
      [20, 39],
      'Inside jaws in the centring ring of the top cover, or the size in its name.',
    ),
  ]),
  'crown-race': faceKind(
    'headset, crown race',
    [d('boreMm', 'bore', [25, 41], 'Inside jaws in the loose race, from the flat side.')],
    { traits: [angle] },
  ),
  steerer: faceKind(
    'steerer',
    [
      d(
        'diameterMm',
        'outside diameter',
        [20, 39],
        'Outside jaws, about 25 mm below the top, clear of any thread.',
      ),
      d('lengthMm', 'length', [80, 420], 'From the crown seat shoulder to the top.', false),
    ],
    {
      traits: [
        material,
        trait('tube', 'tube', ['plain', 'threaded'], 'Look for a thread outside the top end.'),
        trait('inside', 'inside', ['plain', 'threaded'], 'Shine a light into the top end.'),
      ],
    },
  ),
  'steerer-inside': faceKind('steerer, inside', [
    d('boreMm', 'bore', [19, 34], 'Inside jaws at the top, below any burr; a quill or a star nut sits here.'),
  ]),
  quill: faceKind('stem quill', [
    d('diameterMm', 'diameter', [19, 32], 'Outside jaws on the shaft, above the wedge.'),
  ]),
  'steerer-cap': faceKind('top cap and anchor', [], {
    traits: [
      trait(
        'pulls',
        'pulls on',
        ['star-nut', 'expander', 'thread'],
        'Star nut: hammered in, stays. Expander: comes out. Thread: cut in the steerer.',
      ),
    ],
  }),
  'crown-seat': faceKind(
    'crown race seat',
    [d('diameterMm', 'seat', [25, 41], 'Outside jaws on the ground ring right above the crown, race off.')],
    {
      traits: [
        trait(
          'race',
          'race',
          ['loose', 'machined-36', 'machined-45'],
          'If the bearing would run on the fork itself, the race is machined on.',
        ),
      ],
    },
  ),
  'steerer-clamp': faceKind('stem, steerer clamp', [
    d(
      'boreMm',
      'bore',
      [20, 40],
      'Bolts loose, no wedge in the slit; inside jaws across the slit and along it.',
    ),
    d('heightMm', 'clamp height', [20, 80], 'Outside jaws from the lower edge to the upper edge.', false),
  ]),
  'bar-clamp': faceKind('stem, bar clamp', [
    d('boreMm', 'bore', [20, 36.5], 'Face plate on and just touching; inside jaws twice at a right angle.'),
    d('widthMm', 'clamp width', [25, 80], 'Outside jaws across the clamp, along the bar.', false),
  ]),
  'bar-centre': faceKind(
    'bar clamp area',
    [
      d(
        'diameterMm',
        'diameter',
        [20, 36.5],
        'Outside jaws on the bare middle, next to where the stem sits.',
      ),
    ],
    {
      traits: [
        material,
        trait(
          'shape',
          'shape',
          ['flat', 'riser', 'swept', 'drop'],
          'As seen from the side, for the drawing.',
        ),
      ],
    },
  ),
  'grip-area': faceKind('bar, grip area', [
    d('diameterMm', 'diameter', [20, 26], 'Outside jaws, about 100 mm from the end, bare metal.'),
  ]),
  'grip-bore': faceKind('grip', [
    d('boreMm', 'bore', [20, 26], 'Inside jaws in the clamp ring; soft grips by the printed size.'),
  ]),
  'lever-clamp': faceKind('lever clamp', [
    d('boreMm', 'bore', [20, 26], 'Clamp closed until the slit just touches; inside jaws.'),
  ]),
} as const;
