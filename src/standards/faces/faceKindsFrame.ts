import { dimension as d, faceKind, trait } from './faceKind.ts';

const material = trait(
  'material',
  'dropout material',
  ['steel', 'titanium', 'aluminium', 'carbon'],
  'A magnet sticks to steel only.',
);

const end = trait('end', 'end', ['front', 'rear'], 'Fork is front, frame is rear.');

/** Faces a frame or fork offers to wheels, brakes and the saddle. */
export const frameFaces = {
  'end-spacing': faceKind(
    'dropout spacing',
    [
      d(
        'spacingMm',
        'inside width',
        [70, 205],
        'Measure between the inner dropout faces, frame not sprung apart.',
      ),
    ],
    { traits: [material, end] },
  ),
  'axle-slot': faceKind(
    'axle slot',
    [
      d(
        'widthMm',
        'slot width',
        [7, 22],
        'Inside jaws in the slot, both sides of the bike; keep the smaller.',
      ),
      d(
        'nearestMm',
        'axle centre, front of slot',
        [250, 600],
        'Spindle centre to axle centre with the axle at the front of the slot.',
        false,
      ),
      d(
        'farthestMm',
        'axle centre, rear of slot',
        [250, 650],
        'Spindle centre to axle centre with the nut face just fully on the dropout.',
        false,
      ),
    ],
    {
      traits: [
        material,
        trait('shape', 'shape', ['open', 'closed'], 'Closed: the axle pulls out sideways.'),
        end,
      ],
    },
  ),
  'disc-mount': faceKind(
    'disc brake mount',
    [
      d(
        'holeSpacingMm',
        'bolt hole spacing',
        [18, 82],
        'Edge to same edge of the two mounting holes.',
        false,
      ),
      d(
        'nativeRotorMm',
        'rotor without adapter',
        [120, 230],
        'Stamped at the mount, or the rotor that sits right with nothing between.',
        false,
      ),
      d('largestRotorMm', 'largest rotor allowed', [120, 230], 'From the frame or fork maker only.', false),
    ],
    {
      named: true,
      traits: [end],
    },
  ),
  'tyre-room': faceKind('tyre clearance', [
    d(
      'widthMm',
      'widest tyre',
      [15, 140],
      'Inside jaws at the narrowest place the tyre passes, less the gap you want on both sides.',
    ),
  ]),
  'seat-tube': faceKind('seat tube', [
    d('boreMm', 'bore', [20, 36], 'Inside jaws below the slit, along the bike and across; keep the smaller.'),
    d(
      'lengthMm',
      'length',
      [60, 750],
      'Tape from the middle of the shell to the top, for the drawing.',
      false,
    ),
  ]),
  'seat-tube-outside': faceKind('seat tube outside diameter', [
    d('diameterMm', 'outside diameter', [22, 42], 'Outside jaws right below the top, paint included.'),
  ]),
  'seat-clamp': faceKind('seat clamp', [
    d('boreMm', 'bore', [22, 42], 'Inside jaws, bolt loose, ring not sprung open.'),
  ]),
  post: faceKind('seatpost', [
    d(
      'diameterMm',
      'outside diameter',
      [20, 36],
      'Outside jaws where it will be clamped, twice at a right angle; keep the larger.',
    ),
    d('insertionMm', 'minimum insertion', [40, 200], 'From the lower end to the line on the post.', false),
    d(
      'outMm',
      'out of the frame',
      [20, 650],
      'Tape from the top of the seat tube to the rails, for the drawing.',
      false,
    ),
  ]),
  'post-head': faceKind(
    'seatpost head',
    [
      d(
        'railMm',
        'rail width it takes',
        [5, 12],
        'Outside jaws on the rail it was made for, or printed.',
        false,
      ),
      d(
        'railHeightMm',
        'rail height it takes',
        [5, 12],
        'As the width, upright; for round rails the same.',
        false,
      ),
    ],
    { named: true },
  ),
  'saddle-mount': faceKind(
    'saddle mount',
    [
      d('railMm', 'rail width', [5, 12], 'Outside jaws across one rail, level.', false),
      d('railHeightMm', 'rail height', [5, 12], 'Outside jaws on the same rail, upright.', false),
    ],
    { named: true },
  ),
} as const;
