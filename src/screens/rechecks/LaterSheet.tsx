import { useState } from 'preact/hooks';
import { Button } from '../../controls/Button.tsx';
import { NumberField } from '../../controls/fields/NumberField.tsx';
import { TextField } from '../../controls/fields/TextField.tsx';
import { Sheet } from '../../controls/frames/Sheet.tsx';
import type { Entry } from '../../journal/entries.ts';
import type { RecheckRow, RidesRow } from '../../journal/rows.ts';
import { parseNumber } from '../../mechanics/quantity.ts';
import { convert, type DistanceUnit, unitLabel } from '../../mechanics/units.ts';
import { type Left, spansFromNow } from '../../planning/recheckSpan.ts';
import { SaveLine } from '../bench/frame/SaveLine.tsx';
import { useRun } from '../door.tsx';

const presets: readonly { label: string; more: Left }[] = [
  { label: 'After the next ride', more: { rides: 1 } },
  { label: 'In a week', more: { days: 7 } },
  { label: 'In a month', more: { days: 30 } },
];

const reasons = ['Not ridden since', 'Tool not here', 'Another day'] as const;

export interface LaterSheetProps {
  recheck: RecheckRow;
  rides: RidesRow | undefined;
  unit: DistanceUnit;
  nowMs: number;
  onChanged: (entries: Entry[]) => void;
  onClose: () => void;
}

const whole = { rides: '', distance: '', days: '' };
type SpanFields = typeof whole;

const spanFieldsOf = ({ rides, days }: Left): SpanFields => ({
  rides: rides === undefined ? '' : String(rides),
  distance: '',
  days: days === undefined ? '' : String(days),
});
const sameFields = (a: SpanFields, b: SpanFields) =>
  a.rides === b.rides && a.distance === b.distance && a.days === b.days;

/** Puts a re-check off, or gives it other spans; the reason stays with it. */
export function LaterSheet({ recheck, rides, unit, nowMs, onChanged, onClose }: LaterSheetProps) {
  const { run, save } = useRun();
  const [fields, setFields] = useState<SpanFields>(whole);
  const [why, setWhy] = useState('');
  const set = (changed: Partial<SpanFields>) => setFields({ ...fields, ...changed });
  const typed = Object.entries(fields).filter(([, text]) => text.trim() !== '');
  const numbers = new Map(typed.map(([name, text]) => [name as keyof SpanFields, parseNumber(text)]));
  const wrong = (name: keyof SpanFields) => {
    const number = numbers.get(name);
    return number && (!number.ok || number.value === 0) ? 'Enter a number above 0.' : undefined;
  };
  const of = (name: keyof SpanFields) => {
    const number = numbers.get(name);
    return number?.ok ? number.value : undefined;
  };
  const [ridesMore, distance, days] = [of('rides'), of('distance'), of('days')];
  const ready =
    typed.length > 0 && (Object.keys(whole) as (keyof SpanFields)[]).every((name) => !wrong(name));
  const change = async () => {
    if (!ready || save.is === 'saving') return;
    const more: Left = {
      ...(ridesMore === undefined ? {} : { rides: ridesMore }),
      ...(distance === undefined ? {} : { km: convert(distance, unit, 'km') }),
      ...(days === undefined ? {} : { days }),
    };
    const spans = spansFromNow(recheck, rides, nowMs, more);
    const entries = await run(
      { type: 'change-recheck', recheckId: recheck.recheckId, ...spans, why },
      { undo: `Postponed: ${recheck.title}` },
    );
    if (entries) onChanged(entries);
  };
  return (
    <Sheet
      open
      title="Postpone, counted from now"
      onClose={onClose}
      actions={
        <>
          <SaveLine save={save} />
          <Button
            kind="main"
            size="greasy"
            icon="calendar"
            disabled={!ready || why.trim() === ''}
            under={!ready ? 'Choose when first' : why.trim() === '' ? 'Give a reason first' : undefined}
            onPress={change}
          >
            Save
          </Button>
        </>
      }
    >
      <div class="stack">
        <div class="button-presets">
          {presets.map(({ label, more }) => (
            <Button
              key={label}
              size="greasy"
              pressed={sameFields(fields, spanFieldsOf(more))}
              onPress={() => setFields(spanFieldsOf(more))}
            >
              {label}
            </Button>
          ))}
        </div>
        <TextField label="Why" value={why} onInput={setWhy} maxLength={200} />
        <div class="button-presets">
          {reasons.map((reason) => (
            <Button key={reason} size="greasy" pressed={why === reason} onPress={() => setWhy(reason)}>
              {reason}
            </Button>
          ))}
        </div>
        <p class="small">Or set your own; whichever comes first. Empty: ignored.</p>
        <NumberField
          label="Rides from now"
          typed={fields.rides}
          onTyped={(text) => set({ rides: text })}
          error={wrong('rides')}
        />
        <NumberField
          label={`Distance from now, ${unitLabel[unit]}`}
          typed={fields.distance}
          onTyped={(text) => set({ distance: text })}
          error={wrong('distance')}
        />
        <NumberField
          label="Days from now"
          typed={fields.days}
          onTyped={(text) => set({ days: text })}
          error={wrong('days')}
        />
      </div>
    </Sheet>
  );
}
