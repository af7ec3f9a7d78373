import { useState } from 'preact/hooks';
import { Button } from '../../../controls/Button.tsx';
import { Fold } from '../../../controls/lists/Fold.tsx';
import { RowList } from '../../../controls/lists/RowList.tsx';
import type { Id } from '../../../journal/entries.ts';
import type { JointRow } from '../../../journal/rows.ts';
import { jointKindRow } from '../../../standards/jointKinds.ts';
import { JointLine } from '../../joint/JointLine.tsx';
import { jointMark } from '../../joint/jointMark.ts';
import { hrefOf } from '../../route.ts';

/** With none unfinished, so many stand there to lead on. */
const FEWEST = 4;

/** Hand-tight before all, then what keeps moving, then what wants a torque; what is apart comes last. */
function place(joint: JointRow): number {
  if (joint.state === 'hand-tight') return 0;
  if (joint.moved >= 2) return 1;
  if (joint.state === 'apart') return 5;
  const { state } = jointMark(joint);
  return state === 'open' ? 2 : state === 'done' ? 3 : 4;
}

/** The joints of a bike: those not finished are always in sight, the others at a tap. */
export function JointsSection({ bikeId, joints }: { bikeId: Id; joints: JointRow[] }) {
  const [all, setAll] = useState(false);
  const order = (joint: JointRow) => jointKindRow(joint.kind).buildOrder;
  const sorted = joints.toSorted((a, b) => place(a) - place(b) || order(a) - order(b));
  const unfinished = sorted.filter((joint) => place(joint) < 3).length;
  const shown = all ? sorted : sorted.slice(0, Math.max(unfinished, FEWEST));
  return (
    <Fold
      label="Joints"
      end={unfinished > 0 ? `${unfinished} of ${joints.length} not done` : joints.length}
      open
    >
      {joints.length === 0 && (
        <p class="lower">
          No joints yet. A joint is anywhere parts are fixed to each other: stem on steerer, rotor on hub. Add
          one to log its torque and get re-checks.
        </p>
      )}
      <RowList
        label="Joints"
        of={shown}
        keyOf={({ jointId }) => jointId}
        draw={(joint) => <JointLine joint={joint} />}
      />
      <div class="buttons">
        {shown.length < joints.length && (
          <Button onPress={() => setAll(true)}>{`Show all ${joints.length}`}</Button>
        )}
        <Button icon="plus" href={hrefOf({ at: 'new-joint', bikeId })}>
          Add a joint
        </Button>
      </div>
    </Fold>
  );
}
