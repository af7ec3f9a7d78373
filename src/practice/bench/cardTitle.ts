import type { JointRow, StepRow } from '../../journal/rows.ts';

/**
 * What stands large on the card of a step: the joint alone where the order above it says already what to do.
 * @example cardTitle({ kind: 'fit', title: 'Stem: fit' }, { name: 'Stem' }) //=> 'Stem'
 */
export function cardTitle(
  { kind, title, work }: Pick<StepRow, 'kind' | 'title' | 'work'>,
  joint: Pick<JointRow, 'name'> | undefined,
): string {
  const verbs = ['fit', 'press', 'seat', 'torque', 'threadlocker'];
  const plain =
    joint &&
    work === undefined &&
    kind !== 'check' &&
    verbs.some((what) => title === `${joint.name}: ${what}`);
  return plain ? joint.name : title;
}
