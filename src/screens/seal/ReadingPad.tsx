import type { ComponentChildren } from 'preact';
import { useState } from 'preact/hooks';
import { Button } from '../../controls/Button.tsx';
import { Filters } from '../../controls/Filters.tsx';
import { Keypad } from '../../controls/Keypad.tsx';
import { Screen } from '../../controls/Screen.tsx';
import { TextField } from '../../controls/TextField.tsx';
import { spanShort } from '../../controls/timeLeft.ts';
import type { Reading, Settings } from '../../journal/entries.ts';
import { type PressureUnit, pressureBar, type TemperatureUnit, unitLabel } from '../../mechanics/units.ts';
import { Acts } from '../bench/Acts.tsx';
import type { SaveState } from '../door.tsx';
import { LookAgainSheet } from './LookAgainSheet.tsx';
import { readingTyped, type SealDraft } from './sealDraft.ts';

const PRESSURES: readonly PressureUnit[] = ['bar', '[psi]', 'kPa'];
const TEMPERATURES: readonly TemperatureUnit[] = ['Cel', '[degF]'];

export interface ReadingPadProps {
  title: string;
  settings: Settings;
  draft: SealDraft;
  change: (changed: Partial<SealDraft>) => void;
  /** Gauges named before, newest first. */
  gauges: readonly string[];
  /** The most it may see, bar; a higher figure is said loudly and logged all the same. */
  ceilingBar: number | undefined;
  ceiling: ComponentChildren;
  /** A pressure must be typed; otherwise it may be left out. */
  needed: boolean;
  save: SaveState;
  onLog: (reading: Reading | undefined, lookAgainMs: number | undefined) => void;
  onClose: () => void;
}

type Field = 'pressure' | 'temperature' | 'gauge';

/** A pressure with big keys, how warm it is, and which gauge; and when to look again. */
export function ReadingPad(props: ReadingPadProps) {
  const { title, settings, draft, change, gauges, ceilingBar, ceiling, needed, save, onLog, onClose } = props;
  const [field, setField] = useState<Field>('pressure');
  const [lookMs, setLookMs] = useState<number>();
  const [looking, setLooking] = useState(false);
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
    onLog(pressure ? typed.reading : undefined, lookMs);
  };
  const tabs = [
    { value: 'pressure' as const, label: 'Pressure' },
    {
      value: 'temperature' as const,
      label: draft.temperature
        ? `${draft.below ? '−' : ''}${draft.temperature} ${unitLabel[temperatureUnit]}`
        : 'Temperature',
    },
    { value: 'gauge' as const, label: draft.gauge?.trim() || 'Gauge' },
  ];
  const fields = <Filters label="What is typed" tabs={tabs} on={[field]} onToggle={setField} />;
  const words = pressure ? `Log ${pressure.typed} ${unitLabel[pressure.unit]}` : undefined;
  return (
    <Screen
      title={title}
      route={`pad ${title}`}
      back={onClose}
      actions={
        <Acts
          save={save}
          main={
            <Button
              kind="main"
              size="greasy"
              icon="check"
              disabled={!ready}
              under={lookMs === undefined ? undefined : `and look again in ${spanShort(lookMs)}`}
              onPress={log}
            >
              {words ?? (needed ? 'Type the pressure' : 'Log without a pressure')}
            </Button>
          }
        >
          <Button size="greasy" icon="hourglass" onPress={() => setLooking(true)}>
            {lookMs === undefined ? 'Look again in …' : `Look again in ${spanShort(lookMs)}`}
          </Button>
        </Acts>
      }
    >
      <div class="seal-pad">
        {field === 'pressure' ? (
          <Keypad<PressureUnit>
            key="pressure"
            label="Pressure"
            typed={draft.pressure}
            unit={pressureUnit}
            units={PRESSURES}
            onTyped={(text, unit) => change({ pressure: text, pressureUnit: unit })}
            onDone={log}
            error={
              tooHigh
                ? 'Above what tyre and rim may see. Let air out, then log what happened.'
                : !typed.ok && typed.wrong === 'pressure'
                  ? 'Digits, with one comma or point.'
                  : undefined
            }
          >
            <div>
              {fields}
              {ceiling}
            </div>
          </Keypad>
        ) : field === 'temperature' ? (
          <Keypad<TemperatureUnit>
            key="temperature"
            label={draft.below ? 'Temperature, below zero' : 'Temperature'}
            typed={draft.temperature}
            unit={temperatureUnit}
            units={TEMPERATURES}
            onTyped={(text, unit) => change({ temperature: text, temperatureUnit: unit })}
            onDone={log}
          >
            <div class="stack">
              {fields}
              <Button
                wide
                size="greasy"
                icon="minus"
                pressed={draft.below}
                onPress={() => change({ below: !draft.below })}
              >
                Below zero
              </Button>
            </div>
          </Keypad>
        ) : (
          <div class="stack">
            {fields}
            <TextField
              label="Gauge"
              hint="Name it, and take the same one each time: two gauges seldom agree."
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
      </div>
      {looking && (
        <LookAgainSheet
          save={{ is: 'idle' }}
          onSpan={(ms) => {
            setLookMs(ms);
            setLooking(false);
          }}
          onNone={
            lookMs === undefined
              ? undefined
              : () => {
                  setLookMs(undefined);
                  setLooking(false);
                }
          }
          onClose={() => setLooking(false)}
        />
      )}
    </Screen>
  );
}
