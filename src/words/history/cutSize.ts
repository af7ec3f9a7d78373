import type { OneWayChange } from '../../journal/entries.ts';
import { quantityWords } from '../phrases.ts';

/** Changes that only take material away: an amount of theirs is off. */
const takesOff = new Set<OneWayChange['cut']>(['file', 'saw', 'grind', 'turn']);

/**
 * By how much a part was changed for good, as far as it is known.
 * @returns never empty
 * @example cutSize({ cut: 'file', amount: { value: 2, unit: 'mm', typed: '2' } }) //=> '2 mm off'
 */
export function cutSize({
  cut,
  before,
  after,
  amount,
}: Pick<OneWayChange, 'cut' | 'before' | 'after' | 'amount'>): string {
  if (before && after) return `from ${quantityWords(before)} to ${quantityWords(after)}`;
  const sizes = [
    ...(amount ? [`${quantityWords(amount)}${takesOff.has(cut) ? ' off' : ''}`] : []),
    ...(before ? [`from ${quantityWords(before)}`] : []),
    ...(after ? [`to ${quantityWords(after)}`] : []),
  ];
  return sizes.join(', ') || 'size not known';
}
