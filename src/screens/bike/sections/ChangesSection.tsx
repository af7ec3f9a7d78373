import { Fold } from '../../../controls/lists/Fold.tsx';
import { ListRow } from '../../../controls/lists/ListRow.tsx';
import type { PartRow } from '../../../journal/rows.ts';
import { changesOfBike } from '../../../practice/part/changesOfBike.ts';
import { dayText } from '../../../words/dayText.ts';
import { cutSize } from '../../../words/history/cutSize.ts';
import { cutWords } from '../../../words/history/tradeWords.ts';
import { sentenceCase } from '../../../words/sentenceCase.ts';
import { hrefOf } from '../../route.ts';

/** All that was filed, cut, turned, bonded or bent on this bike, in one list; nothing where nothing was. */
export function ChangesSection({ parts }: { parts: readonly PartRow[] }) {
  const changes = changesOfBike(parts);
  if (changes.length === 0) return null;
  return (
    <Fold label="Permanent changes" end={changes.length}>
      {changes.map(({ part, change }) => (
        <ListRow
          key={change.entryId}
          icon="saw"
          title={`${part.name}: ${cutWords[change.cut].done}, ${change.where}`}
          detail={`${sentenceCase(cutSize(change))}, ${dayText(change.atMs)}`}
          href={hrefOf({ at: 'part', partId: part.partId })}
        />
      ))}
    </Fold>
  );
}
