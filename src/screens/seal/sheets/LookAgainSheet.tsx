import { Sheet } from '../../../controls/frames/Sheet.tsx';
import { SaveLine } from '../../bench/frame/SaveLine.tsx';
import type { SaveState } from '../../door.tsx';
import { LookAgainChoice } from './LookAgainChoice.tsx';

export interface LookAgainSheetProps {
  save: SaveState;
  /** What the readings ask for, ms from now. */
  suggestedMs?: number | undefined;
  onSpan: (ms: number) => void;
  onClose: () => void;
}

/** Sets the next look by itself, beside any mark. */
export function LookAgainSheet({ save, suggestedMs, onSpan, onClose }: LookAgainSheetProps) {
  return (
    <Sheet open title="Look again in" onClose={onClose}>
      <SaveLine save={save} />
      <LookAgainChoice onSpan={onSpan} suggestedMs={suggestedMs} />
    </Sheet>
  );
}
