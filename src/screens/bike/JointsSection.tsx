import { Button } from '../../controls/Button.tsx';
import { Fold } from '../../controls/Fold.tsx';
import type { Id } from '../../journal/entries.ts';
import type { JointRow, JointState } from '../../journal/rows.ts';
import { jointKindRow } from '../../standards/jointKinds.ts';
import { JointLine } from '../joint/JointLine.tsx';
import { hrefOf } from '../route.ts';
import { Rows } from './Rows.tsx';

/** What is not done stands above what is; what is apart comes last. */
const order: readonly JointState[] = ['hand-tight', 'open', 'torqued', 'apart'];
const place = ({ state, moved }: JointRow) => (moved >= 2 ? 0.5 : order.indexOf(state));

/** The joints of a bike, each with its state. */
export function JointsSection({ bikeId, joints }: { bikeId: Id; joints: JointRow[] }) {
  const sorted = joints.toSorted(
    (a, b) => place(a) - place(b) || jointKindRow(a.kind).buildOrder - jointKindRow(b.kind).buildOrder,
  );
  return (
    <Fold label="Joints" end={joints.length} open>
      {joints.length === 0 && (
        <p class="bike-none">
          No joint yet. A joint is where parts meet: a stem on a steerer, a rotor on a hub. Name each once,
          and the plan, the bench and the re-checks come from it.
        </p>
      )}
      <Rows
        label="Joints"
        of={sorted}
        keyOf={({ jointId }) => jointId}
        draw={(joint) => <JointLine joint={joint} />}
      />
      <div class="bike-acts">
        <Button icon="plus" href={hrefOf({ at: 'new-joint', bikeId })}>
          Add a joint
        </Button>
      </div>
    </Fold>
  );
}
