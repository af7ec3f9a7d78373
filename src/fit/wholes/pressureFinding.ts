import { bareNumber } from '../../mechanics/numberText.ts';
import {
  type CeilingGround,
  type CeilingRefusal,
  pressureCeiling,
} from '../../mechanics/tyres/pressureCeiling.ts';
import { readingOf, traitOf } from '../faces/reading.ts';
import { type Finding, finding } from '../finding.ts';
import { mayTouch, type PilePart } from '../pile.ts';
import { askAt, facesOf } from '../placed.ts';

const limitedBy: Record<CeilingGround, string> = {
  tyre: 'printed on the tyre',
  rim: 'printed on the rim',
  'straight-side': 'a rim with straight walls',
  'not-marked-tubeless': 'sealant in a tyre not marked for it',
};

const refused: Record<CeilingRefusal, string> = {
  'no-limit-printed': 'The maximum pressure of the tyre is not known.',
  'straight-side-needs-a-tubeless-tyre': 'No pressure is right for this tyre on straight walls.',
  'tyre-wider-than-the-rim-table': 'The rim maker gives no pressure for a tyre this wide.',
};

/** The pressure each tyre may be given on its rim. A bike with nothing printed is asked about. */
export function pressureFindings(parts: readonly PilePart[]): Finding[] {
  return facesOf(parts, 'rim-seat').flatMap((rim) =>
    facesOf(parts, 'tyre-bead')
      .filter((tyre) => mayTouch(rim.part, tyre.part))
      .map((tyre) => {
        const rimMax = readingOf(rim.face, 'maxPressureBar');
        const tyreMax = readingOf(tyre.face, 'maxPressureBar');
        const width = readingOf(tyre.face, 'widthMm');
        const asks = [
          ...(tyreMax ? [] : [askAt(tyre.ref.partId, tyre.face, 'maxPressureBar')]),
          ...(rimMax ? [] : [askAt(rim.ref.partId, rim.face, 'maxPressureBar')]),
          ...(width ? [] : [askAt(tyre.ref.partId, tyre.face, 'widthMm')]),
        ];
        const rest = {
          asks,
          risk: 'A tyre blown off its rim takes fingers and eyes.',
          source: "lowest maximum wins: a tyre maker's page on straight-wall rims",
          known: 'seen',
        } as const;
        const refs = [rim.ref, tyre.ref];
        if (!width)
          return finding('pressure-ceiling', refs, {
            outcome: 'not-known',
            because: 'The maximum pressure of a rim falls with the width of the tyre, and that is missing.',
            ...rest,
          });
        const ceiling = pressureCeiling({
          ...(tyreMax ? { tyreMaxBar: tyreMax.mid } : {}),
          ...(rimMax ? { rimMax: rimMax.mid } : {}),
          tyreWidthMm: width.mid,
          straightSide: traitOf(rim.face, 'bead') === 'straight',
          markedTubeless: traitOf(tyre.face, 'tubeless') === 'yes',
          withoutTube: traitOf(tyre.face, 'run') === 'sealant',
        });
        return finding('pressure-ceiling', refs, {
          outcome: ceiling.ok ? 'fits' : 'not-known',
          because: ceiling.ok
            ? `At most ${bareNumber(ceiling.ceilingBar)} bar: ${limitedBy[ceiling.decidedBy]}.`
            : refused[ceiling.reason],
          ...rest,
        });
      }),
  );
}
