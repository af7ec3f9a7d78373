import { useState } from 'preact/hooks';
import { NumberField } from '../../../controls/fields/NumberField.tsx';
import { Ruler } from '../../../controls/figures/Ruler.tsx';
import { Facts } from '../../../controls/lists/Facts.tsx';
import type { PilePart } from '../../../fit/pile.ts';
import { numberText } from '../../../mechanics/numberText.ts';
import { parseNumber } from '../../../mechanics/quantity.ts';
import { convert, type DistanceUnit } from '../../../mechanics/units.ts';
import { drivetrainOf, gearFigures } from '../../../practice/pile/drivetrain.ts';
import { useView } from '../../door.tsx';

const numberOf = (typed: string): number | undefined => {
  const read = parseNumber(typed);
  return read.ok ? read.value : undefined;
};

const figure = (value: number | undefined, unit: string, decimals = 2): string | undefined =>
  value === undefined ? undefined : `${numberText(value, decimals)}${unit ? ` ${unit}` : ''}`;

const speedUnit: Record<DistanceUnit, string> = { km: 'km/h', '[mi_i]': 'mph' };

/** Speed in the unit rides are counted in. */
const speedText = (kmh: number | undefined, unit: DistanceUnit): string | undefined =>
  kmh === undefined ? undefined : figure(convert<DistanceUnit>(kmh, 'km', unit), speedUnit[unit], 1);

/** What the one gear of the bike means on the road. */
export function Gearing({ parts }: { parts: readonly PilePart[] }) {
  const [cadence, setCadence] = useState('80');
  const [crank, setCrank] = useState('');
  const settings = useView('settings');
  const distanceUnit = settings.is === 'there' ? settings.value.distanceUnit : 'km';
  const drive = drivetrainOf(parts);
  const crankMm = numberOf(crank);
  const figures = gearFigures(drive, { cadence: numberOf(cadence), crankMm });
  const crankWrong = crank.trim() !== '' && !(crankMm !== undefined && crankMm >= 50 && crankMm <= 300);
  const cadenceWrong = cadence.trim() !== '' && !((numberOf(cadence) ?? 301) <= 300);
  return (
    <section>
      <Ruler label="Gear" />
      {figures ? (
        <>
          <Facts
            of={[
              [
                'Teeth',
                `${drive.ringTeeth} to ${drive.sprocketTeeth}, ratio ${numberText(figures.ratio, 2)}`,
              ],
              ['Gear inches', figure(figures.inches, '', 1)],
              ['Development', figure(figures.developmentM, 'm')],
              ['Gain ratio', figure(figures.gain, '')],
              ['Speed', speedText(figures.speedKmh, distanceUnit)],
            ]}
          />
          {drive.wheelMm === undefined ? (
            <p class="small lead">
              The rest needs the size of the rear tyre, as printed on it, and which of two tyres is the rear.
            </p>
          ) : (
            <>
              <p class="small lead">
                {`Wheel ${numberText(drive.wheelMm, 0)} mm by the printed tyre size; under a rider it rolls a little less.`}
              </p>
              <div class="fit-pair">
                <NumberField
                  label="Cadence, rpm"
                  typed={cadence}
                  error={cadenceWrong ? 'A number from 0 to 300.' : undefined}
                  onTyped={setCadence}
                />
                <NumberField
                  label="Crank length"
                  typed={crank}
                  unit="mm"
                  error={crankWrong ? 'From 50 to 300 mm, spindle centre to pedal centre.' : undefined}
                  onTyped={setCrank}
                />
              </div>
            </>
          )}
        </>
      ) : (
        <p class="lead">Needs tooth counts: one chainring, one sprocket.</p>
      )}
    </section>
  );
}
