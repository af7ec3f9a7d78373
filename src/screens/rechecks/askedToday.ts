import type { JointRow, RecheckRow } from '../../journal/rows.ts';
import { type PullFigure, pullFigure, pullInstructions } from '../../standards/pullInstructions.ts';

const lower = (title: string) => `${title.charAt(0).toLowerCase()}${title.slice(1)}`;
const figures = Object.keys(pullInstructions) as PullFigure[];

/**
 * A re-check with the words that hold today. A figure may have been found since it was set, or taken away;
 * what else was said of it then, as about a tool that showed wrong, stays.
 * @param joint the joint it is about
 */
export function askedToday(recheck: RecheckRow, joint: JointRow | undefined): RecheckRow {
  if (recheck.kind !== 'retorque' || !joint) return recheck;
  const now = pullInstructions[pullFigure(joint)];
  let { title, instruction } = recheck;
  for (const figure of figures) {
    title = title.replace(lower(pullInstructions[figure].title), lower(now.title));
    instruction = instruction.replace(pullInstructions[figure].words, now.words);
  }
  return { ...recheck, title, instruction };
}
