import { Choice } from '../../../controls/fields/Choice.tsx';
import { NumberField } from '../../../controls/fields/NumberField.tsx';
import { TextField } from '../../../controls/fields/TextField.tsx';
import { Toggle } from '../../../controls/fields/Toggle.tsx';
import { Ruler } from '../../../controls/figures/Ruler.tsx';
import { Notice } from '../../../controls/frames/Notice.tsx';
import { type ChangeDraft, type ChangeTrouble, leftWanted } from '../../../drafts/changeDraft.ts';
import type { CutKind } from '../../../journal/entries.ts';
import { type LengthUnit, unitsOf } from '../../../mechanics/units.ts';
import { cutWords } from '../../../words/history/tradeWords.ts';
import { cutIcons } from '../Cut.tsx';

export interface ChangeFieldsProps {
  draft: ChangeDraft;
  unit: LengthUnit;
  trouble: ChangeTrouble;
  onBike: boolean;
  change: (changed: Partial<ChangeDraft>) => void;
}

const cuts = (Object.keys(cutWords) as CutKind[]).map((value) => ({
  value,
  label: cutWords[value].label,
  icon: cutIcons[value],
}));

/** What was done, with the caliper before and after; and how it is kept an eye on from now on. */
export function ChangeFields({ draft, unit, trouble, onBike, change }: ChangeFieldsProps) {
  const size = (field: 'before' | 'after' | 'left') => ({
    typed: draft[field],
    unit,
    units: unitsOf.length,
    error: trouble[field],
    onTyped: (typed: string, next: LengthUnit | undefined) =>
      change({ [field]: typed, ...(next ? { unit: next } : {}) }),
  });
  return (
    <div class="stack">
      <Choice
        label="What was done"
        options={cuts}
        value={draft.cut === '' ? undefined : draft.cut}
        onChoose={(cut) => change({ cut })}
        error={trouble.cut}
      />
      <TextField
        label="Where"
        hint="Exact location."
        value={draft.where}
        onInput={(where) => change({ where })}
        error={trouble.where}
        maxLength={120}
      />
      <NumberField label="Before" {...size('before')} />
      <NumberField label="After" {...size('after')} />
      <NumberField label="What is left" hint="Thinnest remaining metal." {...size('left')} />
      <TextField
        label="What is left, in words"
        value={draft.leftWords}
        onInput={(leftWords) => change({ leftWords })}
        maxLength={200}
      />
      {leftWanted(draft) && (
        <Notice kind="note" title="Measure what is left">
          Measure the thinnest metal left: that is the figure a frame builder will ask for.
        </Notice>
      )}
      <TextField
        label="How"
        hint="Tool, heat, jig, in how many passes."
        lines={2}
        value={draft.how}
        onInput={(how) => change({ how })}
        error={trouble.how}
        maxLength={600}
      />
      <TextField
        label="Why"
        lines={2}
        value={draft.why}
        onInput={(why) => change({ why })}
        error={trouble.why}
        maxLength={600}
      />
      <TextField
        label="No longer possible"
        hint="e.g. the original hub."
        value={draft.rulesOut}
        onInput={(rulesOut) => change({ rulesOut })}
        maxLength={300}
      />
      <Ruler label="Inspection" />
      <Toggle
        label="Inspect regularly"
        hint={
          onBike
            ? 'First after the next ride, then as often as you say here.'
            : 'It is on no bike now: it begins with the first ride of the bike it goes on.'
        }
        on={draft.inspect}
        onToggle={(inspect) => change({ inspect })}
      />
      {draft.inspect && (
        <>
          <NumberField
            label="Every … days"
            typed={draft.everyDays}
            onTyped={(everyDays) => change({ everyDays })}
            error={trouble.everyDays}
          />
          <NumberField
            label="Every … km"
            typed={draft.everyKm}
            onTyped={(everyKm) => change({ everyKm })}
            error={trouble.everyKm}
          />
          <TextField
            label="What to look for"
            hint="Cracks at the edge of the cut, lifted paint, a size that changes."
            lines={2}
            value={draft.inspectWords}
            onInput={(inspectWords) => change({ inspectWords })}
            error={trouble.inspectWords}
            maxLength={300}
          />
        </>
      )}
    </div>
  );
}
