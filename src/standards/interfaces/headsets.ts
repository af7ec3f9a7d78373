import type { InterfaceRow, SizeSpan } from '../faces/interfaceRow.ts';

export interface HeadsetRow extends InterfaceRow {
  /** EC: cup outside the tube; ZS: cup inside; IS: bearing straight in the tube. */
  seat: 'external' | 'zero-stack' | 'integrated';
  /** Chamfers of the bearing, steerer side first; null where the cup brings its own. */
  anglesDeg: readonly [steererSide: number, frameSide: number] | null;
}

const bmxForks = 'skate shop’s and sizing pages on BMX forks';
const cupGuide = 'headset identification guide of 2010';
const bores = 'head tube bore table of an encyclopaedia mirror';
const races = 'headset notes of 2022';
const straightFork = 'copy of a Q&A on straight forks: 28.6 above, 30 at the crown';

const both = (
  boreMm: SizeSpan,
  cupMm: SizeSpan | null,
  steererMm: number,
  raceMm: SizeSpan | null,
  seatMm: SizeSpan | null = raceMm,
): InterfaceRow['faces'] => ({
  'head-tube-upper': { boreMm },
  'head-tube-lower': { boreMm },
  'headset-cup-upper': cupMm === null ? {} : { diameterMm: cupMm },
  'headset-cup-lower': cupMm === null ? {} : { diameterMm: cupMm },
  'headset-bore': { boreMm: steererMm },
  steerer: { diameterMm: steererMm },
  'crown-race': raceMm === null ? {} : { boreMm: raceMm },
  'crown-seat': seatMm === null ? {} : { diameterMm: seatMm },
});

/** Headset ends by their S.H.I.S. code: seat, head tube bore, steerer (upper) or crown race (lower). */
export const headsets: readonly HeadsetRow[] = [
  {
    id: 'EC29/25.4',
    label: '1 in JIS, external',
    faces: both([29.85, 29.9], 30, 25.4, 27, [27, 27.1]),
    seat: 'external',
    anglesDeg: null,
    source: `${cupGuide}; ${races}`,
    known: 'seen',
  },
  {
    id: 'EC30/25.4',
    label: '1 in ISO, external',
    faces: both([30.05, 30.1], 30.2, 25.4, 26.4, [26.4, 26.5]),
    seat: 'external',
    anglesDeg: null,
    source: `${cupGuide}; ${races}`,
    known: 'seen',
  },
  {
    id: 'EC32/25.4',
    label: '1 in, old BMX and one-piece',
    faces: both(32.5, 32.7, 25.4, [26.4, 26.7]),
    seat: 'external',
    anglesDeg: null,
    fromMemory: ['diameterMm'],
    source: bores,
    known: 'seen',
  },
  {
    id: 'EC34/28.6',
    label: '1-1/8 in, external',
    faces: both([33.8, 33.95], 34.1, 28.6, 30, [30, 30.1]),
    seat: 'external',
    anglesDeg: null,
    source: `${bores}; ${cupGuide}; ${straightFork}`,
    known: 'seen',
  },
  {
    id: 'EC37/31.8',
    label: '1-1/4 in, external',
    faces: both([36.8, 36.95], 37.1, 31.75, 33),
    seat: 'external',
    anglesDeg: null,
    fromMemory: ['diameterMm'],
    source: bores,
    known: 'seen',
  },
  {
    id: 'EC44/40',
    label: 'external lower cup in a 44 tube, for tapered forks',
    faces: both([43.95, 44], [44.1, 44.2], 38.1, 39.8),
    seat: 'external',
    anglesDeg: null,
    fromMemory: ['diameterMm'],
    source: 'frame maker’s page on 44 mm head tubes',
    known: 'seen',
  },
  {
    id: 'EC49/38.1',
    label: '1-1/2 in, external',
    faces: both(49.6, 49.7, 38.1, 39.8),
    seat: 'external',
    anglesDeg: null,
    fromMemory: ['diameterMm'],
    source: bores,
    known: 'seen',
  },
  {
    id: 'ZS44/28.6',
    label: '44 zero stack, 1-1/8 in',
    faces: both([43.9, 44], [44.05, 44.2], 28.6, 30, [30, 30.1]),
    seat: 'zero-stack',
    anglesDeg: null,
    fromMemory: ['diameterMm'],
    source: bores,
    known: 'seen',
  },
  {
    id: 'ZS56/40',
    label: '56 zero stack, lower of a tapered fork',
    faces: both([55.95, 56], [56.1, 56.2], 38.1, 39.8),
    seat: 'zero-stack',
    anglesDeg: null,
    fromMemory: ['boreMm', 'diameterMm'],
    source: 'headset code chart of a tool seller',
    known: 'seen',
  },
  {
    id: 'IS41/28.6',
    label: '41 integrated, 36 × 45',
    faces: both(41.1, 41, 28.6, 30),
    seat: 'integrated',
    anglesDeg: [36, 45],
    fromMemory: ['diameterMm'],
    source: `${bores}; ${cupGuide}`,
    known: 'seen',
  },
  {
    id: 'IS42/28.6',
    label: '42 integrated, 45 × 45',
    faces: both([41.9, 42.05], 41.8, 28.6, 30),
    seat: 'integrated',
    anglesDeg: [45, 45],
    fromMemory: ['diameterMm'],
    others: [
      { what: 'BMX fork, length of the steerer', mm: [160, 166], source: bmxForks },
      { what: 'BMX fork, axle to crown', mm: [310, 320], source: bmxForks },
    ],
    source: bores,
    known: 'seen',
  },
  {
    id: 'IS47/33',
    label: '47 integrated lower',
    faces: both(47.05, [46.9, 47], 31.75, 33),
    seat: 'integrated',
    anglesDeg: [45, 45],
    source: 'from memory',
    known: 'memory',
  },
  {
    id: 'IS52/40',
    label: '52 integrated lower',
    faces: both([52.05, 52.15], [51.8, 52], 38.1, 39.8),
    seat: 'integrated',
    anglesDeg: [45, 45],
    source: 'from memory',
    known: 'memory',
  },
];

/** Press a cup wants: cup minus bore. Reamers aim at the inner pair. */
export const cupPress = {
  leastMm: 0.1,
  mostMm: 0.25,
  aimMm: [0.1, 0.2],
  source: bores,
  known: 'seen',
} as const;

/** Steerer top below the top of stem and spacers, so that the cap pushes the stack and not the tube. */
export const steererGap = {
  gapMm: 3,
  source: 'builder’s blog, worked example of cutting a steerer',
  known: 'seen',
} as const;
