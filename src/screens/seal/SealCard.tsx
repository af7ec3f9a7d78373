import { Countdown } from '../../controls/figures/Countdown.tsx';
import type { MarkState } from '../../controls/figures/Mark.tsx';
import { Notice } from '../../controls/frames/Notice.tsx';
import { StepCard } from '../../controls/frames/StepCard.tsx';
import { Icon } from '../../controls/Icon.tsx';
import type { SealCeiling } from '../../fit/tyreCeiling.ts';
import type { SealRow, WaitRow } from '../../journal/rows.ts';
import type { Band } from '../../mechanics/band.ts';
import { numberText } from '../../mechanics/numberText.ts';
import type { PressureUnit } from '../../mechanics/units.ts';
import type { SealNext } from '../../practice/seal/sealOrder.ts';
import { cautions } from '../../standards/checks/releaseRules.ts';
import { Ceiling } from './Ceiling.tsx';
import { sealTexts, seatedAgain, verdictWords } from './sealText.ts';

export interface SealCardProps {
  bikeName: string;
  next: SealNext;
  marks: SealRow['marks'];
  verdict: SealRow['verdict'];
  ceiling: SealCeiling;
  /** How much sealant its size suggests, mL, when that is what comes next. */
  dose: Band | undefined;
  unit: PressureUnit;
  /** The look that is asked for, while one is. */
  wait: WaitRow | undefined;
  nowMs: number;
}

function markOf({ next, verdict, wait, nowMs }: SealCardProps): { state: MarkState; word: string } {
  if (wait?.dueAtMs !== undefined && wait.dueAtMs <= nowMs) return { state: 'due', word: 'Look now' };
  if (next === 'settled') return { state: 'done', word: verdictWords.holds };
  if (next === 'wait') return { state: 'waits', word: 'Waits' };
  return { state: 'open', word: verdict ? verdictWords[verdict] : 'Next' };
}

/** The one thing to do next, and the time until the look that is asked for. */
export function SealCard(props: SealCardProps) {
  const { bikeName, next, marks, ceiling, dose, unit, wait, nowMs } = props;
  const sealantIn = marks.some((one) => one.mark === 'sealant');
  const text = next === 'seated' && sealantIn ? seatedAgain : sealTexts[next];
  const mark = markOf(props);
  const lastSeating = marks.findLast((one) => one.mark === 'seated');
  const uneven = lastSeating?.mark === 'seated' && lastSeating.beadLine === 'uneven';
  return (
    <>
      {wait?.dueAtMs !== undefined && (
        <Countdown label="Look again" dueAtMs={wait.dueAtMs} nowMs={nowMs} sinceMs={wait.startedAtMs} />
      )}
      <StepCard
        title={text.order}
        icon={text.icon}
        state={mark.state}
        stateWord={mark.word}
        caption={bikeName}
      >
        <p class="far">{text.how}</p>
        {next === 'seated' && uneven && (
          <p class="loud">
            <Icon name="warning" sizePx={24} />
            Bead uneven. Deflate, wet the bead, re-seat. More pressure will not help.
          </p>
        )}
        {dose && (
          <p class="far">
            {`Recommended ${numberText(dose.lo, 0)} to ${numberText(dose.hi, 0)} mL.`}
            <span class="small"> Fitted to published doses; what the bottle says goes first.</span>
          </p>
        )}
        <Ceiling ceiling={ceiling} unit={unit} />
      </StepCard>
      {next === 'seated' && (
        <Notice kind="caution" title="Before you pump">
          {cautions.tyre}
        </Notice>
      )}
    </>
  );
}
