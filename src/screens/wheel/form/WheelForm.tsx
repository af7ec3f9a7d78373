import '../wheel.css';
import { useState } from 'preact/hooks';
import { Button } from '../../../controls/Button.tsx';
import { Choice } from '../../../controls/fields/Choice.tsx';
import { NumberField } from '../../../controls/fields/NumberField.tsx';
import { TextField } from '../../../controls/fields/TextField.tsx';
import { Ruler } from '../../../controls/figures/Ruler.tsx';
import { Screen } from '../../../controls/frames/Screen.tsx';
import { wheelLabels } from '../../../drafts/meanwhileLabels.ts';
import {
  changedWheel,
  draftOfWheel,
  emptyWheel,
  filledFromParts,
  readWheelForm,
  type WheelDraft,
} from '../../../drafts/wheelDraft.ts';
import type { PartRow, WheelRow } from '../../../journal/rows.ts';
import { firstOfKind } from '../../../practice/wheel/wheelsOf.ts';
import { Absent } from '../../Absent.tsx';
import { SaveNotice } from '../../bike/sheets/SaveNotice.tsx';
import { type SaveState, useLogbook, useRun, useView } from '../../door.tsx';
import { useDraft, useEdit } from '../../draft.ts';
import { useFirstWrong } from '../../firstWrong.ts';
import { Meanwhile } from '../../Meanwhile.tsx';
import { useAllParts } from '../../part/allParts.ts';
import { go, hrefOf, type Route } from '../../route.ts';
import { Waits } from '../../Waits.tsx';
import { SpokeLengths } from '../SpokeLengths.tsx';
import { PartChoices } from './PartChoices.tsx';
import { RimFields } from './RimFields.tsx';
import { SideFields } from './SideFields.tsx';
import { TensionFields } from './TensionFields.tsx';

interface FieldsProps {
  draft: WheelDraft;
  parts: readonly PartRow[];
  wrong: Record<string, string>;
  change: (changed: Partial<WheelDraft>) => void;
}

/** Everything asked about a wheel, and the spoke lengths as soon as they can be worked out. */
function WheelFields({ draft, parts, wrong, change }: FieldsProps) {
  const read = readWheelForm({ ...draft, name: draft.name.trim() || 'Wheel' });
  const all = { draft, wrong, change };
  return (
    <>
      <TextField
        label="Name"
        value={draft.name}
        onInput={(name) => change({ name })}
        maxLength={120}
        offers={['Front wheel', 'Rear wheel']}
        error={wrong['name']}
      />
      <Choice
        label="Front or rear"
        value={draft.position === '' ? undefined : draft.position}
        onChoose={(position) => change({ position })}
        options={[
          { value: 'front', label: 'Front' },
          { value: 'rear', label: 'Rear' },
        ]}
      />
      <PartChoices draft={draft} parts={parts} change={change} />
      <Choice
        label="Spoke head"
        value={draft.head}
        onChoose={(head) => change({ head })}
        options={[
          { value: 'elbow', label: 'Elbow' },
          { value: 'straight-pull', label: 'Straight pull' },
        ]}
      />
      <Choice
        label="Side of spoke 1"
        value={draft.firstSide}
        onChoose={(firstSide) => change({ firstSide })}
        options={[
          {
            value: 'drive',
            label: 'Drive side',
            hint: 'First hole after the valve, clockwise from that side.',
          },
          {
            value: 'left',
            label: 'Left side',
            hint: 'First hole after the valve, clockwise from the drive side.',
          },
        ]}
      />
      <Ruler label="Rim" />
      <RimFields {...all} />
      <Ruler label="Hub" />
      <NumberField
        label="Spoke hole in the flange"
        hint="2.6 mm where empty."
        typed={draft.hubHole}
        unit="mm"
        onTyped={(hubHole) => change({ hubHole })}
        error={wrong['hubHole']}
      />
      <div class="wheel-sides">
        <SideFields {...all} side="left" />
        <SideFields {...all} side="drive" />
      </div>
      <Ruler label="Tension" />
      <TensionFields {...all} />
      <TextField
        label="Note"
        lines={2}
        value={draft.note}
        onInput={(note) => change({ note })}
        maxLength={500}
      />
      <Ruler label="Spoke lengths" />
      {read.ok ? (
        <SpokeLengths
          wheel={read.about}
          parts={parts.filter(({ partId }) => [draft.hub, draft.rim].includes(partId))}
        />
      ) : (
        <p role="status">Some figures cannot be read yet.</p>
      )}
    </>
  );
}

interface FrameProps extends FieldsProps {
  title: string;
  route: string;
  back: Route;
  save: SaveState;
  tries: number;
  onSave: () => void;
  meanwhile?: Parameters<typeof Meanwhile<WheelDraft>>[0]['changed'];
}

