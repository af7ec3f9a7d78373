import type { LacingStep } from '../../mechanics/wheels/lacingOrder.ts';
import { countWords } from '../phrases.ts';
import { onSide } from './wheelWords.ts';

/** What the builder does at the start of a round of lacing. */
function roundWords({ spoke: { round, side, lean }, ofRound, crosses }: LacingStep): string {
  const all = countWords(ofRound, 'spoke');
  if (lean === 0) return `${all}, ${onSide[side]}: straight from hub to rim.`;
  if (round === 1)
    return `${all}, ${onSide[side]}: every second flange hole, heads outside the flange. Spoke 1 is the key spoke: right beside the valve hole.`;
  if (round === 2)
    return `${all}, ${onSide[side]}: every second flange hole, heads outside. When all are in, turn the hub until the spokes slant.`;
  const over = crosses > 1 ? `over the first ${crosses === 2 ? 'spoke' : `${crosses - 1} spokes`} and ` : '';
  return `${all}, ${onSide[side]}: heads inside the flange. Each crosses ${over}under the ${crosses > 1 ? 'last' : 'one'} it meets.`;
}

/** What to do with one spoke: a short order, and what it means at hub and rim. */
export interface LacingWords {
  title: string;
  detail: string;
  /** at the first spoke of a round */
  round: string | undefined;
}

/**
 * A spoke to lace, in words: the same as the drawing says.
 * @example lacingWords(order[0]).title //=> 'Spoke 1, left'
 */
export function lacingWords(step: LacingStep): LacingWords {
  const { spoke, hubHole, opensRound, headOutside } = step;
  const way = spoke.lean === 0 ? 'off' : spoke.lean === 1 ? 'clockwise of' : 'anti-clockwise of';
  const head = spoke.lean === 0 ? '' : `, head ${headOutside ? 'outside' : 'inside'} the flange`;
  return {
    title: `Spoke ${spoke.spoke}, ${onSide[spoke.side]}`,
    detail: `Rim hole ${spoke.spoke} after the valve; flange hole ${hubHole} of its side${head}. Seen from the drive side its hub end is ${Math.round(spoke.crossingDeg)}° ${way} its rim hole.`,
    round: opensRound ? roundWords(step) : undefined,
  };
}
