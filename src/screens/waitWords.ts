const kinds: Record<string, string> = { cure: 'Threadlocker', seal: 'Seal', adhesive: 'Adhesive' };

/**
 * What waits, in few words: its kind, unless its own name says it already.
 * @param kind of the wait
 * @param title the joint's name, or the person's own words
 * @example waitWords('seal', 'Rear bead') //=> 'Seal: Rear bead'
 */
export function waitWords(kind: string, title: string): string {
  const word = kinds[kind];
  if (word === undefined || title.toLocaleLowerCase().startsWith(word.toLocaleLowerCase())) return title;
  return `${word}: ${title}`;
}
