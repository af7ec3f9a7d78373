import type { Known } from '../known.ts';
import type { AdapterRow } from './adapterRow.ts';

const creak = 'A loose press creaks and wears the shell oval: measure bore and adapter before pressing.';

const shell = (
  from: string,
  to: string,
  label: string,
  source: string,
  known: Known,
  reversible = true,
  caution = creak,
): AdapterRow => ({
  id: `shell-${from}-${to}`,
  label,
  sort: 'adapter',
  faces: [
    { kind: 'bb-cup', standard: from },
    { kind: 'shell', standard: to },
  ],
  reversible,
  caution,
  source,
  known,
});

/** Sleeves with an ISO thread for wide press shells; the cups and the spindle must be made for the width over them. */
const pressedSleeve = [
  'from memory',
  'memory',
  true,
  'Measure the bore: press 0.05 to 0.1. The shell stays wider than the 68 or 73 an ISO thread is made for.',
] as const;

const headTube = (
  end: 'upper' | 'lower',
  from: string,
  to: string,
  label: string,
  source: string,
): AdapterRow => ({
  id: `head-tube-${end}-${from}-${to}`.toLowerCase(),
  label: `${label}, ${end}`,
  sort: 'adapter',
  faces: [
    { kind: `headset-cup-${end}`, standard: from },
    { kind: `head-tube-${end}`, standard: to },
  ],
  reversible: true,
  caution: 'Press it square; both ends alike.',
  source,
  known: 'memory',
});

const endCaps = (end: string, throughMm: number, openMm: number): AdapterRow => ({
  id: `end-caps-${throughMm}-${openMm}`,
  label: `end caps, ${throughMm} thru-axle hub in open ${openMm} slots, ${end}`,
  sort: 'adapter',
  faces: [
    { kind: 'axle', nominal: { diameterMm: openMm }, traits: { type: 'hollow' } },
    { kind: 'axle-slot', nominal: { widthMm: throughMm }, traits: { shape: 'closed' } },
  ],
  reversible: true,
  caution:
    'Only where the hub maker sells caps for this very hub; measure the width over the new caps. Never the other way round.',
  source: 'forum archive on axles: through hubs take caps for open slots, not the reverse; sizes from memory',
  known: 'memory',
});

/** Screwed into the crank at one end, with the hole for the pedal beyond it: never one thread inside the other. */
const extender = (crank: string, pedal: string, label: string, source: string, known: Known): AdapterRow => ({
  id: `pedal-extender-${crank}-${pedal}`.replaceAll('x20', ''),
  label: `pedal extender, end to end: ${label}`,
  sort: 'adapter',
  faces: [
    { kind: 'pedal-spindle', standard: crank },
    { kind: 'pedal-hole', standard: pedal },
  ],
  reversible: true,
  caution:
    'It moves the pedal outward by its length and levers on the crank’s thread; a pair of pedals that fit is the better way.',
  source,
  known,
});

/** Adapters of bottom brackets, head tubes, hubs, pedals and saddles. */
export const driveAdapters: readonly AdapterRow[] = [
  shell(
    'american',
    'iso',
    'American to ISO thread, bolted plates',
    'two workshop write-ups of the conversion',
    'seen',
  ),
  shell('american', 'mid', 'American to Mid, pressed reducers', 'from memory', 'memory'),
  shell('american', 'spanish', 'American to Spanish, pressed reducers', 'from memory', 'memory'),
  shell(
    'mid',
    'iso',
    'Mid to ISO thread, pressed sleeve',
    'write-up of one conversion on a 68 shell; the method from memory',
    'seen',
  ),
  shell('mid', 'spanish', 'Mid to Spanish, reducer rings', 'from memory', 'memory'),
  shell(
    'bb30',
    'iso',
    'BB30 to ISO thread, bonded sleeve',
    'magazine and workshop articles on conversion sleeves',
    'seen',
    false,
    'Usually glued in: treat it as permanent.',
  ),
  ...['pf30', 'pf46-wide'].map((from) =>
    shell(
      from,
      'iso',
      `${from === 'pf30' ? 'PF30' : 'press-fit 46 mm, 86.5 wide shell'} to ISO thread, pressed sleeve`,
      ...pressedSleeve,
    ),
  ),
  shell('pf41', 'iso', 'plain 41 to ISO thread, pressed sleeve', ...pressedSleeve),
  headTube('upper', 'EC34/28.6', 'EC30/25.4', '1-1/8 in tube to 1 in cups', 'from memory'),
  headTube('lower', 'EC34/28.6', 'EC30/25.4', '1-1/8 in tube to 1 in cups', 'from memory'),
  headTube('upper', 'ZS44/28.6', 'EC34/28.6', '44 tube to 1-1/8 in cups', 'from memory'),
  headTube('lower', 'ZS44/28.6', 'EC34/28.6', '44 tube to 1-1/8 in cups', 'from memory'),
  {
    id: 'crown-race-30-39.8',
    label: 'crown race reducer 39.8 → 30',
    sort: 'adapter',
    faces: [
      { kind: 'crown-race', nominal: { boreMm: 30 } },
      { kind: 'crown-seat', nominal: { diameterMm: 39.8 }, traits: { race: 'loose' } },
    ],
    reversible: true,
    caution: 'Drive it home evenly; no light may show under it.',
    source: 'from memory',
    known: 'memory',
  },
  // A bush of 1/2 in thread inside a 9/16 in one has no wall: its root (12.73) meets the crest within (12.70).
  extender('9/16x20', '1/2x20', '1/2 in pedal on a 9/16 in crank', 'from memory', 'memory'),
  endCaps('front', 15, 9),
  endCaps('rear', 12, 10),
  {
    id: 'rail-clamp-plain-7/8',
    label: 'rail clamp on a plain 7/8 in post',
    sort: 'adapter',
    faces: [
      { kind: 'saddle-mount', standard: 'plain-7/8' },
      { kind: 'post-head', standard: 'two-rail' },
    ],
    reversible: true,
    caution: 'The clamp can turn on a smooth post; tighten it by its own printed value.',
    source: 'seat clamp article of a parts shop',
    known: 'seen',
  },
];
