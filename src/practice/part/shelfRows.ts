import type { PartRow } from '../../journal/rows.ts';

export type ShelfGroup = 'shelf' | 'quarantine' | 'gone';

export const groupTitles: Record<ShelfGroup, string> = {
  shelf: 'On the shelf',
  quarantine: 'In quarantine',
  gone: 'Scrapped or sold',
};

/** The group a part on no bike stands in; undefined for one on a bike. */
export function groupOf({ place }: Pick<PartRow, 'place'>): ShelfGroup | undefined {
  if (place.on === 'bike') return undefined;
  return place.on === 'scrapped' || place.on === 'sold' ? 'gone' : place.on;
}

export type ShelfRow =
  | { is: 'heading'; group: ShelfGroup; count: number }
  | { is: 'part'; part: PartRow; group: ShelfGroup };

/** What a search looks through. */
function soughtIn({ name, label, kind, serial = '', place }: PartRow, kindLabel: string): string {
  const tag = place.on === 'shelf' ? (place.tag ?? '') : '';
  return [name, label, kindLabel, kind, serial, tag].join(' ').toLocaleLowerCase();
}

/**
 * The rows of the shelf: parts under the heading of their group, by label in the order of their numbers.
 * @param sought words that must all be found in name, label, kind, serial number or tag
 * @param kind a part kind, or undefined for all
 * @param labelOf how a kind is called
 */
export function shelfRows(
  parts: readonly PartRow[],
  sought: string,
  kind: string | undefined,
  labelOf: (kind: string) => string,
): ShelfRow[] {
  const words = sought.toLocaleLowerCase().split(/\s+/).filter(Boolean);
  const shown = parts.filter((part) => {
    if (kind !== undefined && part.kind !== kind) return false;
    const text = soughtIn(part, labelOf(part.kind));
    return words.every((word) => text.includes(word));
  });
  const sorted = shown.toSorted(
    (a, b) => a.label.localeCompare(b.label, undefined, { numeric: true }) || a.name.localeCompare(b.name),
  );
  return (Object.keys(groupTitles) as ShelfGroup[]).flatMap((group): ShelfRow[] => {
    const inIt = sorted.filter((part) => groupOf(part) === group);
    if (inIt.length === 0) return [];
    return [
      { is: 'heading', group, count: inIt.length },
      ...inIt.map((part): ShelfRow => ({ is: 'part', part, group })),
    ];
  });
}
