import type { Elastic } from '../../mechanics/clamps/pressFit.ts';
import type { Sourced } from '../known.ts';

export interface ElasticMaterialRow extends Elastic, Sourced {
  readonly label: string;
  /** Linear expansion per kelvin. */
  readonly expansionPerK: number;
}

const textbook = {
  source: 'materials tables of machine design textbooks, from memory',
  known: 'memory',
} as const;

/** Stiffness and expansion of what shells, cups and sleeves are made of. */
export const elasticMaterials = {
  steel: { label: 'Steel', modulusGpa: 205, poisson: 0.29, expansionPerK: 11.7e-6, ...textbook },
  stainless: {
    label: 'Stainless steel',
    modulusGpa: 193,
    poisson: 0.29,
    expansionPerK: 16.5e-6,
    ...textbook,
  },
  aluminium: { label: 'Aluminium', modulusGpa: 70, poisson: 0.33, expansionPerK: 23e-6, ...textbook },
  titanium: { label: 'Titanium', modulusGpa: 110, poisson: 0.33, expansionPerK: 8.8e-6, ...textbook },
  brass: { label: 'Brass', modulusGpa: 105, poisson: 0.34, expansionPerK: 19e-6, ...textbook },
} as const satisfies Record<string, ElasticMaterialRow>;

export type ElasticMaterial = keyof typeof elasticMaterials;
