import { type CeilingGround, pressureCeiling } from '../mechanics/tyres/pressureCeiling.ts';
import { type PressureUnit, pressureFromBar, unitLabel } from '../mechanics/units.ts';
import type { Face } from './faces/face.ts';
import { readingOf, traitOf } from './faces/reading.ts';

const grounds: Record<CeilingGround, string> = {
  tyre: 'printed on the tyre',
  rim: 'printed on the rim',
  'straight-side': 'the limit of rims with straight walls',
  'not-marked-tubeless': 'the limit without a tube for a tyre not marked tubeless',
};

/** Parts of a tyre on its rim, as far as their faces are known. */
export type TyreParts = readonly { faces?: readonly Face[] | undefined }[];

export type SealCeiling =
  | { ok: true; ceilingBar: number; because: string }
  | { ok: false; reason: 'nothing-printed' | 'straight-side-needs-a-tubeless-tyre' };

/** The first face of a kind that any of the parts has. */
export const faceAmong = (parts: TyreParts, kind: Face['kind']): Face | undefined =>
  parts.flatMap(({ faces }) => faces ?? []).find((face) => face.kind === kind);

const mid = (face: Face | undefined, key: string) => face && readingOf(face, key)?.mid;

/**
 * The greatest pressure for this tyre on this rim, as far as it is recorded.
 * @param parts the parts of the joint
 * @returns bar, and which limit decides; or that nothing is printed, or that no pressure is right
 * Source: `mechanics/pressureCeiling.ts`; with the width unknown, the lower of the printed limits alone.
 * @example sealCeiling([]) //=> { ok: false, reason: 'nothing-printed' }
 */
export function sealCeiling(parts: TyreParts): SealCeiling {
  const tyre = faceAmong(parts, 'tyre-bead');
  const rim = faceAmong(parts, 'rim-seat');
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
export function withSealant(parts: TyreParts): boolean {
  const tyre = faceAmong(parts, 'tyre-bead');
  return tyre === undefined || traitOf(tyre, 'run') !== 'tube';
}

/**
 * A limit as it is said in a unit, cut off and never rounded up.
 * @param ceilingBar the limit, bar, ≥ 0
 * @example ceilingText(2.75, '[psi]') //=> '39 psi'
 */
export function ceilingText(ceilingBar: number, unit: PressureUnit): string {
  const perOne = unit === 'bar' ? 100 : 1;
  return `${Math.floor(pressureFromBar(ceilingBar, unit) * perOne + 1e-6) / perOne} ${unitLabel[unit]}`;
}
