import { firstFasteners } from '../../drafts/jointDraft.ts';
import type { Finding } from '../../fit/finding.ts';
import { pileOf } from '../../fit/pileOf.ts';
import { jointHolding, jointKindsOf, jointName } from '../../fit/topicJoints.ts';
import type { Command } from '../../journal/commands.ts';
import type { Between, Fastener, Id } from '../../journal/entries.ts';
import type { JointRow } from '../../journal/rows.ts';
import { jointToBuild } from '../../planning/jointToBuild.ts';
import { stepsFor, stepTitle } from '../../planning/stepOrder.ts';
import { type JointKind, jointKindRow } from '../../standards/jointKinds.ts';
import { topicWords } from '../../words/fitWords.ts';
import { mattersOnBike } from '../release/mattersOnBike.ts';
import type { Situation } from './acceptCommands.ts';
import type { JointToMake } from './bridgeJoints.ts';
import { beforeJoint, placeInBuildOrder } from './stepPlace.ts';

interface Named extends Situation {
  nameOf: (partId: Id) => string;
}

/** Joints made or extended for a bridge, each with the steps its work takes. */
export function jointCommands(made: readonly JointToMake[], finding: Finding, now: Named): Command[] {
  const ends = finding.faces.map(({ partId }) => partId);
  const about = pileOf(now.parts).filter(({ partId }) => ends.includes(partId));
  const kinds = jointKindsOf(finding.topic, about);
  const caliper = about.find(({ kind }) => kind === 'caliper')?.partId;
  // A joint that held the two parts directly now holds the one its screws stay with, and the adapter.
  const direct = jointHolding(now.joints, kinds, ends);
  const keeps = direct && (made.find(({ one, other }) => caliper === one || caliper === other) ?? made[0]);
  return made.flatMap((joint) => {
    if (direct && joint === keeps) return extend(direct, joint, ends, now);
    const ofAdapter = caliper !== undefined && joint.one !== caliper && joint.other !== caliper;
    const kind: JointKind = ofAdapter ? 'brake-mount' : (kinds[0] ?? 'other');
    const own = jointHolding(now.joints, [kind], [joint.one, joint.other]);
    return own
      ? extend(own, joint, ends, now)
      : make(kind, joint, jointName(kind, topicWords(finding.topic), about), now);
  });
}

const sameBetween = (one: Between, other: Between): boolean =>
  one.kind === other.kind && one.partId === other.partId;

function extend(joint: JointRow, made: JointToMake, ends: readonly Id[], now: Named): Command[] {
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
  const place = beforeJoint(now, jointId);
  return [
    { type: 'describe-joint', jointId, partIds, between },
    {
      type: 'add-step',
      bikeId: now.bikeId,
      kind: 'fit',
      title,
      jointId,
      ...(place === undefined ? {} : { afterStepId: place }),
    },
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

function make(kind: JointKind, { one, other, between, permanent }: JointToMake, name: string, now: Named) {
  const { bikeId, newId } = now;
  const jointId = newId();
  const fasteners = fastenersOf(kind);
  const order = jointKindRow(kind).buildOrder;
  const planned = stepsFor([
    {
      ...jointToBuild(
        { jointId, name, kind, partIds: [one, other], between: [], fasteners, targets: [] },
        now.joints,
        now.parts,
      ),
      pressed: permanent,
      partNames: [now.nameOf(one), now.nameOf(other)],
      between: between.map(({ partId }) => (partId ? now.nameOf(partId) : '')),
    },
  ]);
  let place = placeInBuildOrder(now, order);
  const steps = planned.map((step): Command => {
    const stepId = newId();
    const afterStepId = place;
    place = stepId;
    return {
      type: 'add-step',
      bikeId,
      stepId,
      ...step,
      ...(afterStepId === undefined ? {} : { afterStepId }),
    };
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
