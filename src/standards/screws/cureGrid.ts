import type { CureCurve } from '../../mechanics/cures/cureCurve.ts';
import type { CureGrid } from '../../mechanics/cures/cureFactors.ts';
import { founded } from '../known.ts';

type Point = number | readonly [lo: number, hi: number];

/** Strength in per cent after 1, 3, 6, 24 and 72 hours. */
const after = (...percent: [Point, Point, Point, Point, Point]): CureCurve => ({
  atHours: [1, 3, 6, 24, 72],
  percent: percent.map((point) => (typeof point === 'number' ? [point, point] : point)),
});

const steel = after(50, 75, 85, 100, 100);

/**
 * Strength of a medium threadlocker on M10 over time. Remembered from the graphs of adhesive data sheets and
 * not read again; only the ends were seen (full cure within 24 h; passive metals slower; primer helps).
 */
export const cureGrid = {
  surfaces: {
    steel: { label: 'Plain steel', curve: steel },
    brass: { label: 'Brass or copper', curve: after(80, 95, 100, 100, 100) },
    stainless: { label: 'Stainless steel', curve: after(20, 40, 50, [70, 80], 100) },
    'zinc-plate': { label: 'Zinc plate', curve: after(15, 30, 40, [60, 70], 90) },
    aluminium: { label: 'Bare aluminium', curve: after(25, 45, 60, 85, 100) },
    anodised: { label: 'Anodised aluminium', curve: after(10, 20, 30, 60, 80) },
    carbon: { label: 'Carbon or wood', curve: null },
    thermoplastic: { label: 'Plastic', curve: null, plastic: true },
  },
  reference: steel,
  gaps: [
    { gapMm: 0.15, curve: after(30, 55, 70, 90, 100) },
    { gapMm: 0.25, curve: after(15, 35, 50, 75, 90) },
  ],
  temperatures: [
    { temperatureC: 5, curve: after(5, 20, 35, 65, 95) },
    { temperatureC: 40, curve: after(80, 95, 100, 100, 100) },
  ],
  // Falls back to 95 after a day: activators can cost some of the final strength.
  primed: after(75, 95, 100, 95, 95),
  ...founded(
    'graphs of anaerobic adhesive data sheets, from memory, weak; only full cure within a day is printed, by two origins',
    'memory',
    0,
  ),
} as const satisfies CureGrid;

export type CureSurface = keyof typeof cureGrid.surfaces;
