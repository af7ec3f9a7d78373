import { useState } from 'preact/hooks';
import { TextField } from '../../../controls/fields/TextField.tsx';
import { Notice } from '../../../controls/frames/Notice.tsx';
import { Sheet } from '../../../controls/frames/Sheet.tsx';
import { ListRow } from '../../../controls/lists/ListRow.tsx';
import { RowList } from '../../../controls/lists/RowList.tsx';
import type { Id } from '../../../journal/entries.ts';
import type { PartRow } from '../../../journal/rows.ts';
import { partLine } from '../../../words/partLine.ts';
import { useRun, useView } from '../../door.tsx';
import { SaveNotice } from './SaveNotice.tsx';

/** The shelf laid over the card: a tap puts a part on the bike. The sheet stays for the next one. */
export function TakeFromShelf({ bikeId, onClose }: { bikeId: Id; onClose: () => void }) {
  const shelf = useView('parts', { at: 'shelf' });
  const { run, save } = useRun();
  const [sought, setSought] = useState('');
  const take = ({ partId, name }: PartRow) =>
    run({ type: 'move-part', partId, to: { on: 'bike', bikeId } }, { undo: `${name} put on the bike` });
  const parts = shelf.is === 'there' ? shelf.value : [];
  const wanted = sought.trim().toLocaleLowerCase();
  const shown = parts.filter((part) => `${part.name} ${partLine(part)}`.toLocaleLowerCase().includes(wanted));
  return (
    <Sheet open title="From the shelf" onClose={onClose}>
      <div class="stack">
        <SaveNotice save={save} />
        {shelf.is === 'failed' && <Notice kind="error" title="The shelf could not be read. Try again." />}
        {shelf.is === 'there' && parts.length === 0 && (
          <Notice kind="empty" title="Nothing on the shelf">
            Parts taken off a bike, or added without one, are kept here.
          </Notice>
        )}
        {parts.length > 8 && (
          <TextField label="Find by name or label" type="search" value={sought} onInput={setSought} />
        )}
        <RowList
          label="Parts on the shelf"
          of={shown}
          keyOf={({ partId }) => partId}
          draw={(part) => (
            <ListRow
              title={part.name}
              detail={partLine(part)}
              icon="plus"
              onPress={() => {
                if (save.is !== 'saving') void take(part);
              }}
            />
          )}
        />
      </div>
    </Sheet>
  );
}
