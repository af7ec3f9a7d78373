import { Icon } from '../../controls/Icon.tsx';
import { type PressureUnit, pressureFromBar, unitLabel } from '../../mechanics/units.ts';
import type { SealCeiling } from './tyreOnRim.ts';

/** A limit in another unit is cut off, never rounded up. */
function atMost(bar: number, unit: PressureUnit): string {
  const perOne = unit === 'bar' ? 100 : 1;
  const value = Math.floor(pressureFromBar(bar, unit) * perOne + 1e-6) / perOne;
  return `${new Intl.NumberFormat(undefined, { maximumFractionDigits: 2 }).format(value)} ${unitLabel[unit]}`;
}

/** The most it may see, and who says so. */
export function Ceiling({ ceiling, unit }: { ceiling: SealCeiling; unit: PressureUnit }) {
  if (ceiling.ok)
    return (
      <p class="seal-ceiling">
        <strong>At most {atMost(ceiling.ceilingBar, unit)}</strong>
        <span class="small"> {ceiling.because}</span>
      </p>
    );
  return (
    <p class="bench-loud">
      <Icon name="warning" sizePx={24} />
      {ceiling.reason === 'nothing-printed'
        ? 'No limit is written down for tyre or rim. Read both, and keep to the lower.'
        : 'A rim with straight walls wants a tyre marked tubeless. No pressure is right for this one.'}
    </p>
  );
}
