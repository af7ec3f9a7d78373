import { plausibleTorque, type TorqueDoubt } from '../../mechanics/screws/torquePlausible.ts';

/** How far above the figure is still the wrench and not the hand: the error a torque tool may have. Own proposal. */
const TOOL_ERROR = 0.06;

export type AppliedDoubt =
  | { about: 'size'; reason: TorqueDoubt; perhapsNm?: number }
  | { about: 'target'; mostNm: number };

/**
 * What to ask before a torque is written down. A doubt is asked once and then logged as it was: the
 * logbook keeps what the hand did, also where it was too much.
 * @param nm torque applied, N·m, ≥ 0
 * @param known.diameterMm thread diameter, mm, > 0, where it is known
 * @param known.mostNm what the ruling target allows, N·m, where there is one
 * @returns the doubt, or undefined where there is none
 * @throws RangeError when nm is negative or not finite, or the diameter not positive
 * @example appliedDoubt(5, { diameterMm: 5, mostNm: 5 }) //=> undefined
 */
export function appliedDoubt(
  nm: number,
  { diameterMm, mostNm }: { diameterMm?: number | undefined; mostNm?: number | undefined },
): AppliedDoubt | undefined {
  const plausible = plausibleTorque(nm, diameterMm);
  if (!plausible.ok) {
    const { reason, perhapsNm } = plausible;
    return { about: 'size', reason, ...(perhapsNm === undefined ? {} : { perhapsNm }) };
  }
  if (mostNm !== undefined && nm > mostNm * (1 + TOOL_ERROR)) return { about: 'target', mostNm };
  return undefined;
}
