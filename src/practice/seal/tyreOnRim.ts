import type { Face } from '../../fit/faces/face.ts';
import { readingOf, traitOf } from '../../fit/faces/reading.ts';
import type { PartRow } from '../../journal/rows.ts';
import type { Band } from '../../mechanics/band.ts';
import { type CeilingGround, pressureCeiling } from '../../mechanics/tyres/pressureCeiling.ts';
import { sealantDose } from '../../mechanics/tyres/tyreVolume.ts';

const grounds: Record<CeilingGround, string> = {
  tyre: 'printed on the tyre',
  rim: 'printed on the rim',
  'straight-side': 'the limit of rims with straight walls',
  'not-marked-tubeless': 'the limit without a tube for a tyre not marked tubeless',
};

type Parts = readonly Pick<PartRow, 'faces'>[];

export type SealCeiling =
  | { ok: true; ceilingBar: number; because: string }
  | { ok: false; reason: 'nothing-printed' | 'straight-side-needs-a-tubeless-tyre' };

const faceOf = (parts: Parts, kind: Face['kind']): Face | undefined =>
  parts.flatMap(({ faces }) => faces ?? []).find((face) => face.kind === kind);

const mid = (face: Face | undefined, key: string) => face && readingOf(face, key)?.mid;

/**
 * The greatest pressure for this tyre on this rim, as far as it is recorded.
 * @param parts the parts of the joint
 * @returns bar, and which limit decides; or that nothing is printed, or that no pressure is right
 * Source: `mechanics/pressureCeiling.ts`; with the width unknown, the lower of the printed limits alone.
 * @example sealCeiling([]) //=> { ok: false, reason: 'nothing-printed' }
 */
export function sealCeiling(parts: Parts): SealCeiling {
  const tyre = faceOf(parts, 'tyre-bead');
  const rim = faceOf(parts, 'rim-seat');
  const [tyreMaxBar, rimMaxBar] = [mid(tyre, 'maxPressureBar'), mid(rim, 'maxPressureBar')];
  const widthMm = mid(tyre, 'widthMm');
  if (tyre && widthMm !== undefined) {
    const ceiling = pressureCeiling({
      tyreWidthMm: widthMm,
      ...(tyreMaxBar === undefined ? {} : { tyreMaxBar }),
      ...(rimMaxBar === undefined ? {} : { rimMax: rimMaxBar }),
      straightSide: rim !== undefined && traitOf(rim, 'bead') === 'straight',
      markedTubeless: traitOf(tyre, 'tubeless') === 'yes',
      withoutTube: withSealant(parts),
    });
    if (ceiling.ok) return { ok: true, ceilingBar: ceiling.ceilingBar, because: grounds[ceiling.decidedBy] };
    if (ceiling.reason === 'straight-side-needs-a-tubeless-tyre')
      return { ok: false, reason: ceiling.reason };
  }
  const printed = (
    [
      ['tyre', tyreMaxBar],
      ['rim', rimMaxBar],
    ] as const
  ).filter((limit): limit is readonly ['tyre' | 'rim', number] => limit[1] !== undefined);
  const [lowest] = printed.toSorted((a, b) => a[1] - b[1]);
  if (!lowest) return { ok: false, reason: 'nothing-printed' };
  return { ok: true, ceilingBar: lowest[1], because: `${grounds[lowest[0]]}, the only limit known` };
}

/** Whether it is meant to run with sealant; assumed unless a tube is recorded. */
export function withSealant(parts: Parts): boolean {
  const tyre = faceOf(parts, 'tyre-bead');
  return tyre === undefined || traitOf(tyre, 'run') !== 'tube';
}

/**
 * How much sealant its size suggests, mL.
 * @param refill sealant is in already
 * @returns the band, or undefined where width or bead seat is not written down
 * Source: `mechanics/tyreVolume.ts`, fitted to published doses; own judgement for other sizes.
 */
export function sealantHint(parts: Parts, refill: boolean): Band | undefined {
  const tyre = faceOf(parts, 'tyre-bead');
  const widthMm = mid(tyre, 'widthMm');
  const beadSeatMm = mid(tyre, 'beadSeatMm') ?? mid(faceOf(parts, 'rim-seat'), 'beadSeatMm');
  if (!tyre || widthMm === undefined || beadSeatMm === undefined) return undefined;
  const dose = sealantDose(widthMm, beadSeatMm, traitOf(tyre, 'tubeless') !== 'yes');
  return refill ? dose.topUpMl : dose.firstMl;
}
