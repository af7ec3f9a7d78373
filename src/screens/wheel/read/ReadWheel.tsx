import '../wheel.css';
import { useState } from 'preact/hooks';
import { Button } from '../../../controls/Button.tsx';
import { NumberField } from '../../../controls/fields/NumberField.tsx';
import { SelectField } from '../../../controls/fields/SelectField.tsx';
import { TextField } from '../../../controls/fields/TextField.tsx';
import { Ruler } from '../../../controls/figures/Ruler.tsx';
import { Notice } from '../../../controls/frames/Notice.tsx';
import { Screen } from '../../../controls/frames/Screen.tsx';
import { Filters } from '../../../controls/lists/Filters.tsx';
import { ListRow } from '../../../controls/lists/ListRow.tsx';
import {
  emptyReading,
  readReadings,
  type Walk,
  type WheelReadingDraft,
} from '../../../drafts/wheelReadingDraft.ts';
import type { WheelMoment } from '../../../journal/aboutWheels.ts';
import type { WheelRow } from '../../../journal/rows.ts';
import { nextMoment } from '../../../practice/wheel/nextMoment.ts';
import { wheelByEar } from '../../../practice/wheel/wheelEar.ts';
import { countWords } from '../../../words/phrases.ts';
import { UNMEASURED_SENTENCE } from '../../../words/wheel/earWords.ts';
import { momentLabels, readInLabels } from '../../../words/wheel/wheelWords.ts';
import { Absent } from '../../Absent.tsx';
import { SaveNotice } from '../../bike/sheets/SaveNotice.tsx';
import { useRun, useView } from '../../door.tsx';
import { useDraft } from '../../draft.ts';
import { go, hrefOf } from '../../route.ts';
import { Waits } from '../../Waits.tsx';
import { SpokeWalk } from './SpokeWalk.tsx';

const walks: readonly { walk: Walk; title: string; detail: string }[] = [
  { walk: 'tension', title: 'Tension of each spoke', detail: 'Tyre off for targets.' },
  { walk: 'sideways', title: 'Rim sideways at each spoke', detail: 'Optional: for what to turn next.' },
  { walk: 'outward', title: 'Rim up and down at each spoke', detail: 'Optional: for what to turn next.' },
];

const readInTabs = (Object.keys(readInLabels) as (keyof typeof readInLabels)[]).map((value) => ({
  value,
  label: readInLabels[value],
}));

function ReadingOf({ wheel }: { wheel: WheelRow }) {
  const { wheelId, name, gauge, readings } = wheel;
  const spokes = wheel.leftSide.spokes + wheel.driveSide.spokes;
  const last = readings.at(-1);
  const [draft, change, clear] = useDraft<WheelReadingDraft>(
    `wheel-read:${wheelId}`,
    emptyReading(nextMoment(last?.moment), last?.readIn ?? 'N'),
  );
  const [walk, setWalk] = useState<Walk>();
  const [wrong, setWrong] = useState<Record<string, string>>({});
  const { run, save } = useRun();
  const byEar = draft.readIn === 'Hz' ? wheelByEar(wheel) : undefined;
  if (walk) return <SpokeWalk {...{ wheel, walk, draft, change, byEar }} onDone={() => setWalk(undefined)} />;
  const keep = async () => {
    const read = readReadings(draft, spokes, gauge, byEar && ((hz, place) => byEar.read(place, hz)));
    setWrong(read.ok ? (read.empty ? { none: 'Nothing is read yet.' } : {}) : read.wrong);
    if (!read.ok || read.empty || save.is === 'saving') return;
    const command = { type: 'read-wheel', wheelId, ...read.readings } as const;
    if (!(await run(command, { undo: `${name} measured` }))) return;
    clear();
    go({ at: 'wheel', wheelId }, true);
  };
  const doneOf = (what: Walk) => draft[what].slice(0, spokes).filter((text) => text !== '').length;
  const walkWrong = Object.entries(wrong).find(([field]) => field.includes('.'));
  const length = (field: 'lateral' | 'radial' | 'dish', label: string, hint: string) => (
    <NumberField
      label={label}
      hint={hint}
      typed={draft[field]}
      unit="mm"
      onTyped={(typed) => change({ [field]: typed })}
      error={wrong[field]}
    />
  );
  return (
    <Screen
      title={`Readings: ${name}`}
      route={`read-wheel ${wheelId}`}
      back={hrefOf({ at: 'wheel', wheelId })}
      waits={<Waits />}
      actions={
        <Button kind="main" icon="check" disabled={save.is === 'saving'} onPress={keep}>
          Save
        </Button>
      }
    >
      <div class="stack">
        <SaveNotice save={save} />
        {wrong['none'] && <Notice kind="error" title={wrong['none']} />}
        {walkWrong && (
          <Notice kind="error" title={`Spoke ${Number(walkWrong[0].split('.')[1]) + 1}`}>
            {walkWrong[1]}
          </Notice>
        )}
        <SelectField
          label="When"
          options={(Object.keys(momentLabels) as WheelMoment[]).map((value) => ({
            value,
            label: momentLabels[value],
          }))}
          value={draft.moment}
          onChoose={(moment) => change({ moment })}
        />
        <SelectField
          label="Tyre"
          options={[
            { value: 'off', label: 'Off, or no pressure' },
            { value: 'on', label: 'On and inflated' },
          ]}
          value={draft.tyre}
          onChoose={(tyre) => change({ tyre })}
        />
        <div>
          <p class="field-label">Tension is read in</p>
          <Filters
            label="Tension is read in"
            tabs={readInTabs}
            on={[draft.readIn]}
            onToggle={(readIn) => change({ readIn })}
          />
          {draft.readIn === 'Hz' && !byEar && <Notice kind="caution" title={UNMEASURED_SENTENCE} />}
          {draft.readIn === 'scale' && !gauge?.length && (
            <Notice kind="caution" title="The gauge has no table yet">
              Add its rows under Edit, Table of your gauge.
            </Notice>
          )}
        </div>
        <div>
          {walks.map(({ walk: what, title, detail }) => (
            <ListRow
              key={what}
              title={title}
              detail={doneOf(what) > 0 ? `${doneOf(what)} of ${countWords(spokes, 'spoke')} read` : detail}
              onPress={() => setWalk(what)}
            />
          ))}
        </div>
        <Ruler label="Whole wheel" />
        {length('lateral', 'Sideways run-out', 'Most to least over one turn; the worse side of the rim.')}
        {length('radial', 'Up and down run-out', 'Most to least over one turn.')}
        {length(
          'dish',
          'Dish',
          'Rim from the middle toward the drive side; left with a minus. Half the gap at the gauge.',
        )}
        <TextField
          label="Note"
          lines={2}
          value={draft.note}
          onInput={(note) => change({ note })}
          maxLength={500}
        />
      </div>
    </Screen>
  );
}

/** A walk round the wheel: tensions, and how true it runs. */
export function ReadWheel({ wheelId }: { wheelId: string }) {
  const seen = useView('wheel', { wheelId });
  if (seen.is === 'there' && seen.value) return <ReadingOf wheel={seen.value.wheel} />;
  return (
    <Screen title="Wheel" back={hrefOf({ at: 'home' })} waits={<Waits />}>
      <Absent what="wheel" seen={[seen]} />
    </Screen>
  );
}
