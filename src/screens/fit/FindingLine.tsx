import type { MarkState } from '../../controls/figures/Mark.tsx';
import { ListRow } from '../../controls/lists/ListRow.tsx';
import type { Finding } from '../../fit/finding.ts';
import type { GroupId } from '../../fit/openFindings.ts';
import type { PilePart } from '../../fit/pile.ts';
import type { FindingRow, JointRow } from '../../journal/rows.ts';
import { partNames, topicWords, wayWords } from '../../words/fitWords.ts';
import { sentenceCase } from '../../words/sentenceCase.ts';

const marks: Record<GroupId, { state: MarkState; word: string } | undefined> = {
  'does-not-fit': { state: 'held', word: 'Does not fit' },
  'one-way-only': { state: 'held', word: 'Only with a permanent change' },
  'not-known': { state: 'open', word: 'Not known' },
  'fits-with': { state: 'open', word: 'Needs an adapter or shim' },
  accepted: { state: 'done', word: 'Accepted' },
  fits: undefined,
};

export interface FindingLineProps {
  finding: Finding;
  group: GroupId;
  parts: readonly PilePart[];
  row: FindingRow | undefined;
  /** Where the joints of the bike say already that something lies between. */
  joint: JointRow | undefined;
  onOpen: (finding: Finding) => void;
}

/** One finding as a line of the card: what meets what, what was found, and the best way over it. */
export function FindingLine({ finding, group, parts, row, joint, onOpen }: FindingLineProps) {
  const planned = group === 'accepted' && finding.outcome === 'one-way-only';
  const mark = planned ? ({ state: 'noted', word: 'Change planned' } as const) : marks[group];
  const noted = row && row.outcome !== 'accepted' && group !== 'fits';
  const built = joint && `In ${joint.name} already: accept it`;
  const way = group === 'accepted' ? row?.words : wayWords(finding);
  return (
    <ListRow
      title={topicWords(finding.topic)}
      detail={
        <>
          <span class="fit-parts">{partNames(finding, parts).join(' + ')}</span>
          <span class="fit-because">{sentenceCase(finding.because)}</span>
          {way && <span class="fit-way">{way}</span>}
        </>
      }
      state={noted || built ? 'noted' : mark?.state}
      stateWord={noted ? `${mark?.word}, noted for the release` : built || mark?.word}
      onPress={() => onOpen(finding)}
    />
  );
}
