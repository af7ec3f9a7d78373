import { curesByClock } from '../planning/curesByClock.ts';

const waitKinds: Record<string, string> = { cure: 'Threadlocker', seal: 'Seal', adhesive: 'Adhesive' };

/**
 * What a wait of this kind is once its time is over, where it needs no look then; undefined where a look is
 * due.
 * @param kind of the wait
 * @example overWord('cure') //=> 'Cured'
 */
export const overWord = (kind: string): string | undefined => (curesByClock(kind) ? 'Cured' : undefined);

/**
 * What waits, in few words: its kind, unless its own name says it already.
 * @param kind of the wait
 * @param title the joint's name, or the person's own words
 * @example waitWords('seal', 'Rear bead') //=> 'Seal: Rear bead'
 */
export function waitWords(kind: string, title: string): string {
  const word = waitKinds[kind];
  if (word === undefined || title.toLocaleLowerCase().startsWith(word.toLocaleLowerCase())) return title;
  return `${word}: ${title}`;
}
