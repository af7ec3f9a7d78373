import type { JointRow } from '../../journal/rows.ts';
import type { TorqueUnit, Typed } from '../../mechanics/units.ts';
import { rulingTarget } from '../../planning/rulingTarget.ts';

/**
 * What was applied, where a re-check pulls to that and not to a target: there is no target, or it is a range. Pulled to the far
 * end of a range, a bolt would turn that had not moved.
 * @returns nothing where the joint is met at its one target, or where no torque holds it
 * @example pullToApplied({ targets: [], state: 'open' }) //=> undefined
 */
export function pullToApplied({
  targets,
  state,
  applied,
}: Pick<JointRow, 'targets' | 'state' | 'applied'>): Typed<TorqueUnit> | undefined {
  const ruling = rulingTarget(targets);
  if (state !== 'torqued' || (ruling.ok && ruling.target.upTo === undefined)) return undefined;
  return applied?.applied;
}
