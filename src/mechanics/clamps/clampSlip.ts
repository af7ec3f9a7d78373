import { type Band, band } from '../band.ts';
import { notNegative, positive } from '../range.ts';

/** How a clamp is made decides how many times a bolt's force crosses the tube. */
export type ClampConstruction =
  /** Two halves, bolts on both sides: every bolt counts once. */
  | { kind: 'two-piece'; bolts: number }
  /** One slit, thin body: the closed side pulls as hard as the bolts, so each counts twice. */
  | { kind: 'one-slit-flexible'; bolts: number }
  /** One slit, thick body that swings about its closed side: a lever. Both arms are measured from there. */
  | { kind: 'one-slit-stiff'; bolts: number; tubeArmMm: number; boltArmMm: number };

/** c in M = c·µ·ΣF·d: two lines of contact, cosine pressure, even pressure all round. */
const CONTACT = { lines: 1, cosine: 4 / Math.PI, even: Math.PI / 2 } as const;

/**
 * Tension that crosses the middle plane of the tube, ΣF.
 * @param boltForceN preload of one bolt, N, > 0
 * @returns N
 * @throws RangeError when the count is not a whole number from 1 up, or an arm not positive
 * Source: statics; the two-piece case agrees with printed sample runs of a shaft–hub program.
 * @example clampTensionN({ kind: 'two-piece', bolts: 4 }, 5000) //=> 20000
 */
export function clampTensionN(construction: ClampConstruction, boltForceN: number): number {
  positive({ boltForceN });
  const { bolts } = construction;
  if (!(Number.isInteger(bolts) && bolts > 0))
    throw new RangeError(`bolts must be a whole number from 1 up: ${bolts}`);
  switch (construction.kind) {
    case 'two-piece':
      return bolts * boltForceN;
    case 'one-slit-flexible':
      return 2 * bolts * boltForceN;
    case 'one-slit-stiff': {
      const { tubeArmMm, boltArmMm } = construction;
      positive({ tubeArmMm, boltArmMm });
      return (bolts * boltForceN * boltArmMm) / tubeArmMm;
    }
  }
}

/**
 * Torque at which a tube turns in its clamp, M = c·µ·ΣF·d.
 * @param tensionN ΣF, N, ≥ 0
 * @param friction µ, ≥ 0
 * @param diameterMm tube, mm, > 0
 * @returns N·m; lo for stiff halves (c = 1, the safe figure), mid for cosine pressure, hi for a perfect band (c = π/2)
 * @throws RangeError when an argument is out of range
 * Source: clamp joint design in German machine-element textbooks (from memory); c = 1 reproduces printed sample runs of a shaft–hub program.
 * @example slipTorqueNm(20000, 0.2, 25.4).lo //=> 101.6
 */
export function slipTorqueNm(tensionN: number, friction: number, diameterMm: number): Band {
  notNegative({ tensionN, friction });
  positive({ diameterMm });
  const lineNm = (friction * tensionN * diameterMm) / 1000;
  return band(CONTACT.lines * lineNm, CONTACT.cosine * lineNm, CONTACT.even * lineNm);
}

/**
 * The same with everything uncertain at once: preload, friction and contact.
 * @returns N·m; lo is the figure to trust
 * @example slipTorqueBandNm({ kind: 'two-piece', bolts: 4 }, around(5000, 0.3), exactly(0.2), 25.4).lo //=> 71.12
 */
export function slipTorqueBandNm(
  construction: ClampConstruction,
  boltForceN: Band,
  friction: Band,
  diameterMm: number,
): Band {
  const at = (end: keyof Band) =>
    slipTorqueNm(clampTensionN(construction, boltForceN[end]), friction[end], diameterMm)[end];
  return band(at('lo'), at('mid'), at('hi'));
}

/**
 * Force at which a tube slides along its clamp, 2·c·µ·ΣF.
 * @returns N, band over the contact as for the slip torque
 * @example axialSlipN(20000, 0.2).lo //=> 8000
 */
export function axialSlipN(tensionN: number, friction: number): Band {
  notNegative({ tensionN, friction });
  const linesN = 2 * friction * tensionN;
  return band(CONTACT.lines * linesN, CONTACT.cosine * linesN, CONTACT.even * linesN);
}

/**
 * Mean pressure between tube and clamp, ΣF/(d·L).
 * @returns MPa
 * @example clampPressureMPa(20000, 22.2, 45) //=> 20.02
 */
export function clampPressureMPa(tensionN: number, diameterMm: number, lengthMm: number): number {
  notNegative({ tensionN });
  positive({ diameterMm, lengthMm });
  return tensionN / (diameterMm * lengthMm);
}
