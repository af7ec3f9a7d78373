import type { CutKind, OneWayChange, OpenItem } from './entries.ts';
import type { JointRow, PartRow } from './rows.ts';

/** Ways of changing that leave less than there was. */
const takesAway = new Set<CutKind>(['file', 'saw', 'ream', 'grind', 'drill', 'turn', 'tap']);

/** Parts that carry the rider whatever joints are written down. */
const carries = new Set(['frame', 'fork', 'stem', 'bar', 'cranks']);

/**
 * What was left out when a change for good was logged in a hurry; nothing where both sizes and the reason are known,
 * since then it was written down whole.
 * @example unsaidOf({ cut: 'file', where: 'dropout', amount: { value: 2, unit: 'mm', typed: '2' } })
 *   //=> ['size before', 'size after', 'why', 'what is left', 'what to look for']
 */
export function unsaidOf(change: OneWayChange): string[] {
  const { cut, before, after, why, left, leftWords, inspection } = change;
  if (before && after && why) return [];
  return [
    ...(before ? [] : ['size before']),
    ...(after ? [] : ['size after']),
    ...(why ? [] : ['why']),
    ...(takesAway.has(cut) && !left && !leftWords?.trim() ? ['what is left'] : []),
    ...(inspection ? [] : ['what to look for']),
  ];
}

/**
 * Changes for good that are not fully written down, as a release names them. On a part that can throw the rider they stop
 * the full release and let the first short ride go.
 */
export function openChanges(parts: readonly PartRow[], joints: readonly JointRow[]): OpenItem[] {
  const held = joints.filter(({ matters, state }) => matters && state !== 'apart');
  return parts.flatMap(({ partId, name, kind, changes }) => {
    const grave =
      carries.has(kind) ||
      held.some(({ partIds, between }) => [...partIds, ...between.map((one) => one.partId)].includes(partId));
    return changes.flatMap((change): OpenItem[] => {
      const unsaid = unsaidOf(change);
      if (unsaid.length === 0) return [];
      const words = `Permanent change not fully logged: ${name}, ${change.where}: ${unsaid.join(', ')}`;
      return [{ what: 'change-open', words, partId, blocks: false, ...(grave ? { blocksFull: true } : {}) }];
    });
  });
}
