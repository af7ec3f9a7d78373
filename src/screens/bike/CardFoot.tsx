import { useState } from 'preact/hooks';
import { Ruler } from '../../controls/figures/Ruler.tsx';
import { ListRow } from '../../controls/lists/ListRow.tsx';
import type { BikeRow } from '../../journal/rows.ts';
import { useRun } from '../door.tsx';
import { hrefOf } from '../route.ts';
import { AskSheet } from './sheets/AskSheet.tsx';
import { NoteSheet } from './sheets/NoteSheet.tsx';
import { SaveNotice } from './sheets/SaveNotice.tsx';

/** The lower edge of the card: notes, history, the sheet to hand on, and what is done to the card as a whole. */
export function CardFoot({ bike }: { bike: BikeRow }) {
  const { bikeId, name, putAway } = bike;
  const [sheet, setSheet] = useState<'note' | 'name' | 'about' | 'away'>();
  const { run, save, clear } = useRun();
  const shut = () => {
    setSheet(undefined);
    clear();
  };
  const describe = async (change: { name?: string; about?: string }) => {
    const entries = await run({ type: 'describe-bike', bikeId, ...change }, { undo: 'Bike edited' });
    if (entries) shut();
    return entries !== undefined;
  };
  const away = async (why: string) => {
    const entries = await run({ type: 'put-bike-away', bikeId, why }, { undo: `${name} archived` });
    if (entries) shut();
    return entries !== undefined;
  };
  return (
    <>
      <Ruler label="More" />
      <ListRow icon="note" title="Note or photo" onPress={() => setSheet('note')} />
      <ListRow icon="clock" title="History" href={hrefOf({ at: 'history', place: `b:${bikeId}` })} />
      <ListRow icon="printer" title="Build sheet" href={hrefOf({ at: 'sheet', bikeId })} />
      <ListRow icon="pencil" title="Rename" onPress={() => setSheet('name')} />
      <ListRow icon="pencil" title="Notes" onPress={() => setSheet('about')} />
      {putAway === undefined ? (
        <ListRow icon="lock" title="Archive this bike" onPress={() => setSheet('away')} />
      ) : (
        <ListRow
          icon="open"
          title="Bring back"
          detail={`Archived: ${putAway}`}
          onPress={() => run({ type: 'take-bike-out', bikeId }, { undo: `${name} brought back` })}
        />
      )}
      {sheet === undefined && <SaveNotice save={save} />}
      {sheet === 'note' && <NoteSheet about={{ bikeId }} name={name} onClose={shut} />}
      {sheet === 'name' && (
        <AskSheet
          draft={`bike-name:${bikeId}`}
          title="Rename"
          label="Name"
          first={name}
          act="Save the name"
          save={save}
          onWords={(words) => describe({ name: words })}
          onClose={shut}
        />
      )}
      {sheet === 'about' && (
        <AskSheet
          draft={`bike-about:${bikeId}`}
          title="Notes"
          label="About this bike"
          first={bike.about}
          lines={4}
          maxLength={2000}
          act="Save"
          save={save}
          onWords={(words) => describe({ about: words })}
          onClose={shut}
        />
      )}
      {sheet === 'away' && (
        <AskSheet
          draft={`bike-away:${bikeId}`}
          title="Archive this bike"
          label="Why"
          hint="Nothing is deleted. It moves to Archived."
          offers={['Taken apart', 'Given away', 'Stored for the winter']}
          act="Archive this bike"
          save={save}
          onWords={away}
          onClose={shut}
        />
      )}
    </>
  );
}
