import './shelf.css';
import { ListRow } from '../../controls/ListRow.tsx';
import { Ruler } from '../../controls/Ruler.tsx';
import { partLine } from '../bike/partLine.ts';
import { hrefOf } from '../route.ts';
import { groupTitles, type ShelfRow } from './shelfRows.ts';

/** A line of the shelf: a heading, or a part with what keeps it there. */
export function ShelfLine({ row }: { row: ShelfRow }) {
  if (row.is === 'heading')
    return (
      <div class="shelf-group">
        <Ruler label={groupTitles[row.group]} end={<b>{row.count}</b>} />
      </div>
    );
  const { part } = row;
  const { place } = part;
  const held = place.on === 'quarantine' ? place.why : undefined;
  const gone = place.on === 'scrapped' ? `Scrapped: ${place.how}` : place.on === 'sold' ? 'Sold' : undefined;
  return (
    <ListRow
      title={part.name}
      detail={[partLine(part), place.on === 'shelf' && place.tag ? `tag: ${place.tag}` : '']
        .filter(Boolean)
        .join(', ')}
      state={held ? 'held' : gone ? 'noted' : undefined}
      stateWord={held ? `Quarantine: ${held}` : gone}
      href={hrefOf({ at: 'part', partId: part.partId })}
    />
  );
}
