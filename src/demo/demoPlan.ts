import type { Command } from '../journal/commands.ts';
import { boltCount } from '../mechanics/screws/boltCount.ts';
import { type JointToBuild, stepsFor } from '../planning/stepOrder.ts';
import { type JointKind, jointKindRow } from '../standards/jointKinds.ts';
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

/** Joints whose faces are not simply put together. */
const ways: Partial<Record<JointKind, JointToBuild['way']>> = {
  bead: 'seat',
  'crown-race': 'press',
  headset: 'press',
};

/** The id of a step, by its joint and what is done there. */
export const stepIdOf = (jointKey: string, kind: DemoStep['kind']): string => id(`step-${jointKey}-${kind}`);

/**
 * Writes the steps of a bike down in the order of work, as "plan from the joints" would.
 * @param names names of the parts, by key
 */
export function planned(
  pen: DemoPen,
  joints: readonly JointCommand[],
  names: ReadonlyMap<string, string>,
): DemoStep[] {
  const nameOf = (partId: string) => names.get(demoKeyOf(partId)) ?? '';
  const byId = new Map(joints.map((joint) => [joint.jointId ?? '', joint]));
  const toBuild = [...byId].sort().map(([jointId, { name, kind, partIds, between, fasteners, targets }]) => ({
    ...{ jointId, name, order: jointKindRow(kind).buildOrder, way: ways[kind] ?? ('fit' as const) },
    partNames: partIds.map(nameOf),
    between: between.map((item) => (item.partId ? nameOf(item.partId) : item.kind.replace('-', ' '))),
    locker: between.some((item) => item.kind === 'threadlocker'),
    torqued: fasteners.length > 0 || targets.some((target) => target.torque),
  }));
  return stepsFor(toBuild).map(({ jointId, ...step }) => {
    const joint = byId.get(jointId);
    const jointKey = demoKeyOf(jointId);
    const stepId = stepIdOf(jointKey, step.kind);
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
