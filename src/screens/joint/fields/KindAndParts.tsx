import { SelectField } from '../../../controls/fields/SelectField.tsx';
import { TextField } from '../../../controls/fields/TextField.tsx';
import { Toggle } from '../../../controls/fields/Toggle.tsx';
import { Ruler } from '../../../controls/figures/Ruler.tsx';
import { Notice } from '../../../controls/frames/Notice.tsx';
import { Fold } from '../../../controls/lists/Fold.tsx';
import { type JointDraft, type JointTrouble, withKind } from '../../../drafts/jointDraft.ts';
import type { PartRow } from '../../../journal/rows.ts';
import { likelyFirst } from '../../../practice/joint/likelyParts.ts';
import { type JointArea, jointKinds } from '../../../standards/jointKinds.ts';
import { partLine } from '../../../words/partLine.ts';

const areas: Record<JointArea, string> = {
  steering: 'Steering',
  brakes: 'Brakes',
  wheels: 'Wheels',
  drive: 'Drive',
  saddle: 'Saddle',
  other: 'Other',
};

/** Grouped by where on the bike, and within that in the order of a build. */
const kindOptions = (Object.keys(areas) as JointArea[]).flatMap((area) =>
  jointKinds
    .filter((row) => row.area === area)
    .map(({ kind, label }) => ({ value: kind, label, group: areas[area] })),
);

export interface KindAndPartsProps {
  draft: JointDraft;
  parts: readonly PartRow[];
  trouble: JointTrouble | undefined;
  change: (change: Partial<JointDraft>) => void;
}

/** What kind of joint, what it is called, and which parts meet in it. */
export function KindAndParts({ draft, parts, trouble, change }: KindAndPartsProps) {
  const { kind, partIds } = draft;
  const { likely, others } = likelyFirst(parts, kind, partIds);
  const line = (part: PartRow) => (
    <Toggle
      key={part.partId}
      label={part.name}
      hint={partLine(part)}
      on={partIds.includes(part.partId)}
      onToggle={(on) =>
        change({ partIds: on ? [...partIds, part.partId] : partIds.filter((id) => id !== part.partId) })
      }
    />
  );
  return (
    <>
      <SelectField
        label="Kind of joint"
        options={kindOptions}
        value={kind === '' ? undefined : kind}
        onChoose={(chosen) => change(withKind(draft, chosen))}
        error={trouble?.kind}
      />
      <TextField
        label="Name"
        hint="Optional. Default: the joint type."
        value={draft.name}
        onInput={(name) => change({ name, ownName: name.trim() !== '' })}
        maxLength={120}
      />
      <Ruler label="Parts that meet" />
      {parts.length === 0 && (
        <Notice kind="empty" title="No part on this bike yet">
          Add parts to the bike first.
        </Notice>
      )}
      <div>{likely.map(line)}</div>
      {others.length > 0 && (
        <Fold label="Other parts of this bike" end={others.length}>
          {others.map(line)}
        </Fold>
      )}
    </>
  );
}
