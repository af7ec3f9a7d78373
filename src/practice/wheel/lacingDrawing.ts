import type { LaidSpoke, WheelSideName } from '../../mechanics/wheels/spokeLayout.ts';

/** A spoke as a line of the drawing. */
export interface DrawnSpoke {
  spoke: number;
  x1: number;
  y1: number;
  x2: number;
  y2: number;
  /** on the side that is looked at */
  near: boolean;
  state: 'laced' | 'now' | 'ahead';
}

export interface LacingDrawing {
  /** width and height of the whole */
  size: number;
  rimRadius: number;
  /** hole circles of the near and the far flange */
  nearRadius: number;
  farRadius: number;
  spokes: DrawnSpoke[];
  /** hub holes of the near flange */
  holes: { x: number; y: number }[];
  /** where the number of the spoke being laced stands */
  label: { x: number; y: number; spoke: number } | undefined;
}

const SIZE = 360;
/** Room for the valve and a number outside the rim. */
const EDGE = 34;

/**
 * The lacing drawn to scale, valve hole on top.
 * @param layout every spoke
 * @param of rim and hole circles, mm
 * @param seenFrom the side the builder looks at
 * @param laced numbers of the spokes that are in
 * @param now the spoke at hand
 * @example lacingDrawing(layout, { erdMm: 384, pcdMm: { left: 45, drive: 45 } }, 'drive', new Set(), 1).spokes.length //=> 36
 */
export function lacingDrawing(
  layout: readonly LaidSpoke[],
  of: { erdMm: number; pcdMm: Record<WheelSideName, number> },
  seenFrom: WheelSideName,
  laced: ReadonlySet<number>,
  now?: number,
): LacingDrawing {
  const rimRadius = SIZE / 2 - EDGE;
  const perMm = rimRadius / (of.erdMm / 2);
  const mirror = seenFrom === 'left' ? -1 : 1;
  const at = (deg: number, radius: number) => ({
    x: SIZE / 2 + mirror * radius * Math.sin((deg * Math.PI) / 180),
    y: SIZE / 2 - radius * Math.cos((deg * Math.PI) / 180),
  });
  const radiusOf = (side: WheelSideName) => (of.pcdMm[side] / 2) * perMm;
  const spokes = layout.map((spoke): DrawnSpoke => {
    const hub = at(spoke.hubDeg, radiusOf(spoke.side));
    const rim = at(spoke.rimDeg, rimRadius);
    return {
      ...{ spoke: spoke.spoke, x1: hub.x, y1: hub.y, x2: rim.x, y2: rim.y },
      near: spoke.side === seenFrom,
      state: spoke.spoke === now ? 'now' : laced.has(spoke.spoke) ? 'laced' : 'ahead',
    };
  });
  const named = layout.find(({ spoke }) => spoke === now);
  return {
    ...{ size: SIZE, rimRadius, nearRadius: radiusOf(seenFrom) },
    farRadius: radiusOf(seenFrom === 'left' ? 'drive' : 'left'),
    // The spoke at hand is drawn last, over all others.
    spokes: spokes.toSorted((a, b) => rank(a) - rank(b)),
    holes: layout.filter(({ side }) => side === seenFrom).map(({ hubDeg }) => at(hubDeg, radiusOf(seenFrom))),
    label: named && { ...at(named.rimDeg, rimRadius + 22), spoke: named.spoke },
  };
}

const rank = ({ state, near }: DrawnSpoke): number =>
  (state === 'now' ? 4 : state === 'laced' ? 2 : 0) + (near ? 1 : 0);
