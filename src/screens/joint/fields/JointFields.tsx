import '../joint.css';
import { TextField } from '../../../controls/fields/TextField.tsx';
import type { JointDraft, JointTrouble } from '../../../drafts/jointDraft.ts';
import type { PartRow } from '../../../journal/rows.ts';
import type { TorqueUnit } from '../../../mechanics/units.ts';
import { GeneralTable } from '../GeneralTable.tsx';
import { BetweenFields } from './BetweenFields.tsx';
import { FastenerFields } from './FastenerFields.tsx';
import { KindAndParts } from './KindAndParts.tsx';
import { TargetFields } from './TargetFields.tsx';

export interface JointFieldsProps {
  draft: JointDraft;
  /** Every part of the bike. */
  parts: readonly PartRow[];
  unit: TorqueUnit;
  trouble: JointTrouble | undefined;
  change: (change: Partial<JointDraft>) => void;
}

/** The form of a joint, from what kind it is to what is asked of its screws. */
export function JointFields({ draft, parts, unit, trouble, change }: JointFieldsProps) {
  const named = new Set([...draft.partIds, ...draft.between.flatMap(({ partId }) => partId ?? [])]);
  const met = parts.filter(({ partId }) => named.has(partId));
  return (
    <>
      <KindAndParts draft={draft} parts={parts} trouble={trouble} change={change} />
      <BetweenFields between={draft.between} parts={parts} onBetween={(between) => change({ between })} />
      <FastenerFields
        fasteners={draft.fasteners}
        trouble={trouble?.fasteners ?? {}}
        onFasteners={(fasteners) => change({ fasteners })}
      />
      <TargetFields
        targets={draft.targets}
        parts={met}
        unit={unit}
        trouble={trouble?.targets ?? {}}
        onTargets={(targets) => change({ targets })}
      />
      {draft.kind !== '' && (
        <GeneralTable
          kind={draft.kind}
          parts={met}
          unit={unit}
          screw={{ thread: draft.fasteners[0]?.thread, screw: draft.fasteners[0]?.measured?.screw }}
          onTake={(target, variant) =>
            change({
              targets: [...draft.targets, target],
              fasteners: draft.fasteners.map((row) => ({ ...row, measured: { ...row.measured, variant } })),
            })
          }
        />
      )}
      <TextField
        label="Note"
        lines={3}
        value={draft.note}
        onInput={(note) => change({ note })}
        maxLength={2000}
      />
    </>
  );
}
