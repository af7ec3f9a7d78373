import { Button } from '../../../controls/Button.tsx';
import { NumberField } from '../../../controls/fields/NumberField.tsx';
import { Fold } from '../../../controls/lists/Fold.tsx';
import { numberText } from '../../../mechanics/numberText.ts';
import { convert, unitsOf } from '../../../mechanics/units.ts';
import { tensionPresets } from '../../../standards/wheels/tensionPresets.ts';
import { EarFields } from './EarFields.tsx';
import { PairRows } from './PairRows.tsx';
import type { SideFieldsProps } from './SideFields.tsx';

/** What the spokes are to have, what the rim allows, and the table of the gauge. */
export function TensionFields({ draft, wrong, change }: Omit<SideFieldsProps, 'side'>) {
  const { forceUnit, gauge } = draft;
  const force = (kgf: number) => numberText(convert(kgf, 'kgf', forceUnit), 0);
  return (
    <>
      <NumberField
        label="Rim maker’s maximum"
        hint="Printed on the rim or in its manual. It limits the tightest spoke."
        typed={draft.limit}
        unit={forceUnit}
        units={unitsOf.force}
        onTyped={(limit, unit = forceUnit) => change({ limit, forceUnit: unit })}
        error={wrong['limit']}
      />
      <NumberField
        label="Target of the tighter side"
        hint="The other side follows from it."
        typed={draft.target}
        unit={forceUnit}
        onTyped={(target) => change({ target })}
        error={wrong['target']}
      />
      <Fold label="Usual tensions">
        {tensionPresets.map(({ id, label, loKgf, hiKgf, source }) => (
          <Button
            key={id}
            wide
            under={`Source: ${source}`}
            onPress={() =>
              change({ target: String(Math.round(convert((loKgf + hiKgf) / 2, 'kgf', forceUnit))) })
            }
          >
            {`${label}: ${force(loKgf)}${hiKgf > loKgf ? ` to ${force(hiKgf)}` : ''}`}
          </Button>
        ))}
      </Fold>
      <Fold
        label="Table of your gauge"
        end={gauge.length > 0 ? gauge.length : undefined}
        wrong={gauge.some((_, at) => wrong[`gauge.${at}`] !== undefined)}
      >
        <div class="stack lower">
          <p class="small">
            The rows printed for this spoke thickness. Between two rows the tension goes with one over the
            reading.
          </p>
          <PairRows
            rows={gauge}
            label="Reading"
            wrong={(at) => wrong[`gauge.${at}`]}
            onRows={(rows) => change({ gauge: rows })}
          />
        </div>
      </Fold>
      <EarFields draft={draft} wrong={wrong} change={change} />
    </>
  );
}
