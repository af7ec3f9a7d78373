import type { Command, CommandOf, CommandType } from '../../../src/journal/commands.ts';
import type { Entry, EntryType, Id } from '../../../src/journal/entries.ts';
import type { Mismatch } from './compare.ts';
import type { JointAnswer } from './jointModel.ts';
import type { ModelAnswers } from './modelAnswers.ts';
import { comesBefore, field, is } from './reading.ts';

/** A command that was carried out, and how things stood before and after. */
export interface Done {
  command: Command;
  gave: readonly Entry[];
  before: ModelAnswers;
  after: ModelAnswers;
  /** The journal as it was before. */
  all: readonly Entry[];
  nowMs: number;
}

type Debt = { rule: string; expected: unknown; found: unknown };
type Owed<T extends CommandType> = (command: CommandOf<T>, done: Done) => Debt[];

const debt = (rule: string, expected: unknown, found: unknown): Debt[] =>
  JSON.stringify(expected) === JSON.stringify(found) ? [] : [{ rule, expected, found }];

const about = <A extends { jointId?: Id }>(answers: Map<Id, A>, jointId: Id, open: (answer: A) => boolean) =>
  [...answers].filter(([, answer]) => answer.jointId === jointId && open(answer)).map(([id]) => id);

const holding = (joints: Map<Id, JointAnswer>, bikeId: Id, partId: Id) =>
  [...joints].filter(
    ([, joint]) =>
      joint.bikeId === bikeId && (joint.partIds.includes(partId) || joint.betweenIds.includes(partId)),
  );

/** Whether a release of a bike says that it may be ridden, and nothing has taken that back. */
function stands(model: ModelAnswers, bikeId: Id): boolean {
  const bike = model.bikes.get(bikeId);
  const release = bike?.release;
  return (
    release !== undefined &&
    release.statement !== 'not-to-ride' &&
    !release.withdrawn &&
    bike?.revokedBy === undefined
  );
}

const withdrawn = (model: ModelAnswers, bikeId: Id) => model.bikes.get(bikeId)?.release?.withdrawn;

/**
 * [T7] Whether threadlocker went on since the joint was last torqued, taken apart or met moved; a nut run on by hand is
 * none of these.
 */
function lockedSinceTightened(jointId: Id, { read }: ModelAnswers): boolean {
  const turned = read
    .filter(is('torque-applied', 'joint-taken-apart', 'locker-applied', 'torque-found'))
    .filter((entry) => entry.jointId === jointId)
    .filter((entry) => entry.type !== 'torque-found' || entry.outcome !== 'held');
  return turned.at(-1)?.type === 'locker-applied';
}

/** What of a joint a release covers: described anew, it is another joint. */
const COVERED = ['kind', 'partIds', 'between', 'fasteners', 'targets', 'matters'] as const;

/** [L2] Whether a description of a joint must revoke. */
function mustRevoke(command: CommandOf<'describe-joint'>, { before }: Done): boolean {
  const about = before.read
    .filter(is('joint-made', 'joint-described'))
    .filter(({ jointId }) => jointId === command.jointId);
  // [J9] What stands before the beginning counts after it.
  const described = [...about.filter(is('joint-made')), ...about.filter(is('joint-described'))];
  const now = (name: (typeof COVERED)[number]) =>
    described.filter((entry) => entry[name] !== undefined).at(-1)?.[name];
  const changed = COVERED.some(
    (name) => command[name] !== undefined && JSON.stringify(command[name]) !== JSON.stringify(now(name)),
  );
  return changed && (now('matters') === true || command.matters === true);
}

/** [L2] Fields that are a mere remark, or may be read as one. */
const REMARKS = ['note', 'photoIds', 'words', 'name', 'title', 'why'];

