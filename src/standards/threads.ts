import type { ThreadSize } from '../mechanics/threadGeometry.ts';
import type { Sourced } from './known.ts';

export type Hand = 'right' | 'left';
export type BikeSide = 'drive' | 'non-drive';

export interface ThreadRow extends ThreadSize, Sourced {
  readonly id: string;
  readonly label: string;
  /** Where the trade fixes the hand by the side of the bike; every other thread is right-handed. */
  readonly hand?: Readonly<Record<BikeSide, Hand>>;
}

const coarse = {
  form: 'iso',
  source: 'ISO 898-1 coarse thread table, public copy; pitch confirmed by the printed stress area',
  known: 'seen',
} as const;
const fine = { form: 'iso', source: 'ISO 898-1 fine thread rows', known: 'memory' } as const;
const axle = { source: 'workshop list of bicycle axle threads', known: 'seen' } as const;
const pedal = {
  form: 'un',
  hand: { drive: 'right', 'non-drive': 'left' },
  source: 'workshop thread list and an axle-and-pedal thread page',
  known: 'seen',
} as const;
const cupsHandedByDrive = { drive: 'left', 'non-drive': 'right' } as const;
const cupsRight = { drive: 'right', 'non-drive': 'right' } as const;
const inch = (inches: number) => inches * 25.4;
const perInch = (threads: number) => 25.4 / threads;

