import { type CureAdvice, type CureRefusal, type CureTime, cureTime } from '../mechanics/cures/cure.ts';
import { type JointArea, type JointKind, jointKindRow } from '../standards/jointKinds.ts';
import { type CureSurface, cureGrid } from '../standards/screws/cureGrid.ts';
import { type LockerGrade, lockerRow } from '../standards/screws/lockers.ts';

/** Clearance of an ordinary screw in its thread, mm: the gap the curves were drawn for. */
const THREAD_GAP_MM = 0.05;
/** The widest gap a cure was drawn for, mm: what an unmeasured bore counts as. */
const WIDEST_DRAWN_MM = 0.25;
const HOUR_MS = 3_600_000;

export interface LockerPut {
  grade: LockerGrade;
  /** The slower of the two threads. */
  surface: CureSurface;
  primer: boolean;
  temperatureC: number;
  nearDiscBrake: boolean;
  /** What it fills, measured across, mm; below nothing is a press fit. Left out, that of a screw, or the widest a bore was drawn for. */
  gapMm?: number | undefined;
}

/** Whether the heat of a disc brake reaches the joint: taken from its kind, brakes being hot as a rule of thumb. */
export function nearDiscBrake({ kind }: { kind: JointKind }): boolean {
  return (jointKindRow(kind).area satisfies JointArea) === 'brakes';
}

/**
 * How long a threadlocker on a screw has to be left alone.
 * @returns the cure with the wait to start, ms: the longer end of the range and never less than a day; or why not
 * @throws RangeError when grade or surface is none of the tables'
 * Source: `mechanics/cure.ts` on the remembered curves of `standards/cureGrid.ts`.
 * @example lockerWait({ grade: 'medium', surface: 'steel', primer: false, temperatureC: 22, nearDiscBrake: false })
 *   //=> waitMs 86_400_000
 */
export function lockerWait(
  put: LockerPut,
): { ok: true; waitMs: number; cure: CureTime } | { ok: false; reason: CureRefusal } {
  const { surface, primer, temperatureC, nearDiscBrake } = put;
  const grade = lockerRow(put.grade);
  const usualGapMm = grade.use === 'cylinder' ? WIDEST_DRAWN_MM : THREAD_GAP_MM;
  const cure = cureTime(cureGrid, {
    grade,
    surfaces: [surface, surface],
    gapMm: Math.max(0, put.gapMm ?? usualGapMm),
    ...{ temperatureC, primer, nearDiscBrake },
  });
  return cure.ok ? { ok: true, waitMs: cure.waitHours * HOUR_MS, cure } : cure;
}

/** Why no wait can be given, and what to do. */
export const refusalWords: Record<CureRefusal, string> = {
  'not-reliable-below-5-c': 'Too cold to cure reliably, under 5 °C. Warm the joint first.',
  'gap-wants-retaining-compound': 'The gap is too wide for a threadlocker. Take a retaining compound.',
  'gap-too-wide-for-grade': 'The gap is too wide for this grade.',
  'never-cures': 'Gap too wide: it will not cure.',
  'attacks-plastic': 'Threadlocker can crack plastic. Do not use it here.',
  'needs-metal': 'It only cures between metals. Here it stays liquid.',
};

export const adviceWords: Record<CureAdvice, string> = {
  'use-primer': 'Slow surface: primer helps.',
  'retaining-compound': 'Wide gap: a retaining compound does better.',
  'heat-resistant-grade': 'Near a disc brake: use a high-temperature grade.',
  'warm-the-joint': 'Cool: it cures quicker when the joint is warmed.',
};

/** Surfaces from quick to slow, so that "further down" means slower; what it cannot cure on comes last. */
export const surfacesBySpeed: readonly CureSurface[] = [
  'brass',
  'steel',
  'aluminium',
  'stainless',
  'zinc-plate',
  'anodised',
  'carbon',
  'thermoplastic',
];
