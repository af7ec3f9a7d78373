import { SelectField } from '../../controls/fields/SelectField.tsx';
import { Ruler } from '../../controls/figures/Ruler.tsx';
import type { Settings } from '../../journal/entries.ts';
import { type AnyUnit, unitLabel, unitsOf } from '../../mechanics/units.ts';

type UnitName = 'torqueUnit' | 'pressureUnit' | 'lengthUnit' | 'temperatureUnit' | 'distanceUnit';

const choices: { [N in UnitName]: { label: string; units: readonly Settings[N][] } } = {
  torqueUnit: { label: 'Torque', units: unitsOf.torque },
  pressureUnit: { label: 'Pressure', units: unitsOf.pressure },
  lengthUnit: { label: 'Length', units: unitsOf.length },
  temperatureUnit: { label: 'Temperature', units: unitsOf.temperature },
  distanceUnit: { label: 'Distance', units: unitsOf.distance },
};

export interface ChangeProps {
  settings: Settings;
  change: (change: Partial<Settings>) => void;
}

/** The units a form starts with. What was typed in another keeps its own. */
export function UnitsSection({ settings, change }: ChangeProps) {
  return (
    <>
      <Ruler label="Units" />
      <p class="small">Default units. Older entries keep theirs.</p>
      {(Object.keys(choices) as UnitName[]).map((name) => (
        <SelectField<AnyUnit>
          key={name}
          label={choices[name].label}
          options={choices[name].units.map((unit) => ({ value: unit, label: unitLabel[unit] }))}
          value={settings[name]}
          onChoose={(unit) => change({ [name]: unit })}
        />
      ))}
    </>
  );
}
