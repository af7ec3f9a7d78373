import { NO_MARK, proofOf, propertyClasses } from '../../standards/screws/propertyClasses.ts';
import type { ScrewFacts } from './jointFacts.ts';

/** Screws that share a joint but not what decides its preload. */
export type Mixed = 'sizes' | 'kinds';

/** What is known of every one: the value where all have it, undefined where one has none. */
const ofAll = <T>(values: readonly (T | undefined)[]): T[] | undefined =>
  values.every((value) => value !== undefined) ? (values as T[]) : undefined;

const rowOf = (propertyClass: string) => propertyClasses.find((each) => each.propertyClass === propertyClass);
const proofOfMark = (mark: string): number => {
  const row = rowOf(mark);
  return row ? proofOf(row) : 0;
};

/**
 * The mark to reckon with: none known where one was not looked at, none at all where one has none, one that its material
 * contradicts, else the weakest.
 */
function leastKnownMark(screws: readonly ScrewFacts[]): string | undefined {
  const marks = ofAll(screws.map(({ propertyClass }) => propertyClass));
  if (!marks || marks.includes(NO_MARK)) return marks && NO_MARK;
  const odd = marks.find((mark, at) => {
    const row = rowOf(mark);
    return row !== undefined && row.screw !== screws[at]?.screw;
  });
  return odd ?? marks.reduce((weakest, mark) => (proofOfMark(mark) < proofOfMark(weakest) ? mark : weakest));
}

/**
 * The one screw that all of a joint may be taken for: the weakest mark, the shortest grip, and nothing that is not known of
 * every one. Sizes or kinds that differ cannot be taken for one.
 * @example onlyScrew([{ thread: 'M5', count: 4 }, { thread: 'M6', count: 1 }]) //=> 'sizes'
 */
export function onlyScrew(screws: readonly ScrewFacts[]): ScrewFacts | Mixed {
  const [first] = screws;
  if (!first || screws.some(({ thread }) => thread !== first.thread)) return 'sizes';
  const differs = screws.some(
    ({ screw, female, variant }) =>
      screw !== first.screw || female !== first.female || variant !== first.variant,
  );
  if (differs) return 'kinds';
  const grips = ofAll(screws.map(({ gripMm }) => gripMm));
  return {
    ...first,
    count: screws.reduce((sum, { count }) => sum + count, 0),
    propertyClass: leastKnownMark(screws),
    gripMm: grips && Math.min(...grips),
  };
}
