import { Mark } from '../../controls/figures/Mark.tsx';
import { ListRow } from '../../controls/lists/ListRow.tsx';
import type { JointRow } from '../../journal/rows.ts';
import { unitLabel } from '../../mechanics/units.ts';
import { rulingTarget } from '../../planning/rulingTarget.ts';
import { targetFigureText } from '../../words/targetWords.ts';
import { hrefOf } from '../route.ts';
import { jointMark } from './jointMark.ts';

/** A joint of a list: its state, its torque beside its target, and whether it keeps moving. */
export function JointLine({ joint }: { joint: JointRow }) {
  const mark = jointMark(joint);
  const ruling = rulingTarget(joint.targets);
  return (
    <ListRow
      title={joint.name}
      detail={
        <>
          {mark.state === undefined && mark.word}
          {ruling.ok && `Target ${targetFigureText(ruling.target)} ${unitLabel[ruling.target.torque.unit]}`}
          {joint.moved >= 2 && (
            <span class="row-flag">
              <Mark state="held" word={joint.moved === 2 ? 'Moved twice' : `Moved ${joint.moved} times`} />
            </span>
          )}
        </>
      }
      state={mark.state}
      stateWord={mark.word}
      href={hrefOf({ at: 'joint', jointId: joint.jointId })}
    />
  );
}
