import { v7 } from 'uuid';
import type { Dice } from './dice.ts';
import type { Command, Order } from './door.ts';
import type { Stored, StoredRow } from './stored.ts';

/** What random orders speak of: the rows that lay in the store when it was last read. */
export interface Known {
  bikes: StoredRow[];
  parts: StoredRow[];
  joints: StoredRow[];
  steps: StoredRow[];
  waits: StoredRow[];
  rechecks: StoredRow[];
  defects: StoredRow[];
  tools: StoredRow[];
  entries: { id: string; type: string }[];
}

export function knownFrom({ rows, lines }: Stored): Known {
  const of = (is: string) => rows.filter((row) => row.is === is);
  return {
    bikes: of('bike'),
    parts: of('part'),
    joints: of('joint'),
    steps: of('step').filter(({ state }) => state !== 'dropped'),
    waits: of('wait').filter(({ endedAtMs }) => endedAtMs === undefined),
    rechecks: of('recheck'),
    defects: of('defect'),
    tools: of('tool'),
    entries: lines.map(({ entry }) => entry),
  };
}

const nm = (value: number) => ({ value, unit: 'N.m', typed: String(value) });

let figures = 0;
/** A figure no other order of this run carries, so that each is found again and none is a second tap. */
function figure(dice: Dice): number {
  figures += 1;
  return Number((dice.whole(3, 8) + (figures % 9973) / 10_000).toFixed(4));
}

let names = 0;
/** Words that stand once in this run. */
export function word(kind: string): string {
  names += 1;
  return `${kind} ${names}`;
}

export const bikeOrder = (bikeId = v7()): Command => ({ type: 'start-bike', bikeId, name: word('Bike') });

export const partOrder = (bikeId: string | undefined, partId = v7()): Command => ({
  type: 'add-part',
  partId,
  place: bikeId === undefined ? { on: 'shelf' } : { on: 'bike', bikeId },
  label: '',
  name: word('Part'),
  kind: 'other',
  origin: 'found',
});

export const jointOrder = (bikeId: string, partIds: string[], jointId = v7()): Command => ({
  type: 'make-joint',
  jointId,
  bikeId,
  name: word('Joint'),
  kind: 'stem-steerer',
  partIds,
  between: [{ kind: 'grease' }],
  fasteners: [{ thread: 'M5', count: 1, hand: 'right' }],
  targets: [{ source: 'printed-on-the-part', torque: nm(5), partId: partIds[0] }],
});

/** Orders that write a small bike down: parts, joints between neighbours, and the plan. */
export function smallBike(joints: number): Command[] {
  const bikeId = v7();
  const partIds = Array.from({ length: joints + 1 }, () => v7());
  return [
    bikeOrder(bikeId),
    ...partIds.map((partId) => partOrder(bikeId, partId)),
    ...partIds.slice(1).map((partId, at) => jointOrder(bikeId, [partIds[at] ?? '', partId])),
    { type: 'plan-steps', bikeId },
  ];
}

type OneOrder = Order & { command: Command };

type Maker = (dice: Dice, known: Known) => OneOrder | undefined;

/** An order about one thing of a kind, where there is one. */
const about =
  (kind: keyof Known, make: (row: StoredRow, dice: Dice, known: Known) => Command): Maker =>
  (dice, known) => {
    const rows = known[kind] as StoredRow[];
    return rows.length === 0 ? undefined : { command: make(dice.one(rows), dice, known) };
  };

function withPhoto(dice: Dice, command: Command): OneOrder {
  if (!dice.chance(0.4)) return { command };
  const photoId = v7();
  return {
    command: { ...command, photoIds: [photoId] },
    photos: [{ photoId, bytes: dice.whole(200, 60_000) }],
  };
}

const torque = (joint: StoredRow, dice: Dice): Command => ({
  type: 'apply-torque',
  jointId: joint['jointId'],
  applied: nm(figure(dice)),
  entered: 'tap',
  bolts: 1,
  passes: 1,
  ...(dice.chance(0.3) ? { marked: true } : {}),
});

