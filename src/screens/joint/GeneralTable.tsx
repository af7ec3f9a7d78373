import { Notice } from '../../controls/frames/Notice.tsx';
import { Fold } from '../../controls/lists/Fold.tsx';
import { ListRow } from '../../controls/lists/ListRow.tsx';
import type { TargetDraft } from '../../drafts/jointDraft.ts';
import type { PartRow } from '../../journal/rows.ts';
import { type TorqueUnit, torqueFromNm, unitLabel } from '../../mechanics/units.ts';
import { cautions } from '../../standards/checks/releaseRules.ts';
import type { JointKind } from '../../standards/jointKinds.ts';
import { type BandStrength, bandsFor, type TorqueBandRow } from '../../standards/screws/torqueBands.ts';
import { numberText } from '../../words/quantityText.ts';

const strengths: Record<BandStrength, string> = {
  A: 'A: two or more printed documents of separate origin',
  B: 'B: one printed document',
  C: 'C: common practice or memory, no document',
};

function targetOf({ variant, loNm, hiNm, strength, source }: TorqueBandRow): TargetDraft {
  return {
    source: 'general-table',
    ...{ typed: String(loNm), upTo: String(hiNm), unit: 'N.m', partId: '' },
    reference: `${variant}; strength ${strength}; ${source}`,
  };
}

export interface GeneralTableProps {
  kind: JointKind;
  /** The parts of the joint. */
  parts: readonly PartRow[];
  unit: TorqueUnit;
  onTake: (target: TargetDraft) => void;
}

/**
 * Torques printed for such joints elsewhere, to compare with or to take over by a tap. Where a part of the
 * joint was cut, filed or bent, nothing is offered: no table knows it any more.
 */
export function GeneralTable({ kind, parts, unit, onTake }: GeneralTableProps) {
  const changed = parts.filter(({ changes }) => changes.length > 0);
  if (changed.length > 0) {
    return (
      <Notice
        kind="caution"
        title={`No torque is offered: ${changed.map(({ name }) => name).join(', ')} changed`}
      >
        {cautions['one-way-change']}
      </Notice>
    );
  }
  const bands = bandsFor(kind);
  if (bands.length === 0) return null;
  const figure = (nm: number) => numberText(torqueFromNm(nm, unit), 1);
  return (
    <Fold label="General table" end={bands.length}>
      <p class="small bike-none">
        Printed for joints like this one on other bikes. The mark on your part goes first. A tap takes a line
        over as a target.
      </p>
      {bands.map((band) => (
        <ListRow
          key={`${band.variant} ${band.loNm}`}
          icon="plus"
          title={`${figure(band.loNm)} to ${figure(band.hiNm)} ${unitLabel[unit]}, ${band.variant}`}
          detail={`Strength ${strengths[band.strength]}. Source: ${band.source}`}
          onPress={() => onTake(targetOf(band))}
        />
      ))}
    </Fold>
  );
}
