import { tableAdapters } from '../../fit/bridges/shelfAdapter.ts';
import { type WhyNot, whyNot } from '../../fit/bridges/whyNot.ts';
import { faceInPile } from '../../fit/faces/faceInPile.ts';
import type { Finding } from '../../fit/finding.ts';
import { type PilePart, shelfOf } from '../../fit/pile.ts';

export interface NearMiss {
  adapterId: string;
  label: string;
  sentence: string;
}

/** More than this is a catalogue, not an answer. */
const MOST = 12;

const isNear = ({ reason }: WhyNot): boolean =>
  reason === 'first-does-not-sit' || reason === 'second-does-not-sit';

/**
 * Pieces of the right sort that were not offered for a joint of two faces, each with the reason.
 * @returns at most twelve; none for findings about more than two faces
 */
export function nearMisses(finding: Finding, parts: readonly PilePart[]): NearMiss[] {
  const [one, other, ...more] = finding.faces.map(({ partId, faceId }) => {
    const part = parts.find((candidate) => candidate.partId === partId);
    const face = part?.faces.find((candidate) => candidate.faceId === faceId);
    return part && face ? { part, face: faceInPile(part, face, parts) } : undefined;
  });
  if (!one || !other || more.length > 0) return [];
  const offered = new Set(finding.bridges.flatMap(({ links }) => links.map(({ adapter }) => adapter.id)));
  return [...shelfOf(parts), ...tableAdapters]
    .filter(({ id }) => !offered.has(id))
    .flatMap((adapter): NearMiss[] => {
      const why = whyNot(one.face, other.face, adapter);
      if (!isNear(why)) return [];
      const at = why.reason === 'first-does-not-sit' ? one.part.name : other.part.name;
      return [{ adapterId: adapter.id, label: adapter.label, sentence: `At ${at}: ${why.because}` }];
    })
    .slice(0, MOST);
}
