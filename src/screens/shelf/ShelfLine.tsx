import './shelf.css';
import { Ruler } from '../../controls/figures/Ruler.tsx';
import { ListRow } from '../../controls/lists/ListRow.tsx';
import { groupTitles, type ShelfRow } from '../../practice/part/shelfRows.ts';
import { partLine } from '../../words/partLine.ts';
import { hrefOf } from '../route.ts';

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