const debts: { [T in CommandType]?: Owed<T> } = {
  'apply-torque': ({ jointId, stepId, between }, { gave, before, after }) => {
    const torques = gave.filter(is('torque-applied'));
    const wet = between === 'threadlocker' && !lockedSinceTightened(jointId, before);
    return [
      ...(wet ? debt('T7 a cure begins', 1, gave.filter(is('locker-applied')).length) : []),
      ...debt('T1 one torque entry', 1, torques.length),
      ...debt('T1 its joint is torqued', 'torqued', after.joints.get(jointId)?.state),
      ...(stepId === undefined ? [] : debt('T1 its step is done', 'done', after.steps.get(stepId)?.state)),
    ];
  },
  'describe-joint': (command, done) =>
    debt(
      'L2 revokes where what was covered changes',
      mustRevoke(command, done),
      done.gave.filter(is('joint-described')).some((entry) => field(entry, 'revokes') === true),
    ),
  correct: ({ entryId, becomes }, { before, gave }) => {
    const entry = before.read.find(({ id }) => id === entryId);
    if (!entry || becomes === null || is('joint-described')(entry)) return [];
    if (is('torque-found')(entry)) {
      const moves = entry.outcome === 'held' && (becomes['outcome'] ?? 'held') !== 'held';
      const stood = before.bikes.get(entry.bikeId);
      if (!moves || !stood?.release || before.joints.get(entry.jointId)?.matters !== true) return [];
      return debt(
        'L2 a look that moved after all revokes',
        true,
        gave.filter(is('entry-corrected')).some(({ matters }) => matters === true),
      );
    }
    const changed = Object.keys(becomes).filter(
      (name) => JSON.stringify(becomes[name]) !== JSON.stringify(field(entry, name)),
    );
    const remarks = changed.filter((name) => REMARKS.includes(name));
    if (remarks.length > 0 && remarks.length < changed.length) return [];
    if (remarks.some((name) => name !== 'note')) return [];
    // What happened after the last release revokes by itself; without a release there is nothing to revoke.
    const signed = before.read.filter(
      (one) => is('bike-released')(one) && field(one, 'bikeId') === field(entry, 'bikeId'),
    );
    const last = signed.toSorted((a, b) => (comesBefore(a, b) ? -1 : 1)).at(-1);
    if (!last || !comesBefore(entry, last)) return [];
    return debt(
      'L2 a correction matters where its entry did and more than a remark changes',
      field(entry, 'matters') === true && remarks.length === 0,
      gave.filter(is('entry-corrected')).some(({ matters }) => matters === true),
    );
  },
  'find-torque': ({ jointId, recheckId, outcome, broughtTo, between, locker }, { before, after, gave }) => {
    const wet = broughtTo && outcome !== 'held' && (locker !== undefined || between === 'threadlocker');
    const cure = wet ? debt('T7 a cure begins', 1, gave.filter(is('locker-applied')).length) : [];
    if (cure.length > 0) return cure;
    if (outcome === 'held') {
      const revoked = gave.some(revoking);
      return debt('L2 a look that found everything as it was does not revoke', false, revoked);
    }
    const asked = recheckId === undefined ? undefined : before.rechecks.get(recheckId);
    if (!asked?.open) return [];
    const again = about(after.rechecks, jointId, ({ open, turn }) => open && turn === 0);
    return debt('R2 one met moved begins its schedule again', true, again.length > 0);
  },
  'hand-tighten': ({ jointId }, { after }) =>
    debt('T5 hand-tight', 'hand-tight', after.joints.get(jointId)?.state),
  'take-joint-apart': ({ jointId }, { after }) => debt('apart', 'apart', after.joints.get(jointId)?.state),
  'move-part': ({ partId, to }, { before, after }) => {
    const from = before.parts.get(partId)?.place;
    const moved = debt('P1 where it was put', to, after.parts.get(partId)?.place);
    if (from?.on !== 'bike') return moved;
    const held = holding(before.joints, from.bikeId, partId).map(([id]) => id);
    return [
      ...moved,
      ...held.flatMap((id) => [
        ...debt(`P2 joint ${id} is apart`, 'apart', after.joints.get(id)?.state),
        ...debt(
          `P2 waits about ${id} end`,
          [],
          about(after.waits, id, ({ running }) => running),
        ),
        ...debt(
          `P2 re-checks of ${id} end`,
          [],
          about(after.rechecks, id, ({ open }) => open),
        ),
      ]),
    ];
  },
  'apply-locker': ({ jointId }, { before, after, gave }) => {
    const begun = gave.filter(is('locker-applied'));
    const cures = (model: ModelAnswers) =>
      jointId === undefined
        ? []
        : about(model.waits, jointId, ({ running, kind }) => running && kind === 'cure');
    const old = cures(before);
    return [
      ...debt('one threadlocker entry', 1, begun.length),
      ...debt(
        'T7 the cure before it ends',
        [],
        cures(after).filter((id) => old.includes(id)),
      ),
    ];
  },
  'mark-seal': ({ jointId, mark }, { before, after }) => {
    // Laying it on its side or filling it is no look.
    if (mark.mark !== 'reading' && mark.mark !== 'verdict') return [];
    const seals = (model: ModelAnswers) =>
      about(model.waits, jointId, ({ running, kind }) => running && kind === 'seal');
    const old = seals(before);
    return debt(
      'W3 a look ends the wait that asked for it',
      [],
      seals(after).filter((id) => old.includes(id)),
    );
  },
  'log-ride': ({ bikeId }, { before, after, nowMs }) => {
    const first = (before.rides.get(bikeId)?.count ?? 0) === 0;
    const joints = [...before.joints].filter(
      ([, joint]) => joint.bikeId === bikeId && joint.state !== 'apart',
    );
    const without = joints.filter(([id]) => about(after.rechecks, id, ({ open }) => open).length === 0);
    const over = [...after.defects].filter(
      ([id, defect]) =>
        defect.bikeId === bikeId &&
        defect.open &&
        defect.dueAtMs !== undefined &&
        defect.dueAtMs <= nowMs &&
        before.defects.get(id)?.dueAtMs !== defect.dueAtMs,
    );
    return [
      ...(first
        ? debt(
            'R2 the first ride makes a re-check of every joint',
            [],
            without.map(([id]) => id),
          )
        : []),
      ...(over.length > 0 && stands(before, bikeId)
        ? debt('L6 a ride over a limit takes the release back', true, withdrawn(after, bikeId))
        : []),
    ];
  },
  'find-defect': ({ bikeId, decision }, { before, after }) =>
    decision === 'do-not-ride' && stands(before, bikeId)
      ? debt('L1 a defect takes back a release that stands', true, withdrawn(after, bikeId))
      : [],
  'withdraw-release': ({ bikeId }, { after }) =>
    debt('a release is taken back', true, withdrawn(after, bikeId)),
  'release-bike': ({ bikeId, statement }, { gave, after }) => {
    const releaseId = gave.filter(is('bike-released'))[0]?.releaseId;
    const bike = after.bikes.get(bikeId);
    return [
      ...debt('the release is the last one', releaseId, bike?.release?.releaseId),
      ...(statement === 'not-to-ride' ? [] : debt('L2 and stands', true, stands(after, bikeId))),
    ];
  },
  'shift-waits': ({ byMs }, { before, after, command }) => {
    const change = field(command as unknown as Entry, 'changeId') as string;
    const running = [...before.waits].filter(([, wait]) => wait.running);
    return running.flatMap(([id, { dueAtMs, clockChanges }]) =>
      debt(
        `W2 wait ${id} moves along once`,
        clockChanges.includes(change) ? dueAtMs : dueAtMs + byMs,
        after.waits.get(id)?.dueAtMs,
      ),
    );
  },
  'start-wait': ({ waitMs }, { gave, after, nowMs }) => {
    const waitId = gave.filter(is('wait-started'))[0]?.waitId ?? '';
    return debt('W1 a wait is an instant', nowMs + waitMs, after.waits.get(waitId)?.dueAtMs);
  },
};

