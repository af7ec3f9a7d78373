import { Button } from '../../controls/Button.tsx';
import { Notice } from '../../controls/frames/Notice.tsx';
import { hrefOf } from '../route.ts';

/** Before there is a step: how joints become steps, and what to do first. */
export function EmptyPlan({ bikeId, joints }: { bikeId: string; joints: number }) {
  if (joints > 0)
    return (
      <Notice kind="empty" title="No steps yet">
        {joints === 1 ? 'One joint is' : `${joints} joints are`} logged. “From the joints” makes the steps:
        assembly, threadlocker where it is needed, then torque, in a sensible order. You can change all of it.
      </Notice>
    );
  return (
    <Notice
      kind="empty"
      title="No steps yet"
      action={
        <Button icon="plus" href={hrefOf({ at: 'new-joint', bikeId })}>
          Add a joint
        </Button>
      }
    >
      Steps are made from joints. Add joints first, or add your own.
    </Notice>
  );
}
