import type { AdapterFace } from '../../standards/adapters/adapterRow.ts';
import { adapters } from '../../standards/adapters/adapters.ts';
import type { Known } from '../../standards/known.ts';
import type { Face } from '../faces/face.ts';

/** Something with two faces that may go between two others: a row of the table, or a part on the shelf. */
export interface Bridging {
  id: string;
  label: string;
  sort: 'adapter' | 'shim' | 'sleeve';
  /** The part itself, when it is there already. */
  partId: string | null;
  faces: readonly [Face, Face];
  reversible: boolean;
  caution: string;
  source: string;
  known: Known;
}

const asFace = (id: string, index: number, face: AdapterFace): Face => ({
  faceId: `${id}#${index}`,
  kind: face.kind,
  standard: face.standard ?? null,
  nominal: { ...face.nominal },
  measured: {},
  ...(face.traits ? { traits: { ...face.traits } } : {}),
});

/** Every row of the adapter table as something that can go between two faces. */
export const tableAdapters: readonly Bridging[] = adapters.map((row) => ({
  id: row.id,
  label: row.label,
  sort: row.sort,
  partId: null,
  faces: [asFace(row.id, 0, row.faces[0]), asFace(row.id, 1, row.faces[1])],
  reversible: row.reversible,
  caution: row.caution,
  source: row.source,
  known: row.known,
}));

/** A part with two faces as something that can go between; undefined when it does not have exactly two. */
export function bridgingPart(part: {
  partId: string;
  name: string;
  kind: string;
  faces: readonly Face[];
}): Bridging | undefined {
  const [first, second, ...more] = part.faces;
  if (!first || !second || more.length > 0) return undefined;
  return {
    id: `part:${part.partId}`,
    label: part.name,
    sort: part.kind === 'shim' || part.kind === 'sleeve' ? part.kind : 'adapter',
    partId: part.partId,
    faces: [first, second],
    reversible: true,
    caution: 'From your own shelf: look at it for cracks and burrs first.',
    source: 'measured on the part',
    known: 'seen',
  };
}
