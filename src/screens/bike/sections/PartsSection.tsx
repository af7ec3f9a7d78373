import { useState } from 'preact/hooks';
import { Button } from '../../../controls/Button.tsx';
import { Fold } from '../../../controls/lists/Fold.tsx';
import { ListRow } from '../../../controls/lists/ListRow.tsx';
import { RowList } from '../../../controls/lists/RowList.tsx';
import type { Id } from '../../../journal/entries.ts';
import type { PartRow } from '../../../journal/rows.ts';
import { partLine } from '../../../words/partLine.ts';
import { hrefOf } from '../../route.ts';
import { TakeFromShelf } from '../sheets/TakeFromShelf.tsx';

/** What is on the bike now; more comes from the shelf or is written down new. */
export function PartsSection({ bikeId, parts }: { bikeId: Id; parts: PartRow[] }) {
  const [atShelf, setAtShelf] = useState(false);
  const sorted = parts.toSorted((a, b) => a.label.localeCompare(b.label, undefined, { numeric: true }));
  return (
    <Fold label="Parts" end={parts.length} open={parts.length === 0}>
      {parts.length === 0 && <p class="lower">No parts yet. Start with the frame.</p>}
      <RowList
        label="Parts"
        of={sorted}
        keyOf={({ partId }) => partId}
        draw={(part) => (
          <ListRow
            title={part.name}
            detail={partLine(part)}
            href={hrefOf({ at: 'part', partId: part.partId })}
          />
        )}
      />
      <div class="buttons">
        <Button icon="plus" href={hrefOf({ at: 'new-part', place: `bike:${bikeId}` })}>
          Add a part
        </Button>
        <Button icon="shelf" onPress={() => setAtShelf(true)}>
          From the shelf
        </Button>
      </div>
      {atShelf && <TakeFromShelf bikeId={bikeId} onClose={() => setAtShelf(false)} />}
    </Fold>
  );
}
