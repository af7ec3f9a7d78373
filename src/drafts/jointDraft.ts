import type {
  Between,
  BetweenKind,
  Described,
  Fastener,
  Id,
  JointAbout,
  Target,
  TargetSource,
} from '../journal/entries.ts';
import { parseTyped } from '../mechanics/quantity.ts';
import { type TorqueUnit, type Typed, torqueNm, unitsOf } from '../mechanics/units.ts';
import { type JointKind, jointKindRow } from '../standards/jointKinds.ts';
import { type BikeSide, handOf, threads } from '../standards/screws/threads.ts';
import { describedAnew } from './describedAnew.ts';

/** A row of fasteners as it is being typed. */
export interface FastenerDraft {
  thread: string;
  count: string;
  hand: Fastener['hand'];
  words: string;
  /** What was measured at these screws for the computations; it stays with them unseen. */
  measured?: Omit<Fastener, 'thread' | 'count' | 'hand' | 'words'>;
  /** Set where the trade cuts the two sides differently; choosing a thread then sets the hand. */
  side?: BikeSide | undefined;
}

/** A torque asked for, as it is being typed. */
export interface TargetDraft {
  source: TargetSource;
  typed: string;
  upTo: string;
  unit: TorqueUnit;
  partId: Id | '';
  reference: string;
}

/** A joint as it is being typed; nothing in it has been judged yet. */
export interface JointDraft {
  kind: JointKind | '';
  name: string;
  /** Whether the name is the person's own; until then it follows the kind. */
  ownName: boolean;
  partIds: Id[];
  between: Between[];
  fasteners: FastenerDraft[];
  targets: TargetDraft[];
  note: string;
}

export const emptyJoint: JointDraft = {
  kind: '',
  name: '',
  ownName: false,
  partIds: [],
  between: [],
  fasteners: [],
  targets: [],
  note: '',
};

const sided = (words: string, side: BikeSide, hand: Fastener['hand'], thread = ''): FastenerDraft => ({
  thread,
  count: '1',
  hand,
  words,
  side,
});

/**
 * The fasteners to expect at a kind of joint. Pedals, and the cups of most threaded shells, are left-handed
 * on one side, so each side gets a row of its own.
 * Source of the hands: the thread table, pedal rows and cups of ISO 6696.
 * @example firstFasteners('rotor') //=> [{ thread: '', count: '6', hand: 'right', words: '' }]
 */
export function firstFasteners(kind: JointKind): FastenerDraft[] {
  if (kind === 'pedal') {
    return [
      sided('Pedal on the drive side', 'drive', 'right'),
      sided('Pedal on the other side', 'non-drive', 'left'),
    ];
  }
  if (kind === 'bottom-bracket') {
    return [
      sided('Cup on the drive side', 'drive', 'left'),
      sided('Cup on the other side', 'non-drive', 'right'),
    ];
  }
  // On a hub driven from the left everything is mirrored; backwards pedalling tightens it on either.
  if (kind === 'lockring')
    return [sided('Lockring; right-hand on a hub driven from the left', 'drive', 'left')];
  const { defaultFastenerCount } = jointKindRow(kind);
  if (defaultFastenerCount === 0) return [];
  return [{ thread: '', count: String(defaultFastenerCount), hand: 'right', words: '' }];
}

/**
 * The row after its thread was chosen or typed; where side and table say which way it turns, the hand follows.
 * @example withThread({ thread: '', count: '1', hand: 'left', words: '', side: 'drive' }, 'M36-24').hand //=> 'right'
 */
export function withThread(row: FastenerDraft, thread: string): FastenerDraft {
  const known = threads.find(({ id }) => id === thread);
  return known?.hand && row.side ? { ...row, thread, hand: handOf(known, row.side) } : { ...row, thread };
}

/** The draft after another kind was chosen; what the person wrote stays, what followed the old kind goes. */
export function withKind(draft: JointDraft, kind: JointKind): JointDraft {
  const untouched =
    draft.kind === '' || JSON.stringify(draft.fasteners) === JSON.stringify(firstFasteners(draft.kind));
  return {
    ...draft,
    kind,
    name: draft.ownName ? draft.name : jointKindRow(kind).label,
    fasteners: untouched ? firstFasteners(kind) : draft.fasteners,
  };
}

const onThread: readonly BetweenKind[] = ['grease', 'assembly-paste', 'anti-seize', 'threadlocker'];

/**
 * What lies between after one thing was put there or taken away. "Dry" and what is smeared on exclude each other.
 * @example toggleBetween([{ kind: 'dry' }], { kind: 'grease' }) //=> [{ kind: 'grease' }]
 */
