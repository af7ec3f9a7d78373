import { useState } from 'preact/hooks';
import { Button } from '../../../controls/Button.tsx';
import { Choice } from '../../../controls/fields/Choice.tsx';
import { TextField } from '../../../controls/fields/TextField.tsx';
import { Screen } from '../../../controls/frames/Screen.tsx';
import type { SealDraft } from '../../../drafts/sealDraft.ts';
import type { SealMark } from '../../../journal/entries.ts';
import type { Band } from '../../../mechanics/band.ts';
import { numberText } from '../../../mechanics/numberText.ts';
import { convert, unitLabel, unitsOf, type VolumeUnit } from '../../../mechanics/units.ts';
import { NumberPad } from '../../bench/torque/NumberPad.tsx';
import type { SaveState } from '../../door.tsx';
import { Waits } from '../../Waits.tsx';

/** By what carries it, which is what decides how it dries and what it does to a valve. */
const KINDS = ['latex', 'synthetic', 'fibres in glycol'] as const;

export interface SealantPadProps {
  draft: SealDraft;
  change: (changed: Partial<SealDraft>) => void;
  hint: Band | undefined;
  refill: boolean;
  save: SaveState;
  onSealant: (sealant: Extract<SealMark, { mark: 'sealant' }>) => void;
  onClose: () => void;
}

/** Which sealant went in, and how much. */
export function SealantPad({ draft, change, hint, refill, save, onSealant, onClose }: SealantPadProps) {
  const [naming, setNaming] = useState(false);
  const kind = draft.sealantKind?.trim() || KINDS[0];
  const named = !(KINDS as readonly string[]).includes(kind);
  const unit = draft.amountUnit;
  const inUnit = (ml: number) => numberText(convert(ml, 'mL', unit), unit === 'mL' ? 0 : 1);
  if (naming)
    return (
      <Screen
        title="Which sealant"
        back={() => setNaming(false)}
        waits={<Waits />}
        actions={
          <Button kind="main" size="greasy" icon="check" onPress={() => setNaming(false)}>
            {kind}
          </Button>
        }
      >
        <div class="stack">
          <Choice
            label="Sealant type"
            value={named ? undefined : kind}
            onChoose={(sealantKind) => change({ sealantKind })}
            options={KINDS.map((value) => ({ value: value as string, label: value }))}
          />
          <TextField
            label="Or in your own words"
            value={named ? kind : ''}
            onInput={(sealantKind) => change({ sealantKind })}
            maxLength={80}
          />
        </div>
      </Screen>
    );
  return (
    <NumberPad<VolumeUnit>
      title={refill ? 'Fresh sealant' : 'Sealant'}
      label={
        hint
          ? `Amount; by its size ${inUnit(hint.lo)} to ${inUnit(hint.hi)} ${unitLabel[unit]}`
          : 'Amount that went in'
      }
      typed={draft.amount}
      unit={unit}
      units={unitsOf.volume}
      onTyped={(amount, amountUnit) => change({ amount, amountUnit })}
      save={save}
      onLog={(amount) => onSealant({ mark: 'sealant', sealantKind: kind, amount })}
      onClose={onClose}
    >
      <Button wide icon="drop" onPress={() => setNaming(true)}>
        {kind}
      </Button>
    </NumberPad>
  );
}
