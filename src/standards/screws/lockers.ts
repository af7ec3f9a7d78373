import { type Band, band } from '../../mechanics/band.ts';
import type { CureGrade } from '../../mechanics/cures/cure.ts';
import type { Sourced } from '../known.ts';

export interface LockerRow extends Sourced, CureGrade {
  readonly grade: string;
  readonly label: string;
  readonly use: 'thread' | 'thread-after-assembly' | 'cylinder';
  /** Breakaway and prevailing torque on a 3/8-16 bolt, N·m. */
  readonly breakawayNm?: number;
  readonly prevailingNm?: number;
  /** Breakaway on M10, ISO 10964, data-sheet class, N·m; from memory, ±30 %. */
  readonly m10BreakawayNm?: number;
  /** Shear strength of pin and collar, ISO 10123, MPa; from memory. */
  readonly shearMpa?: number;
  readonly removal: 'hand-tools' | 'heat' | 'puller';
  readonly coldestServiceC: number;
  readonly hottestServiceC: number;
}

// The grid is drawn for the medium grade; how far other grades follow it is a judgement.
const mediumPace: Band = band(0.7, 1, 1.5);
const otherPace: Band = band(0.5, 1, 2);

const encyclopedia: Sourced = { source: 'encyclopedia article on thread-locking fluid', known: 'seen' };
const remembered: Sourced = { source: 'classes of adhesive data sheets, from memory', known: 'memory' };
const hotSupplier: Sourced = { source: "supplier's note: special grades to 230 °C", known: 'seen' };

const usual = { coldestServiceC: -54, hottestServiceC: 149, heatResistant: false } as const;
const hot = { coldestServiceC: -54, hottestServiceC: 230, heatResistant: true } as const;
const thread = { widestGapMm: 0.25, pace: otherPace } as const;
const cylinder = { use: 'cylinder', widestGapMm: 0.38, pace: otherPace } as const;

/** Grades of anaerobic adhesive by what they do; no maker's numbers or colours. */
export const lockers = [
  {
    grade: 'low',
    label: 'Low strength',
    use: 'thread',
    breakawayNm: 7,
    prevailingNm: 3,
    m10BreakawayNm: 6,
    removal: 'hand-tools',
    ...usual,
    ...thread,
    ...encyclopedia,
  },
  {
    grade: 'medium',
    label: 'Medium strength',
    use: 'thread',
    breakawayNm: 12,
    prevailingNm: 6,
    m10BreakawayNm: 11.5,
    removal: 'hand-tools',
    ...usual,
    ...thread,
    pace: mediumPace,
    ...encyclopedia,
  },
  {
    grade: 'medium-oil-tolerant',
    label: 'Medium strength, takes a little oil',
    use: 'thread',
    breakawayNm: 20,
    prevailingNm: 7,
    m10BreakawayNm: 26,
    removal: 'hand-tools',
    ...usual,
    ...thread,
    pace: mediumPace,
    ...encyclopedia,
  },
  {
    grade: 'high',
    label: 'High strength',
    use: 'thread',
    breakawayNm: 25,
    prevailingNm: 25,
    m10BreakawayNm: 27,
    removal: 'heat',
    ...usual,
    ...thread,
    ...encyclopedia,
  },
  {
    grade: 'high-temperature',
    label: 'High strength, for heat',
    use: 'thread',
    removal: 'heat',
    ...hot,
    ...thread,
    ...hotSupplier,
  },
  {
    grade: 'wicking',
    label: 'Wicking, after assembly',
    use: 'thread-after-assembly',
    m10BreakawayNm: 10,
    removal: 'heat',
    ...usual,
    ...thread,
    widestGapMm: 0.05,
    ...remembered,
  },
  {
    grade: 'retaining',
    label: 'Retaining compound',
    shearMpa: 25,
    removal: 'heat',
    ...usual,
    ...cylinder,
    ...remembered,
  },
  {
    grade: 'retaining-removable',
    label: 'Retaining compound, removable',
    shearMpa: 6.5,
    removal: 'puller',
    ...usual,
    ...cylinder,
    ...remembered,
  },
  {
    grade: 'retaining-hot',
    label: 'Retaining compound, for heat',
    shearMpa: 25,
    removal: 'heat',
    ...hot,
    ...cylinder,
    ...remembered,
  },
] as const satisfies readonly LockerRow[];

export type LockerGrade = (typeof lockers)[number]['grade'];

/** How the bottle is often coloured; makers differ. Common practice, no source. */
const colours: Partial<Record<LockerGrade, string>> = {
  low: 'often purple',
  medium: 'often blue',
  'medium-oil-tolerant': 'often blue',
  high: 'often red',
  wicking: 'often green',
  retaining: 'often green',
};

/** The usual colour of a grade, where there is one. @example usualColour('medium') //=> 'often blue' */
export const usualColour = (grade: LockerGrade): string | undefined => colours[grade];

/**
 * The row of a grade.
 * @throws RangeError when there is no such grade
 * @example lockerRow('medium').breakawayNm //=> 12
 */
export function lockerRow(grade: LockerGrade): LockerRow {
  const row = lockers.find((locker) => locker.grade === grade);
  if (!row) throw new RangeError(`no such grade: ${grade}`);
  return row;
}
