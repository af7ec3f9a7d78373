import type { FemaleMaterial } from '../../mechanics/screws/preloadRefusal.ts';
import { type Founded, founded } from '../known.ts';

/** How deep a steel screw should reach, in multiples of its diameter, and how strong the female material may be taken. */
export interface EngagementRow extends Founded {
  readonly female: FemaleMaterial;
  readonly diameters: number;
  /** Tensile strength for the stripping comparison, MPa, low end of the usual alloys. */
  readonly tensileMPa: number;
  /** Share of the ordinary torque that a thread in this material stands. */
  readonly torqueShare: number;
}

const rule = founded('common practice, from memory', 'memory', 0);
const hardMetals = founded(
  'a workmanship standard and an engineering page (one diameter in hard metals); strength from memory',
  'seen',
  2,
);

const stainlessRule = founded('a workmanship standard (one diameter); strength from memory', 'seen', 1);

export const engagementRules: readonly EngagementRow[] = [
  { female: 'steel', diameters: 1, tensileMPa: 500, torqueShare: 1, ...hardMetals },
  { female: 'stainless', diameters: 1, tensileMPa: 500, torqueShare: 1, ...stainlessRule },
  {
    female: 'cast-iron',
    diameters: 1.25,
    tensileMPa: 250,
    torqueShare: 1,
    ...founded('engine manual, fastener section (1.25 diameters); strength from memory', 'seen', 1),
  },
  {
    female: 'brass',
    diameters: 1.5,
    tensileMPa: 350,
    torqueShare: 1,
    ...founded('two general engineering pages (1.5 diameters); strength from memory', 'seen', 2),
  },
  {
    female: 'aluminium',
    diameters: 2,
    tensileMPa: 250,
    torqueShare: 0.7,
    ...founded(
      'engine manual and a fastener chart (two diameters, 30 % less torque); strength from memory',
      'seen',
      2,
    ),
  },
  { female: 'magnesium', diameters: 2.5, tensileMPa: 200, torqueShare: 0.6, ...rule },
  { female: 'titanium', diameters: 1, tensileMPa: 500, torqueShare: 1, ...rule },
];

/**
 * The rule for a female material.
 * @returns undefined where there is none (plastic, unknown)
 * @example engagementRule('aluminium')?.diameters //=> 2
 */
export const engagementRule = (female: FemaleMaterial): EngagementRow | undefined =>
  engagementRules.find((row) => row.female === female);
