import type { JointRow, RecheckRow } from '../../journal/rows.ts';
import { pullFigure } from '../../standards/checks/pullFigure.ts';
import { pullInstructions } from '../../standards/checks/pullInstructions.ts';
import { recheckInstructions } from '../../standards/checks/recheckSchedule.ts';

/**
 * A re-check with the instruction that holds today. A figure may have been found since it was set, or taken away,
 * or threadlocker may hold what was dry; what else was said of it then, as about a tool that showed wrong, stays.
 * @param joint the joint it is about
 */
export function askedToday(recheck: RecheckRow, joint: JointRow | undefined): RecheckRow {
  if (recheck.kind !== 'retorque' || !joint) return recheck;
  const now = joint.locked ? recheckInstructions['look-at-mark'] : pullInstructions[pullFigure(joint)];
  const instruction = Object.values(pullInstructions).reduce(
    (words, set) => words.replace(set.words, now.words),
    recheck.instruction,
  );
  return { ...recheck, instruction };
}
