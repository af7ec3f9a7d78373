import { useState } from 'preact/hooks';
import { Button } from '../../../controls/Button.tsx';
import { NumberField } from '../../../controls/fields/NumberField.tsx';
import { parseNumber } from '../../../mechanics/quantity.ts';
import { hoursMs, lookPresets } from '../../../practice/seal/lookAgain.ts';
import { spanShort } from '../../../words/timeLeft.ts';

const MINUTE_MS = 60_000;

export interface LookAgainChoiceProps {
  onSpan: (ms: number) => void;
  /** What the readings ask for, ms from now. */
  suggestedMs?: number | undefined;
  /** Offered where a span was chosen before and can be left out again. */
  onNone?: (() => void) | undefined;
}

/** When to look again: a tap, or hours typed. */
export function LookAgainChoice({ onSpan, suggestedMs = 0, onNone }: LookAgainChoiceProps) {
  const [typed, setTyped] = useState('');
  const hours = parseNumber(typed);
  const some = hours.ok && hours.value > 0;
  return (
    <div class="stack">
      {suggestedMs >= MINUTE_MS && (
        <Button wide size="greasy" icon="hourglass" onPress={() => onSpan(suggestedMs)}>
          {`As the readings ask: in ${spanShort(suggestedMs)}`}
        </Button>
      )}
      <div class="button-presets seal-presets">
        {lookPresets.map(({ label, ms }) => (
          <Button key={label} size="greasy" onPress={() => onSpan(ms)}>
            {label}
          </Button>
        ))}
      </div>
      <NumberField label="Other time" typed={typed} onTyped={setTyped} />
      <Button wide size="greasy" disabled={!some} onPress={() => hours.ok && onSpan(hoursMs(hours.value))}>
        {some ? `In ${hours.typed} h` : 'Type the hours'}
      </Button>
      {onNone && (
        <Button wide size="greasy" onPress={onNone}>
          No look asked for
        </Button>
      )}
    </div>
  );
}
