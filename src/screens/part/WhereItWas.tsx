import { ListRow } from '../../controls/ListRow.tsx';
import { Ruler } from '../../controls/Ruler.tsx';
import { placeWords } from '../../exchange/tradeWords.ts';
import type { PartRow } from '../../journal/rows.ts';
import { Rows } from '../bike/Rows.tsx';
import { dayText } from '../dayText.ts';
import { useView } from '../door.tsx';
import { hrefOf } from '../route.ts';
import { sentenceCase } from './sentenceCase.ts';
import { stays } from './stays.ts';

/** Bike by bike and shelf by shelf, newest first; below it the way to every entry there is. */
export function WhereItWas({ part }: { part: PartRow }) {
  const bikes = useView('bikes', {});
  const bikeName = (bikeId: string) =>
    bikes.is === 'there' ? bikes.value.find((bike) => bike.bikeId === bikeId)?.name : undefined;
  const names = { bike: bikeName, part: () => undefined, joint: () => undefined };
  const spans = stays(part);
  return (
    <section>
      <Ruler label="Where it has been" end={spans.length} />
      <Rows
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
        title="Everything that happened to it"
        detail="Every entry, on every bike"
        icon="tally"
        href={hrefOf({ at: 'history', place: `p:${part.partId}` })}
      />
    </section>
  );
}
