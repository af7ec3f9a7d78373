import { firstFasteners } from '../../drafts/jointDraft.ts';
import type { Finding } from '../../fit/finding.ts';
import { pileOf } from '../../fit/pileOf.ts';
import { jointHolding, jointKindsOf, jointName } from '../../fit/topicJoints.ts';
import type { Command } from '../../journal/commands.ts';
import type { Between, Fastener, Id } from '../../journal/entries.ts';
import type { JointRow } from '../../journal/rows.ts';
import { jointToBuild } from '../../planning/jointToBuild.ts';
import type { OrderedPart } from '../../planning/orderedJoints.ts';
import { stepsFor, stepTitle } from '../../planning/stepOrder.ts';
import type { JointKind } from '../../standards/jointKinds.ts';
import { topicWords } from '../../words/fitWords.ts';
import { mattersOnBike } from '../release/mattersOnBike.ts';
import type { Situation } from './acceptCommands.ts';
import type { JointToMake } from './bridgeJoints.ts';
import { putStep, type StepInList, type StepList } from './stepPlace.ts';

interface Named extends Situation {
  nameOf: (partId: Id) => string;
  /** Pieces that the bridge asks for, and the steps of getting them, which stand before all others. */
  coming: { parts: OrderedPart[]; steps: StepInList[] };
}

interface Placing extends Named {
  /** As it will be when what is asked so far is done. */
  list: StepList;
}

/** A sleeve that does not come out again is held by a compound. Source: workshop articles on conversion sleeves. */
const bondedFor = (joint: JointToMake, permanent: boolean): JointToMake =>
  permanent ? { ...joint, permanent, between: [...joint.between, { kind: 'retaining-compound' }] } : joint;

/** Joints made or extended for a bridge, each with the steps its work takes. */
export function jointCommands(made: readonly JointToMake[], finding: Finding, named: Named): Command[] {
  const { steps, joints, parts, coming } = named;
  const list = {
    steps: [...coming.steps, ...steps],
    joints: [...joints],
    parts: [...parts, ...coming.parts],
  };
  const now: Placing = { ...named, list };
  const ends = finding.faces.map(({ partId }) => partId);
  const about = pileOf(now.parts).filter(({ partId }) => ends.includes(partId));
  const kinds = jointKindsOf(finding.topic, about);
  const caliper = about.find(({ kind }) => kind === 'caliper')?.partId;
  // A joint that held the two parts directly now holds the one its screws stay with, and the adapter.
  const direct = jointHolding(now.joints, kinds, ends);
  const holdsPart = ({ one, other }: JointToMake, partId: Id | undefined) =>
    one === partId || other === partId;
  const frame =
    kinds[0] === 'bottom-bracket' ? about.find((part) => part.kind === 'frame')?.partId : undefined;
  const inShell = (joint: JointToMake) => frame !== undefined && made.length > 1 && holdsPart(joint, frame);
  const keeps =
    direct && (made.find((joint) => holdsPart(joint, caliper) || (frame && !inShell(joint))) ?? made[0]);
  const permanent = made.some((joint) => joint.permanent);
  // Into the shell first, whichever face the finding names first.
  const inOrder = made.toSorted((a, b) => Number(inShell(b)) - Number(inShell(a)));
  return inOrder.flatMap((joint) => {
    if (direct && joint === keeps) return extend(direct, joint, ends, now);
    // A sleeve is pressed from either side of the shell; the cups that go into it keep the screws.
    if (inShell(joint))
      return ['drive side', 'other side'].flatMap((side) =>
        make('bottom-bracket', bondedFor(joint, permanent), `Sleeve in shell, ${side}`, now, true),
      );
    const ofAdapter = caliper !== undefined && joint.one !== caliper && joint.other !== caliper;
    const kind: JointKind = ofAdapter ? 'brake-mount' : (kinds[0] ?? 'other');
    const own = jointHolding(now.joints, [kind], [joint.one, joint.other]);
    return own
      ? extend(own, joint, ends, now)
      : make(
          kind,
          frame === undefined ? joint : { ...joint, permanent: false },
          jointName(kind, topicWords(finding.topic), about),
          now,
        );
  });
}

const sameBetween = (one: Between, other: Between): boolean =>
  one.kind === other.kind && one.partId === other.partId;

function extend(joint: JointRow, made: JointToMake, ends: readonly Id[], now: Placing): Command[] {
  const { jointId, name } = joint;
  const kept = joint.partIds.filter((partId) => !ends.includes(partId));
  const partIds = [...new Set([made.one, made.other, ...kept])];
  const between = [
    ...joint.between,
    ...made.between.filter((one) => !joint.between.some((there) => sameBetween(there, one))),
  ];
  const pieces = made.between.map(({ partId }) => (partId ? now.nameOf(partId) : ''));
  const work =
    pieces.length > 0
      ? `${pieces.join(', ')} between`
      : `${now.nameOf(made.other)} and ${now.nameOf(made.one)}`;
  const title = stepTitle(name, work);
  const { list } = now;
  list.joints = list.joints.map((one) => (one.jointId === jointId ? { ...one, partIds, between } : one));
  const step = { stepId: now.newId(), kind: 'fit' as const, title, jointId };
  const afterStepId = putStep(list, step, 'there');
  return [
    { type: 'describe-joint', jointId, partIds, between },
    { type: 'add-step', bikeId: now.bikeId, ...step, afterStepId },
  ];
}

/** The screws to expect; a kind without a trade name has none until they are counted. */
function fastenersOf(kind: JointKind): Fastener[] {
  if (kind === 'other') return [];
  return firstFasteners(kind).map(({ thread, count, hand, words }) => ({
    thread,
    count: Number(count),
    hand,
    ...(words ? { words } : {}),
  }));
}

function make(
  kind: JointKind,
  { one, other, between, permanent }: JointToMake,
  name: string,
  now: Placing,
  sleeve = false,
) {
  const { bikeId, newId } = now;
  const jointId = newId();
  const fasteners = sleeve ? [] : fastenersOf(kind);
  const planned = stepsFor([
    {
      ...jointToBuild(
        { jointId, name, kind, partIds: [one, other], between: [], fasteners, targets: [] },
        now.joints,
        now.parts,
      ),
      ...(sleeve ? { pressed: true, bare: true } : { pressed: permanent }),
      bonded: between.some((item) => item.kind === 'retaining-compound'),
      partNames: [now.nameOf(one), now.nameOf(other)],
      between: between.flatMap(({ partId }) => (partId ? now.nameOf(partId) : [])),
    },
  ]);
  now.list.joints.push({ jointId, kind, partIds: [one, other], between, state: 'open' });
  const steps = planned.map((one): Command => {
    const step = { stepId: newId(), ...one };
    return { type: 'add-step', bikeId, ...step, afterStepId: putStep(now.list, step, 'new') };
  });
  const joint: Command = {
    type: 'make-joint',
    jointId,
    bikeId,
    kind,
    name,
    partIds: [one, other],
    between,
    fasteners,
    targets: [],
    matters: mattersOnBike({ kind, partIds: [one, other] }, now.parts).matters,
    ...(permanent ? { note: 'Permanent: it does not come apart again without damage.' } : {}),
  };
  return [joint, ...steps];
}
