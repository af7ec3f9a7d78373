import { numberText } from '../../mechanics/numberText.ts';
import type { PressureUnit } from '../../mechanics/units.ts';
import { pressureFromBar, unitLabel } from '../../mechanics/units.ts';
import type { SealOutlook } from '../../practice/seal/sealOutlook.ts';
import { whenText } from '../../words/dayText.ts';
import { leakStateWords, lookReasonWords } from '../../words/leakWords.ts';

export interface SealStateProps {
  outlook: SealOutlook;
  unit: PressureUnit;
  nowMs: number;
}

function reachedWords({ reached, sealingReach }: SealOutlook): string | undefined {
  if (sealingReach) {
    const { pessimisticMs, hopefulMs } = sealingReach;
    const hopeful = hopefulMs === undefined ? '' : `, ${whenText(hopefulMs)} once it has settled`;
    return `At riding pressure: ${whenText(pessimisticMs)} at the rate of the last readings${hopeful}.`;
  }
  if (!reached) return undefined;
  const { fromMs, toMs } = reached;
  return toMs === undefined
    ? `Riding pressure not before ${whenText(fromMs)}.`
    : `At riding pressure between ${whenText(fromMs)} and ${whenText(toMs)}.`;
}

/** What the readings prove, in one line, and when to look again. */
export function SealState({ outlook, unit, nowMs }: SealStateProps) {
  const { judged, readings, look, checkCostBar, dropBar, ridingBar } = outlook;
  if (readings.length === 0) return null;
  const inUnit = (bar: number) => `${numberText(pressureFromBar(bar, unit), 2)} ${unitLabel[unit]}`;
  const reached = reachedWords(outlook);
  return (
    <div class="seal-state">
      <p class="seal-state-line" role="status">
        {leakStateWords(judged)}
      </p>
      {look && (
        <p class="far">
          {`Look again ${look.atMs <= nowMs ? 'now' : whenText(look.atMs)}: ${lookReasonWords[look.why]}.`}
        </p>
      )}
      {reached && <p class="far">{reached}</p>}
      {ridingBar === undefined && judged.state !== 'too-early' && (
        <p class="far">Set the riding pressure to see when it gets there.</p>
      )}
      {dropBar !== undefined && judged.state !== 'steady' && (
        <p class="far">{`The last drop of ${inUnit(dropBar)} is more than the gauge's error.`}</p>
      )}
      {checkCostBar !== undefined && checkCostBar >= 0.005 && (
        <p class="small">{`Each check with a pump hose lets out about ${inUnit(checkCostBar)}.`}</p>
      )}
    </div>
  );
}
