import type { FaceKind } from '../faces/faceKinds.ts';
import type { Known, Sourced } from '../known.ts';

/** One side of an adapter: it behaves exactly like that face of an ordinary part. */
export interface AdapterFace {
  kind: FaceKind;
  standard?: string;
  nominal?: Readonly<Record<string, number>>;
  traits?: Readonly<Record<string, string>>;
}

export interface AdapterRow extends Sourced {
  id: string;
  label: string;
  sort: 'adapter' | 'shim' | 'sleeve';
  faces: readonly [AdapterFace, AdapterFace];
  /** False: it does not come out again without harm to the part it sits in. */
  reversible: boolean;
  /** Radial wall of a shim or sleeve, mm. */
  wallMm?: number;
  caution: string;
}

/**
 * A tube between a bigger hole and a smaller rod. Its outside stands for the rod in the big hole, its inside
 * for the small hole around the rod; the wall is half the difference.
 */
export function tube(
  sort: 'shim' | 'sleeve',
  what: string,
  hole: { kind: FaceKind; key: string },
  rod: { kind: FaceKind; key: string },
  outsideMm: number,
  insideMm: number,
  rest: { caution: string; source: string; known: Known; rodTraits?: Record<string, string> },
): AdapterRow {
  return {
    id: `${what.replaceAll(' ', '-')}-${outsideMm}-${insideMm}`,
    label: `${what} ${outsideMm} → ${insideMm}`,
    sort,
    faces: [
      { kind: rod.kind, nominal: { [rod.key]: outsideMm }, traits: rest.rodTraits },
      { kind: hole.kind, nominal: { [hole.key]: insideMm } },
    ],
    reversible: true,
    wallMm: Math.round(((outsideMm - insideMm) / 2) * 1000) / 1000,
    caution: rest.caution,
    source: rest.source,
    known: rest.known,
  };
}
