import { countWords } from '../phrases.ts';

/** What came of looking for the next turns. */
type Advised =
  | { is: 'nothing-read' | 'no-target' | 'held-by-nothing' | 'at-maximum' }
  | { is: 'turns'; turns: readonly unknown[]; within: boolean };

/** What the list of turns is worth. @example turnsAdviceWords({ is: 'turns', turns: [], within: true }) //=> 'Nothing to turn: …' */
export function turnsAdviceWords(advice: Advised): string {
  switch (advice.is) {
    case 'nothing-read':
      return 'Read the spokes or the rim first.';
    case 'no-target':
      return 'Set a target tension, or read spokes of both sides.';
    case 'held-by-nothing':
      return 'A flange lies at or beyond the plane of the rim: no tension holds this wheel. Check the flange distances.';
    case 'at-maximum':
      return 'The tension aimed at leaves no room below the rim maker’s maximum. Set a lower target.';
    case 'turns': {
      if (advice.turns.length === 0)
        return advice.within
          ? 'Nothing to turn: all that was read is within its band.'
          : 'No eighth of a turn makes it better. What is left lies in the rim or in the readings: measure again.';
      const turns = countWords(advice.turns.length, 'nipple');
      return advice.within
        ? `Turn ${turns}; rim and tension should then be within their bands. Read again after that.`
        : `Turn ${turns}: the nearest that small turns come. Then read again.`;
    }
  }
}
