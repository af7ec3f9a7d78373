import { useState } from 'preact/hooks';
import { Button } from '../../controls/Button.tsx';
import { SelectField } from '../../controls/fields/SelectField.tsx';
import { Ruler } from '../../controls/figures/Ruler.tsx';
import { Sheet } from '../../controls/frames/Sheet.tsx';
import { ListRow } from '../../controls/lists/ListRow.tsx';
import type { Place } from '../../journal/entries.ts';
import type { WheelRow } from '../../journal/rows.ts';
import { anotherLike } from '../../practice/wheel/anotherLike.ts';
import { AskSheet } from '../bike/sheets/AskSheet.tsx';
import { SaveNotice } from '../bike/sheets/SaveNotice.tsx';
import { useLogbook, useRun, useView } from '../door.tsx';
import { go, hrefOf } from '../route.ts';
import { historyOf } from './TruingSection.tsx';

function MoveSheet({ wheel, onClose }: { wheel: WheelRow; onClose: () => void }) {
  const bikes = useView('bikes');
  const { run, save } = useRun();
  const [to, setTo] = useState('shelf');
  const open = bikes.is === 'there' ? bikes.value.filter(({ putAway }) => putAway === undefined) : [];
  const move = async () => {
    const place: Place = to === 'shelf' ? { on: 'shelf' } : { on: 'bike', bikeId: to };
    const command = { type: 'move-wheel', wheelId: wheel.wheelId, to: place } as const;
    if (await run(command, { undo: `${wheel.name} moved` })) onClose();
  };
  return (
    <Sheet
      open
      title={`Move ${wheel.name}`}
      onClose={onClose}
      actions={
        <Button kind="main" wide disabled={save.is === 'saving'} onPress={move}>
          Move it
        </Button>
      }
    >
      <div class="stack">
        <SaveNotice save={save} />
        <p>All its parts go together. Their joints come apart.</p>
        <SelectField
          label="Where it goes"
          value={to}
          onChoose={setTo}
          options={[
            { value: 'shelf', label: 'The shelf' },
            ...open.map(({ bikeId, name }) => ({ value: bikeId, label: name })),
          ]}
        />
      </div>
    </Sheet>
  );
}

/** What else is done with a wheel: a second one, moving it, taking it apart. */
export function WheelActs({ wheel, names }: { wheel: WheelRow; names: readonly string[] }) {
  const logbook = useLogbook();
  const { wheelId, name, parts } = wheel;
  const [sheet, setSheet] = useState<'move' | 'apart'>();
  const { run, save, clear } = useRun();
  const second = async () => {
    if (save.is === 'saving') return;
    const copyId = logbook.newId();
    const about = anotherLike(wheel, names);
    if (await run({ type: 'make-wheel', wheelId: copyId, ...about }, { undo: `${about.name} added` }))
      go({ at: 'wheel', wheelId: copyId });
  };
  const apart = async (why: string) => {
    const entries = await run({ type: 'take-wheel-apart', wheelId, why }, { undo: `${name} taken apart` });
    if (entries) history.back();
    return entries !== undefined;
  };
  const shut = () => {
    setSheet(undefined);
    clear();
  };
  return (
    <section>
      <Ruler label="More" />
      <SaveNotice save={save} />
      <ListRow icon="pencil" title="Edit" href={hrefOf({ at: 'edit-wheel', wheelId })} />
      <ListRow
        icon="plus"
        title="A second wheel like this"
        detail="Same sizes and lacing; its own parts and readings."
        onPress={() => void second()}
      />
      {parts.length > 0 && <ListRow icon="bike" title="Move the wheel" onPress={() => setSheet('move')} />}
      {parts.length > 0 && (
        <ListRow icon="clock" title="History" href={hrefOf({ at: 'history', place: historyOf(wheel) })} />
      )}
      <ListRow icon="cross" title="Take it apart" onPress={() => setSheet('apart')} />
      {sheet === 'move' && <MoveSheet wheel={wheel} onClose={shut} />}
      {sheet === 'apart' && (
        <AskSheet
          draft={`wheel-apart:${wheelId}`}
          title={`Take apart: ${name}`}
          label="Why"
          hint="Its parts are free again. Readings stay in the history."
          offers={['New rim', 'Broken spokes', 'New hub']}
          act="Taken apart"
          danger
          save={save}
          onWords={apart}
          onClose={shut}
        />
      )}
    </section>
  );
}
