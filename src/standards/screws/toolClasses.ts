import type { CheckInterval, ToolTolerance } from '../../mechanics/screws/wrenchFitness.ts';
import { type Founded, founded } from '../known.ts';

export type ToolClass = 'click' | 'click-fixed' | 'beam' | 'dial' | 'electronic' | 'screwdriver' | 'by-hand';

export interface ToolClassRow extends Founded {
  readonly toolClass: ToolClass;
  readonly label: string;
  /** Absent where the class states no error. */
  readonly tolerance?: ToolTolerance;
  readonly check?: CheckInterval;
  /** Scatter of the preload to expect even with a perfect thread, as a fraction. */
  readonly scatter?: number;
}

const iso6789 = founded('ISO 6789-1 by class of tool, from memory', 'memory', 0);
/** 4 % above 10 N·m, 6 % at or below, checked from a fifth of the scale on. */
const setting = founded(
  'ISO 6789 as a tool maker’s manual prints it; a fifth of the scale by a calibration laboratory too',
  'seen',
  1,
);
const yearly = { months: 12, cycles: 5000 } as const;
const fourPercent = { upTo10Nm: 0.06, above10Nm: 0.04, usableFrom: 0.2 } as const;
const sixPercent = { upTo10Nm: 0.06, above10Nm: 0.06, usableFrom: 0.2 } as const;

/** Torque tools by kind, with the error their class permits. */
export const toolClasses: readonly ToolClassRow[] = [
  { toolClass: 'click', label: 'Click wrench', tolerance: fourPercent, check: yearly, ...setting },
  {
    toolClass: 'click-fixed',
    label: 'Preset key, one torque',
    tolerance: sixPercent,
    check: yearly,
    ...iso6789,
  },
  { toolClass: 'beam', label: 'Beam wrench', tolerance: sixPercent, check: yearly, ...iso6789 },
  { toolClass: 'dial', label: 'Dial wrench', tolerance: fourPercent, check: yearly, ...iso6789 },
  { toolClass: 'electronic', label: 'Electronic wrench', tolerance: fourPercent, check: yearly, ...iso6789 },
  { toolClass: 'screwdriver', label: 'Torque screwdriver', tolerance: sixPercent, check: yearly, ...iso6789 },
  {
    toolClass: 'by-hand',
    label: 'By hand',
    scatter: 0.35,
    ...founded('handbook table of preload accuracy as a course text prints it: by feel ± 35 %', 'seen', 1),
  },
];
