import type { Command } from '../journal/commands.ts';
import { boltCount } from '../mechanics/screws/boltCount.ts';
import { jointToBuild, type TellingPart } from '../planning/jointToBuild.ts';
import { stepsFor } from '../planning/stepOrder.ts';
import type { DemoPen } from './demoPen.ts';
import { demoKeyOf, id, type JointCommand, typedNm } from './demoWords.ts';

/** A step of a bike of the demo, with the joint it belongs to. */
export interface DemoStep {
  stepId: string;
  kind: Extract<Command, { type: 'add-step' }>['kind'];
  jointKey: string;
  /** Bolts to count; 0 where nothing is screwed. */
  bolts: number;
}

/** The id of a step, by its joint and what is done there. */
export const stepIdOf = (jointKey: string, kind: DemoStep['kind'], work = ''): string =>
  id(`step-${jointKey}-${kind}${work && `-${work}`}`);

/**
 * Writes the steps of a bike down in the order of work, as "plan from the joints" would.
 * @param parts the parts the joints name
 */
export function planned(
  pen: DemoPen,
  joints: readonly JointCommand[],
  parts: readonly TellingPart[],
): DemoStep[] {
  const byId = new Map(joints.map((joint) => [joint.jointId ?? '', joint]));
  const toBuild = [...byId]
    .sort()
    .map(([jointId, joint]) => jointToBuild({ ...joint, jointId }, joints, parts));
  return stepsFor(toBuild).map(({ jointId, ...step }) => {
    const joint = byId.get(jointId);
    const jointKey = demoKeyOf(jointId);
    const stepId = stepIdOf(jointKey, step.kind, step.work);
    pen.write({ type: 'add-step', bikeId: joint?.bikeId ?? '', stepId, jointId, ...step });
    return { stepId, kind: step.kind, jointKey, bolts: boltCount(joint?.fasteners ?? []) };
  });
}

/**
 * Every step done with its torque, but for tyres and for joints without a torque here.
 * @param torques torque by joint, N·m
 * @param until the first step that is left
 */
export function buildAll(
  pen: DemoPen,
  steps: readonly DemoStep[],
  torques: Record<string, number>,
  until?: string,
): void {
  for (const { stepId, kind, jointKey, bolts } of steps) {
    if (stepId === until) return;
    const joint = { jointId: id(jointKey), stepId };
    if (kind === 'torque') {
      const torque = torques[jointKey];
      if (torque === undefined) continue;
      pen.write({
        type: 'apply-torque',
        ...joint,
        applied: typedNm(torque),
        entered: 'tap',
        bolts: bolts || 1,
        passes: bolts > 2 ? 2 : 1,
        toolId: id(torque <= 10 ? 'tool-small' : 'tool-large'),
        marked: true,
      });
    } else if (kind === 'lock') {
      pen.write({
        type: 'apply-locker',
        ...joint,
        waitId: id(`cure-${jointKey}`),
        grade: 'medium',
        surface: 'steel',
        primer: false,
        waitMs: 24 * 3_600_000,
      });
    } else if (kind !== 'seat') {
      pen.write({ type: 'finish-step', stepId });
    }
  }
}
