import { ListRow } from '../../controls/lists/ListRow.tsx';
import type { RideCheckRow } from '../../journal/rows.ts';
import { type RideCheckGroup, rideCheck } from '../../standards/checks/rideCheck.ts';
import { clockText, dayText, whenText } from '../../words/dayText.ts';
import { groupMark } from './groupMark.ts';

export interface CheckGroupsProps {
  groups: RideCheckRow['groups'];
  nowMs: number;
  onGroup: (group: RideCheckGroup) => void;
}

/** The groups of the check before riding, in the order one walks round the bike. */
export function CheckGroups({ groups, nowMs, onGroup }: CheckGroupsProps) {
  const at = (ms: number) => (dayText(ms) === dayText(nowMs) ? clockText(ms) : whenText(ms));
  return (
    <ul class="plain-list">
      {rideCheck.map((group) => {
        const mark = groupMark(groups[group.id], at);
        return (
          <li key={group.id}>
            <ListRow
              title={group.title}
              detail={`${group.items.length} to look at`}
              state={mark.state}
              stateWord={mark.word}
              onPress={() => onGroup(group)}
            />
          </li>
        );
      })}
    </ul>
  );
}
