import { Icon, type IconName } from '../../controls/Icon.tsx';
import { Facts } from '../../controls/lists/Facts.tsx';
import type { CutKind } from '../../journal/entries.ts';
import type { PartRow } from '../../journal/rows.ts';
import { dayText } from '../../words/dayText.ts';
import { cutSize } from '../../words/history/cutSize.ts';
import { inspectionWords } from '../../words/history/sentencesOfParts.ts';
import { cutWords } from '../../words/history/tradeWords.ts';
import { quantityWords } from '../../words/phrases.ts';
import { sentenceCase } from '../../words/sentenceCase.ts';
import { Photos } from '../bike/sheets/Photos.tsx';

export const cutIcons: Record<CutKind, IconName> = {
  file: 'file',
  saw: 'saw',
  drill: 'drill',
  braze: 'drop',
  'cold-set': 'press',
  ream: 'drill',
  grind: 'file',
  turn: 'file',
  tap: 'drill',
  bond: 'drop',
  other: 'warning',
};

/** A change that cannot be undone, with all its figures; it stands with the part for life. */
export function Cut({ change }: { change: PartRow['changes'][number] }) {
  const { cut, where, left, leftWords, how, why, rulesOut, photoIds, inspection, atMs } = change;
  const rest = [left && quantityWords(left), leftWords?.trim()].filter(Boolean).join(', ');
  return (
    <div class="cut">
      <h3 class="cut-head">
        <Icon name={cutIcons[cut]} sizePx={26} />
        {`${cutWords[cut].label}: ${where}`}
      </h3>
      <p class="cut-sizes">{sentenceCase(cutSize(change))}</p>
      <Facts
        of={[
          ['Left', rest],
          ['Why', why],
          ['How', how],
          ['Rules out', rulesOut?.trim()],
          ['Inspect', inspection && inspectionWords(inspection)],
          ['On', dayText(atMs)],
        ]}
      />
      {photoIds && photoIds.length > 0 && (
        <Photos photoIds={photoIds} alt={`${cutWords[cut].label}, ${where}`} />
      )}
    </div>
  );
}
