import type { PartAbout } from '../journal/entries.ts';
import { magpiePile as pile } from './magpiePile.ts';

export type MagpiePart = PartAbout & { key: string; shelf?: string };

/** Label, name and history of each part of the pile; what it measures stands in the pile itself. */
const about: [pileId: string, key: string, label: string, name: string, more?: Partial<MagpiePart>][] = [
  [
    'frame',
    'm-frame',
    'P-001',
    'Frame, steel track',
    { origin: 'bought-used', serial: 'T 208', unknown: 'who rode it before' },
  ],
  ['fork', 'm-fork', 'P-002', 'Fork, steel, disc tabs'],
  ['headset', 'm-headset', 'P-003', 'Headset, external'],
  ['stem', 'm-stem', 'P-004', 'Stem, four-bolt face plate', { note: 'printed 5 N·m on the face plate' }],
  ['bar', 'm-bar', 'P-005', 'Bar, swept'],
  [
    'bottom-bracket',
    'm-bb',
    'P-006',
    'Bottom bracket, threaded cups for 24',
    { origin: 'bought-new', kmBefore: 0 },
  ],
  [
    'cranks',
    'm-cranks',
    'P-007',
    'Cranks, two-piece',
    { note: 'printed 12 to 14 N·m beside the pinch bolts' },
  ],
  ['chainring', 'm-ring', 'P-008', 'Chainring, 36 teeth'],
  ['chain', 'm-chain', 'P-009', 'Chain, 1/8', { origin: 'bought-new', kmBefore: 0 }],
  ['sprocket', 'm-sprocket', 'P-010', 'Freewheel, 15 teeth'],
  ['rear-hub', 'm-hub-rear', 'P-011', 'Rear hub, 130 wide'],
  [
    'front-hub-a',
    'm-hub-front-a',
    'P-012',
    'Front hub A, 28 holes',
    { shelf: '28 holes: not for the 32-hole rims' },
  ],
  ['front-hub-b', 'm-hub-front-b', 'P-013', 'Front hub B, 32 holes'],
  ['rim-front', 'm-rim-front', 'P-014', 'Front rim, 584', { origin: 'bought-new', kmBefore: 0 }],
  ['rim-rear', 'm-rim-rear', 'P-015', 'Rear rim, 584', { origin: 'bought-new', kmBefore: 0 }],
  ['tyre-front', 'm-tyre-front', 'P-016', 'Front tyre, 47-584'],
  ['tyre-rear', 'm-tyre-rear', 'P-017', 'Rear tyre, 47-584'],
  ['valve-front', 'm-valve-front', 'P-018', 'Front valve, 6 mm'],
  ['valve-rear', 'm-valve-rear', 'P-019', 'Rear valve, 6 mm'],
  ['rotor', 'm-rotor', 'P-020', 'Rotor 180'],
  ['caliper', 'm-caliper', 'P-021', 'Front caliper, post mount'],
  ['seatpost', 'm-post', 'P-022', 'Seatpost 25.4'],
  ['grips', 'm-grips', 'P-023', 'Lock-on grips'],
];

const byId = new Map(pile.map((part) => [part.partId, part]));

/** Every part that lay in the boxes. */
export const magpieParts: MagpiePart[] = [
  ...about.map(([pileId, key, label, name, more]): MagpiePart => {
    const part = byId.get(pileId);
    if (!part) throw new RangeError(`the pile has no ${pileId}`);
    return {
      ...{ key, label, name, kind: part.kind, origin: 'found', faces: [...part.faces] },
      ...(part.position ? { position: part.position } : {}),
      ...more,
    };
  }),
];
