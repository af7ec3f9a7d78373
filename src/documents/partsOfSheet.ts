import type { AsBuilt } from '../journal/answers.ts';
import type { Id } from '../journal/entries.ts';

/**
 * The parts that the joints of a build sheet speak of, each as often as it is spoken of; some have left the bike.
 * @example partsOfSheet({ joints: [] }) //=> []
 */
export const partsOfSheet = ({ joints }: Pick<AsBuilt, 'joints'>): Id[] =>
  joints.flatMap(({ partIds, between, targets }) => [
    ...partIds,
    ...[...between, ...targets].flatMap(({ partId }) => partId ?? []),
  ]);
