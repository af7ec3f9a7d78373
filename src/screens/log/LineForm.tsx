import { useEffect, useRef, useState } from 'preact/hooks';
import { Button } from '../../controls/Button.tsx';
import { SelectField } from '../../controls/fields/SelectField.tsx';
import { TextField } from '../../controls/fields/TextField.tsx';
import { Screen } from '../../controls/frames/Screen.tsx';
import type { IconName } from '../../controls/Icon.tsx';
import type { Command } from '../../journal/commands.ts';
import type { Settings } from '../../journal/entries.ts';
import type { BikeRow, ToolRow } from '../../journal/rows.ts';
import { emptyLine, type LineDraft, type LineKind, type LineWrong } from '../../practice/log/lineDraft.ts';
import { lineTyped, mustStay } from '../../practice/log/lines.ts';
import type { AtHand } from '../../practice/log/named.ts';
import { withRideAfter } from '../../words/rideAfter.ts';
import { BondSheet } from '../bench/BondSheet.tsx';
import { SaveNotice } from '../bike/sheets/SaveNotice.tsx';
import { useLogbook, useRun, useView } from '../door.tsx';
import { useDraft } from '../draft.ts';
import { NotReleased } from '../ride/NotReleased.tsx';
import { go } from '../route.ts';
import { Waits } from '../Waits.tsx';
import { FirstFields, LineFields } from './LineFields.tsx';
import { WhereField } from './WhereField.tsx';

const NEW_BIKE = 'new';
const SHELF = '';

interface LineFormProps {
  kind: LineKind;
  title: string;
  icon: IconName;
  /** The bike it was opened from. */
  given: BikeRow | undefined;
  /** Those that are not put away. */
  bikes: readonly BikeRow[];
  tools: readonly ToolRow[];
  settings: Settings;
  back: string;
}

/** What is at hand on the bike chosen; nothing while none is. */
function useHand(bikeId: string, tools: readonly ToolRow[]): AtHand {
  const seen = useView('bike', { bikeId });
  const view = seen.is === 'there' ? seen.value : undefined;
  return { joints: view?.joints ?? [], parts: view?.parts ?? [], steps: view?.steps ?? [], tools };
}

function BikeField({
  kind,
  bikes,
  draft,
  error,
  change,
}: Pick<LineFormProps, 'kind' | 'bikes'> & {
  draft: LineDraft;
  error: string | undefined;
  change: (changed: Partial<LineDraft>) => void;
}) {
  const [naming, setNaming] = useState(draft.bikeName !== '');
  const name = (
    <TextField
      label="Name of the bike"
      value={draft.bikeName}
      onInput={(bikeName) => change({ bikeName })}
      error={error}
      maxLength={120}
    />
  );
  if (bikes.length === 0) return name;
  return (
    <>
      <SelectField
        label="Bike"
        options={[
          ...bikes.map((bike) => ({ value: bike.bikeId, label: bike.name })),
          { value: NEW_BIKE, label: 'New bike' },
          ...(kind === 'part' ? [{ value: SHELF, label: 'None: on the shelf' }] : []),
        ]}
        value={naming ? NEW_BIKE : draft.bikeId || (kind === 'part' ? SHELF : undefined)}
        onChoose={(bikeId) => {
          setNaming(bikeId === NEW_BIKE);
          const other = { where: '', whereId: '', fromPartId: '', bikeName: '' };
          change({ ...other, bikeId: bikeId === NEW_BIKE ? '' : bikeId });
        }}
        error={naming ? undefined : error}
      />
      {naming && name}
    </>
  );
}

/** One line: the bike, the place, the figure, done. What is named and not in the logbook is made with it. */
export function LineForm({ kind, title, icon, given, bikes, tools, settings, back }: LineFormProps) {
  const logbook = useLogbook();
  const only = bikes.length === 1 ? bikes[0] : undefined;
  const fixed = given ?? only;
  const [draft, change, clear] = useDraft<LineDraft>(`log:${kind}:${fixed?.bikeId ?? ''}`, {
    ...emptyLine,
    bikeId: fixed?.bikeId ?? '',
  });
  const bike = bikes.find(({ bikeId }) => bikeId === draft.bikeId) ?? given;
  const hand = useHand(draft.bikeId, tools);
  const { run, save, clear: clearSave } = useRun();
  const [wrong, setWrong] = useState<LineWrong>({});
  const [sure, setSure] = useState(false);
  const form = useRef<HTMLFormElement>(null);
  // After the frame has put the focus on its heading.
  useEffect(() => form.current?.querySelector<HTMLElement>('input, textarea, select')?.focus(), []);
  const withWhat = { bikeId: draft.bikeId, hand, settings, newId: () => logbook.newId() };
  const grave = kind === 'problem' && mustStay(draft, withWhat);
  const aboveLimit = save.is === 'refused' && save.refused === 'above-the-limit';

  const write = async (despite?: string): Promise<boolean> => {
    if (save.is === 'saving') return false;
    const bikeNames = new Map(bikes.map(({ bikeId, name }) => [bikeId, name]));
    const line = lineTyped(kind, draft, { ...withWhat, bikeNames, sure: sure || aboveLimit });
    setWrong(line.ok ? {} : line.wrong);
    if (!line.ok) {
      setSure(line.doubt === true);
      return false;
    }
    const commands = line.commands.map(
      (command): Command => (despite && command.type === 'apply-torque' ? { ...command, despite } : command),
    );
    const entries = await run(commands, { undo: withRideAfter(line.undo) });
    // Why it was refused stands at the top.
    if (!entries) {
      scrollTo(0, 0);
      return false;
    }
    clear();
    const made = entries.find((entry) => entry.type === 'bike-started');
    const changed = entries.find((entry) => entry.type === 'part-changed');
    const bikeId = draft.bikeId || made?.bikeId;
    if (changed) go({ at: 'part', partId: changed.partId }, true);
    else if (!bikeId) go({ at: 'shelf' }, true);
    else go({ at: kind === 'ride' ? 'rechecks' : 'bike', bikeId }, true);
    return true;
  };
  const shared = {
    ...{ draft, hand, settings, wrong, grave },
    change: (changed: Partial<LineDraft>) => {
      setSure(false);
      setWrong({});
      if (save.is === 'refused') clearSave();
      change(changed);
    },
  };
  const stays = kind === 'problem' && (grave || draft.decision === 'do-not-ride');
  return (
    <Screen
      title={fixed ? `${title}: ${fixed.name}` : title}
      route={`log ${kind}`}
      back={back}
      waits={<Waits />}
      actions={
        <Button kind="main" icon={icon} disabled={save.is === 'saving'} onPress={() => void write()}>
          {stays ? 'Log: do not ride' : aboveLimit || sure ? 'Log it all the same' : 'Log it'}
        </Button>
      }
    >
      <form
        class="stack"
        ref={form}
        onSubmit={(event) => {
          event.preventDefault();
          void write();
        }}
      >
        <SaveNotice save={save} />
        <BondSheet jointId={draft.whereId} save={save} onWord={write} />
        {kind === 'ride' && bike && <NotReleased bike={bike} />}
        {!fixed && <BikeField {...{ kind, bikes, draft }} error={wrong.bikeName} change={shared.change} />}
        <FirstFields kind={kind} {...shared} />
        {kind !== 'ride' && (
          <WhereField {...{ kind, draft, hand }} error={wrong.where} change={shared.change} />
        )}
        <LineFields kind={kind} {...shared} />
      </form>
    </Screen>
  );
}
