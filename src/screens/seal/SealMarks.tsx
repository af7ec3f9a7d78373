import { Ruler } from '../../controls/figures/Ruler.tsx';
import { ListRow } from '../../controls/lists/ListRow.tsx';
import { RowList } from '../../controls/lists/RowList.tsx';
import type { Id } from '../../journal/entries.ts';
import type { SealRow } from '../../journal/rows.ts';
import { whenText } from '../../words/dayText.ts';
import { sealWords } from '../../words/history/sentencesOfJoints.ts';
import { hrefOf } from '../route.ts';

const capital = (text: string) => text.charAt(0).toUpperCase() + text.slice(1);

export interface SealMarksProps {
  jointId: Id;
  marks: SealRow['marks'];
}

/** Every mark with its time, the newest first. */
export function SealMarks({ jointId, marks }: SealMarksProps) {
  return (
    <>
      <Ruler
        label="Seal log"
        end={
          marks.length > 0 && (
            <a class="seal-correct" href={hrefOf({ at: 'history', place: `j:${jointId}` })}>
              Correct an entry
            </a>
          )
        }
      />
      {marks.length === 0 ? (
        <p class="far lower">Nothing logged yet. Start with seating the bead.</p>
      ) : (
        <RowList
          label="Seal log"
          of={marks.toReversed()}
          keyOf={({ entryId }) => entryId}
          draw={(mark) => (
            <ListRow
              title={capital(sealWords(mark))}
              detail={[whenText(mark.atMs), gaugeOf(mark), mark.note].filter(Boolean).join(' · ')}
            />
          )}
        />
      )}
    </>
  );
}

const gaugeOf = (mark: SealRow['marks'][number]) =>
  'reading' in mark && mark.reading?.gauge ? `gauge: ${mark.reading.gauge}` : undefined;
