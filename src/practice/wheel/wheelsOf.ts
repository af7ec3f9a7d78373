import type { WheelPart } from '../../journal/entries.ts';
import type { PartRow, WheelRow } from '../../journal/rows.ts';

/**
 * The hub, rim and spokes of a bike, where it has exactly one of a kind.
 * @param parts of the bike
 * @example firstOfKind([hub, rim]) //=> { hub: 'h', rim: 'r' }
 */
export function firstOfKind(parts: readonly PartRow[]): Partial<Record<'hub' | 'rim' | 'spokes', string>> {
  const only = (...kinds: string[]) => {
    const fitting = parts.filter(({ kind }) => kinds.includes(kind));
    return fitting.length === 1 ? fitting[0]?.partId : undefined;
  };
  const found = { hub: only('front-hub', 'rear-hub'), rim: only('rim'), spokes: only('spoke-set') };
  return Object.fromEntries(Object.entries(found).filter(([, partId]) => partId !== undefined));
}

/** Whether a wheel has one of these parts in it. */
const holdsAny = (parts: readonly WheelPart[], partIds: readonly string[]): boolean =>
  parts.some(({ partId }) => partIds.includes(partId));

/**
 * The wheels that are made of some parts: those of a bike, or of a joint.
 * @example wheelsOf([wheel], ['hub-1']).length //=> 1
 */
export const wheelsOf = (wheels: readonly WheelRow[], partIds: readonly string[]): WheelRow[] =>
  wheels.filter(({ parts }) => holdsAny(parts, partIds));
