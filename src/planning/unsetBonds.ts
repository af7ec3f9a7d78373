import type { JointRow, WaitRow } from '../journal/rows.ts';

/** Whether a joint holds by a compound in its bore: it is written down so, or such a compound went on. */
export const isBonded = ({
  between,
  locked,
}: Pick<JointRow, 'between'> & { locked?: JointRow['locked'] }): boolean =>
  between.some(({ kind }) => kind === 'retaining-compound') || locked?.grade.startsWith('retaining') === true;

/** A bond that does not hold yet, and since when it is on; without an instant, nothing was put on. */
export interface UnsetBond {
  jointId: string;
  name: string;
  sinceMs?: number;
}

type Bonding = Pick<WaitRow, 'jointId' | 'waitKind' | 'startedAtMs' | 'dueAtMs' | 'endedAtMs' | 'outcome'>;

/** The bond in one joint, where it is not set at an instant. */
function unsetIn(joint: JointRow, waits: readonly Bonding[], atMs: number): UnsetBond | undefined {
  const { jointId, name, locked } = joint;
  const glue = waits.filter((wait) => wait.jointId === jointId && wait.waitKind === 'adhesive');
  const cures = isBonded(joint)
    ? waits.filter((wait) => wait.jointId === jointId && wait.waitKind === 'cure')
    : [];
  const [last] = [...glue, ...cures].toSorted((a, b) => b.startedAtMs - a.startedAtMs);
  if (!last) return isBonded(joint) && !locked ? { jointId, name } : undefined;
  const set = last.endedAtMs === undefined ? (last.dueAtMs ?? atMs) <= atMs : last.outcome !== 'cut-short';
  return set ? undefined : { jointId, name, sinceMs: last.startedAtMs };
}

const partsIn = ({ partIds, between }: JointRow): string[] => [
  ...partIds,
  ...between.flatMap(({ partId }) => (partId ? [partId] : [])),
];

/**
 * Bonds that work on a joint would load before they have set: bonds of other joints that share a part with it. What holds
 * the whole bike, as a frame or a fork, is shared by most joints and loads only a bond of the same kind of joint.
 * @param joint what is about to be tightened or pressed
 * @param bearers ids of the frame and the fork
 * @param atMs the instant, ms UTC
 * @example unsetBonds(cups, [], [], new Set(), 0) //=> []
 */
export function unsetBonds(
  joint: JointRow,
  joints: readonly JointRow[],
  waits: readonly Bonding[],
  bearers: ReadonlySet<string>,
  atMs: number,
): UnsetBond[] {
  const mine = new Set(partsIn(joint));
  return joints
    .filter(({ jointId, state }) => jointId !== joint.jointId && state !== 'apart')
    .filter((other) => {
      const shared = partsIn(other).filter((partId) => mine.has(partId));
      return shared.some((partId) => !bearers.has(partId) || other.kind === joint.kind);
    })
    .flatMap((other) => unsetIn(other, waits, atMs) ?? []);
}
