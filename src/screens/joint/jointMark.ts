import type { MarkState } from '../../controls/Mark.tsx';
import type { JointRow } from '../../journal/rows.ts';
import { jointKindRow } from '../../standards/jointKinds.ts';
import { quantityText } from '../quantityText.ts';

/** Whether the joint is closed by a torque at all: a tyre on its rim is not. */
function screwed({ kind, fasteners, targets }: Pick<JointRow, 'kind' | 'fasteners' | 'targets'>): boolean {
  const turned = fasteners.length > 0 && jointKindRow(kind).inspectAs === 'turn';
  return turned || targets.some(({ torque }) => torque !== undefined);
}

/**
 * The state of a joint as mark and word; a torque stands with its figure as it was typed. A joint that wants no
 * wrench has no mark.
 * @example jointMark({ state: 'hand-tight', … }).word //=> 'Hand-tight only'
 */
export function jointMark(joint: JointRow): { state: MarkState | undefined; word: string } {
  const { state, applied } = joint;
  if (state === 'torqued' && applied) return { state: 'done', word: quantityText(applied.applied) };
  if (state === 'hand-tight') return { state: 'open', word: 'Hand-tight only' };
  if (state === 'apart') return { state: 'void', word: 'Taken apart' };
  return screwed(joint)
    ? { state: 'open', word: 'No torque yet' }
    : { state: undefined, word: 'No torque wanted' };
}
