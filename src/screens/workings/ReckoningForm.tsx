import './workings.css';
import { useState } from 'preact/hooks';
import { Button } from '../../controls/Button.tsx';
import { NumberField } from '../../controls/fields/NumberField.tsx';
import { SelectField } from '../../controls/fields/SelectField.tsx';
import { Ruler } from '../../controls/figures/Ruler.tsx';
import { Notice } from '../../controls/frames/Notice.tsx';
import { Screen } from '../../controls/frames/Screen.tsx';
import { type CalculatorDraft, firstFilled, readFilled } from '../../drafts/calculatorDraft.ts';
import type { AnyUnit } from '../../mechanics/units.ts';
import {
  type Asked,
  type Calculated,
  isChoice,
  type Reckoning,
  reckon,
} from '../../workings/reckonings/reckoning.ts';
import { useView } from '../door.tsx';
import { Waits } from '../Waits.tsx';
import { WorkingView } from './WorkingView.tsx';

interface FieldProps {
  asked: Asked;
  filled: CalculatorDraft;
  error: string | undefined;
  onFill: (key: string, text: string, unit?: AnyUnit) => void;
}

function AskedField({ asked, filled, error, onFill }: FieldProps) {
  const { key, label, hint } = asked;
  const text = filled.texts[key] ?? '';
  if (isChoice(asked))
    return (
      <SelectField
        label={label}
        hint={hint}
        options={asked.options}
        value={text}
        onChoose={(value) => onFill(key, value)}
      />
    );
  const named = asked.optional ? `${label} (optional)` : label;
  return (
    <NumberField
      label={named}
      hint={hint}
      typed={text}
      unit={filled.units[key]}
      units={asked.units ?? []}
      onTyped={(typed, unit) => onFill(key, typed, unit)}
      error={error}
    />
  );
}

function Result({ outcome }: { outcome: Calculated }) {
  if (!outcome.ok)
    return (
      <Notice kind="caution" title="Not computed">
        {outcome.reason}
      </Notice>
    );
  return (
    <>
      {outcome.results.map(({ label, working }) => (
        <section key={label} class="working-body" aria-label={label}>
          <WorkingView label={label} working={working} />
        </section>
      ))}
      {(outcome.remarks ?? []).map((remark) => (
        <p key={remark}>{remark}</p>
      ))}
    </>
  );
}

function Form({ reckoning, prefer }: { reckoning: Reckoning; prefer: readonly AnyUnit[] }) {
  const [filled, setFilled] = useState(() => firstFilled(reckoning.asks, prefer));
  const [outcome, setOutcome] = useState<Calculated>();
  const [wrong, setWrong] = useState<Record<string, string>>({});
  const fill: FieldProps['onFill'] = (key, text, unit) => {
    // A result that no longer belongs to what stands in the fields would be believed.
    setOutcome(undefined);
    setFilled((old) => ({
      texts: { ...old.texts, [key]: text },
      units: unit ? { ...old.units, [key]: unit } : old.units,
    }));
  };
  const compute = () => {
    const read = readFilled(reckoning.asks, filled);
    setWrong(read.ok ? {} : read.wrong);
    setOutcome(read.ok ? reckon(reckoning, read.figures, read.choices) : undefined);
  };
  return (
    <form
      class="stack"
      noValidate
      onSubmit={(event) => {
        event.preventDefault();
        compute();
      }}
    >
      <div class="working-fields">
        {reckoning.asks.map((asked) => (
          <AskedField key={asked.key} asked={asked} filled={filled} error={wrong[asked.key]} onFill={fill} />
        ))}
      </div>
      <Button kind="main" icon="scale" wide submit>
        Work it out
      </Button>
      {Object.keys(wrong).length > 0 && (
        <Notice kind="error" title="Something cannot be used. It is marked above." />
      )}
      <div class="stack" aria-live="polite">
        {outcome && <Ruler label="Result" />}
        {outcome && <Result outcome={outcome} />}
      </div>
    </form>
  );
}

/** One working on its own: what it asks for, and what comes of it with everything to check it by hand. */
export function ReckoningForm({ reckoning, back }: { reckoning: Reckoning; back: string }) {
  const settings = useView('settings');
  return (
    <Screen title={reckoning.label} back={back} waits={<Waits />}>
      <p>{reckoning.about}</p>
      {settings.is === 'failed' && <Notice kind="error" title="The settings could not be read. Try again." />}
      {settings.is === 'there' && (
        <Form
          reckoning={reckoning}
          prefer={[
            settings.value.torqueUnit,
            settings.value.pressureUnit,
            settings.value.lengthUnit,
            settings.value.temperatureUnit,
          ]}
        />
      )}
    </Screen>
  );
}