const revoking = (entry: Entry) =>
  is('joint-described')(entry) ? field(entry, 'revokes') === true : field(entry, 'matters') === true;

/** The kinds of entries that have a say on one thing; the last of them in the order has the last word. */
const says: readonly (readonly [name: string, kinds: readonly EntryType[]])[] = [
  [
    'jointId',
    [
      ...(['joint-made', 'joint-described', 'joint-taken-apart', 'torque-applied'] as const),
      ...(['hand-tightened', 'torque-found', 'locker-applied'] as const),
    ],
  ],
  ['jointId', ['seal-marked']],
  ['partId', ['part-added', 'part-described', 'part-moved', 'part-changed']],
  [
    'stepId',
    [
      ...(['step-added', 'step-described', 'step-moved', 'step-dropped', 'step-skipped'] as const),
      ...(['step-reopened', 'step-done', 'torque-applied', 'locker-applied'] as const),
    ],
  ],
  ['waitId', ['wait-started', 'locker-applied', 'wait-ended', 'wait-changed', 'clock-moved']],
  ['recheckId', ['recheck-set', 'recheck-changed', 'recheck-dropped', 'recheck-answered', 'torque-found']],
  ['defectId', ['defect-found', 'defect-closed']],
  ['bikeId', ['bike-started', 'bike-released', 'release-withdrawn']],
  ['bikeId', ['ride-logged']],
];

