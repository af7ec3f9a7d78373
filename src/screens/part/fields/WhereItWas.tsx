import { Ruler } from '../../../controls/figures/Ruler.tsx';
import { ListRow } from '../../../controls/lists/ListRow.tsx';
import { RowList } from '../../../controls/lists/RowList.tsx';
import type { PartRow } from '../../../journal/rows.ts';
import { stays } from '../../../practice/release/stays.ts';
import { dayText } from '../../../words/dayText.ts';
import { placeWords } from '../../../words/history/tradeWords.ts';
import { sentenceCase } from '../../../words/sentenceCase.ts';
import { useView } from '../../door.tsx';
import { hrefOf } from '../../route.ts';

/** Bike by bike and shelf by shelf, newest first; below it the way to every entry there is. */
export function WhereItWas({ part }: { part: PartRow }) {
  const bikes = useView('bikes');
  const bikeName = (bikeId: string) =>
    bikes.is === 'there' ? bikes.value.find((bike) => bike.bikeId === bikeId)?.name : undefined;
  const names = { bike: bikeName, part: () => undefined, joint: () => undefined };
  const spans = stays(part);
  return (
    <section>
      <Ruler label="Where it has been" end={spans.length} />
      <RowList
        label="Where it has been"
        of={spans}
        keyOf={({ fromMs, place }) => `${place.on}${fromMs}`}
        draw={({ place, fromMs, untilMs, why }) => (
          <ListRow
            title={sentenceCase(placeWords(place, names))}
            detail={`${dayText(fromMs)} ${untilMs === undefined ? 'until today' : `to ${dayText(untilMs)}`}${why ? `. Left: ${why}` : ''}`}
            href={place.on === 'bike' ? hrefOf({ at: 'bike', bikeId: place.bikeId }) : undefined}
          />
        )}
      />
      <ListRow
        title="Full history"
        detail="Every entry, on every bike"
        icon="tally"
        href={hrefOf({ at: 'history', place: `p:${part.partId}` })}
      />
    </section>
  );
}
