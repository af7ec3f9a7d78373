import type { LaidSpoke, WheelSideName } from '../../mechanics/wheels/spokeLayout.ts';
import type { ReadSpoke } from './wheelBalance.ts';

/** A spoke of the plot: a bar outward from the inner ring, as long as it is tight. */
export interface RingBar {
  spoke: number;
  side: WheelSideName;
  x1: number;
  y1: number;
  x2: number;
  y2: number;
  /** further from the mean of its side than the band, or above the limit */
  out: boolean;
}

export interface TensionRing {
  size: number;
  centre: number;
  /** where no tension is */
  innerRadius: number;
  bars: RingBar[];
  /** a circle for the mean of each side, and for the limit */
  circles: { of: WheelSideName | 'limit'; radius: number }[];
  /** numbers beside every so many spokes */
  numbers: { spoke: number; x: number; y: number }[];
}

const SIZE = 360;
const INNER = 46;
const OUTER = 148;

/**
 * All tensions round the wheel, valve on top, seen from the drive side: both sides in one plot.
 * @param layout every spoke
 * @param spokes those that were read
 * @param meansN mean of each side
 * @param limitN rim maker's maximum
 * @param bandPercent up to here a spoke is even with its side
 * @example tensionRing(layout, spokes, { left: 600, drive: 1000 }, 1200, 10).bars.length //=> 36
 */
export function tensionRing(
  layout: readonly LaidSpoke[],
  spokes: readonly ReadSpoke[],
  meansN: Partial<Record<WheelSideName, number>>,
  limitN: number | undefined,
  bandPercent: number,
): TensionRing {
  const mostN = Math.max(1, limitN ?? 0, ...spokes.map(({ tensionN }) => tensionN));
  const radius = (tensionN: number) => INNER + (tensionN / mostN) * (OUTER - INNER);
  const at = (deg: number, from: number) => ({
    x: SIZE / 2 + from * Math.sin((deg * Math.PI) / 180),
    y: SIZE / 2 - from * Math.cos((deg * Math.PI) / 180),
  });
  const angleOf = new Map(layout.map(({ spoke, rimDeg }) => [spoke, rimDeg]));
  const circles: TensionRing['circles'] = (['left', 'drive'] as const).flatMap((side) => {
    const meanN = meansN[side];
    return meanN === undefined ? [] : [{ of: side, radius: radius(meanN) }];
  });
  if (limitN !== undefined) circles.push({ of: 'limit', radius: radius(limitN) });
  const every = Math.max(1, Math.round(layout.length / 12));
  return {
    ...{ size: SIZE, centre: SIZE / 2, innerRadius: INNER, circles },
    bars: spokes.map(({ spoke, side, tensionN, awayPercent, overLimit }) => {
      const deg = angleOf.get(spoke) ?? 0;
      const [from, to] = [at(deg, INNER), at(deg, radius(tensionN))];
      const out = overLimit || Math.abs(awayPercent) > bandPercent;
      return { spoke, side, x1: from.x, y1: from.y, x2: to.x, y2: to.y, out };
    }),
    numbers: layout
      .filter((_, index) => index % every === 0)
      .map(({ spoke, rimDeg }) => ({ spoke, ...at(rimDeg, OUTER + 17) })),
  };
}
