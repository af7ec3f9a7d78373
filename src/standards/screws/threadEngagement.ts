import type { FemaleMaterial } from '../../mechanics/screws/preloadRefusal.ts';
import type { Sourced } from '../known.ts';

/** How deep a steel screw should reach, in multiples of its diameter, and how strong the female material may be taken. */
export interface EngagementRow extends Sourced {
  readonly female: FemaleMaterial;
  readonly diameters: number;
  /** Tensile strength for the stripping comparison, MPa, low end of the usual alloys. */
  readonly tensileMPa: number;
  /** Share of the ordinary torque that a thread in this material stands. */
  readonly torqueShare: number;
}

const rule = { source: 'common practice, no source', known: 'memory' } as const;

export const engagementRules: readonly EngagementRow[] = [
  { female: 'steel', diameters: 1, tensileMPa: 500, torqueShare: 1, ...rule },
  { female: 'stainless', diameters: 1, tensileMPa: 500, torqueShare: 1, ...rule },
  {
    female: 'cast-iron',
    diameters: 1.25,
    tensileMPa: 250,
    torqueShare: 1,
    source: 'engine manual, fastener section (1.25 diameters); strength from memory',
    known: 'seen',
  },
  {
    female: 'brass',
    diameters: 1.5,
    tensileMPa: 350,
    torqueShare: 1,
    source: 'two general engineering pages (1.5 diameters); strength from memory',
    known: 'seen',
  },
  {
    female: 'aluminium',
    diameters: 2,
    tensileMPa: 250,
    torqueShare: 0.7,
    source: 'engine manual and a fastener chart (two diameters, 30 % less torque); strength from memory',
    known: 'seen',
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
