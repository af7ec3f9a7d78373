import { useState } from 'preact/hooks';
import { Button } from '../../../controls/Button.tsx';
import { Keypad } from '../../../controls/fields/Keypad.tsx';
import { TextField } from '../../../controls/fields/TextField.tsx';
import { Screen } from '../../../controls/frames/Screen.tsx';
import { Sheet } from '../../../controls/frames/Sheet.tsx';
import { Filters } from '../../../controls/lists/Filters.tsx';
import { readingTyped, type SealDraft } from '../../../drafts/sealDraft.ts';
import type { Reading, Settings } from '../../../journal/entries.ts';
import {
  type PressureUnit,
  pressureBar,
  type TemperatureUnit,
  unitLabel,
  unitsOf,
} from '../../../mechanics/units.ts';
import { atMost } from '../../../words/atMost.ts';
import { spanShort } from '../../../words/timeLeft.ts';
import { SaveLine } from '../../bench/frame/SaveLine.tsx';
import type { SaveState } from '../../door.tsx';
import { Waits } from '../../Waits.tsx';
import { LookAgainChoice } from './LookAgainChoice.tsx';

export interface ReadingPadProps {
  title: string;
  settings: Settings;
  draft: SealDraft;
  change: (changed: Partial<SealDraft>) => void;
  /** Gauges named before, newest first. */
  gauges: readonly string[];
  /** The most it may see, bar; a higher figure is asked about before it is logged. */
  ceilingBar: number | undefined;
  /** A pressure must be typed; otherwise it may be left out. */
  needed: boolean;
  save: SaveState;
  /** `overLimit` where a pressure above the ceiling was asked about and stands. */
  onLog: (reading: Reading | undefined, lookAgainMs: number | undefined, overLimit?: true) => void;
  onClose: () => void;
}

type PadField = 'pressure' | 'temperature' | 'gauge' | 'look';

/** A pressure with big keys, how warm it is, and which gauge; and when to look again. */
export function ReadingPad(props: ReadingPadProps) {
  const { title, settings, draft, change, gauges, ceilingBar, needed, save, onLog, onClose } = props;
  const [field, setField] = useState<PadField>('pressure');
  const [asking, setAsking] = useState(false);
  const [lookMs, setLookMs] = useState<number>();
  const pressureUnit = draft.pressureUnit ?? settings.pressureUnit;
  const temperatureUnit = draft.temperatureUnit ?? settings.temperatureUnit;
  const typed = readingTyped(draft, { pressure: pressureUnit, temperature: temperatureUnit });
  const pressure = typed.ok ? typed.reading.pressure : undefined;
  const ready = typed.ok && (pressure !== undefined || (!needed && typed.empty));
  const tooHigh =
    pressure !== undefined &&
    ceilingBar !== undefined &&
    pressureBar(pressure.value, pressure.unit) > ceilingBar;
  const log = () => {
    if (!typed.ok || !ready || save.is === 'saving') return;
    if (tooHigh) return setAsking(true);
    onLog(pressure ? typed.reading : undefined, lookMs);
  };
  const look = (ms: number | undefined) => {
    setLookMs(ms);
    setField('pressure');
  };
  const shown = (text: string, unit: string, sign = '') => (text ? `${sign}${text} ${unit}` : unit);
  const fields = (
    <div class="seal-fields">
      <Filters<PadField>
        label="What is typed"
        tabs={[
          { value: 'pressure', label: shown(draft.pressure, unitLabel[pressureUnit]) },
          {
            value: 'temperature',
            label: shown(draft.temperature, unitLabel[temperatureUnit], draft.below ? '−' : ''),
          },
          { value: 'gauge', label: 'Gauge' },
          {
            value: 'look',
            label: lookMs === undefined ? 'Look again' : `In ${spanShort(lookMs)}`,
          },
        ]}
        on={[field]}
        onToggle={setField}
      />
    </div>
  );
  return (
    <Screen
      title={title}
      route={`pad ${title}`}
      back={onClose}
      waits={<Waits />}
      actions={
        <>
          <SaveLine save={save} />
          {fields}
          <Button
            kind="main"
            size="greasy"
            icon="check"
            disabled={!ready}
            under={lookMs === undefined ? undefined : `and look again in ${spanShort(lookMs)}`}
            onPress={log}
          >
            {pressure
              ? `Log ${pressure.typed} ${unitLabel[pressure.unit]}`
              : needed
                ? 'Type the pressure'
                : 'Log without a pressure'}
          </Button>
        </>
      }
    >
      {field === 'pressure' && (
        <Keypad<PressureUnit>
          key="pressure"
          label={
            ceilingBar === undefined ? 'Pressure' : `Pressure, at most ${atMost(ceilingBar, pressureUnit)}`
          }
          typed={draft.pressure}
          unit={pressureUnit}
          units={unitsOf.pressure}
          onTyped={(text, unit) => change({ pressure: text, pressureUnit: unit })}
          onDone={log}
          error={
            tooHigh
              ? 'Above the limit'
              : !typed.ok && typed.wrong === 'pressure'
                ? 'Digits, with one comma or point.'
                : undefined
          }
        />
      )}
      {field === 'temperature' && (
        <Keypad<TemperatureUnit>
          key="temperature"
          label={draft.below ? 'Temperature, below zero' : 'Temperature'}
          typed={draft.temperature}
          unit={temperatureUnit}
          onTyped={(text, unit) => change({ temperature: text, temperatureUnit: unit })}
          onDone={log}
        >
          <div class="button-pair">
            <Button
              size="greasy"
              icon="minus"
              pressed={draft.below}
              onPress={() => change({ below: !draft.below })}
            >
              Below zero
            </Button>
            {unitsOf.temperature
              .filter((unit) => unit !== temperatureUnit)
              .map((unit) => (
                <Button key={unit} size="greasy" onPress={() => change({ temperatureUnit: unit })}>
                  {`In ${unitLabel[unit]}`}
                </Button>
              ))}
          </div>
        </Keypad>
      )}
      {field === 'gauge' && (
        <div class="stack">
          <TextField
            label="Gauge"
            hint="Name it, and use the same one each time: two gauges seldom agree."
            value={draft.gauge ?? ''}
            onInput={(gauge) => change({ gauge })}
            maxLength={60}
          />
          {gauges.map((gauge) => (
            <Button key={gauge} wide size="greasy" onPress={() => change({ gauge })}>
              {gauge}
            </Button>
          ))}
        </div>
      )}
      {asking && pressure && typed.ok && ceilingBar !== undefined && (
        <Sheet
          open
          title={`${pressure.typed} ${unitLabel[pressure.unit]}: at most ${atMost(ceilingBar, pressure.unit)}`}
          onClose={() => setAsking(false)}
          actions={
            <>
              <SaveLine save={save} />
              <Button kind="main" size="greasy" icon="pencil" onPress={() => setAsking(false)}>
                Change it
              </Button>
              <Button size="greasy" icon="warning" onPress={() => onLog(typed.reading, lookMs, true)}>
                {`It was ${pressure.typed} ${unitLabel[pressure.unit]}`}
              </Button>
            </>
          }
        >
          <p class="far">
            Above the limit of tyre or rim the tyre can blow off. Check number and unit; if it is so, let air
            out first.
          </p>
        </Sheet>
      )}
      {field === 'look' && (
        <LookAgainChoice onSpan={look} onNone={lookMs === undefined ? undefined : () => look(undefined)} />
      )}
    </Screen>
  );
}
