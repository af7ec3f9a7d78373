import { type Finding, finding } from '../finding.ts';
import { mayTouch, type PilePart } from '../pile.ts';
import { facesOf } from '../placed.ts';
import { pressureCeiling } from '../pressureCeiling.ts';
import { readingOf, traitOf } from '../reading.ts';
import { askFor } from '../rule.ts';

const limitedBy = {
  tyre: 'printed on the tyre',
  rim: 'printed on the rim',
  'straight-walls': 'a rim with straight walls',
  'unmarked-tubeless': 'sealant in a tyre not marked for it',
} as const;

/** The pressure each tyre may be given on its rim. A bike with nothing printed is asked about. */
export function pressureFindings(parts: readonly PilePart[]): Finding[] {
  return facesOf(parts, 'rim-seat').flatMap((rim) =>
    facesOf(parts, 'tyre-bead')
      .filter((tyre) => mayTouch(rim.part, tyre.part))
      .map((tyre) => {
        const rimMax = readingOf(rim.face, 'maxPressureBar');
        const tyreMax = readingOf(tyre.face, 'maxPressureBar');
        const ceiling = pressureCeiling({
          tyreMaxBar: tyreMax?.mid ?? null,
          rimMaxBar: rimMax?.mid ?? null,
          straightWalls: traitOf(rim.face, 'bead') === 'straight',
          unmarkedTubeless:
            traitOf(tyre.face, 'run') === 'sealant' && traitOf(tyre.face, 'tubeless') !== 'yes',
        });
        const rest = {
          risk: 'A tyre blown off its rim takes fingers and eyes.',
          source: "lowest maximum wins: a tyre maker's page on straight-wall rims",
          known: 'seen',
        } as const;
        const missing = [
          ...(tyreMax ? [] : [askFor(tyre.face, 'maxPressureBar')]),
          ...(rimMax ? [] : [askFor(rim.face, 'maxPressureBar')]),
        ];
        return finding('pressure-ceiling', [rim.ref, tyre.ref], {
          outcome: ceiling ? 'fits' : 'not-known',
          because: ceiling
            ? `At most ${ceiling.bar} bar: ${limitedBy[ceiling.by]}.`
            : 'Neither tyre nor rim says how much it bears.',
          asks: missing,
          ...rest,
        });
      }),
  );
}
