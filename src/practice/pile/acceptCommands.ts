import { acceptBridge, type PlannedPart } from '../../fit/bridges/acceptBridge.ts';
import type { Finding } from '../../fit/finding.ts';
import type { PilePart } from '../../fit/pile.ts';
import { pileOf } from '../../fit/pileOf.ts';
import type { Command } from '../../journal/commands.ts';
import type { Id } from '../../journal/entries.ts';
import type { JointRow, PartRow, StepRow } from '../../journal/rows.ts';
import { bridgeWords, changeWords, plannedName, topicWords } from '../../words/fitWords.ts';
import { nextLabel } from '../part/nextLabel.ts';
import { bridgeJoints } from './bridgeJoints.ts';
import { jointCommands } from './jointCommands.ts';

/** The bike as it is when a bridge is accepted. */
export interface Situation {
  bikeId: Id;
  /** Parts on the bike and on the shelf. */
  parts: readonly PartRow[];
  joints: readonly JointRow[];
  /** In the order of the list. */
  steps: readonly StepRow[];
  /** Every label in use in the logbook, so that new parts get free ones. */
  labels: readonly string[];
  newId: () => Id;
}

export type AcceptPlan =
  | {
      ok: true;
      commands: Command[];
      /** Part to be changed for good, where that is the way. */
      changeOf?: Id;
      /** The step of that change. */
      step?: { stepId: Id };
    }
  | { ok: false; reason: 'no-such-bridge' };

/**
 * What has to be asked of the logbook, one after the other, when a bridge is accepted: parts to be got, parts
 * off the shelf, joints made or extended, steps, and last that the finding is accepted. No torque is among it.
 * @param bridgeId one of the finding's bridges
 * @example acceptCommands(barFinding, 'bar-shim-31.8-26', situation) //=> { ok: true, commands: [add-part, make-joint, …] }
 */
export function acceptCommands(finding: Finding, bridgeId: string, situation: Situation): AcceptPlan {
  const bridge = finding.bridges.find((one) => one.bridgeId === bridgeId);
  if (!bridge) return { ok: false, reason: 'no-such-bridge' };
  const { bikeId, newId } = situation;
  const words = `${topicWords(finding.topic)}: ${bridgeWords(bridge)}`;
  const accept: Command = { type: 'accept-finding', bikeId, findingId: finding.findingId, words };
  const accepted = acceptBridge(finding, bridgeId);
  if (!accepted.ok) return accepted;
  const { plan } = accepted;
  const [change] = plan.oneWayChanges;
  if (change) {
    const name = situation.parts.find(({ partId }) => partId === change.partId)?.name ?? '';
    const stepId = newId();
    const step: Command = {
      ...{ type: 'add-step', bikeId, stepId, kind: 'cut', title: `${changeWords[change.change]}: ${name}` },
      detail: `${bridgeWords(bridge)}. ${change.caution}`,
      afterStepId: null,
      partId: change.partId,
    };
    return { ok: true, commands: [step, accept], changeOf: change.partId, step: { stepId } };
  }

  const ids = new Map(plan.parts.map(({ planId }) => [planId, newId()]));
  const idOf = (planId: string): Id => ids.get(planId) ?? newId();
  const labels = [...situation.labels];
  const end = endOfFinding(finding, situation);
  const adds = plan.parts.flatMap((planned) => {
    const label = nextLabel(labels);
    labels.push(label);
    return addPlanned(planned, { partId: idOf(planned.planId), label, end, situation });
  });
  const named = new Map(plan.parts.map((planned) => [idOf(planned.planId), plannedName(planned)]));
  const onBike = ({ place }: PartRow) => place.on === 'bike' && place.bikeId === bikeId;
  const moves = plan.fromShelf.flatMap((partId): Command[] => {
    const part = situation.parts.find((one) => one.partId === partId);
    return part && !onBike(part)
      ? [{ type: 'move-part', partId, to: { on: 'bike', bikeId }, why: topicWords(finding.topic) }]
      : [];
  });
  const joints = jointCommands(bridgeJoints(plan, bridge, idOf), finding, {
    ...situation,
    coming: {
      parts: adds.flatMap((add) =>
        add.type === 'add-part' && add.partId ? { partId: add.partId, kind: add.kind } : [],
      ),
      // Each is put before all others, so that the last comes first.
      steps: adds
        .flatMap((add) =>
          add.type === 'add-step' && add.stepId ? { ...add, stepId: add.stepId, state: 'open' as const } : [],
        )
        .reverse(),
    },
    nameOf: (partId) => named.get(partId) ?? situation.parts.find((one) => one.partId === partId)?.name ?? '',
  });
  // A piece that lies between no two faces still needs a step of its own.
  const loose: Command[] =
    plan.joints.length === 0
      ? [{ type: 'add-step', bikeId, kind: 'fit', title: words, detail: finding.because }]
      : [];
  return { ok: true, commands: [...adds, ...moves, ...joints, ...loose, accept] };
}

/** Bridges between parts of one wheel belong to that wheel too. */
function endOfFinding({ faces }: Finding, { parts }: Situation): PilePart['position'] {
  const about = pileOf(parts).filter(({ partId }) => faces.some((face) => face.partId === partId));
  return about.find(({ position }) => position)?.position;
}

interface PartToMake {
  partId: Id;
  label: string;
  end: PilePart['position'];
  situation: Situation;
}

/** A piece that is not there yet: written down with its sizes, and with a step to get it. */
function addPlanned(planned: PlannedPart, { partId, label, end, situation }: PartToMake): Command[] {
  const { bikeId, newId } = situation;
  const name = plannedName(planned);
  return [
    {
      type: 'add-part',
      partId,
      place: { on: 'bike', bikeId },
      label,
      name,
      kind: planned.kind,
      origin: 'unknown',
      condition: 'not there when the fit check asked for it: measure it before it goes in',
      note: planned.caution,
      faces: planned.faces.map((face) => ({ ...face, faceId: newId() })),
      ...(end ? { position: end } : {}),
    },
    {
      type: 'add-step',
      ...{ bikeId, stepId: newId() },
      kind: 'check',
      title: `Get or make: ${name}`,
      detail: planned.caution,
      partId,
      afterStepId: null,
    },
  ];
}
