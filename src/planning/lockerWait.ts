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

/** Longer than this a cure is hardly waited for, h. Our own choice. */
const LONG_WAIT_H = 72;
/** A warm room, °C. */
const WARM_C = 22;

/** What would make a long cure short, and how long it takes then. */
export interface LockerHelp {
  how: 'warm' | 'primer' | 'warm-and-primer';
  waitHours: number;
}

/**
 * What makes a cure shorter that is too long to wait for: warmth, primer, or both. Only what halves it at least is told.
 * @returns undefined where the cure is not that long; no help where nothing helps
 * @example lockerHelp({ grade: 'medium', surface: 'steel', primer: false, temperatureC: 22, nearDiscBrake: false }) //=> undefined
 */
export function lockerHelp(put: LockerPut): LockerHelp[] | undefined {
  const now = lockerWait(put);
  if (!now.ok || now.cure.waitHours <= LONG_WAIT_H) return undefined;
  const warm = { temperatureC: Math.max(WARM_C, put.temperatureC) };
  const ways: [LockerHelp['how'], LockerPut][] = [
    ['warm', { ...put, ...warm }],
    ['primer', { ...put, primer: true }],
    ['warm-and-primer', { ...put, ...warm, primer: true }],
  ];
  const helps: LockerHelp[] = [];
  for (const [how, better] of ways) {
    const then = lockerWait(better);
    const least = Math.min(now.cure.waitHours, ...helps.map(({ waitHours }) => waitHours));
    if (then.ok && then.cure.waitHours <= least / 2) helps.push({ how, waitHours: then.cure.waitHours });
  }
  return helps;
}

/** What to do for a shorter cure, before how long it takes then. */
export const helpWords: Record<LockerHelp['how'], string> = {
  warm: `Warm the joint to ${WARM_C} °C`,
  primer: 'Use primer',
  'warm-and-primer': `Primer, and ${WARM_C} °C`,
};

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
