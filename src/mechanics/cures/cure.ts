import { type Band, band, exactly } from '../band.ts';
import { finite, notNegative } from '../range.ts';
import { given, type Known, type Working } from '../working.ts';
import { hoursToReach } from './cureCurve.ts';
import { type CureGrid, gapFactor, RIDE_PERCENT, rideTimeHours, temperatureFactor } from './cureFactors.ts';

/** Below this an anaerobic cure is not counted on. */
const COLDEST_C = 5;
/** Cool enough to be counted as a drag on the cure, °C. */
const COOL_C = 15;
/** Loose enough to be counted as a drag on the cure, mm. */
const LOOSE_GAP_MM = 0.15;
/** Where a retaining compound does better than a threadlocker, mm. */
const RETAINING_GAP_MM = 0.25;
/** An adhesives handbook: above about 30 mil the film never cures. */
const NEVER_CURES_GAP_MM = 0.76;
/** A joint is not promised sooner than this, however good its figures look. */
const LEAST_WAIT_H = 24;
const LEAST_WAIT_WITH_A_DRAG_H = 72;

export interface CureGrade {
  /** Cure time relative to the medium grade the grid was drawn for. */
  readonly pace: Band;
  /** Widest film it is meant for, mm. */
  readonly widestGapMm: number;
  readonly heatResistant: boolean;
}

export interface CureConditions {
  grade: CureGrade;
  /** Keys of `grid.surfaces`: the two faces that touch. */
  surfaces: readonly [string, string];
  /** Diametral gap the film has to fill, mm, ≥ 0. */
  gapMm: number;
  temperatureC: number;
  primer: boolean;
  nearDiscBrake: boolean;
}

export type CureDrag = 'passive-surface' | 'cold' | 'wide-gap';
export type CureAdvice = 'use-primer' | 'retaining-compound' | 'heat-resistant-grade' | 'warm-the-joint';
export type CureRefusal =
  | 'not-reliable-below-5-c'
  | 'gap-wants-retaining-compound'
  | 'gap-too-wide-for-grade'
  | 'never-cures'
  | 'attacks-plastic'
  | 'needs-metal';

export interface CureTime {
  ok: true;
  /** Hours to riding strength, 75 %. */
  rideHours: Band;
  /** Hours to full strength; null where the surface does not get there without primer. */
  fullHours: Band | null;
  /** What to ask the person to wait, whole hours: never less than 24, or 72 with any drag. */
  waitHours: number;
  drags: CureDrag[];
  advice: CureAdvice[];
  known: Known;
  working: Working;
}

function refusal(grid: CureGrid, conditions: CureConditions): CureRefusal | null {
  for (const surface of conditions.surfaces) {
    const row = grid.surfaces[surface];
    if (!row) throw new RangeError(`no such surface: ${surface}`);
    if (row.plastic) return 'attacks-plastic';
    if (!row.curve) return 'needs-metal';
  }
  const { gapMm, temperatureC, grade } = conditions;
  if (gapMm >= NEVER_CURES_GAP_MM) return 'never-cures';
  if (gapMm > RETAINING_GAP_MM && grade.widestGapMm <= RETAINING_GAP_MM)
    return 'gap-wants-retaining-compound';
  if (gapMm > grade.widestGapMm) return 'gap-too-wide-for-grade';
  return temperatureC < COLDEST_C ? 'not-reliable-below-5-c' : null;
}

const slower = (a: Band | null, b: Band | null): Band | null => (a && b ? (a.hi >= b.hi ? a : b) : null);

const times = (...factors: Band[]): Band => {
  const product = (side: keyof Band) => factors.reduce((sum, factor) => sum * factor[side], 1);
  return band(product('lo'), product('mid'), product('hi'));
};

/**
 * How long an anaerobic threadlocker or retaining compound takes. The slower of the two surfaces decides;
 * gap, temperature and grade multiply.
 * @param grid curves of strength over time
 * @returns hours to ride and to full strength as bands, the wait to ask for, and what drags; or a reason
 * @throws RangeError when a number is not finite, the gap is negative, or a surface is not in the grid
 * Source: the grid's; its shape is from memory and weak, so the wait asked for never goes below 24 h.
 * @example cureTime(cureGrid, { grade: medium, surfaces: ['steel', 'steel'], gapMm: 0.05, temperatureC: 22,
 *   primer: false, nearDiscBrake: false }) //=> rideHours.mid 3, fullHours.mid 24, waitHours 24
 */
export function cureTime(
  grid: CureGrid,
  conditions: CureConditions,
): CureTime | { ok: false; reason: CureRefusal } {
  const { grade, surfaces, gapMm, temperatureC, primer, nearDiscBrake } = conditions;
  notNegative({ gapMm });
  finite({ temperatureC });
  const reason = refusal(grid, conditions);
  if (reason) return { ok: false, reason };

  const curves = primer ? [grid.primed] : surfaces.map((surface) => grid.surfaces[surface]!.curve!);
  const reach = (percent: number) => curves.map((curve) => hoursToReach(curve, percent)).reduce(slower);
  const ride = reach(RIDE_PERCENT);
  if (!ride) throw new RangeError('a surface curve that never reaches riding strength');
  const full = reach(100);
  const slowdown = times(temperatureFactor(grid, temperatureC), exactly(gapFactor(grid, gapMm)), grade.pace);
  const rideHours = times(ride, slowdown);

  const drags: CureDrag[] = [];
  if (ride.hi > rideTimeHours(grid.reference) * 2) drags.push('passive-surface');
  if (temperatureC < COOL_C) drags.push('cold');
  if (gapMm >= LOOSE_GAP_MM) drags.push('wide-gap');

  const advice: CureAdvice[] = [];
  if (!primer && drags.includes('passive-surface')) advice.push('use-primer');
  if (drags.includes('cold')) advice.push('warm-the-joint');
  if (gapMm >= RETAINING_GAP_MM && grade.widestGapMm <= RETAINING_GAP_MM) advice.push('retaining-compound');
  if (nearDiscBrake && !grade.heatResistant) advice.push('heat-resistant-grade');

  return {
    ok: true,
    rideHours,
    fullHours: full && times(full, slowdown),
    waitHours: Math.max(drags.length > 0 ? LEAST_WAIT_WITH_A_DRAG_H : LEAST_WAIT_H, Math.ceil(rideHours.hi)),
    drags,
    advice,
    known: grid.known,
    working: {
      result: rideHours,
      unit: 'h',
      formula: 't = t(75 %, slower surface) · f(temperature) · f(gap) · f(grade)',
      inputs: [
        given('time on the slower surface', ride, 'h'),
        given('temperature', temperatureC, '°C'),
        given('gap', gapMm, 'mm'),
        given('slow-down of temperature, gap and grade together', slowdown, '1'),
      ],
      source: grid.source,
      known: grid.known,
    },
  };
}