/**
 * [J8] What an entry comes after, whatever the clock says: those that have a say on the same thing, other
 * corrections of what it corrects, the releases that it revokes or what revokes the one before it.
 */
function answered(entry: Entry, all: readonly Entry[]): Entry[] {
  const bikeId = is('part-moved')(entry)
    ? entry.from.on === 'bike' && entry.from.bikeId
    : field(entry, 'bikeId');
  const onItsBike = all.filter((other) => field(other, 'bikeId') === bikeId);
  const same = says
    .filter(([name, kinds]) => kinds.includes(entry.type) && field(entry, name) !== undefined)
    .flatMap(([name, kinds]) =>
      all.filter((other) => kinds.includes(other.type) && field(other, name) === field(entry, name)),
    );
  return [
    ...same,
    ...(is('entry-corrected')(entry)
      ? all.filter(is('entry-corrected')).filter(({ corrects }) => corrects === entry.corrects)
      : []),
    ...(revoking(entry) ? onItsBike.filter(is('bike-released')) : []),
    ...(is('bike-released')(entry) ? onItsBike.filter(revoking) : []),
  ];
}

/** What a command owed by the rules and did not do. Where it was written down late, only what holds there too. */
export function unpaid(done: Done): Mismatch[] {
  const { command, gave, before, nowMs } = done;
  const late = command.happenedAtMs !== undefined;
  const owed = debts[command.type] as Owed<CommandType> | undefined;
  const found = late || !owed ? [] : owed(command, done);
  const misplaced = late
    ? []
    : gave.flatMap((entry) => {
        const other = answered(entry, before.read).find((one) => comesBefore(entry, one));
        return other ? [{ entry, other }] : [];
      });
  return [
    ...found.map(({ rule, ...rest }) => ({ what: `${command.type}: ${rule}`, ...rest })),
    ...misplaced.map(({ entry, other }) => ({
      what: `${command.type}: J8 ${entry.type} comes after the ${other.type} it answers`,
      expected: `after ${other.id}`,
      found: 'before',
    })),
    ...gave
      .filter(({ writtenAtMs }) => writtenAtMs !== nowMs)
      .map(({ writtenAtMs }) => ({ what: 'written now', expected: nowMs, found: writtenAtMs })),
  ];
}
