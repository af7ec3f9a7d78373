import type { MarkState } from '../../../controls/figures/Mark.tsx';
import { Fold } from '../../../controls/lists/Fold.tsx';
import { ListRow } from '../../../controls/lists/ListRow.tsx';
import type { JointRow, SealRow } from '../../../journal/rows.ts';
import { hrefOf } from '../../route.ts';

const verdicts: Record<NonNullable<SealRow['verdict']>, { state: MarkState; word: string }> = {
  holds: { state: 'done', word: 'Holds' },
  'still-sealing': { state: 'waits', word: 'Still sealing' },
  leaks: { state: 'held', word: 'Leaks' },
  'will-not-seat': { state: 'held', word: 'Will not seat' },
};

/** Tyres on rims, each with what was last judged of it. */
export function SealsSection({ joints, seals }: { joints: JointRow[]; seals: SealRow[] }) {
  const beads = joints.filter(({ kind, state }) => kind === 'bead' && state !== 'apart');
  if (beads.length === 0) return null;
  return (
    <Fold label="Tyres and seals" end={beads.length}>
      {beads.map(({ jointId, name }) => {
        const seal = seals.find((one) => one.jointId === jointId);
        const judged = seal?.verdict ? verdicts[seal.verdict] : undefined;
        const begun = (seal?.marks.length ?? 0) > 0;
        return (
          <ListRow
            key={jointId}
            title={name}
            state={judged?.state ?? 'open'}
            stateWord={judged?.word ?? (begun ? 'Not signed off' : 'Not started')}
            href={hrefOf({ at: 'seal', jointId })}
          />
        );
      })}
    </Fold>
  );
}
