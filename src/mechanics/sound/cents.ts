/**
 * How far apart two pitches are, in hundredths of a semitone.
 * @param hz above 0
 * @param otherHz above 0
 * @returns cents, below 0 where the other one is lower
 * @example centsBetween(440, 880) //=> 1200
 */
export const centsBetween = (hz: number, otherHz: number): number => 1200 * Math.log2(otherHz / hz);
