import type { DimensionRow } from '../../standards/faces/faceKind.ts';
import { type FaceKind, faceKindIds, faceKinds } from '../../standards/faces/faceKinds.ts';

const rows = new Map<FaceKind, Map<string, DimensionRow>>(
  faceKindIds.map((kind) => [kind, new Map(faceKinds[kind].dimensions.map((row) => [row.key, row]))]),
);

/** The row of a size in the table of face kinds, or undefined when such a face has no such size. */
export const dimensionOf = (kind: FaceKind, key: string): DimensionRow | undefined =>
  rows.get(kind)?.get(key);

/**
 * Whether a size can be that of such a face at all. What cannot is kept as it was typed, and no calculation uses it.
 * @param value in the unit the key ends in
 * @example isPlausible('steerer', 'diameterMm', 286) //=> false
 */
export function isPlausible(kind: FaceKind, key: string, value: number): boolean {
  const row = dimensionOf(kind, key);
  if (!row) return Number.isFinite(value);
  if (key.endsWith('Count') && !Number.isInteger(value)) return false;
  return value >= row.min && value <= row.max;
}
