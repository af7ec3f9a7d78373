import { useState } from 'preact/hooks';
import { Button } from '../../controls/Button.tsx';
import { NumberField } from '../../controls/NumberField.tsx';
import { Sheet } from '../../controls/Sheet.tsx';
import { parseNumber } from '../../mechanics/quantity.ts';
import { SaveLine } from '../bench/SaveLine.tsx';
import type { SaveState } from '../door.tsx';
import { hoursMs, lookPresets } from './lookAgain.ts';

export interface LookAgainSheetProps {
  save: SaveState;
  onSpan: (ms: number) => void;
  /** Offered where a span was chosen before and can be left out again. */
  onNone?: (() => void) | undefined;
  onClose: () => void;
}

/** When to look again: a tap, or hours typed. */
export function LookAgainSheet({ save, onSpan, onNone, onClose }: LookAgainSheetProps) {
  const [typed, setTyped] = useState('');
  const hours = parseNumber(typed);
  return (
    <Sheet open title="Look again in" onClose={onClose}>
      <div class="stack">
        <SaveLine save={save} />
        <div class="bench-presets seal-presets">
          {lookPresets.map(({ label, ms }) => (
            <Button key={label} size="greasy" onPress={() => onSpan(ms)}>
              {label}
            </Button>
          ))}
        </div>
        <NumberField label="Another span, hours" typed={typed} onTyped={setTyped} />
        <Button
          wide
          size="greasy"
          disabled={!hours.ok || hours.value === 0}
          onPress={() => hours.ok && onSpan(hoursMs(hours.value))}
        >
          {hours.ok && hours.value > 0 ? `In ${hours.typed} h` : 'Type the hours'}
        </Button>
        {onNone && (
          <Button wide size="greasy" kind="quiet" onPress={onNone}>
            No look asked for
          </Button>
        )}
      </div>
    </Sheet>
  );
}
