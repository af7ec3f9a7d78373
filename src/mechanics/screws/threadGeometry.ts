import { positive } from '../range.ts';

/** A 60° thread. The root form decides the stress area: ISO metric and unified inch threads differ there. */
export interface ThreadSize {
  diameterMm: number;
  pitchMm: number;
  form: 'iso' | 'un';
}

const checked = ({ diameterMm, pitchMm }: ThreadSize): void => {
  positive({ diameterMm, pitchMm });
  if (pitchMm * 1.3 >= diameterMm) throw new RangeError(`pitch ${pitchMm} leaves no core in ${diameterMm}`);
};

/**
 * Pitch diameter d2 = d − 3√3/8 · P, mm.
 * Source: ISO 724 basic profile (from memory; follows from the 60° triangle).
 * @throws RangeError when the pitch leaves no core
 * @example pitchDiameterMm({ diameterMm: 5, pitchMm: 0.8, form: 'iso' }) //=> 4.480…
 */
export function pitchDiameterMm(thread: ThreadSize): number {
  checked(thread);
  return thread.diameterMm - 0.649519 * thread.pitchMm;
}

/**
 * Root diameter of the screw d3 = d − 1.226869 · P, mm. Source: ISO 724 / ISO 68-1 (from memory).
 * @example rootDiameterMm({ diameterMm: 5, pitchMm: 0.8, form: 'iso' }) //=> 4.018…
 */
export function rootDiameterMm(thread: ThreadSize): number {
  checked(thread);
  return thread.diameterMm - 1.226869 * thread.pitchMm;
}

/**
 * Crest diameter of the female thread D1 = d − 1.082532 · P, mm. Source: ISO 724 (from memory).
 * @example minorDiameterMm({ diameterMm: 5, pitchMm: 0.8, form: 'iso' }) //=> 4.133…
 */
export function minorDiameterMm(thread: ThreadSize): number {
  checked(thread);
  return thread.diameterMm - 1.082532 * thread.pitchMm;
}

/**
 * Tensile stress area, mm²: the cross-section a screw breaks as if it had.
 * Source: ISO 898-1, (π/4)·(d − 0.9382·P)²; unified inch threads (π/4)·(D − 0.9743/n)².
 * @throws RangeError when the pitch leaves no core
 * @example stressAreaMm2({ diameterMm: 5, pitchMm: 0.8, form: 'iso' }) //=> 14.18…
 */
export function stressAreaMm2(thread: ThreadSize): number {
  checked(thread);
  const factor = thread.form === 'iso' ? 0.938194 : 0.974279;
  return (Math.PI / 4) * (thread.diameterMm - factor * thread.pitchMm) ** 2;
}
