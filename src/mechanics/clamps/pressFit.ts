import { type Band, band } from '../band.ts';
import { finite, notNegative, positive } from '../range.ts';
import { given, type Working } from '../working.ts';

export interface Elastic {
  /** Young's modulus, GPa. */
  readonly modulusGpa: number;
  readonly poisson: number;
}

/** A ring or a shaft pressed into a ring; lengths in mm. */
export interface PressJoint {
  /** Where the two meet. */
  readonly interfaceMm: number;
  /** Bore through the inner part; 0 when it is solid. */
  readonly innerBoreMm: number;
  /** Outside of the outer part. */
  readonly outerMm: number;
  /** Length in contact. */
  readonly lengthMm: number;
  readonly inner: Elastic;
  readonly outer: Elastic;
}

function checked(joint: PressJoint): void {
  const { interfaceMm, innerBoreMm, outerMm, lengthMm, inner, outer } = joint;
  positive({ interfaceMm, outerMm, lengthMm, inner: inner.modulusGpa, outer: outer.modulusGpa });
  notNegative({ innerBoreMm });
  if (innerBoreMm >= interfaceMm || interfaceMm >= outerMm)
    throw new RangeError(`not one inside the other: ${innerBoreMm} < ${interfaceMm} < ${outerMm}`);
  for (const { poisson } of [inner, outer])
    if (!(poisson >= 0 && poisson <= 0.5))
      throw new RangeError(`Poisson's ratio must be 0 to 0.5: ${poisson}`);
}

/**
 * Pressure between two parts pressed together, thick rings after Lamé.
 * @param interferenceMm diametral interference, mm; zero or less gives no pressure
 * @returns MPa
 * @throws RangeError when the parts do not sit inside one another or a value is out of range
 * Source: machine design textbooks; checked against a published worked example.
 * @example contactPressureMpa({ interfaceMm: 50, innerBoreMm: 0, outerMm: 80, lengthMm: 40,
 *   inner: { modulusGpa: 200, poisson: 0.3 }, outer: { modulusGpa: 200, poisson: 0.3 } }, 0.04) //=> 48.75
 */
export function contactPressureMpa(joint: PressJoint, interferenceMm: number): number {
  checked(joint);
  finite({ interferenceMm });
  const { interfaceMm: d, innerBoreMm: di, outerMm: od, inner, outer } = joint;
  const outerGivesPerGpa = ((od ** 2 + d ** 2) / (od ** 2 - d ** 2) + outer.poisson) / outer.modulusGpa;
  const innerGivesPerGpa = ((d ** 2 + di ** 2) / (d ** 2 - di ** 2) - inner.poisson) / inner.modulusGpa;
  return (Math.max(interferenceMm, 0) * 1000) / (d * (outerGivesPerGpa + innerGivesPerGpa));
}

/** Force to press in, N: friction on the whole contact. @example pressForceN(joint, 48.75, 0.15) //=> 45945 */
export function pressForceN(
  { interfaceMm, lengthMm }: PressJoint,
  pressureMpa: number,
  friction: number,
): number {
  notNegative({ pressureMpa, friction });
  return friction * Math.PI * interfaceMm * lengthMm * pressureMpa;
}

/** Torque the friction of a press fit holds, N·m. @example holdingTorqueNm(joint, 48.75, 0.15) //=> 1149 */
export function holdingTorqueNm(joint: PressJoint, pressureMpa: number, friction: number): number {
  return (pressForceN(joint, pressureMpa, friction) * joint.interfaceMm) / 2000;
}

/**
 * Hoop stress at the bore of the outer part, MPa, tension. A thin shell splits here first.
 * @example outerHoopMpa(joint, 48.75) //=> 111.25
 */
export function outerHoopMpa({ interfaceMm: d, outerMm: od }: PressJoint, pressureMpa: number): number {
  return (pressureMpa * (od ** 2 + d ** 2)) / (od ** 2 - d ** 2);
}

/**
 * Hoop stress at the bore of a hollow inner part, MPa, compression is negative; a solid one has p throughout.
 * @example innerHoopMpa(joint, 48.75) //=> -48.75
 */
export function innerHoopMpa({ interfaceMm: d, innerBoreMm: di }: PressJoint, pressureMpa: number): number {
  return di === 0 ? -pressureMpa : (-2 * pressureMpa * d ** 2) / (d ** 2 - di ** 2);
}

export interface PressFit {
  pressureMpa: Band;
  forceN: Band;
  torqueNm: Band;
  outerHoopMpa: Band;
  /** Magnitude of the compression in the inner part. */
  innerHoopMpa: Band;
  working: Working;
}

/**
 * Everything a press fit is judged by, as bands.
 * @param interferenceMm diametral interference as a band, mm; play (below zero) counts as no pressure
 * @param friction coefficient as a band: dry steel 0.12 to 0.15, greased 0.05 to 0.08 (weak web source)
 * @throws RangeError when the joint is not possible
 * @example pressFit(joint, { lo: 0.02, mid: 0.03, hi: 0.04 }, { lo: 0.08, mid: 0.12, hi: 0.15 })
 */
export function pressFit(joint: PressJoint, interferenceMm: Band, friction: Band): PressFit {
  const pressureMpa = band(
    contactPressureMpa(joint, interferenceMm.lo),
    contactPressureMpa(joint, interferenceMm.mid),
    contactPressureMpa(joint, interferenceMm.hi),
  );
  const each = (of: (side: keyof Band) => number): Band => band(of('lo'), of('mid'), of('hi'));
  return {
    pressureMpa,
    forceN: each((side) => pressForceN(joint, pressureMpa[side], friction[side])),
    torqueNm: each((side) => holdingTorqueNm(joint, pressureMpa[side], friction[side])),
    outerHoopMpa: each((side) => outerHoopMpa(joint, pressureMpa[side])),
    innerHoopMpa: each((side) => Math.abs(innerHoopMpa(joint, pressureMpa[side]))),
    working: {
      result: pressureMpa,
      unit: 'MPa',
      formula: 'p = δ / { d·[ (1/Eo)·((Do²+d²)/(Do²−d²)+νo) + (1/Ei)·((d²+di²)/(d²−di²)−νi) ] }',
      inputs: [
        given('diametral interference δ', interferenceMm, 'mm'),
        given('diameter where they meet d', joint.interfaceMm, 'mm'),
        given('bore of the inner part di', joint.innerBoreMm, 'mm'),
        given('outside of the outer part Do', joint.outerMm, 'mm'),
        given('friction', friction, '1'),
      ],
      source: 'Lamé, thick rings, machine design textbooks',
      known: 'exact',
    },
  };
}
