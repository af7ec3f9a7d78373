import type { Sourced } from '../known.ts';

/** What a screw head bears on: outer diameter of the face and the usual clearance hole. */
export interface BearingRow extends Sourced {
  readonly thread: string;
  readonly hexHeadMm: number;
  readonly socketHeadMm: number;
  readonly holeMm: number;
}

const sizes = {
  source: 'ISO 4014 and ISO 4762 bearing faces, ISO 273 medium holes',
  known: 'memory',
} as const;

/** Bearing faces of ordinary heads; a washer with its own outer diameter overrides them. */
export const bearingFaces: readonly BearingRow[] = [
  { thread: 'M4', hexHeadMm: 5.9, socketHeadMm: 7, holeMm: 4.5, ...sizes },
  { thread: 'M5', hexHeadMm: 6.9, socketHeadMm: 8.5, holeMm: 5.5, ...sizes },
  { thread: 'M6', hexHeadMm: 8.9, socketHeadMm: 10, holeMm: 6.6, ...sizes },
  { thread: 'M8', hexHeadMm: 11.6, socketHeadMm: 13, holeMm: 9, ...sizes },
  { thread: 'M10', hexHeadMm: 14.6, socketHeadMm: 16, holeMm: 11, ...sizes },
  { thread: 'M12', hexHeadMm: 16.6, socketHeadMm: 18, holeMm: 13.5, ...sizes },
];
