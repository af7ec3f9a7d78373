import type { Entry } from '../../journal/entries.ts';

interface Named {
  bikeId?: string;
  partId?: string;
  partIds?: string[];
  toolId?: string;
}

/**
 * The history in which what was just written stands: that of its bike, else of its part or tool.
 * @returns undefined where it stands in none, as a change of the settings
 * @example historyPlace([{ type: 'part-added', partId: 'p1', place: { on: 'shelf' }, … }]) //=> 'p:p1'
 */
export function historyPlace(entries: readonly Entry[]): string | undefined {
  for (const entry of entries) {
    const { bikeId, partIds, partId = partIds?.[0], toolId } = entry as Named;
    if (bikeId !== undefined) return `b:${bikeId}`;
    if (partId !== undefined) return `p:${partId}`;
    if (toolId !== undefined) return `t:${toolId}`;
  }
  return undefined;
}