export function toggleBetween(between: readonly Between[], one: Between): Between[] {
  const same = (other: Between) => other.kind === one.kind && other.partId === one.partId;
  if (between.some(same)) return between.filter((other) => !same(other));
  const apart = one.kind === 'dry' ? onThread : onThread.includes(one.kind) ? ['dry' as const] : [];
  return [...between.filter(({ kind }) => !apart.includes(kind)), one];
}

/** Where a draft cannot be taken yet, and the sentence to stand there. */
export interface JointTrouble {
  kind?: string;
  fasteners: Record<number, string>;
  targets: Record<number, string>;
}

export type ReadJoint =
  | { ok: true; about: Omit<JointAbout, 'matters'> }
  | { ok: false; trouble: JointTrouble };

function readFastener({ thread, count, hand, words, measured }: FastenerDraft): Fastener | undefined {
  const whole = /^\d{1,2}$/.test(count.trim()) ? Number(count) : 0;
  if (whole < 1) return undefined;
  return {
    thread: thread.trim(),
    count: whole,
    hand,
    ...(words.trim() ? { words: words.trim() } : {}),
    ...measured,
  };
}

function readTarget(draft: TargetDraft): Target | string {
  const { source, unit, partId, reference } = draft;
  const target = {
    source,
    ...(partId ? { partId } : {}),
    ...(reference.trim() ? { reference: reference.trim() } : {}),
  };
  if (source === 'none' && draft.typed.trim() === '') return target;
  const torque = parseTyped(draft.typed, unitsOf.torque, unit);
  if (!torque.ok) return 'Type the torque in digits, as 5 or 5,2.';
  if (draft.upTo.trim() === '') return { ...target, torque: torque.quantity };
  const upTo = parseTyped(draft.upTo, unitsOf.torque, unit);
  if (!upTo.ok) return 'Type the upper figure in digits, or leave it empty.';
  const nm = (of: Typed<TorqueUnit>) => torqueNm(of.value, of.unit);
  if (nm(upTo.quantity) <= nm(torque.quantity)) return 'The upper figure must be above the lower one.';
  return { ...target, torque: torque.quantity, upTo: upTo.quantity };
}

/**
 * What was typed, as the logbook takes it, or what is in the way.
 * @example readJoint(emptyJoint) //=> { ok: false, trouble: { kind: 'Choose what kind of joint it is.', … } }
 */
export function readJoint(draft: JointDraft): ReadJoint {
  const trouble: JointTrouble = { fasteners: {}, targets: {} };
  if (draft.kind === '') trouble.kind = 'Choose what kind of joint it is.';
  const fasteners = draft.fasteners.map(readFastener);
  fasteners.forEach((read, row) => {
    if (!read) trouble.fasteners[row] = 'Count them: a whole number from 1.';
  });
  const targets = draft.targets.map(readTarget);
  targets.forEach((read, row) => {
    if (typeof read === 'string') trouble.targets[row] = read;
  });
  const wrong = [trouble.kind, ...Object.values(trouble.fasteners), ...Object.values(trouble.targets)];
  if (draft.kind === '' || wrong.some((sentence) => sentence !== undefined)) return { ok: false, trouble };
  const { kind, name, partIds, between, note } = draft;
  return {
    ok: true,
    about: {
      ...{ kind, name: name.trim(), partIds, between },
      fasteners: fasteners.filter((read) => read !== undefined),
      targets: targets.filter((read) => typeof read !== 'string'),
      note: note.trim(),
    },
  };
}

/** What the form changes about a joint as it is; nothing of a field that was not touched. */
export function changedJoint(
  joint: JointAbout,
  about: Omit<JointAbout, 'matters'> & { matters?: boolean },
): Described<JointAbout> {
  const untouched = readJoint(draftOf(joint));
  return describedAnew<JointAbout>(untouched.ok ? { ...joint, ...untouched.about } : joint, about, ['note']);
}

/**
 * A joint that exists, laid out for editing: every figure as it was typed then.
 * @param joint what is recorded
 */
export function draftOf(joint: JointAbout): JointDraft {
  return {
    kind: joint.kind,
    name: joint.name,
    ownName: joint.name !== jointKindRow(joint.kind).label,
    partIds: [...joint.partIds],
    between: [...joint.between],
    fasteners: joint.fasteners.map(({ thread, count, hand, words = '', ...measured }) => ({
      ...{ thread, count: String(count), hand, words },
      ...(Object.keys(measured).length > 0 ? { measured } : {}),
    })),
    targets: joint.targets.map(({ source, torque, upTo, partId = '', reference = '' }) => ({
      ...{ source, partId, reference },
      typed: torque?.typed ?? '',
      upTo: upTo?.typed ?? '',
      unit: torque?.unit ?? 'N.m',
    })),
    note: joint.note ?? '',
  };
}
