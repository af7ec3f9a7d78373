import type { Entry, EntryType } from '../../../src/journal/entries.ts';
import type { Written } from './acts.ts';
import { counts } from './reading.ts';
import { HOUR, MINUTE, taken, type World } from './world.ts';

const nm = (value: number) => ({ value, unit: 'N.m', typed: String(value) });

/** What a correction of each kind of entry may carry. */
const fields: { [T in EntryType]?: (world: World) => Record<string, unknown> } = {
  'torque-applied': ({ dice }) =>
    dice.chance(0.3) ? { note: 'misread' } : { applied: nm(3 + dice.below(5)) },
  'ride-logged': ({ dice }) => ({ km: 1 + dice.below(40) }),
  'wait-started': ({ dice }) => ({ waitMs: (5 + dice.below(3000)) * MINUTE }),
  'locker-applied': ({ dice }) =>
    dice.chance(0.5) ? { grade: 'high' } : { waitMs: (1 + dice.below(30)) * HOUR },
  'torque-found': ({ dice }) =>
    dice.chance(0.4) ? { note: 'again' } : { outcome: dice.chance(0.5) ? 'held' : 'moved' },
  'defect-found': ({ dice }) => ({ words: `words ${dice.below(1000)}` }),
  'bike-started': ({ dice }) => ({ name: `Name ${dice.below(1000)}` }),
  'part-added': ({ dice }) => ({ name: `Name ${dice.below(1000)}` }),
  'joint-made': ({ dice }) => ({ name: `Name ${dice.below(1000)}` }),
  'step-skipped': () => ({ why: 'otherwise' }),
  'hand-tightened': () => ({ note: 'by feel' }),
  'note-added': ({ dice }) => ({ words: `words ${dice.below(1000)}` }),
  'recheck-set': ({ dice }) => ({ dueRides: 1 + dice.below(4) }),
};

/** The first act that gave this entry, as what its fields are taken from. */
function placeOf({ given }: World, id: string): [act: number, place: number] | undefined {
  for (const [act, entries] of given) {
    const place = entries.findIndex((entry) => entry.id === id);
    if (place >= 0) return [act, place];
  }
  return undefined;
}

function thrownFields(world: World, entry: Entry): Record<string, unknown> | undefined {
  const { dice } = world;
  const at = placeOf(world, entry.id);
  if (!at || dice.chance(0.03)) return { bikeId: 'b1' };
  if (dice.chance(0.35)) {
    const earlier = dice.chance(0.75) ? -1 : 1;
    const plus = earlier * (1 + dice.below(100)) * 15 * MINUTE;
    return { happenedAtMs: { from: [...at, 'happenedAtMs'], plus } };
  }
  return fields[entry.type]?.(world);
}

/** Strikes out, sets right, or takes a correction back. */
export function thrownCorrection(world: World): Written | undefined {
  const { dice, given } = world;
  const all = [...given.values()].flat();
  const entry = dice.pick(dice.chance(0.6) ? all.slice(-6) : all);
  if (!entry || (!counts(entry, all) && dice.chance(0.8))) return undefined;
  const entryId = taken(world, 'id', entry.id);
  if (dice.chance(0.3)) {
    const whole = [...given.values()].find((entries) => entries.includes(entry)) ?? [entry];
    const ids = dice.chance(0.8) ? whole.map(({ id }) => taken(world, 'id', id)) : [entryId];
    return { type: 'undo', entryIds: ids };
  }
  const becomes = dice.chance(0.25) ? null : thrownFields(world, entry);
  return becomes === undefined ? undefined : { type: 'correct', entryId, reason: 'written wrong', becomes };
}
