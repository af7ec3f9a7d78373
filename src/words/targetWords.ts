import type { TargetSource } from '../journal/entries.ts';
import type { TargetStanding, TorqueTarget } from '../planning/rulingTarget.ts';

const sources: Record<TargetSource, string> = {
  'printed-on-the-part': 'printed on the part',
  'makers-document': "from the maker's document",
  'mating-part': "the mating part's figure",
  'general-table': 'from a general table',
  'own-judgement': 'our suggestion',
  none: 'no source',
};

/** A warning for a figure that no part maker stands behind. */
export const standingWarning: Record<TargetStanding, string | undefined> = {
  'part-maker': undefined,
  'general-table': 'Not the part maker’s figure. Look for a mark on the part first.',
  'own-judgement': 'Your own figure.',
  unsourced: 'No source is given for this figure.',
};

/** What was typed may carry its unit; the card prints the unit in its own place. */
const digitsOf = (typed: string) => /^[\d.,+\-−\s]*/.exec(typed)?.[0].trim() || typed;

/**
 * A target as its figure alone: one number, or the range as printed.
 * @example targetFigureText({ torque: { value: 12, unit: 'N.m', typed: '12' }, upTo: { value: 14, unit: 'N.m', typed: '14' } }) //=> '12 to 14'
 */
export function targetFigureText({ torque, upTo }: Pick<TorqueTarget, 'torque' | 'upTo'>): string {
  return upTo ? `${digitsOf(torque.typed)} to ${digitsOf(upTo.typed)}` : digitsOf(torque.typed);
}

/**
 * Where a figure comes from and whose it is.
 * @param partName the part it belongs to, where one is named
 * @example sourceText({ source: 'printed-on-the-part' }, 'Stem') //=> 'Stem: printed on the part'
 */
export function sourceText(
  { source, reference }: Pick<TorqueTarget, 'source' | 'reference'>,
  partName?: string,
): string {
  const whose = partName ? `${partName}: ` : '';
  const where = reference?.trim() ? `, ${reference.trim()}` : '';
  const text = `${whose}${sources[source]}${where}`;
  return text.charAt(0).toUpperCase() + text.slice(1);
}
