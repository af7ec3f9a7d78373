import type {
  AnyUnit,
  ForceUnit,
  LengthUnit,
  PressureUnit,
  TemperatureUnit,
  TorqueUnit,
  VolumeUnit,
} from '../../mechanics/units.ts';
import { type Check, either, quantity } from './field.ts';

/** More than any screw of a bicycle is given; what its thread can bear is asked beside it. Own judgement. */
export const torque: Check = quantity<TorqueUnit>(
  {
    'N.m': [0, 1000],
    '[in_i].[lbf_av]': [0, 8851],
    '[ft_i].[lbf_av]': [0, 738],
    'kgf.cm': [0, 10_197],
  },
  { above: true },
);

/** Longer than anything of a bike, a tandem's frame included. Own judgement. */
const lengths: Record<LengthUnit, readonly [number, number]> = {
  mm: [0, 3000],
  cm: [0, 300],
  '[in_i]': [0, 118.2],
};
const lengthsBothWays: Record<LengthUnit, readonly [number, number]> = {
  mm: [-3000, 3000],
  cm: [-300, 300],
  '[in_i]': [-118.2, 118.2],
};

/** A length, nothing included. */
export const length: Check = quantity<LengthUnit>(lengths);
/** A length above nothing. */
export const someLength: Check = quantity<LengthUnit>(lengths, { above: true });
/** A length that may lie below or behind. */
export const offset: Check = quantity<LengthUnit>(lengthsBothWays);

/** Gauges for bicycle tyres end well below this. Own judgement. */
export const pressure: Check = quantity<PressureUnit>({ bar: [0, 30], '[psi]': [0, 435], kPa: [0, 3000] });

/** Workshops are warmer than this and ovens for paint colder. Own judgement. */
export const temperature: Check = quantity<TemperatureUnit>({ Cel: [-60, 200], '[degF]': [-76, 392] });

/** Sealant in one tyre. Own judgement. */
export const volume: Check = quantity<VolumeUnit>({ mL: [0, 1000], '[foz_us]': [0, 33.9] }, { above: true });

/** A pull on a spoke; it breaks well below this. Own judgement. */
export const force: Check = quantity<ForceUnit>(
  { N: [0, 10_000], kgf: [0, 1020], '[lbf_av]': [0, 2248] },
  { above: true },
);

/** A measured quantity of any kind. */
export const anyQuantity: Check = either(
  either(quantity<LengthUnit>(lengthsBothWays), either(torque, pressure)),
  quantity<Exclude<AnyUnit, LengthUnit | TorqueUnit | PressureUnit>>({
    km: [0, 100_000],
    '[mi_i]': [0, 62_137],
    Cel: [-60, 200],
    '[degF]': [-76, 392],
    N: [-100_000, 100_000],
    kgf: [-10_200, 10_200],
    '[lbf_av]': [-22_500, 22_500],
    g: [0, 500_000],
    kg: [0, 500],
    '[lb_av]': [0, 1103],
    mL: [0, 100_000],
    '[foz_us]': [0, 3382],
    deg: [-3600, 3600],
    rad: [-63, 63],
  }),
);
