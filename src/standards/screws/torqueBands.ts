import { positive } from '../../mechanics/range.ts';
import type { ScrewMaterial } from '../../mechanics/screws/preloadRefusal.ts';
import { SOLID_UP_TO_MM } from '../../mechanics/screws/torquePlausible.ts';
import type { JointKind } from '../jointKinds.ts';
import { threadNamed } from './threads.ts';
import { type BandOrigin, torqueBands } from './torqueBandRows.ts';

export { torqueBands };

/** One source's figures, N·m. */
export interface BandPrint {
  readonly loNm: number;
  readonly hiNm: number;
  readonly origin: BandOrigin;
}

/**
 * Torques printed for one make of a joint elsewhere. They are there to compare with, never to be applied in place of the
 * mark on the part.
 */
export interface TorqueBandRow {
  readonly joint: JointKind;
  /** Which make of the joint, in the words a mechanic picks it by; unique within its kind. */
  readonly variant: string;
  /** Threads it is for; `own` where the variant is a thread by itself, such as a lockring; null where no source names one. */
  readonly threads: readonly string[] | 'own' | null;
  /** Set where the figure is for screws of this material; otherwise it is for steel. */
  readonly screw?: ScrewMaterial;
  readonly prints: readonly BandPrint[];
}

/**
 * How well a band is founded: A printed documents of two origins or more, B of one, C none: it advises only.
 */
export type BandStrength = 'A' | 'B' | 'C';

/** What is known of the screws of a joint. */
export interface BandQuestion {
  /** As written down; anything the thread table does not know counts as not known. */
  readonly thread?: string | undefined;
  readonly variant?: string | undefined;
  readonly screw?: ScrewMaterial | undefined;
}

export type BandMatch =
  | { readonly is: 'one'; readonly row: TorqueBandRow }
  /** No printed figure for such a joint, or none for this thread. */
  | { readonly is: 'none' }
  | { readonly is: 'ask'; readonly what: 'thread' | 'variant'; readonly rows: readonly TorqueBandRow[] };

/** All bands for one kind of joint, in the order of the table; empty where none is known. @example bandsFor('pedal').length //=> 1 */
export const bandsFor = (joint: JointKind): readonly TorqueBandRow[] =>
  torqueBands.filter((row) => row.joint === joint);

/** Printed documents of separate origin among some prints. */
const documents = (prints: readonly BandPrint[]): number =>
  new Set(prints.filter(({ origin }) => origin.document).map(({ origin }) => origin)).size;

const strengthOfCount = (count: number): BandStrength => (count >= 2 ? 'A' : count === 1 ? 'B' : 'C');

/** How well a band is founded. @example strengthOf(bandsFor('pedal')[0]) //=> 'B' */
export const strengthOf = ({ prints }: TorqueBandRow): BandStrength => strengthOfCount(documents(prints));

function mayFit({ threads, screw }: TorqueBandRow, question: BandQuestion): boolean {
  const thread = question.thread === undefined ? undefined : threadNamed(question.thread);
  const other = question.screw === undefined || question.screw === 'unknown' ? undefined : question.screw;
  if (screw && other && screw !== other && !(screw === 'steel' && other === 'stainless')) return false;
  if (!thread || threads === null) return true;
  return threads === 'own' ? thread.diameterMm > SOLID_UP_TO_MM : threads.includes(thread.id);
}

/** The bands that what is known of the screws leaves open. @example bandsThatFit('rotor', { thread: 'M5' }).length //=> 1 */
export const bandsThatFit = (joint: JointKind, question: BandQuestion): readonly TorqueBandRow[] =>
  bandsFor(joint).filter((row) => mayFit(row, question));

/**
 * The band meant for a joint: matched by kind, thread and make. Nothing is pooled: where thread or make leave more than
 * one band open, the answer is what to ask.
 * @param joint its kind
 * @param question what is known of its screws
 * @example bandFor('rotor', { thread: 'M5' }) //=> { is: 'one', row: { variant: 'six bolts', … } }
 */
export function bandFor(joint: JointKind, question: BandQuestion): BandMatch {
  const rows = bandsFor(joint);
  const fitting = bandsThatFit(joint, question);
  const chosen = rows.find(({ variant }) => variant === question.variant);
  if (chosen && !fitting.includes(chosen)) return { is: 'none' };
  const [first, ...others] = chosen ? [chosen] : fitting;
  if (!first) return { is: 'none' };
  if (others.length > 0) return { is: 'ask', what: 'variant', rows: fitting };
  const knowsThread = question.thread !== undefined && threadNamed(question.thread) !== undefined;
  return Array.isArray(first.threads) && !knowsThread
    ? { is: 'ask', what: 'thread', rows: [first] }
    : { is: 'one', row: first };
}

export interface BandPlace {
  readonly place: 'inside' | 'below' | 'between' | 'above';
  /** Foundation of the prints the torque lies inside of. */
  readonly strength: BandStrength;
}

/**
 * Where a torque lies in a band.
 * @param nm N·m, > 0
 * @throws RangeError when nm is not positive
 * @returns the place, and how well the figures it lies inside of are founded
 * @example placeIn(bandsFor('pedal')[0], 38) //=> { place: 'inside', strength: 'B' }
 */
export function placeIn({ prints }: TorqueBandRow, nm: number): BandPlace {
  positive({ nm });
  const around = prints.filter(({ loNm, hiNm }) => nm >= loNm && nm <= hiNm);
  const strength = strengthOfCount(documents(around));
  if (around.length > 0) return { place: 'inside', strength };
  if (prints.every(({ loNm }) => nm < loNm)) return { place: 'below', strength };
  return { place: prints.every(({ hiNm }) => nm > hiNm) ? 'above' : 'between', strength };
}
