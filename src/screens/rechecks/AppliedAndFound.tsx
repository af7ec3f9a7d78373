import type { JointRow } from '../../journal/rows.ts';
import type { TorqueUnit } from '../../mechanics/units.ts';
import { countedAs } from '../../standards/jointKinds.ts';
import { dayText } from '../../words/dayText.ts';
import { quantityText } from '../../words/quantityText.ts';
import { appliedText, foundWord } from '../joint/ThreeFigures.tsx';

/** What was applied, and beside it what a re-check last met; neither is ever copied from the other. */
export function AppliedAndFound({ joint, unit }: { joint: JointRow; unit: TorqueUnit }) {
  const { applied, found } = joint;
  return (
    <div class="recheck-figures far">
      <p>
        Applied: <strong>{applied ? quantityText(applied.applied, unit) : 'no torque logged'}</strong>
        {applied && <span class="small">, {appliedText(applied, countedAs(joint.kind))}</span>}
      </p>
      <p>
        Found: <strong>{found ? foundWord(found) : 'not looked at yet'}</strong>
        {found && <span class="small">, {dayText(found.atMs)}</span>}
      </p>
    </div>
  );
}
