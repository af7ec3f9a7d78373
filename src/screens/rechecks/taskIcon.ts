import type { IconName } from '../../controls/Icon.tsx';
import type { InstructionKind } from '../../standards/checks/recheckSchedule.ts';

/** Drawing for what a re-check asks for. */
export const taskIcon: Record<InstructionKind, IconName> = {
  retorque: 'spanner',
  'look-at-mark': 'pencil',
  headset: 'bolt',
  spokes: 'wheel',
  'brake-bed-in': 'brake',
  seal: 'tyre',
  inspect: 'lookup',
};
