import { Button } from '../../../controls/Button.tsx';
import { NumberField } from '../../../controls/fields/NumberField.tsx';
import { SelectField } from '../../../controls/fields/SelectField.tsx';
import { TextField } from '../../../controls/fields/TextField.tsx';
import { Ruler } from '../../../controls/figures/Ruler.tsx';
import type { TargetDraft } from '../../../drafts/jointDraft.ts';
import type { TargetSource } from '../../../journal/entries.ts';
import type { PartRow } from '../../../journal/rows.ts';
import { type TorqueUnit, unitsOf } from '../../../mechanics/units.ts';

const sources: readonly { value: TargetSource; label: string }[] = [
  { value: 'printed-on-the-part', label: 'Printed on the part' },
  { value: 'makers-document', label: "Maker's document" },
  { value: 'mating-part', label: "The mating part's figure" },
  { value: 'general-table', label: 'General table' },
  { value: 'own-judgement', label: 'Our suggestion' },
  { value: 'none', label: 'No source found' },
];

export interface TargetFieldsProps {
  targets: readonly TargetDraft[];
  /** The parts of the joint, one of which a figure belongs to. */
  parts: readonly PartRow[];
  unit: TorqueUnit;
  trouble: Record<number, string>;
  onTargets: (targets: TargetDraft[]) => void;
}

/** The torques asked for, each with who asks. All of them stay; the lowest of the makers' rules. */
export function TargetFields({ targets, parts, unit, trouble, onTargets }: TargetFieldsProps) {
  const put = (at: number, change: Partial<TargetDraft>) =>
    onTargets(targets.map((old, index) => (index === at ? { ...old, ...change } : old)));
  const fresh: TargetDraft = {
    source: 'printed-on-the-part',
    ...{ typed: '', upTo: '', unit, partId: '', reference: '' },
  };
  return (
    <>
      <Ruler label="Targets" />
      <p class="small">Enter every torque figure you find. The lowest maker’s figure is used.</p>
      {targets.map((row, at) => (
        <fieldset class="joint-box stack" key={at}>
          <legend class="caption">{`Target ${at + 1}`}</legend>
          <SelectField
            label="Source"
            options={sources}
            value={row.source}
            onChoose={(source) => put(at, { source })}
          />
          <NumberField
            label="Torque"
            typed={row.typed}
            unit={row.unit}
            units={unitsOf.torque}
            onTyped={(typed, chosen = row.unit) => put(at, { typed, unit: chosen })}
            error={trouble[at]}
          />
          <NumberField
            label="Upper end, if it is a range"
            typed={row.upTo}
            unit={row.unit}
            onTyped={(upTo) => put(at, { upTo })}
          />
          <SelectField
            label="Part it belongs to"
            options={[
              { value: '', label: 'Not said' },
              ...parts.map(({ partId, name }) => ({ value: partId, label: name })),
            ]}
            value={row.partId}
            onChoose={(partId) => put(at, { partId })}
          />
          <TextField
            label="Reference"
            hint="Document, page, photo."
            value={row.reference}
            onInput={(reference) => put(at, { reference })}
            maxLength={200}
          />
          <Button icon="cross" onPress={() => onTargets(targets.filter((_, index) => index !== at))}>
            Remove this target
          </Button>
        </fieldset>
      ))}
      <Button icon="plus" wide onPress={() => onTargets([...targets, fresh])}>
        {targets.length === 0 ? 'Add a target torque' : 'Another target'}
      </Button>
    </>
  );
}
