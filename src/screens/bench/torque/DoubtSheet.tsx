import { Button } from '../../../controls/Button.tsx';
import { Sheet } from '../../../controls/frames/Sheet.tsx';
import { numberText } from '../../../mechanics/numberText.ts';
import { type TorqueUnit, type Typed, torqueFromNm, unitLabel } from '../../../mechanics/units.ts';
import type { AppliedDoubt } from '../../../practice/joint/appliedDoubt.ts';

export interface DoubtSheetProps {
  applied: Typed<TorqueUnit>;
  doubt: AppliedDoubt;
  onLog: () => void;
  onClose: () => void;
}

function sentence(doubt: AppliedDoubt, unit: TorqueUnit): string {
  const inUnit = (nm: number) => `${numberText(torqueFromNm(nm, unit))} ${unitLabel[unit]}`;
  if (doubt.about === 'target')
    return `The figure for this joint ends at ${inUnit(doubt.mostNm)}. If you really applied more, log it and inspect the parts.`;
  if (doubt.reason === 'perhaps-inch-pounds')
    return `That is far too much for this bolt. Perhaps inch-pounds were meant: that would be ${inUnit(doubt.perhapsNm ?? 0)}.`;
  if (doubt.reason === 'perhaps-foot-pounds')
    return `Very low for this bolt. Did you mean ft·lbf? That would be ${inUnit(doubt.perhapsNm ?? 0)}.`;
  if (doubt.reason === 'zero') return '0 means not tightened.';
  return 'That does not go with the size of this bolt. Check the number and the unit.';
}

/** Asked once, before a torque that can hardly be meant is logged. */
export function DoubtSheet({ applied, doubt, onLog, onClose }: DoubtSheetProps) {
  const words = `${applied.typed} ${unitLabel[applied.unit]}`;
  return (
    <Sheet
      open
      title={`Was it ${words}?`}
      onClose={onClose}
      actions={
        <>
          <Button size="greasy" icon="pencil" onPress={onClose}>
            Change it
          </Button>
          <Button size="greasy" icon="check" onPress={onLog}>
            Log {words}
          </Button>
        </>
      }
    >
      <p class="far">{sentence(doubt, applied.unit)}</p>
    </Sheet>
  );
}
