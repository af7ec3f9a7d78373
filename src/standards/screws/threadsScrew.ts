import type { ThreadRow } from './threads.ts';

const coarse = {
  form: 'iso',
  source: 'ISO 898-1 coarse thread table, public copy; pitch confirmed by the printed stress area',
  known: 'seen',
} as const;
const fine = { form: 'iso', source: 'ISO 898-1 fine thread rows', known: 'memory' } as const;

/** Metric screws that hold parts together. */
export const screwThreads: readonly ThreadRow[] = [
  { id: 'M3', label: 'M3 × 0.5', diameterMm: 3, pitchMm: 0.5, ...coarse },
  { id: 'M4', label: 'M4 × 0.7', diameterMm: 4, pitchMm: 0.7, ...coarse },
  { id: 'M5', label: 'M5 × 0.8', diameterMm: 5, pitchMm: 0.8, ...coarse },
  { id: 'M6', label: 'M6 × 1', diameterMm: 6, pitchMm: 1, ...coarse },
  { id: 'M8', label: 'M8 × 1.25', diameterMm: 8, pitchMm: 1.25, ...coarse },
  { id: 'M10', label: 'M10 × 1.5', diameterMm: 10, pitchMm: 1.5, ...coarse },
  { id: 'M12', label: 'M12 × 1.75', diameterMm: 12, pitchMm: 1.75, ...coarse },
  {
    id: 'M8x0.75',
    label: 'M8 × 0.75 chainring bolt',
    diameterMm: 8,
    pitchMm: 0.75,
    form: 'iso',
    source: 'chainring bolts, from memory',
    known: 'memory',
  },
  { id: 'M8x1', label: 'M8 × 1', diameterMm: 8, pitchMm: 1, ...fine },
  { id: 'M10x1.25', label: 'M10 × 1.25', diameterMm: 10, pitchMm: 1.25, ...fine },
  { id: 'M12x1', label: 'M12 × 1', diameterMm: 12, pitchMm: 1, ...fine },
  { id: 'M12x1.25', label: 'M12 × 1.25', diameterMm: 12, pitchMm: 1.25, ...fine },
  { id: 'M12x1.5', label: 'M12 × 1.5', diameterMm: 12, pitchMm: 1.5, ...fine },
];
