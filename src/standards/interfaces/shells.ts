import type { InterfaceRow, SizeSpan } from '../faces/interfaceRow.ts';

export interface ShellRow extends InterfaceRow {
  seat: 'threaded' | 'pressed';
  /** Thread hand on the drive side; the other side is right-handed on every threaded shell. */
  driveSide: 'left' | 'right' | 'none';
  widthsMm: readonly number[];
}

const shellThreadTable = 'bottom bracket thread table of a racing history site';
const bearingDrawings = "a bearing maker's list of bottom bracket drawings";
const spacerChart = "a bottom bracket vendor's 24 mm spindle spacer chart";
const bmxSizes = 'BMX shop’s guide to bottom brackets';
const plainBores = 'personal page on bottom bracket standards';

const faces = (boreMm: SizeSpan, diameterMm: SizeSpan): ShellRow['faces'] => ({
  shell: { boreMm },
  'bb-cup': { diameterMm },
});

const crib = 'bicycle encyclopaedia, unthreaded bottom bracket crib sheet';

/** The rarer bores of the European pressed kind; 40 is the usual one. */
const thompson = (boreMm: number): ShellRow => ({
  id: `thompson-${boreMm}`,
  label: `European pressed cups, ${boreMm}`,
  faces: faces([boreMm - 0.2, boreMm + 0.1], [boreMm, boreMm + 0.2]),
  seat: 'pressed',
  driveSide: 'none',
  widthsMm: [65, 68, 70],
  fromMemory: ['boreMm', 'diameterMm'],
  source: `${crib}; tenths from memory`,
  known: 'seen',
});

/** Bottom bracket shells. A pressed bore and its cup carry nearly one size; the press is in the hundredths. */
export const shells: readonly ShellRow[] = [
  {
    id: 'iso',
    label: 'ISO thread, 1.37 in × 24 per inch',
    faces: faces([33.6, 33.9], [34.6, 34.9]),
    seat: 'threaded',
    driveSide: 'left',
    widthsMm: [68, 73, 83, 100],
    remark: 'Called euro on BMX frames.',
    source: `${shellThreadTable}; hands: scope of ISO 6696`,
    known: 'seen',
  },
  {
    id: 'italian',
    label: 'Italian thread, M36 × 24 per inch',
    faces: faces([34.6, 34.9], [35.6, 35.9]),
    seat: 'threaded',
    driveSide: 'right',
    widthsMm: [70],
    source: shellThreadTable,
    known: 'seen',
  },
  {
    id: 'french',
    label: 'old French thread, M35 × 1',
    faces: faces([33.7, 34.1], [34.7, 35]),
    seat: 'threaded',
    driveSide: 'right',
    widthsMm: [68],
    fromMemory: ['boreMm', 'diameterMm'],
    source: shellThreadTable,
    known: 'seen',
  },
  {
    id: 't47',
    label: 'M47 × 1 thread',
    faces: faces([45.7, 46.2], [46.7, 47]),
    seat: 'threaded',
    driveSide: 'left',
    widthsMm: [68, 73, 77, 85.5, 86.5],
    fromMemory: ['boreMm', 'diameterMm'],
    source: `${spacerChart}; hands: ${bearingDrawings}`,
    known: 'seen',
  },
  {
    id: 'american',
    label: 'American, for one-piece cranks',
    faces: faces([51.2, 51.5], [51.3, 51.5]),
    seat: 'pressed',
    driveSide: 'none',
    widthsMm: [65, 68, 73],
    fromMemory: ['diameterMm'],
    source: plainBores,
    known: 'seen',
  },
  {
    id: 'mid',
    label: 'mid BMX shell',
    faces: faces([41.15, 41.25], [41.2, 41.3]),
    seat: 'pressed',
    driveSide: 'none',
    widthsMm: [68, 73],
    fromMemory: ['boreMm', 'diameterMm'],
    remark: 'The printed 41 is neither its bore to a tenth nor the 41.0 of the 41 mm press shell.',
    source: `${bmxSizes}: nominal 41; tenths from memory`,
    known: 'memory',
  },
  {
    id: 'spanish',
    label: 'Spanish',
    faces: faces([36.9, 37], 37),
    seat: 'pressed',
    driveSide: 'none',
    widthsMm: [68, 73],
    others: [{ what: 'bearing, width', mm: 10, source: 'magazine page on Spanish bottom brackets' }],
    source: 'magazine page on Spanish bottom brackets; BMX shop’s guide',
    known: 'seen',
  },
  {
    id: 'bb30',
    label: 'BB30, plain 42',
    faces: faces(41.96, 42),
    seat: 'pressed',
    driveSide: 'none',
    widthsMm: [68, 73, 83],
    source: plainBores,
    known: 'seen',
  },
  {
    id: 'pf30',
    label: 'PF30, plain 46',
    faces: faces([45.95, 46.05], 46),
    seat: 'pressed',
    driveSide: 'none',
    widthsMm: [68, 73],
    source: `${spacerChart}; ${bearingDrawings}`,
    known: 'seen',
  },
  {
    id: 'pf46-wide',
    label: 'press-fit 46 mm, 86.5 wide shell',
    faces: faces([45.95, 46.05], 46),
    seat: 'pressed',
    driveSide: 'none',
    widthsMm: [86.5],
    source: `${spacerChart}; ${bearingDrawings}`,
    known: 'seen',
  },
  {
    id: 'pf41',
    label: 'plain 41, wide press shell',
    faces: faces([40.95, 41.05], 41),
    seat: 'pressed',
    driveSide: 'none',
    widthsMm: [86.5, 89.5, 91.5, 92, 104.5, 107, 121],
    source: `${spacerChart}; ${plainBores}`,
    known: 'seen',
  },
  {
    id: 'direct37',
    label: 'plain 37, 90 wide',
    faces: faces([36.9, 37], 37),
    seat: 'pressed',
    driveSide: 'none',
    widthsMm: [90, 95],
    source: `${plainBores}; ${bearingDrawings}`,
    known: 'seen',
  },
  {
    id: 'thompson',
    label: 'European pressed cups, 40',
    faces: faces([39.8, 40.1], [40, 40.2]),
    seat: 'pressed',
    driveSide: 'none',
    widthsMm: [65, 68, 70],
    fromMemory: ['boreMm', 'diameterMm'],
    source: crib,
    known: 'seen',
  },
  ...[30, 33, 35, 38, 45].map(thompson),
  {
    id: 'american-small',
    label: 'American, small, for children’s one-piece cranks',
    faces: faces([42.5, 43.5], [42.7, 43.7]),
    seat: 'pressed',
    driveSide: 'none',
    widthsMm: [65],
    fromMemory: ['diameterMm'],
    remark: 'About 43 is all that is printed: measure it.',
    source: plainBores,
    known: 'seen',
  },
];
