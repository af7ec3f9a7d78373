import { type PartKind, partKinds } from '../fit/partKinds.ts';
import type { PartRow } from '../journal/rows.ts';

/**
 * What a list says of a part under its name: label, kind, and how often it was cut.
 * @example partLine({ label: 'F-004', kind: 'stem', changes: [] }) //=> 'F-004, stem'
 */
export function partLine({ label, kind, changes }: Pick<PartRow, 'label' | 'kind' | 'changes'>): string {
  const kindLabel = partKinds[kind as PartKind]?.label ?? kind;
  const cuts = changes.length;
  return [label, kindLabel, cuts > 0 && (cuts === 1 ? 'changed once' : `changed ${cuts} times`)]
    .filter(Boolean)
    .join(', ');
}
