import { useState } from 'preact/hooks';
import { Button } from '../../controls/Button.tsx';
import { Filters } from '../../controls/Filters.tsx';
import { Screen } from '../../controls/Screen.tsx';
import { TextField } from '../../controls/TextField.tsx';
import type { SealMark } from '../../journal/entries.ts';
import type { Band } from '../../mechanics/band.ts';
import { convert, unitLabel, type VolumeUnit } from '../../mechanics/units.ts';
import { NumberPad } from '../bench/NumberPad.tsx';
import type { SaveState } from '../door.tsx';
import { numberText } from '../quantityText.ts';
import type { SealDraft } from './sealDraft.ts';

const UNITS: readonly VolumeUnit[] = ['mL', '[foz_us]'];
/** By what carries it, which is what decides how it dries and what it does to a valve. */
const KINDS = ['latex, water-borne', 'synthetic', 'fibres in glycol'] as const;
const OTHER = 'other';

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
        actions={
          <Button kind="main" size="greasy" icon="check" onPress={() => setNaming(false)}>
            That one
          </Button>
        }
      >
        <TextField
          label="Kind, as the bottle says it"
          value={named ? kind : ''}
          onInput={(sealantKind) => change({ sealantKind })}
          maxLength={80}
        />
      </Screen>
    );
  return (
    <NumberPad<VolumeUnit>
      title={refill ? 'Fresh sealant' : 'Sealant'}
      label="Amount that went in"
      typed={draft.amount}
      unit={unit}
      units={UNITS}
      onTyped={(amount, amountUnit) => change({ amount, amountUnit })}
      save={save}
      onLog={(amount) => onSealant({ mark: 'sealant', sealantKind: kind, amount })}
      onClose={onClose}
    >
      <div class="seal-kind">
        <Filters
          label="Kind of sealant"
          tabs={[
            ...KINDS.map((value) => ({ value: value as string, label: value })),
            { value: OTHER, label: named ? kind : 'Another' },
          ]}
          on={[named ? OTHER : kind]}
          onToggle={(value) => (value === OTHER ? setNaming(true) : change({ sealantKind: value }))}
        />
        {hint && (
          <p class="small">
            {`${refill ? 'A top-up of' : 'For'} this size: ${inUnit(hint.lo)} to ${inUnit(hint.hi)} ${unitLabel[unit]}. Fitted to published doses; the bottle goes first.`}
          </p>
        )}
      </div>
    </NumberPad>
  );
}
