import { Notice } from '../../controls/frames/Notice.tsx';
import { Fold } from '../../controls/lists/Fold.tsx';
import { ListRow } from '../../controls/lists/ListRow.tsx';
import type { TargetDraft } from '../../drafts/jointDraft.ts';
import type { PartRow } from '../../journal/rows.ts';
import { numberText } from '../../mechanics/numberText.ts';
import { type TorqueUnit, torqueFromNm, unitLabel } from '../../mechanics/units.ts';
import { cautions } from '../../standards/checks/releaseRules.ts';
import type { JointKind } from '../../standards/jointKinds.ts';
import {
  type BandPrint,
  type BandQuestion,
  bandsThatFit,
  strengthOf,
  type TorqueBandRow,
} from '../../standards/screws/torqueBands.ts';

/** Its threads, or that no source names one. */
const threadText = ({ threads }: TorqueBandRow): string =>
  threads === 'own' ? '' : threads === null ? 'Thread not named. ' : `${threads.join(', ')}. `;

/** How well one line of a make is founded. */
const foundation = (row: TorqueBandRow, { origin }: BandPrint): string =>
  origin.document
    ? strengthOf(row) === 'A'
      ? 'Printed; a document of another origin prints this make too.'
      : 'Printed, in documents of one origin only.'
    : 'No document: advice only.';

const targetOf = ({ variant }: TorqueBandRow, { loNm, hiNm, origin }: BandPrint): TargetDraft => ({
  source: 'general-table',
  ...{ typed: String(loNm), upTo: String(hiNm), unit: 'N.m', partId: '' },
  reference: `${variant}; ${origin.document ? '' : 'advice only; '}${origin.source}`,
});

export interface GeneralTableProps {
  kind: JointKind;
  /** The parts of the joint. */
  parts: readonly PartRow[];
  unit: TorqueUnit;
  /** Its screws, as far as they are known: only lines for them are shown. */
  screw: BandQuestion;
  /** Which make was picked goes along: it is what later torques are compared with. */
  onTake: (target: TargetDraft, variant: string) => void;
}

/**
 * Torques printed for such joints elsewhere, to compare with or to take over by a tap. Where a part of the
 * joint was cut, filed or bent, nothing is offered: no table knows it any more.
 */
export function GeneralTable({ kind, parts, unit, screw, onTake }: GeneralTableProps) {
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
  const bands = bandsThatFit(kind, { thread: screw.thread, screw: screw.screw });
  if (bands.length === 0) return null;
  const figure = (nm: number) => numberText(torqueFromNm(nm, unit), 1);
  return (
    <Fold label="General table" end={bands.length}>
      <p class="small lower">
        Printed for joints like this one on other bikes, each for one make and thread. The figure printed on
        your part goes first. Tap a line to use it as a target.
      </p>
      {bands.flatMap((band) =>
        band.prints.map((print) => (
          <ListRow
            key={`${band.variant} ${print.origin.source}`}
            icon="plus"
            title={`${figure(print.loNm)} to ${figure(print.hiNm)} ${unitLabel[unit]}, ${band.variant}`}
            detail={`${threadText(band)}${foundation(band, print)} Source: ${print.origin.source}`}
            onPress={() => onTake(targetOf(band, print), band.variant)}
          />
        )),
      )}
    </Fold>
  );
}
