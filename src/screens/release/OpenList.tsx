import { ListRow } from '../../controls/lists/ListRow.tsx';
import { RowList } from '../../controls/lists/RowList.tsx';
import type { Id, OpenItem } from '../../journal/entries.ts';
import { openHref } from './openHref.ts';

export interface OpenListProps {
  label: string;
  bikeId: Id;
  /** In the order they are shown. */
  items: readonly OpenItem[];
}

/** What is open, word for word, each with the way to where it is mended. */
export function OpenList({ label, bikeId, items }: OpenListProps) {
  return (
    <RowList
      label={label}
      of={items}
      keyOf={({ what, words, jointId }) => `${what} ${jointId ?? ''} ${words}`}
      draw={(item) => (
        <ListRow
          title={item.words}
          state={item.blocks ? 'held' : 'noted'}
          stateWord={item.blocks ? 'Blocks riding' : item.blocksFull ? 'First ride only' : 'Open'}
          href={openHref(item, bikeId)}
        />
      )}
    />
  );
}
