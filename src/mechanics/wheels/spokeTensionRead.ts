import { convert, type ForceUnit } from '../units.ts';
import { type GaugeAnswer, type GaugeRow, gaugeTension } from './spokeTensionGauge.ts';

export type ReadTension = { ok: true; tensionN: number } | Extract<GaugeAnswer, { ok: false }>;

/**
 * The tension of a reading: of a force at once, of a gauge's scale by the table that came with it.
 * @param read as it was read, finite
 * @param readIn unit or scale
 * @param gauge rows of the table; none is too short a table
 * @example readTension(100, 'kgf') //=> { ok: true, tensionN: 980.665 }
 */
export function readTension(
  read: number,
  readIn: ForceUnit | 'scale',
  gauge: readonly GaugeRow[] = [],
): ReadTension {
  return readIn === 'scale' ? gaugeTension(gauge, read) : { ok: true, tensionN: convert(read, readIn, 'N') };
}
