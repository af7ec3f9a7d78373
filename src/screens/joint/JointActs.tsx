import { useState } from 'preact/hooks';
import { Ruler } from '../../controls/figures/Ruler.tsx';
import { ListRow } from '../../controls/lists/ListRow.tsx';
import type { JointRow } from '../../journal/rows.ts';
import { AskSheet } from '../bike/sheets/AskSheet.tsx';
import { NoteSheet } from '../bike/sheets/NoteSheet.tsx';
import { useRun } from '../door.tsx';
import { hrefOf } from '../route.ts';
import { WheelLine } from '../wheel/WheelLine.tsx';

/** What else is done with a joint: seal, note, edit, workings, history, and taking it apart. */
export function JointActs({ joint }: { joint: JointRow }) {
  const { jointId, bikeId, name, kind, state, partIds } = joint;
  const [sheet, setSheet] = useState<'note' | 'apart'>();
  const { run, save, clear } = useRun();
  const shut = () => {
    setSheet(undefined);
    clear();
  };
  const apart = async (why: string) => {
    const entries = await run({ type: 'take-joint-apart', jointId, why }, { undo: `${name} taken apart` });
    if (entries) shut();
    return entries !== undefined;
  };
  return (
    <>
      <Ruler label="More" />
      {kind === 'spokes' && <WheelLine bikeId={bikeId} partIds={partIds} />}
      {kind === 'bead' && <ListRow icon="tyre" title="Seal" href={hrefOf({ at: 'seal', jointId })} />}
      <ListRow icon="note" title="Note or photo" onPress={() => setSheet('note')} />
      <ListRow icon="pencil" title="Edit" href={hrefOf({ at: 'edit-joint', jointId })} />
      <ListRow icon="scale" title="Calculators" href={hrefOf({ at: 'workings', jointId })} />
      <ListRow icon="clock" title="History" href={hrefOf({ at: 'history', place: `j:${jointId}` })} />
      {state !== 'apart' && <ListRow icon="cross" title="Take it apart" onPress={() => setSheet('apart')} />}
      {sheet === 'note' && <NoteSheet about={{ bikeId, jointId }} name={name} onClose={shut} />}
      {sheet === 'apart' && (
        <AskSheet
          draft={`apart:${jointId}`}
          title={`Take apart: ${name}`}
          label="Why"
          hint="Ends its torque, threadlocker and re-checks. History is kept."
          offers={['To clean and grease it', 'To change a part', 'Something was wrong']}
          act="Taken apart"
          danger
          save={save}
          onWords={apart}
          onClose={shut}
        />
      )}
    </>
  );
}
