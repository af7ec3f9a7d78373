import type { EntryOf, EntryType, Id } from '../../journal/entries.ts';
import type { Names } from './names.ts';

/** For each of some types of entry, the sentence it becomes. */
export type Sentences<T extends EntryType> = { [K in T]: (entry: EntryOf<K>, names: Names) => string };

/** Names, with a word in place of every name that is no longer known. */
export const called = (names: Names) => ({
  bike: (id: Id) => names.bike(id) ?? 'a bike no longer named',
  part: (id: Id) => names.part(id) ?? 'a part no longer named',
  joint: (id: Id) => names.joint(id) ?? 'a joint no longer named',
  step: (id: Id) => quoted('step', names.step?.(id)),
  wait: (id: Id) => quoted('timer', names.wait?.(id)),
  recheck: (id: Id) => quoted('re-check', names.recheck?.(id)),
  defect: (id: Id) => quoted('problem', names.defect?.(id)),
  wheel: (id: Id) => names.wheel?.(id) ?? 'a wheel no longer named',
  tool: (id: Id) => names.tool?.(id) ?? 'a tool no longer named',
});

const quoted = (what: string, name: string | undefined) => (name ? `the ${what} “${name}”` : `a ${what}`);
