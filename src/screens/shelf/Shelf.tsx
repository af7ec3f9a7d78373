import { useMemo, useState } from 'preact/hooks';
import { Button } from '../../controls/Button.tsx';
import { SelectField } from '../../controls/fields/SelectField.tsx';
import { TextField } from '../../controls/fields/TextField.tsx';
import { Notice } from '../../controls/frames/Notice.tsx';
import { Screen } from '../../controls/frames/Screen.tsx';
import { WindowedList } from '../../controls/lists/WindowedList.tsx';
import type { PartRow } from '../../journal/rows.ts';
import { shelfRows } from '../../practice/part/shelfRows.ts';
import { kindWords } from '../../words/history/sentencesOfParts.ts';
import { type Seen, useView } from '../door.tsx';
import { hrefOf } from '../route.ts';
import { Waits } from '../Waits.tsx';
import { ShelfLine } from './ShelfLine.tsx';

const EVERY = 'every';
/** Up to here the list is read rather than searched. */
const READ_AT_A_GLANCE = 8;

function together(seen: Seen<PartRow[]>[]): Seen<PartRow[]> {
  const failed = seen.find(({ is }) => is === 'failed');
  if (failed) return failed;
  const parts = seen.map((one) => (one.is === 'there' ? one.value : undefined));
  if (parts.includes(undefined)) return { is: 'reading' };
  return { is: 'there', value: parts.flatMap((some) => some ?? []) };
}

/** Parts on no bike: on the shelf, in quarantine, or gone. */
export function Shelf() {
  const seen = together([
    useView('parts', { at: 'shelf' }),
    useView('parts', { at: 'quarantine' }),
    useView('parts', { at: 'scrapped' }),
    useView('parts', { at: 'sold' }),
  ]);
  const [sought, setSought] = useState('');
  const [kind, setKind] = useState<string>(EVERY);
  const parts = seen.is === 'there' ? seen.value : undefined;
  const rows = useMemo(
    () => shelfRows(parts ?? [], sought, kind === EVERY ? undefined : kind, kindWords),
    // Parts are read anew after each commit; their identity changes with them.
    [parts?.map(({ partId, lastMs }) => `${partId}${lastMs}`).join(), sought, kind],
  );
  const kinds = [...new Set((parts ?? []).map((part) => part.kind))].sort();
  const add = hrefOf({ at: 'new-part', place: 'shelf' });
  return (
    <Screen
      title="Shelf"
      back={hrefOf({ at: 'home' })}
      waits={<Waits />}
      actions={
        <Button kind="main" icon="plus" href={add}>
          Add a part
        </Button>
      }
    >
      {seen.is === 'failed' && (
        <Notice kind="error" title="The shelf could not be read">
          Go back and open it again. What is recorded is safe.
        </Notice>
      )}
      {parts?.length === 0 && (
        <Notice kind="empty" title="Nothing on the shelf">
          Parts not on any bike. A name and a type are enough.
        </Notice>
      )}
      {parts && parts.length > READ_AT_A_GLANCE && (
        <div class="stack">
          <TextField label="Find by name, label or kind" type="search" value={sought} onInput={setSought} />
          <SelectField
            label="Kind of part"
            value={kind}
            options={[
              { value: EVERY, label: 'every kind' },
              ...kinds.map((value) => ({ value, label: kindWords(value) })),
            ]}
            onChoose={setKind}
          />
        </div>
      )}
      <WindowedList
        label="Parts on no bike"
        count={rows.length}
        estimatePx={80}
        rowKey={(at) => {
          const row = rows[at];
          return row?.is === 'part' ? row.part.partId : (row?.group ?? at);
        }}
        renderRow={(at) => {
          const row = rows[at];
          return row && <ShelfLine row={row} />;
        }}
      />
      {parts && parts.length > 0 && rows.length === 0 && (
        <Notice
          kind="note"
          title="No part like that"
          action={
            <Button
              onPress={() => {
                setSought('');
                setKind(EVERY);
              }}
            >
              Show all
            </Button>
          }
        >
          No match. It may be on a bike.
        </Notice>
      )}
    </Screen>
  );
}
