import type { FaceKind } from '../../standards/faces/faceKinds.ts';
import type { InterfaceRow, SizeSpan } from '../../standards/faces/interfaceRow.ts';
import { axles } from '../../standards/interfaces/axles.ts';
import { brakeMounts } from '../../standards/interfaces/brakeMounts.ts';
import { chains } from '../../standards/interfaces/chains.ts';
import { clamps } from '../../standards/interfaces/clamps.ts';
import { driveThreads } from '../../standards/interfaces/driveThreads.ts';
import { headsets } from '../../standards/interfaces/headsets.ts';
import { pedals } from '../../standards/interfaces/pedals.ts';
import { ringMounts } from '../../standards/interfaces/ringMounts.ts';
import { seatposts } from '../../standards/interfaces/seatposts.ts';
import { shells } from '../../standards/interfaces/shells.ts';
import { spacings } from '../../standards/interfaces/spacings.ts';
import { spindles } from '../../standards/interfaces/spindles.ts';
import type { Face } from './face.ts';

const tables: readonly (readonly InterfaceRow[])[] = [
  shells,
  spindles,
  headsets,
  clamps,
  seatposts,
  axles,
  spacings,
  ringMounts,
  pedals,
  driveThreads,
  chains,
  brakeMounts,
];

const byKind = new Map<FaceKind, InterfaceRow[]>();
for (const row of tables.flat())
  for (const kind of Object.keys(row.faces) as FaceKind[])
    byKind.set(kind, [...(byKind.get(kind) ?? []), row]);

/** The standards a face of this kind may name. @example standardsFor('shell')[0]?.id //=> 'iso' */
export const standardsFor = (kind: FaceKind): readonly InterfaceRow[] => byKind.get(kind) ?? [];

const byName = new Map([...byKind].map(([kind, rows]) => [kind, new Map(rows.map((row) => [row.id, row]))]));

/** The row a face names, or undefined when it names none we know. */
export const standardOf = ({ kind, standard }: Pick<Face, 'kind' | 'standard'>): InterfaceRow | undefined =>
  standard === null ? undefined : byName.get(kind)?.get(standard);

/** A size of a table as a pair. @example spanOf(27.2) //=> [27.2, 27.2] */
export const spanOf = (span: SizeSpan): readonly [lo: number, hi: number] =>
  typeof span === 'number' ? [span, span] : span;
