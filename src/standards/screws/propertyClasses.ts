import type { ScrewMaterial } from '../../mechanics/screws/preloadRefusal.ts';
import type { Sourced } from '../known.ts';

/** Strengths of one screw class, MPa, minima and not the nominal figures of its name. */
export interface PropertyClassRow extends Sourced {
  readonly propertyClass: string;
  readonly screw: ScrewMaterial;
  readonly yieldMPa: number;
  readonly tensileMPa: number;
  /** Stainless classes state none; their yield strength stands in for it. */
  readonly proofMPa?: number;
  readonly largestMm?: number;
}

const softSteel = {
  source: 'ISO 898-1:1999 mechanical properties, on a fastener seller’s page and a course page',
  known: 'seen',
} as const;

const stainlessSteel = {
  source: 'ISO 3506-1 mechanical properties of A2 and A4, on a supplier’s page and a fastener seller’s chart',
  known: 'seen',
} as const;

/** Screw classes by the mark on the head. Aluminium and titanium screws have no row on purpose: no table holds for them. */
export const propertyClasses: readonly PropertyClassRow[] = [
  { propertyClass: '4.6', screw: 'steel', proofMPa: 225, yieldMPa: 240, tensileMPa: 400, ...softSteel },
  { propertyClass: '5.8', screw: 'steel', proofMPa: 380, yieldMPa: 420, tensileMPa: 520, ...softSteel },
  {
    propertyClass: '8.8',
    screw: 'steel',
    proofMPa: 580,
    yieldMPa: 640,
    tensileMPa: 800,
    largestMm: 16,
    source: 'ISO 898-1 proof load table, public copies; strengths on an engineering tables page',
    known: 'seen',
  },
  {
    propertyClass: '10.9',
    screw: 'steel',
    proofMPa: 830,
    yieldMPa: 940,
    tensileMPa: 1040,
    source: 'ISO 898-1:1999 mechanical properties, course page',
    known: 'seen',
  },
  {
    propertyClass: '12.9',
    screw: 'steel',
    proofMPa: 970,
    yieldMPa: 1100,
    tensileMPa: 1220,
    source: 'ISO 898-1:1999 mechanical properties, course page',
    known: 'seen',
  },
  { propertyClass: 'A2-50', screw: 'stainless', yieldMPa: 210, tensileMPa: 500, ...stainlessSteel },
  { propertyClass: 'A2-70', screw: 'stainless', yieldMPa: 450, tensileMPa: 700, ...stainlessSteel },
  { propertyClass: 'A4-70', screw: 'stainless', yieldMPa: 450, tensileMPa: 700, ...stainlessSteel },
  { propertyClass: 'A2-80', screw: 'stainless', yieldMPa: 600, tensileMPa: 800, ...stainlessSteel },
  { propertyClass: 'A4-80', screw: 'stainless', yieldMPa: 600, tensileMPa: 800, ...stainlessSteel },
];

const byClass = new Map(propertyClasses.map((row) => [row.propertyClass, row]));

/**
 * The row of one class.
 * @throws RangeError when there is no such row
 * @example propertyClassRow('8.8').proofMPa //=> 580
 */
export function propertyClassRow(propertyClass: string): PropertyClassRow {
  const row = byClass.get(propertyClass);
  if (!row) throw new RangeError(`no such property class: ${propertyClass}`);
  return row;
}

/** How a screw whose head was looked at and bears no mark is written down. */
export const NO_MARK = 'none';

/**
 * The classes a screw without a mark may be of, the weakest first. From 8.8 upwards, and from A2-70, a mark is due on the
 * head, so none of those is taken for granted.
 * @returns nothing for a material without a table
 * Source: ISO 898-1, marking of 4.6, 5.6 and 8.8 and above; ISO 3506-1, classes of austenitic steel; clauses from memory.
 * @example unmarkedClasses('steel').map((row) => row.propertyClass) //=> ['4.6', '5.8']
 */
export const unmarkedClasses = (screw: ScrewMaterial): readonly PropertyClassRow[] =>
  screw === 'steel'
    ? [propertyClassRow('4.6'), propertyClassRow('5.8')]
    : screw === 'stainless'
      ? [propertyClassRow('A2-50')]
      : [];

/** The stress a class is proved with, MPa; its yield stress where no proof stress is printed. */
export const proofOf = ({ proofMPa, yieldMPa }: PropertyClassRow): number => proofMPa ?? yieldMPa;
