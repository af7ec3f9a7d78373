import { useState } from 'preact/hooks';
import { Button } from '../../controls/Button.tsx';
import type { WheelRow } from '../../journal/rows.ts';
import { type TruingAdvice, truingAdvice } from '../../practice/wheel/truingAdvice.ts';
import type { WheelFigures } from '../../practice/wheel/wheelFigures.ts';
import type { WheelResult } from '../../practice/wheel/wheelResult.ts';
import { tighterWindup } from '../../practice/wheel/windup.ts';
import { turnsAdviceWords } from '../../words/wheel/adviceWords.ts';
import { onSide, turnWords } from '../../words/wheel/wheelWords.ts';

export interface NextTurnsProps {
  wheel: WheelRow;
  figures: WheelFigures;
  result: WheelResult;
  set: WheelRow['readings'][number];
}

/** Which nipples to turn next, worked out when asked. */
export function NextTurns({ wheel, figures, result, set }: NextTurnsProps) {
  const windup = tighterWindup(wheel, result);
  const [found, setFound] = useState<{ of: string; advice: TruingAdvice }>();
  const advice = found?.of === set.entryId ? found.advice : undefined;
  if (!advice)
    return (
      <Button
        wide
        icon="spanner"
        onPress={() => setFound({ of: set.entryId, advice: truingAdvice(wheel, figures, result, set) })}
      >
        What to turn next
      </Button>
    );
  return (
    <div class="stack" role="status">
      <p class="far">{turnsAdviceWords(advice)}</p>
      {advice.is === 'turns' && advice.turns.length > 0 && (
        <>
          <ol class="wheel-turns">
            {advice.turns.map(({ spoke, side, eighths }) => (
              <li key={spoke}>
                <span class="wheel-turn-spoke">{spoke}</span>
                <span>{onSide[side]}</span>
                <b>{turnWords(eighths)}</b>
              </li>
            ))}
          </ol>
          <p class="small">
            {`From a model of an elastic rim of middling weight: a first try, not a measurement. ${windup ? `A spoke twists by some ${Math.round(windup.lo)} to ${Math.round(windup.hi)}° along with its nipple (an estimate): go that much too far, then back.` : ''}`}
          </p>
        </>
      )}
    </div>
  );
}
