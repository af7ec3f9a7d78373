import type { JointRow, PartRow } from '../journal/rows.ts';
import type { HeadsetCap } from '../standards/jointWork.ts';
import type { JointToBuild } from './stepOrder.ts';
import { isBonded } from './unsetBonds.ts';

/** A part as far as it tells what has to be done at its joints. */
export type TellingPart = Pick<PartRow, 'partId' | 'name' | 'kind' | 'faces'>;

type Joined = Pick<JointRow, 'jointId' | 'name' | 'kind' | 'partIds' | 'between' | 'fasteners' | 'targets'>;

const allFaces = (parts: readonly TellingPart[]) => parts.flatMap(({ faces = [] }) => faces);

/**
 * Whether the bearings of a headset drop in and are not pressed: the code of its seats begins with IS.
 * @example dropsIn([]) //=> false
 */
export const dropsIn = (parts: readonly TellingPart[]): boolean =>
  allFaces(parts).some(
    ({ kind, standard }) =>
      (kind.startsWith('headset-cup') || kind.startsWith('head-tube')) && standard?.startsWith('IS') === true,
  );

/**
 * How the play of a headset is taken up, by the steerer and the cap.
 * @example headsetCap([]) //=> 'cap'
 */
export function headsetCap(parts: readonly TellingPart[]): HeadsetCap {
  const faces = allFaces(parts);
  if (faces.some(({ kind, traits }) => kind === 'steerer' && traits?.['tube'] === 'threaded'))
    return 'locknut';
  if (faces.some(({ kind }) => kind === 'quill')) return 'locknut';
  const thread = faces.some(({ kind, traits }) => kind === 'steerer-cap' && traits?.['pulls'] === 'thread');
  return thread ? 'threaded-cap' : 'cap';
}

/**
 * Whether a joint is a sleeve in a bottom bracket shell; the cups, and what turns in them, have a joint of their own.
 * @param parts of the joint
 * @example isSleeve('bottom-bracket', [{ kind: 'frame' }, { kind: 'sleeve' }]) //=> true
 */
export function isSleeve(kind: Joined['kind'], parts: readonly Pick<TellingPart, 'kind'>[]): boolean {
  const has = (...kinds: string[]) => parts.some((part) => kinds.includes(part.kind));
  const inShell = kind === 'bottom-bracket' && has('frame') && has('adapter', 'sleeve');
  return inShell && !has('bottom-bracket');
}

/**
 * A joint with what its steps go by.
 * @param joints all joints of the bike that are together
 * @param parts all parts of the bike
 */
export function jointToBuild(
  joint: Joined,
  joints: readonly Pick<JointRow, 'kind' | 'partIds'>[],
  parts: readonly TellingPart[],
): JointToBuild {
  const { jointId, name, kind, partIds, between, fasteners, targets } = joint;
  const nameOf = (partId: string) => parts.find((part) => part.partId === partId)?.name;
  const mine = parts.filter(({ partId }) => partIds.includes(partId));
  return {
    ...{ jointId, name, kind },
    partNames: partIds.map((partId) => nameOf(partId) ?? ''),
    between: between.map(
      (item) => (item.partId && nameOf(item.partId)) || item.words || item.kind.replace('-', ' '),
    ),
    locker: between.some((item) => item.kind === 'threadlocker'),
    bonded: isBonded({ between }),
    screwed: fasteners.length > 0,
    figure: targets.some(({ torque }) => torque !== undefined),
    ...(isSleeve(kind, mine) ? { pressed: true, bare: true } : {}),
    dropIn: kind === 'headset' && dropsIn(mine),
    cap: headsetCap(parts),
    // A caliper that is pulled by a cable has that in a joint of its own.
    cabled: joints.some(
      (other) => other.kind === 'cable-anchor' && other.partIds.some((id) => partIds.includes(id)),
    ),
  };
}
