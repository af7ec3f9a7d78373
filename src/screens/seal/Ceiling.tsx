import { Icon } from '../../controls/Icon.tsx';
import type { SealCeiling } from '../../fit/tyreCeiling.ts';
import type { PressureUnit } from '../../mechanics/units.ts';

import { atMost } from '../../words/atMost.ts';

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
    <p class="loud">
      <Icon name="warning" sizePx={24} />
      {ceiling.reason === 'nothing-printed'
        ? 'No limit is logged for tyre or rim. Read both, and keep to the lower.'
        : 'Hookless rim: use only a tyre marked for it. No safe pressure with this tyre.'}
    </p>
  );
}
