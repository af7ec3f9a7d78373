import { Fold } from '../../controls/Fold.tsx';
import type { PileCheck } from '../../fit/checkPile.ts';
import type { Finding } from '../../fit/finding.ts';
import type { PilePart } from '../../fit/pile.ts';
import type { FindingRow, JointRow } from '../../journal/rows.ts';
import { Rows } from '../bike/Rows.tsx';
import { FindingLine } from './FindingLine.tsx';
import { findingGroups, rowOf } from './findingGroups.ts';
import { groupWords } from './fitWords.ts';
import { alreadyBetween } from './topicJoints.ts';

export interface FindingsProps {
  check: PileCheck;
  parts: readonly PilePart[];
  rows: readonly FindingRow[];
  joints: readonly JointRow[];
  onOpen: (finding: Finding) => void;
}

/** All findings by what has to happen; what is well stays folded. */
export function Findings({ check, parts, rows, joints, onOpen }: FindingsProps) {
  return findingGroups(check, rows).map(({ group, findings }) => (
    <Fold
      key={group}
      label={groupWords[group]}
      end={findings.length}
      open={group !== 'fits' && group !== 'accepted'}
    >
      <Rows
        label={groupWords[group]}
        of={findings}
        keyOf={({ findingId }) => findingId}
        estimatePx={150}
        draw={(finding) => (
          <FindingLine
            finding={finding}
            group={group}
            parts={parts}
            row={rowOf(rows, finding)}
            joint={alreadyBetween(finding, parts, joints)?.joint}
            onOpen={onOpen}
          />
        )}
      />
    </Fold>
  ));
}
