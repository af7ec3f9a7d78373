import { allotShelf } from './allotShelf.ts';
import type { Finding } from './finding.ts';
import { pairFindings } from './pairFindings.ts';
import { bridgingKinds } from './partKinds.ts';
import type { PilePart } from './pile.ts';
import { withShorteningNotes } from './wholes/hubShorteningNotes.ts';
import { ofOnePart, ofSeveralParts, ofTwoParts } from './wholes/wholes.ts';

export interface PileCheck {
  /** What goes together as it is. */
  fitting: readonly Finding[];
  /** What needs a bridge, a one-way change, or another part. */
  findings: readonly Finding[];
  /** What a measurement would settle. */
  toMeasure: readonly Finding[];
}

/**
 * The whole pile of parts of one bike: every joint two of them make, and what follows from several together.
 * Adapters and shims in the pile are taken as the shelf that bridges may use, each for one joint.
 * @param parts one frame and whatever lies beside it; several candidates for one place are each judged
 * @returns findings with stable ids, in the order of the rules
 * @throws RangeError when a part id or a face id of one part occurs twice
 * @example checkPile([frame120, hub130]).findings[0]?.outcome //=> 'one-way-only'
 */
export function checkPile(parts: readonly PilePart[]): PileCheck {
  refuseTwins(parts);
  // What goes between others has faces of the same kinds, and is neither the steerer nor the hub of a bike.
  const joined = parts.filter(({ kind }) => !bridgingKinds.includes(kind));
  const all = [
    ...ofOnePart.flatMap((judge) => judge(parts)),
    ...allotShelf(pairFindings(parts)).map((finding) => withShorteningNotes(finding, parts)),
    ...[...ofTwoParts, ...ofSeveralParts].flatMap(({ findings }) => findings(joined)),
  ];
  return {
    fitting: all.filter(({ outcome }) => outcome === 'fits'),
    findings: all.filter(({ outcome }) => outcome !== 'fits' && outcome !== 'not-known'),
    toMeasure: all.filter(({ outcome }) => outcome === 'not-known'),
  };
}

/** @throws RangeError when a part id, or a face id of one part, occurs twice */
export function refuseTwins(parts: readonly PilePart[]): void {
  const partIds = parts.map(({ partId }) => partId);
  if (new Set(partIds).size !== partIds.length) throw new RangeError('a part lies in the pile twice');
  for (const { partId, faces } of parts)
    if (new Set(faces.map(({ faceId }) => faceId)).size !== faces.length)
      throw new RangeError(`two faces of ${partId} share an id`);
}
