import { type Band, band, scaled } from '../band.ts';
import { notNegative, positive } from '../range.ts';
import { given, type Working } from '../working.ts';
import { rootDiameterMm, type ThreadSize } from './threadGeometry.ts';

/** What the faces of one joint give, µm. Fine is Rz below 10, medium 10 to 40, coarse above. */
export interface EmbedmentRow {
  readonly roughness: 'fine' | 'medium' | 'coarse';
  readonly load: 'tension' | 'shear';
  readonly threadUm: number;
  /** Under each head or nut. */
  readonly perHeadUm: number;
  /** Between each two clamped parts. */
  readonly perInnerUm: number;
}

export interface Stack {
  readonly thread: ThreadSize;
  /** Clamped length, mm. */
  readonly gripMm: number;
  /** Outside and bore of the face under the head, mm. */
  readonly headMm: number;
  readonly holeMm: number;
  readonly screwModulusGpa: number;
  readonly partModulusGpa: number;
  /** Heads and nuts that bear on something; 1 for a screw in a tapped hole. */
  readonly heads: number;
  /** Places where clamped parts touch; every shim or washer adds to them. */
  readonly innerJoints: number;
  /** Paint, anodising, grit paste, plastic or carbon is squeezed too. */
  readonly softLayer: boolean;
}

/** Guide values scatter; the width is a judgement. Soft layers are outside the table, so the upper end doubles. */
const SPREAD: Band = band(0.7, 1, 1.3);
const SPREAD_SOFT: Band = band(0.7, 1, 2.6);

/**
 * Stretch of the screw, mm per N: head, plain grip, engaged thread and what holds it.
 * Source: VDI 2230 form for a socket head in a tapped hole, from memory.
 * @throws RangeError when a length or modulus is not positive
 * @example screwResilienceMmPerN(stackOfM5) //=> 5.7e-6
 */
export function screwResilienceMmPerN({ thread, gripMm, screwModulusGpa }: Stack): number {
  positive({ gripMm, screwModulusGpa });
  const d = thread.diameterMm;
  const nominalMm2 = (Math.PI / 4) * d ** 2;
  const rootMm2 = (Math.PI / 4) * rootDiameterMm(thread) ** 2;
  const perModulus = (0.4 * d + 0.33 * d) / nominalMm2 + (gripMm + 0.5 * d) / rootMm2;
  return perModulus / (screwModulusGpa * 1000);
}

/**
 * Squeeze of the clamped parts, mm per N: a double cone of 30° under the head.
 * Source: VDI 2230 deformation cone, from memory. Thin walls beside the hole give more than this.
 * @throws RangeError when the hole is not smaller than the head or a value is not positive
 * @example partResilienceMmPerN(stackOfM5) //=> 2.0e-6
 */
export function partResilienceMmPerN({ gripMm, headMm, holeMm, partModulusGpa }: Stack): number {
  positive({ gripMm, headMm, holeMm, partModulusGpa });
  if (holeMm >= headMm) throw new RangeError(`hole ${holeMm} is not smaller than head ${headMm}`);
  const tan = Math.tan(Math.PI / 6);
  const widened = headMm + gripMm * tan;
  const cone = ((headMm + holeMm) * (widened - holeMm)) / ((headMm - holeMm) * (widened + holeMm));
  return (2 * Math.log(cone)) / (partModulusGpa * 1000 * Math.PI * holeMm * tan);
}

export interface SettlingLoss {
  embeddedUm: number;
  /** Preload that goes without the screw turning, N; never more than there was. */
  lostN: Band;
  /** The same as a share of the preload, 0 to 1. */
  lostShare: Band;
  leftN: Band;
  working: Working;
}

/**
 * Preload lost while faces bed in, F = f / (δS + δP). Short grips, small screws and many faces lose most: the
 * reason for a second pull after the first ride.
 * @param preloadN N, > 0
 * @throws RangeError when a value is out of range
 * @example settlingLoss(stackOfM5, mediumShear, 5000).lostShare.mid //=> 0.26
 */
export function settlingLoss(stack: Stack, row: EmbedmentRow, preloadN: number): SettlingLoss {
  positive({ preloadN });
  const { heads, innerJoints, softLayer } = stack;
  notNegative({ heads, innerJoints });
  const embeddedUm = row.threadUm + heads * row.perHeadUm + innerJoints * row.perInnerUm;
  const screw = screwResilienceMmPerN(stack);
  const parts = partResilienceMmPerN(stack);
  const lost = scaled(softLayer ? SPREAD_SOFT : SPREAD, embeddedUm / 1000 / (screw + parts));
  const capped = band(Math.min(lost.lo, preloadN), Math.min(lost.mid, preloadN), Math.min(lost.hi, preloadN));
  return {
    embeddedUm,
    lostN: capped,
    lostShare: scaled(capped, 1 / preloadN),
    leftN: band(preloadN - capped.hi, preloadN - capped.mid, preloadN - capped.lo),
    working: {
      result: capped,
      unit: 'N',
      formula: 'F = f / (δS + δP)',
      inputs: [
        given('bedding in f', embeddedUm, 'µm'),
        given('screw δS', screw, 'mm/N'),
        given('parts δP', parts, 'mm/N'),
        given('preload', preloadN, 'N'),
      ],
      source: 'VDI 2230, from memory',
      known: 'memory',
    },
  };
}
