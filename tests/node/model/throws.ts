import type { Id } from '../../../src/journal/entries.ts';
import { rideCheck } from '../../../src/standards/checks/rideCheck.ts';
import type { Act, Written } from './acts.ts';
import {
  addPart,
  applyLocker,
  applyTorque,
  changePart,
  describeJoint,
  describePart,
  findTorque,
  handTighten,
  makeJoint,
  markSeal,
  movePart,
  startBike,
  takeApart,
} from './benchThrows.ts';
import {
  addNote,
  addStep,
  closeDefect,
  confirmGroup,
  findDefect,
  logRide,
  onBike,
  onRecheck,
  onStep,
  onWait,
  setRecheck,
  startWait,
} from './bikeThrows.ts';
import { thrownCorrection } from './corrections.ts';
import type { Dice } from './dice.ts';
import { aBike, DAY, HOUR, MINUTE, nm, type Throw, taken, type World } from './world.ts';

const unknownThing: Throw = ({ dice }) =>
  dice.pick<Written>([
    { type: 'log-ride', bikeId: 'none', km: 3 },
    { type: 'hand-tighten', jointId: 'none', bolts: 2 },
    { type: 'end-wait', waitId: 'none', outcome: 'looked' },
    { type: 'finish-step', stepId: 'none' },
    { type: 'close-defect', defectId: 'none', how: 'x' },
    { type: 'move-part', partId: 'none', to: { on: 'shelf' } },
    { type: 'undo', entryIds: ['none'] },
    { type: 'correct', entryId: 'none', reason: 'x', becomes: null },
  ]);
const kinds: readonly (readonly [number, Throw])[] = [
  [1, startBike],
  [5, addPart],
  [5, makeJoint],
  [9, applyTorque],
  [4, handTighten],
  [4, applyLocker],
  [2, markSeal],
  [5, findTorque],
  [3, takeApart],
  [5, movePart],
  [2, changePart],
  [2, describePart],
  [4, describeJoint],
  [3, addStep],
  [3, onStep('finish-step')],
  [2, onStep('skip-step')],
  [2, onStep('reopen-step')],
  [1, onStep('drop-step')],
  [1, onStep('open-step')],
  [1, onStep('split-step')],
  [3, startWait],
  [3, onWait],
  [4, findDefect],
  [2, closeDefect],
  [8, logRide],
  [3, setRecheck],
  [4, onRecheck],
  [3, confirmGroup],
  [5, onBike],
  [1, unknownThing],
  [14, thrownCorrection],
];

/** One command that fits the world more or less; now and then the last one again, or written down late. */
export function thrownCommand(world: World): Written {
  const { dice, last } = world;
  if (last && dice.chance(0.04)) return last;
  const written =
    dice.weighed(kinds)(world) ?? dice.weighed(kinds)(world) ?? addNote(world) ?? startBike(world);
  if (!written) throw new RangeError('a bike can always be started');
  const late = !['undo', 'correct', 'shift-waits'].includes(written.type) && dice.chance(0.12);
  return late ? { ...written, happenedAtMs: { now: -(1 + dice.below(72)) * 20 * MINUTE } } : written;
}

/** Everything a release of a bike asks for, and the release. */
export function thrownRelease(world: World, bikeId: Id): Written[] {
  const loose = [...world.model.joints].filter(
    ([, joint]) => joint.bikeId === bikeId && joint.state !== 'torqued' && joint.bolts > 0,
  );
  const stops = [...world.model.defects].filter(([, defect]) => defect.bikeId === bikeId && defect.open);
  return [
    ...loose.map(
      ([jointId, { bolts }]): Written => ({
        ...{ type: 'apply-torque', jointId, applied: nm(5), entered: 'tap', bolts, passes: 1 },
      }),
    ),
    ...stops.map(
      ([id]): Written => ({
        ...{ type: 'close-defect', defectId: taken(world, 'defectId', id), how: 'mended' },
      }),
    ),
    ...rideCheck.map(
      (group): Written => ({
        ...{ type: 'confirm-ride-check', bikeId, groupId: group.id },
        items: group.items.map(({ id }) => ({ itemId: id, ok: true })),
      }),
    ),
    { type: 'release-bike', bikeId, statement: 'ride', covers: 'all', by: 'T' },
  ];
}

const tabOf = (dice: Dice): 0 | 1 => (dice.chance(0.5) ? 0 : 1);

/** How long nothing happens before an act. */
function pause(dice: Dice): number {
  return dice.weighed([
    [2, 0],
    [1, 400],
    [1, 1499],
    [1, 1500],
    [6, 5000],
    [6, MINUTE * (1 + dice.below(60))],
    [3, HOUR * (1 + dice.below(30))],
    [1, DAY * (1 + dice.below(20))],
  ]);
}

