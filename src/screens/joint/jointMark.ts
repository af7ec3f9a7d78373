import type { MarkState } from '../../controls/figures/Mark.tsx';
import type { JointRow } from '../../journal/rows.ts';
import { wantsTorque } from '../../standards/jointKinds.ts';
import { quantityText } from '../../words/quantityText.ts';

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
  return wantsTorque(joint)
    ? { state: 'open', word: 'No torque yet' }
    : { state: undefined, word: 'No torque needed' };
}
