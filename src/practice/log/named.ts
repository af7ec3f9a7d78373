import { firstFasteners } from '../../drafts/jointDraft.ts';
import type { Command, CommandOf } from '../../journal/commands.ts';
import type { Fastener, Id } from '../../journal/entries.ts';
import type { JointRow, PartRow, StepRow, ToolRow } from '../../journal/rows.ts';
import { type JointKind, jointKindRow } from '../../standards/jointKinds.ts';
import { mattersOnBike } from '../release/mattersOnBike.ts';
import { jointNamed } from './jointNamed.ts';
import { partNamed } from './partNamed.ts';

/** Where a thing says that it came from a line, until it is completed. */
export const FROM_A_LINE = 'from a logged line';

/** What the bike has already, and the tools. */
export interface AtHand {
  joints: readonly JointRow[];
  parts: readonly PartRow[];
  steps: readonly StepRow[];
  tools: readonly ToolRow[];
}

export interface NamedThing {
  words: string;
  /** Of what was picked; empty where it was typed. */
  id: Id;
}

export const sameWords = (one: string, other: string) =>
  one.trim().toLowerCase() === other.trim().toLowerCase();
const capital = (text: string) => text.charAt(0).toUpperCase() + text.slice(1);

export interface JointMeant {
  jointId: Id;
  name: string;
  kind: JointKind;
  fasteners: readonly Fastener[];
  /** The joint as it is, where the bike has it. */
  joint?: JointRow;
  commands: Command[];
}

/** The fasteners of a joint known by its name alone: one side of those that have two, where a side is named. */
function fastenersOf(kind: JointKind, side: 'left' | 'right' | undefined): Fastener[] {
  const rows = firstFasteners(kind).filter(
    (row) => !side || !row.side || (row.side === 'drive') === (side === 'right'),
  );
  return rows.map(({ count, hand, words }) => ({
    ...{ thread: '', count: Number(count), hand },
    ...(words ? { words } : {}),
  }));
}

/**
 * The joint a line is about: the one that was picked or bears the name typed, or a new one of the kind its name says.
 * @returns undefined where no joint was named
 * @example jointMeant({ words: 'stem', id: '' }, 'b1', nothingAtHand, newId)?.kind //=> 'stem-steerer'
 */
export function jointMeant(
  { words, id }: NamedThing,
  bikeId: Id,
  { joints, parts }: AtHand,
  newId: () => Id,
): JointMeant | undefined {
  const called = joints.filter(({ name }) => sameWords(name, words));
  const joint =
    joints.find(({ jointId }) => jointId === id) ??
    called.find(({ state }) => state !== 'apart') ??
    called[0];
  if (joint) {
    const { jointId, name, kind, fasteners } = joint;
    return { jointId, name, kind, fasteners, joint, commands: [] };
  }
  if (words.trim() === '') return undefined;
  const { kind, side } = jointNamed(words);
  const jointId = newId();
  const name = capital(words.trim());
  const fasteners = fastenersOf(kind, side);
  const matters = jointKindRow(kind).matters || mattersOnBike({ kind, partIds: [] }, parts).matters;
  const making: CommandOf<'make-joint'> = {
    ...{ type: 'make-joint', jointId, bikeId, name, kind, partIds: [], between: [], fasteners, targets: [] },
    ...{ matters, note: capital(FROM_A_LINE) },
  };
  return { jointId, name, kind, fasteners, commands: [making] };
}

export interface PartMeant {
  partId: Id;
  name: string;
  commands: Command[];
}

/**
 * The part a line is about: the one that was picked or bears the name typed, or a new one on the bike.
 * @returns undefined where no part was named
 */
export function partMeant(
  { words, id }: NamedThing,
  bikeId: Id,
  { parts }: AtHand,
  newId: () => Id,
): PartMeant | undefined {
  const part = parts.find(({ partId }) => partId === id) ?? parts.find(({ name }) => sameWords(name, words));
  if (part) return { partId: part.partId, name: part.name, commands: [] };
  const kind = partNamed(words).kind;
  // "Frame" is the frame of this bike, whatever that one is called.
  const only = parts.filter((one) => one.kind === kind && kind !== 'other');
  if (only.length === 1 && only[0] && sameWords(words, kind.replaceAll('-', ' ')))
    return { partId: only[0].partId, name: only[0].name, commands: [] };
  if (words.trim() === '') return undefined;
  const partId = newId();
  return { partId, name: capital(words.trim()), commands: [partByName(words, bikeId, partId)] };
}

/** A part known by its name alone. */
export function partByName(
  words: string,
  bikeId: Id,
  partId: Id,
  from: Partial<Pick<CommandOf<'add-part'>, 'origin' | 'originWords'>> = {},
): CommandOf<'add-part'> {
  return {
    ...{ type: 'add-part', partId, place: bikeId ? { on: 'bike', bikeId } : { on: 'shelf' } },
    ...{ label: '', name: capital(words.trim()), origin: 'unknown', originWords: FROM_A_LINE },
    ...partNamed(words),
    ...from,
  };
}

/**
 * The tool a line names.
 * @returns undefined where none is named
 */
export function toolMeant(
  { words, id }: NamedThing,
  { tools }: AtHand,
  newId: () => Id,
): { toolId: Id; commands: Command[] } | undefined {
  const known = tools.find(({ toolId }) => toolId === id) ?? tools.find(({ name }) => sameWords(name, words));
  if (known) return { toolId: known.toolId, commands: [] };
  if (words.trim() === '') return undefined;
  const toolId = newId();
  return { toolId, commands: [{ type: 'add-tool', toolId, name: capital(words.trim()) }] };
}
