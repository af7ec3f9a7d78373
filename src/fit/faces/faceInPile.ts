import { faceInPlace, mayTouch, type PilePart } from '../pile.ts';
import type { Face } from './face.ts';
import { readingOf } from './reading.ts';

/** The rotor a caliper has to stand over comes from another part of the same wheel. */
function withRotor(part: PilePart, face: Face, parts: readonly PilePart[]): Face {
  if (face.kind !== 'caliper-mount' || face.nominal['rotorMm'] !== undefined) return face;
  const sizes = parts
    .filter((rotor) => rotor.kind === 'rotor' && mayTouch(rotor, part))
    .flatMap((rotor) => rotor.faces.filter(({ kind }) => kind === 'rotor-size'))
    .map((size) => readingOf(size, 'diameterMm')?.mid);
  const [only, ...more] = new Set(sizes.filter((size) => size !== undefined));
  return only === undefined || more.length > 0
    ? face
    : { ...face, nominal: { ...face.nominal, rotorMm: only } };
}

/**
 * A face with all its place among these parts tells: the end of the bike it is at, and for a caliper the rotor.
 * @example faceInPile(caliper, caliperMount, [rotor180]).nominal //=> { rotorMm: 180 }
 */
export const faceInPile = (part: PilePart, face: Face, parts: readonly PilePart[]): Face =>
  faceInPlace(part, withRotor(part, face, parts));
