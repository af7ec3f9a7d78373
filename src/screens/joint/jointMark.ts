import type { MarkState } from '../../controls/Mark.tsx';
import type { JointRow, JointState } from '../../journal/rows.ts';
import { jointKindRow } from '../../standards/jointKinds.ts';
import { quantityText } from '../quantityText.ts';

const marks: Record<JointState, MarkState> = {
  open: 'open',
  'hand-tight': 'open',
  torqued: 'done',
  apart: 'void',
};

/** Whether the joint is closed by a torque at all: a tyre on its rim is not. */
function screwed({ kind, fasteners, targets }: Pick<JointRow, 'kind' | 'fasteners' | 'targets'>): boolean {
  const turned = fasteners.length > 0 && jointKindRow(kind).inspectAs === 'turn';
  return turned || targets.some(({ torque }) => torque !== undefined);
}

/**
 * The state of a joint as mark and word; a torque stands with its figure as it was typed.
 * @example jointMark({ state: 'hand-tight', … }).word //=> 'Hand-tight only'
 */
export function jointMark(joint: JointRow): { state: MarkState; word: string } {
  const { state, applied } = joint;
  if (state === 'torqued' && applied) return { state: 'done', word: quantityText(applied.applied) };
  if (state === 'hand-tight') return { state: 'open', word: 'Hand-tight only' };
  if (state === 'apart') return { state: 'void', word: 'Taken apart' };
  return screwed(joint)
    ? { state: marks[state], word: 'No torque yet' }
    : { state: 'noted', word: 'No torque wanted' };
}