function FormFrame({ title, route, back, save, tries, onSave, meanwhile = [], ...fields }: FrameProps) {
  const place = useFirstWrong<HTMLFormElement>(tries);
  return (
    <Screen
      title={title}
      route={route}
      back={hrefOf(back)}
      waits={<Waits />}
      actions={
        <Button kind="main" icon="check" disabled={save.is === 'saving'} onPress={onSave}>
          Save
        </Button>
      }
    >
      <form
        class="stack"
        ref={place}
        onSubmit={(event) => {
          event.preventDefault();
          onSave();
        }}
      >
        <SaveNotice save={save} />
        <Meanwhile changed={meanwhile} labels={wheelLabels} onTake={fields.change} />
        <WheelFields {...fields} />
      </form>
    </Screen>
  );
}

/** What was tried to be saved, and what is wrong with it. */
function useTried() {
  const [tried, setTried] = useState<{ count: number; wrong: Record<string, string> }>({
    count: 0,
    wrong: {},
  });
  const attempt = (wrong: Record<string, string>) => setTried(({ count }) => ({ count: count + 1, wrong }));
  return { tries: tried.count, wrong: tried.wrong, attempt };
}

function Building({ place, parts }: { place: string; parts: readonly PartRow[] }) {
  const logbook = useLogbook();
  const bikeId = place.startsWith('bike:') ? place.slice('bike:'.length) : undefined;
  const here = parts.filter((part) => part.place.on === 'bike' && part.place.bikeId === bikeId);
  const begun = filledFromParts({ ...emptyWheel, ...firstOfKind(here) }, parts);
  const [draft, change, clear] = useDraft(`wheel:new:${place}`, begun);
  const { run, save } = useRun();
  const { tries, wrong, attempt } = useTried();
  const add = async () => {
    const read = readWheelForm(draft);
    attempt(read.ok ? {} : read.wrong);
    if (!read.ok || save.is === 'saving') return;
    const wheelId = logbook.newId();
    const command = { type: 'make-wheel', wheelId, ...read.about } as const;
    if (!(await run(command, { undo: `${read.about.name} added` }))) return;
    clear();
    go({ at: 'wheel', wheelId }, true);
  };
  return (
    <FormFrame
      title="Build a wheel"
      route={`new-wheel ${place}`}
      back={bikeId ? { at: 'bike', bikeId } : { at: 'shelf' }}
      onSave={() => void add()}
      {...{ draft, parts, wrong, change, save, tries }}
    />
  );
}

/** A wheel that is new to the logbook. */
export function NewWheel({ place }: { place: string }) {
  const parts = useAllParts();
  if (parts) return <Building place={place} parts={parts} />;
  return (
    <Screen title="Build a wheel" back={hrefOf({ at: 'home' })} waits={<Waits />}>
      <p role="status">One moment…</p>
    </Screen>
  );
}

function Editing({ wheel, parts }: { wheel: WheelRow; parts: readonly PartRow[] }) {
  const { wheelId, name } = wheel;
  const { draft, change, clear, meanwhile } = useEdit(`wheel:${wheelId}`, draftOfWheel(wheel));
  const { run, save } = useRun();
  const { tries, wrong, attempt } = useTried();
  const keep = async () => {
    const read = readWheelForm(draft, wheel.parts);
    attempt(read.ok ? {} : read.wrong);
    if (!read.ok || save.is === 'saving') return;
    const changed = changedWheel(wheel, read.about);
    if (Object.keys(changed).length > 0) {
      const command = { type: 'describe-wheel', wheelId, ...changed } as const;
      if (!(await run(command, { undo: `${name} updated` }))) return;
    }
    clear();
    go({ at: 'wheel', wheelId }, true);
  };
  return (
    <FormFrame
      title={name}
      route={`edit-wheel ${wheelId}`}
      back={{ at: 'wheel', wheelId }}
      onSave={() => void keep()}
      {...{ draft, parts, wrong, change, save, tries, meanwhile }}
    />
  );
}

/** What is known of a wheel, changed. */
export function EditWheel({ wheelId }: { wheelId: string }) {
  const seen = useView('wheel', { wheelId });
  const parts = useAllParts();
  const wheel = seen.is === 'there' ? seen.value?.wheel : undefined;
  if (wheel && parts) return <Editing wheel={wheel} parts={parts} />;
  return (
    <Screen title="Wheel" back={hrefOf({ at: 'home' })} waits={<Waits />}>
      {wheel ? <p role="status">One moment…</p> : <Absent what="wheel" seen={[seen]} />}
    </Screen>
  );
}
