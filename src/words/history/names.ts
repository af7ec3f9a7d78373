import type { Id } from '../../journal/entries.ts';

/** How things are called in sentences and on sheets; undefined where the name is no longer known. */
export interface Names {
  bike(id: Id): string | undefined;
  /** Name and label together, so that the part can be found on the shelf. */
  part(id: Id): string | undefined;
  joint(id: Id): string | undefined;
  step?(id: Id): string | undefined;
  wait?(id: Id): string | undefined;
  recheck?(id: Id): string | undefined;
  defect?(id: Id): string | undefined;
  wheel?(id: Id): string | undefined;
  tool?(id: Id): string | undefined;
}

/** A part as it is called in a sentence. @example partCalled('Stem', 'P-014') //=> 'Stem (P-014)' */
export function partCalled(name: string, label: string): string {
  return label.trim() === '' ? name : `${name} (${label.trim()})`;
}
