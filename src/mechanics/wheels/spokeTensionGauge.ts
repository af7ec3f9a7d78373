/** One row of the table that came with a deflection gauge, for one kind of spoke. */
export interface GaugeRow {
  /** what the scale shows, in the gauge's own divisions or mm, above 0 */
  reading: number;
  tensionN: number;
}

export type GaugeAnswer =
  | { ok: true; tensionN: number; interpolated: boolean }
  | { ok: false; reason: 'table-too-short' | 'table-not-in-order' | 'outside-table' | 'not-a-number' };

/** Does tension run one way along the readings, whichever way the gauge's scale is printed? */
function rising(rows: readonly GaugeRow[]): boolean {
  const steps = rows
    .slice(1)
    .map((row, at) => [row.reading - rows[at]!.reading, row.tensionN - rows[at]!.tensionN]);
  const falling = steps[0]![1]! < 0;
  return steps.every(([reading, tension]) => reading! > 0 && (falling ? tension! < 0 : tension! > 0));
}

/**
 * Tension from a gauge that bends the spoke. Between two rows it goes along a/reading + b, because the force of a
 * bent spoke grows with its tension over its deflection; a straight line would read high in the middle.
 * @param table rows of the gauge for this spoke, at least two, in any order, readings above 0
 * @param reading what the scale shows
 * @returns tension in N, or a named reason; nothing is guessed beyond the ends of the table
 * Source: T = a/δ + b, appendix of a dissertation on bicycle wheels.
 * @example gaugeTension([{ reading: 1, tensionN: 1200 }, { reading: 2, tensionN: 500 }], 1.5) //=> 733.3… N
 */
export function gaugeTension(table: readonly GaugeRow[], reading: number): GaugeAnswer {
  if (![reading, ...table.flatMap((row) => [row.reading, row.tensionN])].every(Number.isFinite))
    return { ok: false, reason: 'not-a-number' };
  if (table.length < 2) return { ok: false, reason: 'table-too-short' };
  const rows = [...table].sort((a, b) => a.reading - b.reading);
  if (!rising(rows) || rows[0]!.reading <= 0 || rows.some((row) => row.tensionN < 0))
    return { ok: false, reason: 'table-not-in-order' };
  const same = rows.find((row) => row.reading === reading);
  if (same) return { ok: true, tensionN: same.tensionN, interpolated: false };
  const after = rows.findIndex((row) => row.reading > reading);
  const [low, high] = [rows[after - 1], rows[after]];
  if (!low || !high) return { ok: false, reason: 'outside-table' };
  const share = (1 / low.reading - 1 / reading) / (1 / low.reading - 1 / high.reading);
  return { ok: true, tensionN: low.tensionN + share * (high.tensionN - low.tensionN), interpolated: true };
}
