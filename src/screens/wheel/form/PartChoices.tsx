import { SelectField } from '../../../controls/fields/SelectField.tsx';
import { filledFromParts, type WheelDraft } from '../../../drafts/wheelDraft.ts';
import type { PartRow } from '../../../journal/rows.ts';

const asked = [
  { as: 'hub', label: 'Hub', kinds: ['front-hub', 'rear-hub'] },
  { as: 'rim', label: 'Rim', kinds: ['rim'] },
  { as: 'spokes', label: 'Spokes', kinds: ['spoke-set'] },
  { as: 'nipples', label: 'Nipples', kinds: ['other'] },
] as const;

/** The parts of the wheel, of those at hand; what was measured of them is taken over. */
export function PartChoices({
  draft,
  parts,
  change,
}: {
  draft: WheelDraft;
  parts: readonly PartRow[];
  change: (changed: Partial<WheelDraft>) => void;
}) {
  return (
    <>
      {asked.map(({ as, label, kinds }) => {
        const fitting = parts.filter(
          ({ partId, kind, place }) =>
            partId === draft[as] ||
            ((kinds as readonly string[]).includes(kind) && (place.on === 'bike' || place.on === 'shelf')),
        );
        if (fitting.length === 0) return null;
        return (
          <SelectField
            key={as}
            label={label}
            options={[
              { value: '', label: 'Not chosen' },
              ...fitting.map((part) => ({
                value: part.partId,
                label: part.label ? `${part.name}, ${part.label}` : part.name,
              })),
            ]}
            value={draft[as]}
            onChoose={(partId) => change(filledFromParts({ ...draft, [as]: partId }, parts))}
          />
        );
      })}
    </>
  );
}
