import { Button } from '../../../controls/Button.tsx';
import { Choice } from '../../../controls/fields/Choice.tsx';
import { NumberField } from '../../../controls/fields/NumberField.tsx';
import { SelectField } from '../../../controls/fields/SelectField.tsx';
import { Fold } from '../../../controls/lists/Fold.tsx';
import type { ErdEnd } from '../../../journal/aboutWheels.ts';
import { drillingWords, erdEndWords } from '../../../words/wheel/wheelWords.ts';
import type { SideFieldsProps } from './SideFields.tsx';
import { MOST_ERDS, TwoPieces } from './TwoPieces.tsx';

/** The rim: where spokes end, how its holes lie. */
export function RimFields({ draft, wrong, change }: Omit<SideFieldsProps, 'side'>) {
  const { erds, erdEnd, drilling } = draft;
  const put = (at: number, typed: string) =>
    change({ erds: erds.map((erd, index) => (index === at ? typed : erd)) });
  const odd = draft.rimOffset !== '' || draft.stagger !== '' || drilling !== 'even';
  return (
    <>
      {erds.map((erd, at) => (
        <NumberField
          key={at}
          label={erds.length > 1 ? `Effective rim diameter ${at + 1}` : 'Effective rim diameter (ERD)'}
          hint={at === 0 ? 'By two rods, below. Repeat a quarter turn on.' : ''}
          typed={erd}
          unit="mm"
          onTyped={(typed) => put(at, typed)}
          error={wrong[`erds.${at}`]}
        />
      ))}
      {erds.length < MOST_ERDS && (
        <Button icon="plus" onPress={() => change({ erds: [...erds, ''] })}>
          Measure at another place
        </Button>
      )}
      <TwoPieces draft={draft} change={change} />
      <SelectField
        label="Measured to"
        options={(Object.keys(erdEndWords) as ErdEnd[]).map((value) => ({
          value,
          label: erdEndWords[value],
        }))}
        value={erdEnd}
        onChoose={(chosen) => change({ erdEnd: chosen })}
      />
      <NumberField
        label="From there to the spoke end"
        hint="Seat to slot is often 2 to 3 mm (unverified). Empty where you measured to the spoke end."
        typed={draft.erdToEnd}
        unit="mm"
        onTyped={(erdToEnd) => change({ erdToEnd })}
        error={wrong['erdToEnd']}
      />
      <Fold
        label="Rim holes"
        open={odd}
        wrong={Boolean(wrong['rimOffset'] ?? wrong['stagger'] ?? wrong['pairGap'])}
      >
        <div class="stack lower">
          <Choice
            label="Spacing"
            value={drilling}
            onChoose={(chosen) => change({ drilling: chosen })}
            options={[
              { value: 'even', label: drillingWords.even },
              { value: 'paired', label: drillingWords.paired, hint: 'Two of one side close together.' },
              { value: 'two-to-one', label: drillingWords['two-to-one'], hint: 'Twice as many on one side.' },
            ]}
          />
          {drilling === 'paired' && (
            <NumberField
              label="Angle between the holes of a pair, °"
              typed={draft.pairGap}
              onTyped={(pairGap) => change({ pairGap })}
              error={wrong['pairGap']}
            />
          )}
          {drilling !== 'even' && (
            <Choice
              label="The two spokes of a pair, toward the hub"
              value={draft.pairsLean}
              onChoose={(pairsLean) => change({ pairsLean })}
              options={[
                { value: 'together', label: 'Lean together' },
                { value: 'apart', label: 'Lean apart' },
              ]}
            />
          )}
          <NumberField
            label="Holes off centre"
            hint="Toward the drive side; with a minus toward the left."
            typed={draft.rimOffset}
            unit="mm"
            onTyped={(rimOffset) => change({ rimOffset })}
            error={wrong['rimOffset']}
          />
          <NumberField
            label="Stagger"
            hint="Each hole from the centre line toward its own flange; minus: toward the other."
            typed={draft.stagger}
            unit="mm"
            onTyped={(stagger) => change({ stagger })}
            error={wrong['stagger']}
          />
        </div>
      </Fold>
    </>
  );
}