/** Threads met on bicycles: small screws, axles, pedals, cups, steerers. */
export const threads: readonly ThreadRow[] = [
  { id: 'M3', label: 'M3 × 0.5', diameterMm: 3, pitchMm: 0.5, ...coarse },
  { id: 'M4', label: 'M4 × 0.7', diameterMm: 4, pitchMm: 0.7, ...coarse },
  { id: 'M5', label: 'M5 × 0.8', diameterMm: 5, pitchMm: 0.8, ...coarse },
  { id: 'M6', label: 'M6 × 1', diameterMm: 6, pitchMm: 1, ...coarse },
  { id: 'M8', label: 'M8 × 1.25', diameterMm: 8, pitchMm: 1.25, ...coarse },
  { id: 'M10', label: 'M10 × 1.5', diameterMm: 10, pitchMm: 1.5, ...coarse },
  { id: 'M12', label: 'M12 × 1.75', diameterMm: 12, pitchMm: 1.75, ...coarse },
  { id: 'M8x1', label: 'M8 × 1', diameterMm: 8, pitchMm: 1, ...fine },
  { id: 'M10x1.25', label: 'M10 × 1.25', diameterMm: 10, pitchMm: 1.25, ...fine },
  { id: 'M12x1.25', label: 'M12 × 1.25', diameterMm: 12, pitchMm: 1.25, ...fine },
  { id: 'M12x1.5', label: 'M12 × 1.5', diameterMm: 12, pitchMm: 1.5, ...fine },
  { id: 'M9x1', label: 'M9 × 1 axle', diameterMm: 9, pitchMm: 1, form: 'iso', ...axle },
  { id: 'M10x1', label: 'M10 × 1 axle', diameterMm: 10, pitchMm: 1, form: 'iso', ...axle },
  {
    id: 'M14x1',
    label: 'M14 × 1 axle',
    diameterMm: 14,
    pitchMm: 1,
    form: 'iso',
    source: 'diameter in several axle pages; pitch from memory, measure it',
    known: 'memory',
  },
  {
    id: '5/16-24',
    label: '5/16 in × 24 axle',
    diameterMm: inch(5 / 16),
    pitchMm: perInch(24),
    form: 'un',
    ...axle,
  },
  {
    id: '5/16-26',
    label: '5/16 in × 26 axle',
    diameterMm: inch(5 / 16),
    pitchMm: perInch(26),
    form: 'un',
    ...axle,
  },
  {
    id: '3/8-24',
    label: '3/8 in × 24 axle',
    diameterMm: inch(3 / 8),
    pitchMm: perInch(24),
    form: 'un',
    ...axle,
  },
  {
    id: '3/8-26',
    label: '3/8 in × 26 axle',
    diameterMm: inch(3 / 8),
    pitchMm: perInch(26),
    form: 'un',
    ...axle,
  },
  {
    id: 'M15x1.5',
    label: 'M15 × 1.5 thru-axle',
    diameterMm: 15,
    pitchMm: 1.5,
    form: 'iso',
    source: 'parts shop help page on thru-axles',
    known: 'seen',
  },
  { id: '9/16-20', label: '9/16 in × 20 pedal', diameterMm: inch(9 / 16), pitchMm: perInch(20), ...pedal },
  {
    id: '1/2-20',
    label: '1/2 in × 20 pedal, one-piece crank',
    diameterMm: inch(1 / 2),
    pitchMm: perInch(20),
    ...pedal,
  },
  {
    id: 'M14x1.25',
    label: 'M14 × 1.25 pedal, old French',
    diameterMm: 14,
    pitchMm: 1.25,
    ...pedal,
    form: 'iso',
  },
  {
    id: '1.37-24',
    label: '1.37 in × 24 cup (ISO)',
    diameterMm: inch(1.37),
    pitchMm: perInch(24),
    form: 'un',
    hand: cupsHandedByDrive,
    source: 'bottom bracket thread page; hand from the scope of ISO 6696',
    known: 'seen',
  },
  {
    id: 'M36-24',
    label: '36 mm × 24 per inch cup (Italian)',
    diameterMm: 36,
    pitchMm: perInch(24),
    form: 'un',
    hand: cupsRight,
    source: 'bottom bracket thread page',
    known: 'seen',
  },
  {
    id: 'M35x1',
    label: 'M35 × 1 cup (French)',
    diameterMm: 35,
    pitchMm: 1,
    form: 'iso',
    hand: cupsRight,
    source: 'bottom bracket thread page',
    known: 'seen',
  },
  {
    id: 'M47x1',
    label: 'M47 × 1 cup',
    diameterMm: 47,
    pitchMm: 1,
    form: 'iso',
    hand: cupsHandedByDrive,
    source: 'bearing maker’s bottom bracket drawing list',
    known: 'seen',
  },
  {
    id: '1.375-24',
    label: '1.375 in × 24 freewheel',
    diameterMm: inch(1.375),
    pitchMm: perInch(24),
    form: 'un',
    source: 'freewheel thread page',
    known: 'seen',
  },
  {
    id: 'M30x1',
    label: 'M30 × 1 small freewheel',
    diameterMm: 30,
    pitchMm: 1,
    form: 'iso',
    source: 'freewheel thread page',
    known: 'seen',
  },
  {
    id: '1.29-24',
    label: '1.29 in × 24 lockring, fixed sprocket',
    diameterMm: inch(1.29),
    pitchMm: perInch(24),
    form: 'un',
    // It locks because pedalling backwards tightens it.
    hand: { drive: 'left', 'non-drive': 'right' },
    source: 'general knowledge, not looked up',
    known: 'memory',
  },
  {
    id: '1-24',
    label: '1 in × 24 steerer',
    diameterMm: inch(1),
    pitchMm: perInch(24),
    form: 'un',
    source: 'frame builders’ forum thread 874796',
    known: 'seen',
  },
  {
    id: '1.125-26',
    label: '1⅛ in × 26 steerer',
    diameterMm: inch(1.125),
    pitchMm: perInch(26),
    form: 'un',
    source: 'general knowledge, not looked up',
    known: 'memory',
  },
];

const byId = new Map(threads.map((row) => [row.id, row]));

/**
 * The row of one thread.
 * @throws RangeError when there is no such row
 * @example threadRow('M5').pitchMm //=> 0.8
 */
export function threadRow(id: string): ThreadRow {
  const row = byId.get(id);
  if (!row) throw new RangeError(`no such thread: ${id}`);
  return row;
}

/** Which way a thread tightens on a side of the bike. @example handOf(threadRow('9/16-20'), 'non-drive') //=> 'left' */
export const handOf = (thread: ThreadRow, side: BikeSide): Hand => thread.hand?.[side] ?? 'right';
