import { readRecheck } from '../../mechanics/screws/recheckReading.ts';
import { type TorqueUnit, type Typed, torqueNm } from '../../mechanics/units.ts';

/** How often a joint may be met moved before more torque is no answer. */
const ONCE = 1;

export const movedAgain =
  'It has moved before. More torque is no cure: find the cause at the faces, the threads, the fit or what goes between, and let a qualified mechanic look at it before it is ridden.';

/**
 * Whether this finding makes a joint one that keeps moving.
 * @param moved re-checks that met it moved so far
 */
export function keepsMoving(moved: number): boolean {
  return moved >= ONCE;
}

/**
 * What a movement on the way to the target says beside what was applied.
 * @param applied what was last applied, if anything was logged
 * @param movedAt the torque at which it first gave
 * @param moved re-checks that met it moved before; a joint that keeps moving is not told to be brought up once more
 * @returns a sentence, or undefined where there is nothing to hold it beside
 * Source: `mechanics/recheckReading.ts`; its limits are a judgement.
 */
export function movedAdvice(
  applied: Typed<TorqueUnit> | undefined,
  movedAt: Typed<TorqueUnit>,
  moved: number,
): string | undefined {
  if (!applied || applied.value <= 0) return undefined;
  const { verdict } = readRecheck({
    way: 'tightening',
    installedNm: torqueNm(applied.value, applied.unit),
    movedAtNm: torqueNm(movedAt.value, movedAt.unit),
  });
  const again = keepsMoving(moved);
  return {
    held: 'Not below the applied torque: fine.',
    settled: again
      ? 'A little less than was applied.'
      : 'A little less than was applied: it has bedded in. Bring it up, and look again after the next ride.',
    loosened: again
      ? 'Well short of what was applied.'
      : 'Well short of what was applied. Bring it up, check the paint mark after each ride.',
    failed: 'Under half the applied torque. Strip, clean, inspect threads and faces, reassemble.',
  }[verdict];
}
