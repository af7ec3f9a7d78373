import type { WheelAbout } from '../../journal/aboutWheels.ts';
import { convert } from '../../mechanics/units.ts';
import {
  listeningWindow,
  type ReadPitch,
  readPitch,
  type SpokeAsLaced,
  type SpokeEar,
  USUAL_EAR,
} from '../../mechanics/wheels/spokeByEar.ts';
import { outermostCrossing } from '../../mechanics/wheels/spokeCrossing.ts';
import type { PitchWindow } from '../../mechanics/wheels/spokePitch.ts';
import { spokePieces } from './spokePieces.ts';
import { sideAbout, type WheelSketch } from './wheelFigures.ts';
import { sideTargetsN, workedWheel } from './wheelResult.ts';

/** A wheel ready to be listened to. */
export interface WheelByEar {
  ear: SpokeEar;
  /** what the spoke at a place of the layout shall have, N; 1000 N on the tighter side without a target */
  expectedN(place: number): number;
  window(place: number, expectedN: number): PitchWindow;
  read(place: number, hz: number): ReadPitch;
}

/**
 * The spokes of a wheel as they sound: thickness and length from its record, crossings from its lacing.
 * @param wheel with the sizes of rim and hub
 * @returns nothing until those are known
 * @example wheelByEar(wheel)?.read(0, 612).ok //=> true
 */
export function wheelByEar(wheel: WheelSketch & Pick<WheelAbout, 'ear'>): WheelByEar | undefined {
  const worked = workedWheel(wheel);
  if (worked.is !== 'known') return undefined;
  const { figures, result } = worked;
  const { layout, erdMm, sides } = figures;
  const ear = wheel.ear ?? USUAL_EAR;
  const targets = sideTargetsN({ ...result, targetN: result.targetN ?? 1000 });
  const spokes = layout.map((own): SpokeAsLaced => {
    const { bought } = sideAbout(wheel, own.side);
    const lengths = result.sides[own.side].lengths;
    const exact =
      lengths.find(({ crossingDeg }) => Math.abs(crossingDeg - own.crossingDeg) < 0.01) ?? lengths[0];
    const lengthMm = bought ? convert(bought.value, bought.unit, 'mm') : (exact?.exactMm ?? erdMm / 2);
    const others = layout.filter(({ side }) => side === own.side);
    const crossing = outermostCrossing({ pcdMm: sides[own.side].pcdMm, erdMm }, own, others);
    return { pieces: spokePieces(sideAbout(wheel, own.side), lengthMm), crossing: crossing?.share ?? null };
  });
  return {
    ear,
    expectedN: (place) => targets?.[layout[place]!.side] ?? 1000,
    window: (place, expectedN) => listeningWindow(ear, spokes[place]!, expectedN),
    read: (place, hz) => readPitch(ear, spokes[place]!, hz),
  };
}
