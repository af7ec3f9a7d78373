import type { JointRow } from '../../journal/rows.ts';
import type { Band } from '../../mechanics/band.ts';
import { interferenceVerdict, measuredInterferenceMm } from '../../mechanics/clamps/pressFitMeasured.ts';
import { bareNumber } from '../../mechanics/numberText.ts';
import { convert, type LengthUnit, type Typed } from '../../mechanics/units.ts';

/** What one reading of a good caliper may be off, mm. Handbook figure for a caliper, common practice. */
const CALIPER_MM = 0.03;
const mm = ({ value, unit }: Typed<LengthUnit>): number => convert<LengthUnit>(value, unit, 'mm');

/**
 * The fit of two faces by the diameters measured of them.
 * @returns interference, mm, below nothing is a gap, and what it allows to be said; nothing where they are not measured
 * Source: `mechanics/clamps/pressFitMeasured.ts`.
 * @example measuredFit({}) //=> undefined
 */
export function measuredFit({
  diameters,
}: Pick<JointRow, 'diameters'>):
  | { interferenceMm: Band; verdict: ReturnType<typeof interferenceVerdict> }
  | undefined {
  if (!diameters) return undefined;
  const interferenceMm = measuredInterferenceMm(mm(diameters.bore), mm(diameters.outside), CALIPER_MM);
  return { interferenceMm, verdict: interferenceVerdict(interferenceMm) };
}

/** The gap that a compound has to fill, mm across, as measured; nothing where it is not. */
export const gapOf = (joint: Pick<JointRow, 'diameters'>): number | undefined => {
  const fit = measuredFit(joint);
  return fit && -fit.interferenceMm.mid;
};

const verdicts = {
  'holds-by-press': 'holds by press',
  'cannot-tell': 'too close for a caliper to tell',
  'slips-in': 'slips in',
} as const;

const hundredths = (value: number) => bareNumber(Math.abs(value), 2, 2);

/**
 * The measured fit in words.
 * @example fitText({}) //=> undefined
 */
export function fitText(joint: Pick<JointRow, 'diameters'>): string | undefined {
  const fit = measuredFit(joint);
  if (!fit) return undefined;
  const { lo, mid, hi } = fit.interferenceMm;
  const what = mid >= 0 ? 'interference' : 'gap';
  return `${what} ${hundredths(mid)} mm, ${lo < 0 ? '−' : ''}${hundredths(lo)} to ${hi < 0 ? '−' : ''}${hundredths(hi)} mm as interference: ${verdicts[fit.verdict]}`;
}
