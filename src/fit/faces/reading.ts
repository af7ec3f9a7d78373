import { type Band, exactly } from '../../mechanics/band.ts';
import { convert, type LengthUnit } from '../../mechanics/units.ts';
import type { Face, Measured } from './face.ts';
import { isPlausible } from './plausible.ts';
import { spanOf, standardOf } from './standardOf.ts';

export interface SizeReading extends Band {
  from: 'measured' | 'nominal' | 'standard';
  /** The size stands in a table only from memory and was not measured. */
  weak: boolean;
}

/** A measurement in the unit its key ends in, as a band. */
export function measuredBand({ value, unit, uncertaintyMm }: Measured): Band {
  if (unit === '1' || unit === 'bar') return exactly(value);
  const mid = convert<LengthUnit>(value, unit, 'mm');
  return { lo: mid - uncertaintyMm, mid, hi: mid + uncertaintyMm };
}

function fromPrint(face: Face, key: string): SizeReading | undefined {
  const nominal = face.nominal[key];
  if (nominal !== undefined)
    return isPlausible(face.kind, key, nominal)
      ? { ...exactly(nominal), from: 'nominal', weak: false }
      : undefined;
  const row = standardOf(face);
  const span = row?.faces[face.kind]?.[key];
  if (row === undefined || span === undefined) return undefined;
  const [lo, hi] = spanOf(span);
  const weak = row.known === 'memory' || (row.fromMemory?.includes(key) ?? false);
  return { ...exactly((lo + hi) / 2), from: 'standard', weak };
}

/** A face is never changed, only replaced; a search asks the same one for its sizes a hundred times. */
const readings = new WeakMap<Face, Map<string, SizeReading | undefined>>();

/**
 * The size of a face to reckon with. A measurement that agrees with the printed or standard size within its
 * own band confirms that size; one that disagrees replaces it, band and all. A size such a face cannot have
 * counts as not given, and the face is listed as contradicting itself.
 * @param key dimension key, its unit at the end
 * @returns the reading, or undefined when there is none
 * @example readingOf({ nominal: { boreMm: 28.6 }, measured: {}, … }, 'boreMm')?.mid //=> 28.6
 */
export function readingOf(face: Face, key: string): SizeReading | undefined {
  let known = readings.get(face);
  if (!known) {
    known = new Map();
    readings.set(face, known);
  }
  if (!known.has(key)) known.set(key, readAnew(face, key));
  return known.get(key);
}

function readAnew(face: Face, key: string): SizeReading | undefined {
  const nominal = fromPrint(face, key);
  const measured = face.measured[key];
  if (!measured) return nominal;
  const band = measuredBand(measured);
  if (!isPlausible(face.kind, key, band.mid)) return undefined;
  if (!nominal) return { ...band, from: 'measured', weak: false };
  // A table gives some sizes as a span; a measurement inside it, or touching it, agrees.
  const span = face.nominal[key] === undefined ? standardOf(face)?.faces[face.kind]?.[key] : undefined;
  const [lo, hi] = span === undefined ? [nominal.mid, nominal.mid] : spanOf(span);
  const agrees = band.lo <= hi && band.hi >= lo;
  if (!agrees || lo < hi) return { ...band, from: 'measured', weak: false };
  return { ...nominal, weak: false };
}

/** A trait that was recorded, or undefined. */
export const traitOf = (face: Face, key: string): string | undefined => face.traits?.[key];
