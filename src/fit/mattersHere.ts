import { type JointKind, jointKindRow } from '../standards/jointKinds.ts';
import { traitOf } from './faces/reading.ts';
import type { PilePart } from './pile.ts';

/** What a pedal turned backwards does to the rear wheel. */
export type RearDrive = 'freewheels' | 'fixed' | 'back-pedal';

/** Why a joint matters on this bike though most of its kind do not. */
export type MattersBecause = 'chain-brakes' | 'over-the-front-wheel' | 'end-not-known';

export interface MattersHere {
  /** Failure can throw the rider. */
  matters: boolean;
  /** Left out where the kind alone tells. */
  because?: MattersBecause;
}

/** Sprocket mounts that tell by themselves; a freewheel thread does not: fixed sprockets go on it too. */
const drives: Readonly<Record<string, RearDrive>> = {
  'fixed-1.37x24': 'fixed',
  'one-piece-driver': 'freewheels',
  'spline-freehub': 'freewheels',
};

/**
 * How the rear hub of a bike drives, as far as its faces tell.
 * @returns undefined where it was not recorded
 * @example rearDrive([]) //=> undefined
 */
export function rearDrive(parts: readonly PilePart[]): RearDrive | undefined {
  const mounts = parts.flatMap(({ faces }) => faces.filter(({ kind }) => kind === 'driver-mount'));
  const rearDrive = mounts
    .map((face) => traitOf(face, 'drive') as RearDrive | undefined)
    .find((drive) => drive);
  return rearDrive ?? mounts.map(({ standard }) => drives[standard ?? '']).find((drive) => drive);
}

const inTheChain: readonly JointKind[] = ['chain', 'chainring', 'sprocket', 'freewheel'];
const atTheFront: readonly PilePart['kind'][] = ['fork', 'front-hub', 'bar', 'stem', 'headset'];

/**
 * Whether a joint matters on this bike: what fails the rider is not lesser because most joints of its kind are. A chain is a
 * brake where the hub is fixed or brakes by back-pedalling; a front rack falls into the front wheel. A rack of which no part
 * tells the end counts as a front one until one does.
 * @param kind of the joint
 * @param parts the parts that meet in it
 * @param bikeParts all parts of the bike
 * Source: braking by the chain in 16 CFR 1512.5 (foot brakes) and ISO 4210-2 (back-pedal brakes); the rack is common practice, no source.
 * @example mattersHere('chain', [], [fixedHub]) //=> { matters: true, because: 'chain-brakes' }
 */
export function mattersHere(
  kind: JointKind,
  parts: readonly PilePart[],
  bikeParts: readonly PilePart[],
): MattersHere {
  if (jointKindRow(kind).matters) return { matters: true };
  const drive = rearDrive(bikeParts);
  if (inTheChain.includes(kind) && (drive === 'fixed' || drive === 'back-pedal'))
    return { matters: true, because: 'chain-brakes' };
  if (kind !== 'rack') return { matters: false };
  if (parts.some((part) => atTheFront.includes(part.kind) || part.position === 'front'))
    return { matters: true, because: 'over-the-front-wheel' };
  const rear = parts.some(
    ({ kind: of, position }) => of === 'frame' || of === 'rear-hub' || position === 'rear',
  );
  return rear ? { matters: false } : { matters: true, because: 'end-not-known' };
}