type Undated = Act extends infer One ? (One extends Act ? Omit<One, 'no' | 'afterMs'> : never) : never;

/** A bike to begin with: three parts, a joint that matters and one that does not. */
function firstBike(bikeId: Id, from: number): Written[] {
  const partIds = [0, 1, 2].map((at) => `${bikeId.startsWith('demo-') ? 'demo-p' : 'p'}${from}${at}`);
  const [first = '', second = '', third = ''] = partIds;
  const joint = (jointId: Id, kind: string, ids: Id[], shim?: Id): Written => ({
    ...{ type: 'make-joint', jointId, bikeId, name: `Joint ${jointId}`, kind, partIds: ids },
    between: shim ? [{ kind: 'shim', partId: shim }] : [],
    fasteners: [{ thread: 'M5', count: 2, hand: 'right' }],
    targets: [{ source: 'printed-on-the-part', torque: nm(5), partId: ids[0] }],
  });
  return [
    {
      type: 'start-bike',
      bikeId,
      name: `Bike ${bikeId}`,
      ...(bikeId.startsWith('demo-') ? { demo: true } : {}),
    },
    ...partIds.map(
      (partId): Written => ({
        ...{
          type: 'add-part',
          partId,
          label: partId,
          name: `Part ${partId}`,
          kind: 'other',
          origin: 'found',
        },
        place: { on: 'bike', bikeId },
      }),
    ),
    joint(`j${from}0`, 'stem-steerer', [first, second], third),
    joint(`j${from}1`, 'rack', [second, third]),
  ];
}

/** The next acts of a sequence: mostly one command from one tab. */
export function thrownActs(world: World): Act[] {
  const { dice, acts } = world;
  let no = acts;
  const dated = (one: Undated, afterMs = pause(dice)): Act => {
    no += 1;
    return { ...one, no, afterMs } as Act;
  };
  const run = (command: Written, afterMs?: number) =>
    dated({ act: 'run', tab: tabOf(dice), command }, afterMs);
  if (acts === 0) return firstBike(dice.chance(0.2) ? 'demo-b0' : 'b0', 9).map((one) => run(one, 5000));
  return dice.weighed<() => Act[]>([
    [70, () => [run(thrownCommand(world))]],
    [
      9,
      () => {
        const raced = Array.from({ length: 2 + dice.below(3) }, (_one, at) => ({
          tab: tabOf(dice),
          command: thrownCommand({ ...world, acts: (acts + 1) * 10 + at }),
        }));
        if (dice.chance(0.3) && raced[0]) raced.push({ ...raced[0], tab: raced[0].tab === 0 ? 1 : 0 });
        const rebuild = dice.chance(0.1) ? ({ rebuild: true } as const) : {};
        const claims = dice.chance(0.4) ? ({ claims: true } as const) : {};
        return [dated({ act: 'race', commands: raced, ...rebuild, ...claims })];
      },
    ],
    [
      world.lists ? 5 : 0,
      () => {
        const commands = Array.from({ length: 2 + dice.below(2) }, (_one, at) =>
          thrownCommand({ ...world, acts: (acts + 1) * 10 + at }),
        );
        const list = dated({ act: 'list', tab: tabOf(dice), commands });
        return dice.chance(0.8) ? [list] : [list, dated({ act: 'list', tab: tabOf(dice), commands }, 400)];
      },
    ],
    [
      4,
      () => {
        const bikeId = aBike(world);
        if (bikeId === undefined) return [run(thrownCommand(world))];
        return thrownRelease(world, bikeId).map((command) => run(command, 2000));
      },
    ],
    [
      4,
      () => {
        const byMs = dice.pick([HOUR, -HOUR, 2 * DAY, -2 * DAY, 40 * MINUTE, -5000]) ?? HOUR;
        const command: Written = { type: 'shift-waits', byMs, changeId: `c${acts}` };
        const set = dated({ act: 'set-clock', byMs }, 0);
        if (dice.chance(0.3)) return [set];
        if (dice.chance(0.3)) {
          const both = ([0, 1] as const).map((tab) => ({ tab, command }));
          return [set, dated({ act: 'race', commands: both }, 0)];
        }
        return [set, run(command, 3000)];
      },
    ],
    [
      2,
      () => [
        dated({
          act: 'claim',
          who: dice.pick(['first-tab', 'second-tab', 'worker', 'all'] as const) ?? 'all',
        }),
      ],
    ],
    [1, () => [dated({ act: 'remove-demo', tab: tabOf(dice) })]],
    [1, () => [dated({ act: 'rebuild', pages: dice.chance(0.5) ? 1 : 2 })]],
    [1, () => [dated({ act: 'open-again', tab: tabOf(dice) })]],
    [3, () => [dated({ act: 'look' })]],
  ])();
}
