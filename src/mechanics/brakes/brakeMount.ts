import { positive } from '../range.ts';

/** Where a caliper sits, told by the distance of its two holes. */
export interface MountRow {
  readonly id: string;
  readonly spacingMm: readonly [lo: number, hi: number];
}

/**
 * The mount a hole spacing belongs to. Near is not enough: early mounts of 22, 68 and 69 mm exist and take
 * nothing that is sold today, so anything between the rows is measured again.
 * @param spacingMm centre to centre of the two holes, mm, > 0
 * @throws RangeError when the spacing is not positive
 * @example classifyMount(mounts, 50.8) //=> { ok: true, mount: { id: 'is', … } }
 */
export function classifyMount<Row extends MountRow>(
  rows: readonly Row[],
  spacingMm: number,
): { ok: true; mount: Row } | { ok: false; reason: 'unknown-measure-again' } {
  positive({ spacingMm });
  const mount = rows.find(({ spacingMm: [lo, hi] }) => spacingMm >= lo && spacingMm <= hi);
  return mount ? { ok: true, mount } : { ok: false, reason: 'unknown-measure-again' };
}

export interface RotorStep {
  ok: true;
  /** Rotor diameter above the size the mount takes bare, mm. */
  stepMm: number;
  /** How far the caliper moves out, mm: half of it, since a caliper sits on a radius. */
  radialMm: number;
}

/**
 * What a rotor asks of a mount.
 * @param nativeMm rotor the bare mount takes, mm
 * @throws RangeError when a size is not positive
 * @example rotorStep(160, 203) //=> { ok: true, stepMm: 43, radialMm: 21.5 }
 */
export function rotorStep(
  nativeMm: number,
  rotorMm: number,
): RotorStep | { ok: false; reason: 'smaller-than-the-mount' } {
  positive({ nativeMm, rotorMm });
  const stepMm = rotorMm - nativeMm;
  return stepMm < 0
    ? { ok: false, reason: 'smaller-than-the-mount' }
    : { ok: true, stepMm, radialMm: stepMm / 2 };
}

/** Pads this far off the rotor's track already brake on its edge or on its arms. Own judgement. */
const RADIAL_PLAY_MM = 0.5;

/**
 * Whether an adapter brings the caliper where the rotor is.
 * @param adapterMm what the adapter adds to the rotor size, mm (20 for a +20), 0 for none
 * @returns how far the pads stand off, mm; positive when they sit too far in
 * @throws RangeError when a size is out of range
 * @example adapterFits(160, 203, 40) //=> { ok: false, reason: 'pads-off-the-track', radialErrorMm: 1.5 }
 */
export function adapterFits(
  nativeMm: number,
  rotorMm: number,
  adapterMm: number,
):
  | { ok: true; radialErrorMm: number }
  | { ok: false; reason: 'smaller-than-the-mount' }
  | { ok: false; reason: 'pads-off-the-track'; radialErrorMm: number } {
  if (!(Number.isFinite(adapterMm) && adapterMm >= 0)) throw new RangeError(`not an adapter: ${adapterMm}`);
  const step = rotorStep(nativeMm, rotorMm);
  if (!step.ok) return step;
  const radialErrorMm = (step.stepMm - adapterMm) / 2;
  return Math.abs(radialErrorMm) <= RADIAL_PLAY_MM
    ? { ok: true, radialErrorMm }
    : { ok: false, reason: 'pads-off-the-track', radialErrorMm };
}
