import type { Face } from './face.ts';
import { type Finding, findingIdOf } from './finding.ts';
import { type Links, linksOf } from './links.ts';
import { mates } from './mates.ts';
import { ruleFor } from './meet.ts';
import { bridgingKinds } from './partKinds.ts';
import { faceInPlace, mayTouch, type PilePart, shelfOf } from './pile.ts';
import { readingOf } from './reading.ts';

/** The rotor a caliper has to stand over comes from another part of the same wheel. */
function withRotor(face: Face, part: PilePart, parts: readonly PilePart[]): Face {
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

/** Every joint two parts can make, judged. Faces that mate with nothing of the other part leave no trace. */
export function findingsBetween(
  one: PilePart,
  other: PilePart,
  parts: readonly PilePart[],
  links: Links,
): Finding[] {
  if (!mayTouch(one, other)) return [];
  return one.faces.flatMap((oneFace) =>
    other.faces.flatMap((otherFace) => {
      const found = ruleFor(oneFace.kind, otherFace.kind);
      if (!found) return [];
      const verdict = mates(
        faceInPlace(one, withRotor(oneFace, one, parts)),
        faceInPlace(other, withRotor(otherFace, other, parts)),
        links,
      );
      if (!verdict) return [];
      const { gapMm: _gap, ...answer } = verdict;
      const faces = [
        { partId: one.partId, faceId: oneFace.faceId },
        { partId: other.partId, faceId: otherFace.faceId },
      ];
      const { topic } = found.rule;
      return [{ ...answer, topic, findingId: findingIdOf(topic, faces), faces }];
    }),
  );
}

/** The joints of a whole pile, part against part. Adapters and shims stand aside as the shelf. */
export function pairFindings(parts: readonly PilePart[]): Finding[] {
  const links = linksOf(shelfOf(parts));
  const joined = parts.filter(({ kind }) => !bridgingKinds.includes(kind));
  return joined.flatMap((one, index) =>
    joined.slice(index + 1).flatMap((other) => findingsBetween(one, other, joined, links)),
  );
}
