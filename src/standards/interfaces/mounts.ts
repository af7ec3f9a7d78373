import type { MountRow } from '../../mechanics/brakes/brakeMount.ts';
import type { Sourced } from '../known.ts';
import { brakeMounts, isNativeRotorMm } from './brakeMounts.ts';

export interface CaliperMountRow extends MountRow, Sourced {
  readonly id: 'is' | 'post' | 'flat-rear' | 'flat-front';
  readonly label: string;
  readonly bolts: string;
  /** Bolts run along the axle or in the plane of the wheel. */
  readonly boltsRun: 'along-the-axle' | 'in-the-wheel-plane' | 'through-the-stay';
  /** Rotor the bare mount takes, mm, by end; null where it stands on the frame and has to be read. */
  readonly nativeRotorMm: { readonly front: number | null; readonly rear: number | null };
}

/** Early post mounts of 22, 68 and 69 mm exist (mount article, riders' forum); a spacing this near one is no flat mount. */
const EARLY_POST_UP_TO_MM = 69.5;

/** The spacing is kept where the faces are, so that both always say the same. */
function mount(
  id: CaliperMountRow['id'],
  bolts: string,
  boltsRun: CaliperMountRow['boltsRun'],
  nativeRotorMm: CaliperMountRow['nativeRotorMm'],
): CaliperMountRow {
  const row = brakeMounts.find((candidate) => candidate.id === id);
  const span = row?.faces['disc-mount']?.['holeSpacingMm'];
  if (!row || typeof span !== 'object') throw new RangeError(`no hole spacing for mount ${id}`);
  const [lo, hi] = span;
  return {
    id,
    label: row.label,
    spacingMm: lo <= EARLY_POST_UP_TO_MM && hi > EARLY_POST_UP_TO_MM ? [EARLY_POST_UP_TO_MM, hi] : [lo, hi],
    bolts,
    boltsRun,
    nativeRotorMm,
    source: row.source,
    known: row.known,
  };
}

/** Caliper mounts to tell apart with a caliper. */
export const mounts: readonly CaliperMountRow[] = [
  mount('is', 'M6, through plain holes into the adapter', 'along-the-axle', {
    front: isNativeRotorMm.front,
    rear: isNativeRotorMm.rear,
  }),
  mount('post', 'M6 × 1', 'in-the-wheel-plane', { front: null, rear: null }),
  // Frames differ by age: early ones begin with 140, many later ones with 160 (from memory). Asked, as with post mount.
  mount('flat-rear', 'M5', 'through-the-stay', { front: null, rear: null }),
  mount('flat-front', 'M5', 'through-the-stay', { front: null, rear: null }),
];