let taps = 0;
/** A torque on one joint, with a figure of its own. */
export function torqueOn(joint: StoredRow): Order {
  taps += 1;
  const applied = nm(Number((9 + (taps % 9973) / 10_000).toFixed(4)));
  const { jointId } = joint;
  return { command: { type: 'apply-torque', jointId, applied, entered: 'tap', bolts: 12, passes: 1 } };
}

const DAY_MS = 86_400_000;

const MAKERS: readonly (readonly [weight: number, maker: Maker])[] = [
  [2, () => ({ command: bikeOrder() })],
  [4, about('bikes', ({ bikeId }) => partOrder(String(bikeId)))],
  [1, () => ({ command: partOrder(undefined) })],
  [
    3,
    about('bikes', ({ bikeId }, dice, { parts }) => {
      const here = parts.filter(({ place }) => (place as { bikeId?: string }).bikeId === bikeId);
      const two = here.length < 2 ? [] : [dice.one(here), dice.one(here)].map(({ partId }) => String(partId));
      return two.length < 2 ? partOrder(String(bikeId)) : jointOrder(String(bikeId), two);
    }),
  ],
  [2, about('bikes', ({ bikeId }) => ({ type: 'plan-steps', bikeId }))],
  [10, about('joints', torque)],
  [
    6,
    about('steps', (step, dice) =>
      step['kind'] === 'torque'
        ? { ...torque(step, dice), stepId: step['stepId'] }
        : { type: 'finish-step', stepId: step['stepId'], note: word('Done') },
    ),
  ],
  [3, about('joints', ({ jointId }) => ({ type: 'hand-tighten', jointId, bolts: 1 }))],
  [
    2,
    about('joints', ({ jointId }, dice) => ({
      ...{ type: 'apply-locker', jointId, grade: 'medium', surface: 'steel', primer: false },
      waitMs: dice.whole(1, 48) * 3_600_000,
    })),
  ],
  [
    3,
    about('bikes', ({ bikeId }, dice) => ({
      ...{ type: 'start-wait', bikeId, kind: 'other', title: word('Wait') },
      waitMs: dice.whole(1000, 3 * DAY_MS),
    })),
  ],
  [2, about('waits', ({ waitId }) => ({ type: 'end-wait', waitId, outcome: 'looked' }))],
  [
    2,
    about('waits', ({ waitId }, dice) => ({
      ...{ type: 'change-wait', waitId, why: word('Why') },
      waitMs: dice.whole(1000, 3 * DAY_MS),
    })),
  ],
  [
    6,
    (dice, { bikes, joints }) => {
      if (bikes.length === 0) return undefined;
      const { bikeId } = dice.one(bikes);
      const jointId = joints.length > 0 && dice.chance(0.5) ? dice.one(joints)['jointId'] : undefined;
      return withPhoto(dice, {
        type: 'add-note',
        bikeId,
        words: word('Note'),
        ...(jointId ? { jointId } : {}),
      });
    },
  ],
  [2, about('bikes', ({ bikeId }) => ({ type: 'add-step', bikeId, kind: 'check', title: word('Step') }))],
  [1, about('steps', ({ stepId }) => ({ type: 'describe-step', stepId, title: word('Step') }))],
  [
    2,
    about('steps', ({ stepId, bikeId }, dice, { steps }) => {
      const others = steps.filter((step) => step['bikeId'] === bikeId && step['stepId'] !== stepId);
      return {
        type: 'move-step',
        stepId,
        afterStepId: others.length > 0 ? dice.one(others)['stepId'] : null,
      };
    }),
  ],
  [1, about('steps', ({ stepId }) => ({ type: 'split-step', stepId, titles: [word('Half'), word('Half')] }))],
  [1, about('steps', ({ stepId }) => ({ type: 'drop-step', stepId, why: word('Why') }))],
  [2, about('steps', ({ stepId }) => ({ type: 'skip-step', stepId, why: word('Why') }))],
  [3, about('steps', ({ stepId }) => ({ type: 'reopen-step', stepId, why: word('Why') }))],
  [1, about('steps', ({ stepId }) => ({ type: 'open-step', stepId }))],
  [1, about('joints', ({ jointId }) => ({ type: 'take-joint-apart', jointId, why: word('Why') }))],
  [2, about('joints', ({ jointId }) => ({ type: 'describe-joint', jointId, name: word('Joint') }))],
  [
    2,
    about('parts', ({ partId }, dice, { bikes }) => ({
      type: 'move-part',
      partId,
      to:
        bikes.length > 0 && dice.chance(0.6)
          ? { on: 'bike', bikeId: dice.one(bikes)['bikeId'] }
          : { on: 'shelf' },
    })),
  ],
  [2, about('parts', ({ partId }) => ({ type: 'describe-part', partId, condition: word('Condition') }))],
  [1, about('bikes', ({ bikeId }) => ({ type: 'describe-bike', bikeId, about: word('About') }))],
  [
    3,
    about('bikes', ({ bikeId }, dice) => ({ type: 'log-ride', bikeId, km: dice.whole(1, 60), minutes: 30 })),
  ],
  [
    2,
    about('bikes', ({ bikeId }) => ({
      ...{ type: 'set-recheck', bikeId, kind: 'inspect', title: word('Look'), instruction: word('Look') },
      dueDays: 30,
    })),
  ],
  [1, about('rechecks', ({ recheckId }) => ({ type: 'answer-recheck', recheckId, outcome: 'as-it-should' }))],
  [
    2,
    about('joints', ({ jointId }, dice) => ({
      ...{ type: 'find-torque', jointId, outcome: 'moved', way: 'tightening' },
      ...{ movedAt: nm(figure(dice)), broughtTo: nm(figure(dice)) },
    })),
  ],
  [
    1,
    about('bikes', ({ bikeId }) => ({
      ...{ type: 'find-defect', bikeId, words: word('Crack'), area: 'frame', decision: 'do-not-ride' },
    })),
  ],
  [1, about('defects', ({ defectId }) => ({ type: 'close-defect', defectId, how: word('How') }))],
  [1, () => ({ command: { type: 'add-tool', name: word('Tool'), minNm: 2, maxNm: 20 } })],
  [1, about('tools', ({ toolId }) => ({ type: 'describe-tool', toolId, note: word('Note') }))],
  [2, (_dice, { entries }) => undoOf(entries)],
  [
    3,
    (dice, { entries }) => {
      const torques = entries.filter(({ type }) => type === 'torque-applied');
      if (torques.length === 0) return undefined;
      const becomes = dice.chance(0.2) ? null : { applied: nm(figure(dice)) };
      return { command: { type: 'correct', entryId: dice.one(torques).id, reason: word('Why'), becomes } };
    },
  ],
  [1, (dice) => ({ command: { type: 'change-settings', change: { theme: dice.one(['light', 'dark']) } } })],
];

function undoOf(entries: Known['entries']): OneOrder | undefined {
  const last = entries.at(-1);
  return last && { command: { type: 'undo', entryIds: [last.id] } };
}

const ALL = MAKERS.flatMap(([weight, maker]) => Array.from({ length: weight }, () => maker));

function oneOrder(dice: Dice, known: Known): OneOrder {
  for (;;) {
    const order = dice.one(ALL)(dice, known);
    if (order) return order;
  }
}

/** A random thing to ask of the logbook, now and then several as one. Some are refused; that is an answer like any other. */
export function randomOrder(dice: Dice, known: Known): Order {
  if (!dice.chance(0.08)) return oneOrder(dice, known);
  const several = Array.from({ length: dice.whole(2, 4) }, () => oneOrder(dice, known));
  return {
    command: several.map(({ command }) => command),
    photos: several.flatMap(({ photos = [] }) => photos),
  };
}
