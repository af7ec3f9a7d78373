import type { InterfaceRow, SizeSpan } from '../faces/interfaceRow.ts';

export interface DriveThreadRow extends InterfaceRow {
  /** Fewest teeth a sprocket on this mount can have. */
  leastTeethCount: number | null;
  /** Bodies for still fewer exist: unusual, and not refused. */
  rareTeethCount?: number;
  /** Below this a look at the thread is due: most sprockets so small carry the small thread. */
  usualTeethCount?: number;
  /** Mounts whose thread starts but is not the same. */
  nearly?: readonly string[];
}

const freewheels = 'bicycle encyclopaedia, freewheel threads page';
const sizes = 'shop’s guide to BMX rear hubs';

const mount = (
  id: string,
  label: string,
  diameterMm: SizeSpan | null,
  leastTeethCount: number | null,
  source: string,
  rest: Partial<DriveThreadRow> = {},
): DriveThreadRow => ({
  id,
  label,
  faces: {
    'driver-mount': diameterMm === null ? {} : { diameterMm },
    'sprocket-mount': {},
  },
  leastTeethCount,
  source,
  known: 'seen',
  ...rest,
});

/** How sprockets sit on rear hubs. */
export const driveThreads: readonly DriveThreadRow[] = [
  mount('1.375x24', 'freewheel thread, 1.375 in × 24', [34.5, 34.93], 13, `${freewheels}; ${sizes}`, {
    usualTeethCount: 16,
    nearly: ['1.370x24', '34.7x1'],
  }),
  mount('1.370x24', 'British freewheel thread, 1.370 in × 24', [34.4, 34.8], 13, freewheels, {
    usualTeethCount: 16,
    nearly: ['1.375x24', '34.7x1'],
  }),
  mount('34.7x1', 'French freewheel thread, 34.7 × 1', [34.3, 34.7], 13, freewheels, {
    usualTeethCount: 16,
    nearly: ['1.375x24', '1.370x24'],
  }),
  mount('30x1', 'small BMX freewheel thread, 30 × 1', [29.6, 30], 13, `${freewheels}; ${sizes}`),
  mount('one-piece-driver', 'driver in one piece with its sprocket', null, 8, sizes),
  mount('three-lug', 'three-lug driver of hub gears and back-pedal hubs', null, null, 'from memory', {
    known: 'memory',
  }),
  // 10: archive of compatibility notes (seen); 9: from memory.
  mount('spline-freehub', 'splined freehub', null, 11, 'article on single-speed drives', {
    rareTeethCount: 9,
    remark: 'Small-sprocket bodies for 10 or 9 teeth have splines of their own.',
  }),
  mount('fixed-1.37x24', 'fixed sprocket thread with its own lockring', [34.5, 34.93], 11, 'from memory', {
    known: 'memory',
  }),
];
