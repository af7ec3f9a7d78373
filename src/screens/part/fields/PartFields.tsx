import { NumberField } from '../../../controls/fields/NumberField.tsx';
import { SelectField } from '../../../controls/fields/SelectField.tsx';
import { TextField } from '../../../controls/fields/TextField.tsx';
import { Toggle } from '../../../controls/fields/Toggle.tsx';
import { Fold } from '../../../controls/lists/Fold.tsx';
import type { PartDraft, PartTrouble } from '../../../drafts/partDraft.ts';
import { partKindIds, partKinds } from '../../../fit/partKinds.ts';
import type { Origin } from '../../../journal/entries.ts';
import { originWords } from '../../../words/history/tradeWords.ts';
import { sentenceCase } from '../../../words/sentenceCase.ts';

/** Kinds of which a bike has two, one at each end. */
const twoOfAKind = new Set([
  'rim',
  'spoke-set',
  'rim-tape',
  'tyre',
  'tube',
  'valve',
  'rotor',
  'caliper',
  'lever',
  'cable',
]);

const kindChoices = partKindIds.map((value) => ({
  value: value as string,
  label: sentenceCase(partKinds[value].label),
}));
const origins = (Object.keys(originWords) as Origin[]).map((value) => ({
  value,
  label: sentenceCase(originWords[value]),
}));

export interface PartFieldsProps {
  draft: PartDraft;
  label: string;
  trouble: PartTrouble;
  change: (changed: Partial<PartDraft>) => void;
}

/** Who the part is. Name and kind are enough; the rest is folded. */
export function PartFields({ draft, label, trouble, change }: PartFieldsProps) {
  return (
    <div class="stack">
      <TextField
        label="Name"
        hint="e.g. Stem, 80 mm, 31.8 bar"
        value={draft.name}
        onInput={(name) => change({ name })}
        error={trouble.name}
        maxLength={120}
        required
      />
      <SelectField
        label="Kind"
        value={draft.kind === '' ? undefined : draft.kind}
        options={kindChoices}
        onChoose={(kind) => change({ kind })}
        error={trouble.kind}
      />
      {twoOfAKind.has(draft.kind) && (
        <SelectField
          label="Front or rear"
          value={draft.position}
          options={[
            { value: '', label: 'either' },
            { value: 'front', label: 'front' },
            { value: 'rear', label: 'rear' },
          ]}
          onChoose={(position) => change({ position })}
        />
      )}
      <TextField
        label="Label"
        hint="Label or tag number"
        value={label}
        onInput={(text) => change({ label: text })}
        error={trouble.label}
        maxLength={24}
      />
      <SelectField
        label="Where it came from"
        value={draft.origin}
        options={origins}
        onChoose={(origin) => change({ origin })}
      />
      <Fold
        label="More about it"
        wrong={trouble.mass !== undefined || trouble.km !== undefined}
        open={
          draft.serial !== '' ||
          draft.condition !== '' ||
          draft.unknown !== '' ||
          draft.mass !== '' ||
          draft.km !== '' ||
          draft.kmUnknown ||
          draft.note !== '' ||
          draft.originWords !== ''
        }
      >
        <div class="stack face-fields">
          <TextField
            label="Details, such as seller or bike"
            value={draft.originWords}
            onInput={(text) => change({ originWords: text })}
            maxLength={200}
          />
          <TextField
            label="Serial number"
            value={draft.serial}
            onInput={(serial) => change({ serial })}
            maxLength={60}
          />
          <TextField
            label="Condition"
            value={draft.condition}
            onInput={(condition) => change({ condition })}
            offers={['as new', 'good', 'worn', 'scratched', 'dented', 'bent']}
            maxLength={200}
          />
          <TextField
            label="Unknown history"
            hint="e.g. age, crashes, previous owner."
            value={draft.unknown}
            onInput={(unknown) => change({ unknown })}
            maxLength={300}
          />
          <Toggle
            label="Mileage unknown"
            on={draft.kmUnknown}
            onToggle={(kmUnknown) => change({ kmUnknown })}
          />
          {!draft.kmUnknown && (
            <NumberField
              label="Mileage before this log"
              unit="km"
              typed={draft.km}
              onTyped={(km) => change({ km })}
              error={trouble.km}
            />
          )}
          <NumberField
            label="Mass"
            unit="g"
            typed={draft.mass}
            onTyped={(mass) => change({ mass })}
            error={trouble.mass}
          />
          <TextField
            label="Note"
            lines={3}
            value={draft.note}
            onInput={(note) => change({ note })}
            maxLength={2000}
          />
        </div>
      </Fold>
    </div>
  );
}
