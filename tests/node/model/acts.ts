import type { Command, CommandType } from '../../../src/journal/commands.ts';
import type { Entry } from '../../../src/journal/entries.ts';

/**
 * A command as it is written down, so that a sequence can be played again and shortened. Values that only a run
 * knows are written as what they are taken from:
 * `{ from: [act, place, field], plus }` is a field of an entry that an earlier act gave;
 * `{ now: ms }` is an instant that far from the clock.
 */
export type Written = { type: CommandType } & Record<string, unknown>;

/** One act of a sequence. `afterMs` is what the clock runs on before it. */
export type Act = { no: number; afterMs: number } & (
  | { act: 'run'; tab: 0 | 1; command: Written }
  /** Several commands that are all done, or none. */
  | { act: 'list'; tab: 0 | 1; commands: Written[] }
  /** Both tabs at once. */
  | { act: 'race'; commands: { tab: 0 | 1; command: Written }[]; claims?: true; rebuild?: true }
  | { act: 'set-clock'; byMs: number }
  | { act: 'claim'; who: 'first-tab' | 'second-tab' | 'worker' | 'all' }
  | { act: 'remove-demo'; tab: 0 | 1 }
  /** The rows are thrown away and made anew, by a page or by two at once. */
  | { act: 'rebuild'; pages: 1 | 2 }
  | { act: 'open-again'; tab: 0 | 1 }
  | { act: 'look' }
);

export interface From {
  from: [act: number, place: number, field: string];
  plus?: number;
}

const isFrom = (value: object): value is From => 'from' in value && Array.isArray(value.from);

/** Thrown where a command speaks of an entry that this run does not have. */
export class NotGiven extends Error {}

/**
 * A written command with its values filled in.
 * @param given the entries of each act
 * @throws NotGiven when an act it builds on gave no such entry
 */
export function filledIn(written: Written, given: ReadonlyMap<number, Entry[]>, nowMs: number): Command {
  const fill = (value: unknown): unknown => {
    if (Array.isArray(value)) return value.map(fill);
    if (typeof value !== 'object' || value === null) return value;
    if (isFrom(value)) {
      const [act, place, name] = value.from;
      const entry = given.get(act)?.[place] as unknown as Record<string, unknown> | undefined;
      if (entry?.[name] === undefined) throw new NotGiven(`${act}/${place}/${name}`);
      return value.plus === undefined ? entry[name] : (entry[name] as number) + value.plus;
    }
    const only = value as Record<string, unknown>;
    if (Object.keys(only).join() === 'now') return nowMs + (only['now'] as number);
    return Object.fromEntries(Object.entries(only).map(([key, inner]) => [key, fill(inner)]));
  };
  return fill(written) as Command;
}
