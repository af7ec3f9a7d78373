import type { LengthUnit } from '../../mechanics/units.ts';
import type { FaceKind } from '../../standards/faces/faceKinds.ts';

/**
 * One dimension as it was measured or read. Lengths keep the unit they were typed in; counts carry the UCUM
 * unit `1`, printed pressures `bar`, both without uncertainty. `typed` keeps the very characters.
 */
export interface Measured {
  value: number;
  unit: LengthUnit | 'bar' | '1';
  typed: string;
  /** Half the band, mm: the true size is taken to lie within value ± this. */
  uncertaintyMm: number;
}

/**
 * The place where a part meets another. Plain JSON: the journal stores it inside the part.
 * `nominal` is what a maker, a stamp or a catalogue says, in the unit its key ends in;
 * `measured` beats it wherever the two disagree.
 */
export interface Face {
  faceId: string;
  kind: FaceKind;
  /** Row of a standards table, or null when only measurements are known. */
  standard: string | null;
  nominal: Record<string, number>;
  measured: Record<string, Measured>;
  /** What a look tells: material, shape, marks. */
  traits?: Record<string, string>;
  notes?: string;
}

/**
 * Half the band a hand-held caliper leaves, mm.
 * A 0.02 mm vernier in a workshop repeats to about this; our suggestion, no source.
 */
export const CALIPER_UNCERTAINTY_MM = 0.05;
