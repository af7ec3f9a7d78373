import type { InterfaceRow, SizeSpan } from '../faces/interfaceRow.ts';
import type { Sourced } from '../known.ts';

const bmx = 'shop’s guide to BMX bottom brackets';
const bearings = 'bearing seller’s list of bottom bracket bearings';
const round = (diameterMm: SizeSpan): InterfaceRow['faces'] => ({
  spindle: { diameterMm },
  'bb-bore': { boreMm: diameterMm },
});

/** Crank spindles and the holes made for them. */
export const spindles: readonly InterfaceRow[] = [
  {
    id: 'round-19',
    label: '19 mm',
    faces: round([19, 19.05]),
    remark: '3/4 in is 19.05.',
    source: bmx,
    known: 'seen',
  },
  { id: 'round-22', label: '22 mm', faces: round(22), source: bmx, known: 'seen' },
  { id: 'round-22.2', label: '7/8 in', faces: round(22.225), source: '7/8 × 25.4', known: 'exact' },
  {
    id: 'round-24',
    label: '24 mm',
    faces: round(24),
    remark: 'The bearings of such cups are often 25 inside, under a sleeve.',
    others: [
      { what: 'bearing 6805, inside', mm: 25, source: bearings },
      { what: 'bearing 6805, outside', mm: 37, source: bearings },
      { what: 'bearing 6805, width', mm: 7, source: bearings },
      { what: 'stepped spindle, other side', mm: 22, source: 'a rider’s notes on crank spindles' },
    ],
    source: bmx,
    known: 'seen',
  },
  {
    id: 'round-28.99',
    label: '28.99 mm',
    faces: round(28.99),
    source: 'from memory; also printed on a catalogue page known for errors',
    known: 'memory',
  },
  {
    id: 'round-30',
    label: '30 mm',
    faces: round(30),
    source: "a bearing maker's list of bottom bracket drawings",
    known: 'seen',
  },
  {
    id: 'jis-taper',
    label: 'square, JIS',
    faces: { taper: { tipMm: [12.6, 12.75] }, 'taper-hole': {} },
    source: 'touring workshop notes on square spindles',
    known: 'seen',
  },
  {
    id: 'iso-taper',
    label: 'square, ISO',
    faces: { taper: { tipMm: [12.3, 12.45] }, 'taper-hole': {} },
    fromMemory: ['tipMm'],
    source: 'tip size follows from the 4.5 mm a JIS crank slides further on',
    known: 'computed',
  },
];

/** How far further a JIS crank slides on an ISO spindle, and the draft of each face of the square. */
export const taperCross = {
  slideMm: 4.5,
  faceDraftDeg: 2,
  source: 'touring workshop notes on square spindles',
  known: 'seen',
} as const;

/**
 * Two-piece cranks. The width printed for one is a name, and names two things: 86.5 is 68 of shell with a cup of 9.25 on each
 * side; 91.5 is 73 with the same cups, and leaves out the one spacer of 2.5 its spindle is made for. Over the bearings they
 * are 86.5 and 94; under the cups 68 and 75.5.
 */
export interface SystemWidthRow extends Sourced {
  systemWidthMm: number;
  /** What stands between the cups, shell and spacers together. */
  underCupsMm: number;
  /** Outer bearing face to outer bearing face, spacers in. */
  overBearingsMm: number;
  spacerMm: number;
}

export const systemWidths: readonly SystemWidthRow[] = [
  {
    systemWidthMm: 86.5,
    underCupsMm: 68,
    overBearingsMm: 86.5,
    spacerMm: 2.5,
    source: 'system width: rider’s blog on two-piece cranks; cups of 9.25 by arithmetic',
    known: 'computed',
  },
  {
    systemWidthMm: 91.5,
    underCupsMm: 75.5,
    overBearingsMm: 94,
    spacerMm: 2.5,
    source: 'system width: rider’s blog on two-piece cranks; three 2.5 spacers on 68, one on 73 from memory',
    known: 'memory',
  },
];
