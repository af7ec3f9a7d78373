/** Unit codes are UCUM codes, so that stored records can be read by any other software. */
export type TorqueUnit = 'N.m' | '[in_i].[lbf_av]' | '[ft_i].[lbf_av]' | 'kgf.cm';
export type PressureUnit = 'bar' | '[psi]' | 'kPa';
export type LengthUnit = 'mm' | '[in_i]' | 'cm';
export type DistanceUnit = 'km' | '[mi_i]';
export type TemperatureUnit = 'Cel' | '[degF]';
export type ForceUnit = 'N' | 'kgf' | '[lbf_av]';
export type MassUnit = 'g' | 'kg' | '[lb_av]';
export type VolumeUnit = 'mL' | '[foz_us]';
export type AngleUnit = 'deg' | 'rad';
export type AnyUnit =
  | TorqueUnit
  | PressureUnit
  | LengthUnit
  | DistanceUnit
  | TemperatureUnit
  | ForceUnit
  | MassUnit
  | VolumeUnit
  | AngleUnit;

/**
 * The units a given unit may be converted to. Distances stay apart from lengths on purpose: km at a bench is
 * a slip.
 */
export type SameKind<U extends AnyUnit> = U extends TorqueUnit
  ? TorqueUnit
  : U extends PressureUnit
    ? PressureUnit
    : U extends LengthUnit
      ? LengthUnit
      : U extends DistanceUnit
        ? DistanceUnit
        : U extends TemperatureUnit
          ? TemperatureUnit
          : U extends ForceUnit
            ? ForceUnit
            : U extends MassUnit
              ? MassUnit
              : U extends VolumeUnit
                ? VolumeUnit
                : AngleUnit;

/** A quantity as a person entered it: `typed` keeps the very characters, so a later doubt can be settled. */
export interface Typed<U extends AnyUnit> {
  value: number;
  unit: U;
  typed: string;
}

// The three definitions everything else follows from; exact by international agreement.
const POUND_KG = 0.45359237;
const INCH_MM = 25.4;
const STANDARD_GRAVITY = 9.80665;

const POUND_FORCE_N = POUND_KG * STANDARD_GRAVITY;
const INCH_POUND_NM = (POUND_FORCE_N * INCH_MM) / 1000;

type Measure =
  | 'torque'
  | 'pressure'
  | 'length'
  | 'distance'
  | 'temperature'
  | 'force'
  | 'mass'
  | 'volume'
  | 'angle';

/** Per unit: what it measures, how many base units it holds, what is written on screen, where its zero lies. */
const units: Record<AnyUnit, readonly [kind: Measure, inBase: number, label: string, zero?: number]> = {
  'N.m': ['torque', 1, 'N·m'],
  '[in_i].[lbf_av]': ['torque', INCH_POUND_NM, 'in·lbf'],
  '[ft_i].[lbf_av]': ['torque', INCH_POUND_NM * 12, 'ft·lbf'],
  'kgf.cm': ['torque', STANDARD_GRAVITY / 100, 'kgf·cm'],
  bar: ['pressure', 1, 'bar'],
  '[psi]': ['pressure', (POUND_FORCE_N / INCH_MM ** 2) * 10, 'psi'],
  kPa: ['pressure', 0.01, 'kPa'],
  mm: ['length', 1, 'mm'],
  '[in_i]': ['length', INCH_MM, 'in'],
  cm: ['length', 10, 'cm'],
  km: ['distance', 1, 'km'],
  '[mi_i]': ['distance', 1.609344, 'mi'],
  Cel: ['temperature', 1, '°C'],
  '[degF]': ['temperature', 5 / 9, '°F', 32],
  N: ['force', 1, 'N'],
  kgf: ['force', STANDARD_GRAVITY, 'kgf'],
  '[lbf_av]': ['force', POUND_FORCE_N, 'lbf'],
  g: ['mass', 1, 'g'],
  kg: ['mass', 1000, 'kg'],
  '[lb_av]': ['mass', POUND_KG * 1000, 'lb'],
  mL: ['volume', 1, 'mL'],
  // A US gallon is 231 cubic inches and holds 128 fluid ounces.
  '[foz_us]': ['volume', ((INCH_MM / 10) ** 3 * 231) / 128, 'fl oz'],
  deg: ['angle', 1, '°'],
  rad: ['angle', 180 / Math.PI, 'rad'],
};

/** The units a quantity may be typed in, in the order in which they are offered. */
export const unitsOf = {
  torque: ['N.m', '[in_i].[lbf_av]', '[ft_i].[lbf_av]', 'kgf.cm'],
  pressure: ['bar', '[psi]', 'kPa'],
  length: ['mm', '[in_i]', 'cm'],
  distance: ['km', '[mi_i]'],
  temperature: ['Cel', '[degF]'],
  mass: ['g', 'kg', '[lb_av]'],
  force: ['N', 'kgf', '[lbf_av]'],
  volume: ['mL', '[foz_us]'],
} as const satisfies Partial<Record<Measure, readonly AnyUnit[]>>;

/** How each unit is written for people. */
export const unitLabel = Object.fromEntries(
  Object.entries(units).map(([unit, [, , label]]) => [unit, label]),
) as Record<AnyUnit, string>;

function rescale(value: number, from: AnyUnit, to: AnyUnit, fromZero: number, toZero: number): number {
  const source = units[from];
  const target = units[to];
  if (!source || !target || source[0] !== target[0]) throw new RangeError(`no conversion ${from} → ${to}`);
  if (!Number.isFinite(value)) throw new RangeError(`not a finite number: ${value}`);
  return from === to ? value : (value - fromZero) * (source[1] / target[1]) + toZero;
}

/**
 * The same quantity in another unit.
 * @param value finite number, in `from`
 * @param to unit of the same kind; the compiler refuses any other
 * @throws RangeError when the kinds differ or the value is not finite
 * Source: exact definitions of pound (0.45359237 kg), inch (25.4 mm) and standard gravity (9.80665 m/s²).
 * @example convert(30, '[psi]', 'kPa') //=> 206.84…
 */
export function convert<U extends AnyUnit>(value: number, from: U, to: SameKind<U>): number {
  return rescale(value, from, to, units[from]?.[3] ?? 0, units[to]?.[3] ?? 0);
}

/** Torque in N·m. @example torqueNm(44, '[in_i].[lbf_av]') //=> 4.971… */
export const torqueNm = (value: number, unit: TorqueUnit): number => convert(value, unit, 'N.m');

/** Torque in N·m, expressed in another unit. @example torqueFromNm(5, '[in_i].[lbf_av]') //=> 44.25… */
export const torqueFromNm = (nm: number, unit: TorqueUnit): number => convert(nm, 'N.m', unit);

/** Pressure in bar. @example pressureBar(30, '[psi]') //=> 2.068… */
export const pressureBar = (value: number, unit: PressureUnit): number => convert(value, unit, 'bar');

/** Pressure in bar, expressed in another unit. @example pressureFromBar(2, '[psi]') //=> 29.007… */
export const pressureFromBar = (bar: number, unit: PressureUnit): number => convert(bar, 'bar', unit);
