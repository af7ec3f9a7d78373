import type { EntryOf, OpenItem } from '../journal/entries.ts';

/**
 * Whether something open keeps a statement from being signed: what stops the full release alone lets the first short ride
 * go.
 * @example stopsStatement({ blocks: false, blocksFull: true }, 'first-ride') //=> false
 */
export const stopsStatement = (
  { blocks, blocksFull }: Pick<OpenItem, 'blocks' | 'blocksFull'>,
  statement: EntryOf<'bike-released'>['statement'] | undefined,
): boolean => statement !== 'not-to-ride' && (blocks || (blocksFull === true && statement === 'ride'));
