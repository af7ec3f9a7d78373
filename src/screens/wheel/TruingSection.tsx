import { Ruler } from '../../controls/figures/Ruler.tsx';
import { ListRow } from '../../controls/lists/ListRow.tsx';
import type { WheelRow } from '../../journal/rows.ts';
import { numberText } from '../../mechanics/numberText.ts';
import type { LengthUnit, Typed } from '../../mechanics/units.ts';
import { convert } from '../../mechanics/units.ts';
import { serviceLimit, truingBands, truingWord } from '../../standards/wheels/truingBands.ts';
import { dayText } from '../../words/dayText.ts';
import { countWords } from '../../words/phrases.ts';
import { quantityText } from '../../words/quantityText.ts';
import { momentLabels, trueWords } from '../../words/wheel/wheelWords.ts';
import { hrefOf } from '../route.ts';

type ReadSet = WheelRow['readings'][number];

const rows = [
  { of: 'lateral', band: 'lateralMm', label: 'Sideways' },
  { of: 'radial', band: 'radialMm', label: 'Up and down' },
  { of: 'dish', band: 'dishMm', label: 'Dish' },
] as const;

/** The bands of a figure, for sideways and up and down the same. */
function upTo(band: 'lateralMm' | 'dishMm'): string {
  const [good, acceptable, over] = truingBands.map((one) => `${numberText(one[band], 2)} mm`);
  return `${good} good, ${acceptable} acceptable, over ${over} true again`;
}

function runWords(set: ReadSet): string {
  const words = rows.flatMap(({ of, band, label }) => {
    const read: Typed<LengthUnit> | undefined = set[of];
    if (!read) return [];
    const mm = Math.abs(convert(read.value, read.unit, 'mm'));
    return [`${label} ${quantityText(read)}: ${trueWords[truingWord(band, mm)].toLowerCase()}`];
  });
  const spokes = set.tensionsN.filter((one) => one !== null).length;
  if (spokes > 0) words.push(`${countWords(spokes, 'spoke')} read`);
  return words.join('. ');
}

/** Every time the wheel was measured, newest first, with what its run-out was worth. */
export function TruingSection({ wheel }: { wheel: WheelRow }) {
  const sets = wheel.readings.toReversed();
  return (
    <section>
      <Ruler label="Measured" end={sets.length} />
      {sets.length === 0 && <p class="lower">Not measured yet. Read it before and after truing.</p>}
      {sets.map((set) => (
        <ListRow
          key={set.entryId}
          title={`${momentLabels[set.moment]}, ${dayText(set.atMs)}`}
          detail={`Tyre ${set.tyre}. ${runWords(set)}${set.note ? `. ${set.note}` : ''}`}
          href={hrefOf({ at: 'history', place: historyOf(wheel) })}
        />
      ))}
      <p class="small lower">
        {`Full run over one turn: up to ${upTo('lateralMm')}; rim from the middle: up to ${upTo('dishMm')} (our suggestion). Service limit of an owner’s manual: ${numberText(serviceLimit.mm)} mm. Spokes bed in: read again after the first rides.`}
      </p>
    </section>
  );
}

/** The history a wheel is found in: that of its hub, or of whatever it is made of. */
export const historyOf = ({ parts }: WheelRow): string =>
  `p:${(parts.find(({ as }) => as === 'hub') ?? parts[0])?.partId ?? ''}`;
