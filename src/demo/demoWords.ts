import type { Command } from '../journal/commands.ts';
import type { Between, Target } from '../journal/entries.ts';
import type { TorqueUnit, Typed } from '../mechanics/units.ts';
import type { DemoPen } from './demo.ts';

/** Ids of the demo begin like this, so that it can be taken out again; the store knows the same word. */
const DEMO = 'demo-';

export const id = (name: string): string => `${DEMO}${name}`;
export const nm = (value: number): Typed<TorqueUnit> => ({ value, unit: 'N.m', typed: String(value) });
export const bar = (value: number) => ({ value, unit: 'bar' as const, typed: String(value) });
export const celsius = (value: number) => ({ value, unit: 'Cel' as const, typed: String(value) });
export const mL = (value: number) => ({ value, unit: 'mL' as const, typed: String(value) });
export const mm = (value: number) => ({ value, unit: 'mm' as const, typed: String(value) });

export const printed = (partName: string, torqueNm: number, upToNm?: number): Target => ({
  source: 'printed-on-the-part',
  torque: nm(torqueNm),
  ...(upToNm === undefined ? {} : { upTo: nm(upToNm) }),
  partId: id(partName),
});
export const table = (torqueNm: number, reference: string): Target => ({
  source: 'general-table',
  torque: nm(torqueNm),
  reference,
});
export const judged = (torqueNm: number): Target => ({ source: 'own-judgement', torque: nm(torqueNm) });
export const grease: Between[] = [{ kind: 'grease' }];
export const dry: Between[] = [{ kind: 'dry' }];

type JointCommand = Extract<Command, { type: 'make-joint' }>;

/** A joint in one line: kind, name, parts, screws, targets, what goes between. */
export function joint(
  bike: string,
  key: string,
  kind: JointCommand['kind'],
  name: string,
  parts: string[],
  screws: [string, number, ('right' | 'left')?] | null,
  targets: Target[],
  between: Between[] = grease,
): JointCommand {
  return {
    type: 'make-joint',
    jointId: id(key),
    bikeId: id(bike),
    kind,
    name,
    partIds: parts.map(id),
    between,
    fasteners: screws ? [{ thread: screws[0], count: screws[1], hand: screws[2] ?? 'right' }] : [],
    targets,
  };
}

/** Every open step of a bike done with its target, but for the joints left out. */
export async function buildAll(
  pen: DemoPen,
  bike: string,
  torques: Record<string, number>,
  options: { toolFor(nm: number): string; until?: (title: string, kind: string) => boolean },
): Promise<void> {
  const bench = await pen.read('bench', { bikeId: id(bike) });
  for (const step of bench?.steps ?? []) {
    if (step.state !== 'open') continue;
    if (options.until?.(step.title, step.kind)) return;
    const jointKey = step.jointId?.slice(DEMO.length) ?? '';
    if (step.kind === 'torque' && step.jointId) {
      const torque = torques[jointKey];
      if (torque === undefined) continue;
      const bolts = bench?.joints
        .find(({ jointId }) => jointId === step.jointId)
        ?.fasteners.reduce((sum, { count }) => sum + count, 0);
      await pen.write({
        type: 'apply-torque',
        jointId: step.jointId,
        stepId: step.stepId,
        applied: nm(torque),
        entered: 'tap',
        bolts: bolts || 1,
        passes: (bolts ?? 1) > 2 ? 2 : 1,
        toolId: id(options.toolFor(torque)),
        marked: true,
      });
    } else if (step.kind === 'lock' && step.jointId) {
      await pen.write({
        type: 'apply-locker',
        jointId: step.jointId,
        stepId: step.stepId,
        grade: 'medium',
        surface: 'steel',
        primer: false,
        waitMs: 24 * 3_600_000,
      });
    } else if (step.kind !== 'seat') {
      await pen.write({ type: 'finish-step', stepId: step.stepId });
    }
  }
}

/** The pre-ride check, everything as it should be. */
export async function checkAll(
  pen: DemoPen,
  bike: string,
  groups: readonly { id: string; items: readonly { id: string }[] }[],
): Promise<void> {
  for (const group of groups) {
    const items = group.items.map((item) => ({ itemId: item.id, ok: true }));
    await pen.write({ type: 'confirm-ride-check', bikeId: id(bike), groupId: group.id, items });
  }
}
