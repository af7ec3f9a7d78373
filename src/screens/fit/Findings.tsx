import { Fold } from '../../controls/lists/Fold.tsx';
import { RowList } from '../../controls/lists/RowList.tsx';
import type { Finding } from '../../fit/finding.ts';
import type { PilePart } from '../../fit/pile.ts';
import { alreadyBetween } from '../../fit/topicJoints.ts';
import type { FindingRow, JointRow } from '../../journal/rows.ts';
import { type FindingGroup, findingRowOf } from '../../practice/pile/findingGroups.ts';
import { groupWords } from '../../words/fitWords.ts';
import { FindingLine } from './FindingLine.tsx';

export interface FindingsProps {
  groups: readonly FindingGroup[];
  parts: readonly PilePart[];
  rows: readonly FindingRow[];
  joints: readonly JointRow[];
  onOpen: (finding: Finding) => void;
}

/** All findings by what has to happen; what is well stays folded, and what is built already stands last. */
export function Findings({ groups, parts, rows, joints, onOpen }: FindingsProps) {
  return groups.map(({ group, findings }) => {
    const lines = findings.map((finding) => ({
      finding,
      joint: group === 'fits-with' ? alreadyBetween(finding, parts, joints)?.joint : undefined,
    }));
    return (
      <Fold
        key={group}
        label={groupWords[group]}
        end={findings.length}
        open={group !== 'fits' && group !== 'accepted'}
      >
        <RowList
          label={groupWords[group]}
          of={lines.toSorted((a, b) => Number(a.joint !== undefined) - Number(b.joint !== undefined))}
          keyOf={({ finding }) => finding.findingId}
          estimatePx={150}
          draw={({ finding, joint }) => (
            <FindingLine
              finding={finding}
              group={group}
              parts={parts}
              row={findingRowOf(rows, finding)}
              joint={joint}
              onOpen={onOpen}
            />
          )}
        />
      </Fold>
    );
  });
}
