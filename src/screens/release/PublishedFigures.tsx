import { Fold } from '../../controls/lists/Fold.tsx';
import { ListRow } from '../../controls/lists/ListRow.tsx';
import { numberText } from '../../mechanics/numberText.ts';
import { unitLabel } from '../../mechanics/units.ts';
import {
  type PublishedFigure,
  publishedFigures,
  publishedFiguresCaution,
} from '../../standards/publishedFigures.ts';

/** Wheel retention, seat and road test: what a finished bike can be held beside. */
const sections = ['1512.12', '1512.15', '1512.17'] as const;

const shown = publishedFigures.filter(({ source }) => sections.some((section) => source.includes(section)));

/** Plain ratios and metres are no units of the bench. */
const labels: Partial<Record<PublishedFigure['unit'], string>> = { '1': '×', m: 'm' };
const publishedFigureText = ({ value, unit }: PublishedFigure): string => {
  const label = labels[unit] ?? unitLabel[unit as keyof typeof unitLabel];
  return `${numberText(value, 2)}${label === '°' ? '' : ' '}${label}`;
};

/** Figures of a rule for bikes on sale, as a yardstick. */
export function PublishedFigures() {
  return (
    <Fold label="Braking figures to compare with" end={shown.length}>
      <p class="lower">{publishedFiguresCaution}</p>
      {shown.map((figure) => (
        <ListRow
          key={figure.id}
          title={figure.what}
          detail={figure.source}
          end={publishedFigureText(figure)}
        />
      ))}
    </Fold>
  );
}
