import { NumberField } from '../../../controls/fields/NumberField.tsx';
import type { SideDraft, WheelDraft } from '../../../drafts/wheelDraft.ts';
import type { WheelSideName } from '../../../mechanics/wheels/spokeLayout.ts';
import { sideNames } from '../../../words/wheel/wheelWords.ts';

export interface SideFieldsProps {
  side: WheelSideName;
  draft: WheelDraft;
  wrong: Record<string, string>;
  change: (changed: Partial<WheelDraft>) => void;
}

interface SideField {
  field: keyof SideDraft;
  label: string;
  hint?: string;
  straightOnly?: true;
  count?: true;
}

const rows: readonly SideField[] = [
  { field: 'spokes', label: 'Spokes', count: true },
  { field: 'crosses', label: 'Crossings', hint: '0 is radial.', count: true },
  { field: 'pcd', label: 'Hole circle', hint: 'Centre to centre of opposite holes.' },
  { field: 'flange', label: 'Flange to centre', hint: 'Half the hub width less locknut to flange.' },
  {
    field: 'lineOffset',
    label: 'Axle to spoke line',
    hint: 'Shortest distance, seen along the axle.',
    straightOnly: true,
  },
  { field: 'thin', label: 'Spoke thickness', hint: 'At its middle; 2 mm where empty.' },
  { field: 'thick', label: 'Thickness at the ends', hint: 'Butted spokes only.' },
  { field: 'bought', label: 'Length bought', hint: 'Once you have them.' },
];

/** One side of the wheel: its spokes and its flange. */
export function SideFields({ side, draft, wrong, change }: SideFieldsProps) {
  const held = draft[side];
  const shown = rows.filter(({ straightOnly }) => !straightOnly || draft.head === 'straight-pull');
  const put = (field: keyof SideDraft, typed: string) =>
    change({ [side]: { ...held, [field]: typed } } as Partial<WheelDraft>);
  return (
    <fieldset class="wheel-box stack">
      <legend class="field-label">{sideNames[side]}</legend>
      {shown.map(({ field, label, hint, count }) => (
        <NumberField
          key={field}
          label={label}
          hint={hint}
          typed={held[field]}
          unit={count ? undefined : ('mm' as const)}
          onTyped={(typed) => put(field, typed)}
          error={wrong[`${side}.${field}`]}
        />
      ))}
    </fieldset>
  );
}
