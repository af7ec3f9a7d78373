import type { QuietHours } from './about.ts';

/**
 * Whether nothing is to be announced at an instant, by the phone's clock on the wall.
 * @param quiet minutes after midnight; from later than to goes over midnight, the same twice is none
 * @param atMs instant, ms UTC
 * @example isQuiet({ fromMin: 1320, toMin: 420 }, new Date(2026, 4, 3, 23).getTime()) //=> true
 */
export function isQuiet(quiet: QuietHours | null | undefined, atMs: number): boolean {
  if (!quiet) return false;
  const { fromMin, toMin } = quiet;
  const at = new Date(atMs);
  const min = at.getHours() * 60 + at.getMinutes();
  return fromMin <= toMin ? min >= fromMin && min < toMin : min >= fromMin || min < toMin;
}
