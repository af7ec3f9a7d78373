/** What there is to pull to: the target, for want of one what was applied, or no figure at all. */
export type PullFigure = 'target' | 'applied' | 'none';

/**
 * The figure there is to pull a joint to. What was applied before it was only hand-tight again does not count.
 * @example pullFigure({ targets: [{ source: 'none' }], state: 'hand-tight' }) //=> 'none'
 */
export function pullFigure(joint: {
  targets: readonly { torque?: unknown }[];
  applied?: unknown;
  state: string;
}): PullFigure {
  if (joint.targets.some(({ torque }) => torque !== undefined)) return 'target';
  return joint.state === 'torqued' && joint.applied !== undefined ? 'applied' : 'none';
}
