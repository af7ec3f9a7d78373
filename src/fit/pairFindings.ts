import { type Links, linksOf } from './bridges/links.ts';
import { mates } from './bridges/mates.ts';
import { ruleFor } from './bridges/meet.ts';
import { faceInPile } from './faces/faceInPile.ts';
import { type Finding, findingIdOf } from './finding.ts';
import { bridgingKinds } from './partKinds.ts';
import { mayTouch, type PilePart, shelfOf } from './pile.ts';
import { asksOfPair } from './placed.ts';
import { withWidthBetween } from './wholes/widthBetween.ts';

/** Every joint two parts can make, judged. Faces that mate with nothing of the other part leave no trace. */
export function findingsBetween(
  one: PilePart,
  other: PilePart,
  parts: readonly PilePart[],
  links: Links,
): Finding[] {
  if (!mayTouch(one, other)) return [];
  const found = one.faces.flatMap((oneFace) =>
    other.faces.flatMap((otherFace) => {
      const rule = ruleFor(oneFace.kind, otherFace.kind)?.rule;
      const verdict =
        rule && mates(faceInPile(one, oneFace, parts), faceInPile(other, otherFace, parts), links);
      if (!verdict) return [];
      const { gapMm: _gap, asks, ...answer } = verdict;
      const faces = [
        { partId: one.partId, faceId: oneFace.faceId },
        { partId: other.partId, faceId: otherFace.faceId },
      ];
      const { topic } = rule;
      return [
        {
          ...answer,
          asks: asksOfPair(asks, { partId: one.partId, kind: oneFace.kind }, other),
          topic,
          findingId: findingIdOf(topic, faces),
          faces,
        },
      ];
    }),
  );
  return found.map((finding) => withWidthBetween(finding, found, [one, other]));
}

/** The joints of a whole pile, part against part. Adapters and shims stand aside as the shelf. */
export function pairFindings(parts: readonly PilePart[]): Finding[] {
  const links = linksOf(shelfOf(parts));
  const joined = parts.filter(({ kind }) => !bridgingKinds.includes(kind));
  return joined.flatMap((one, index) =>
    joined.slice(index + 1).flatMap((other) => findingsBetween(one, other, joined, links)),
  );
}
