import { Choice } from '../../../controls/fields/Choice.tsx';
import { Sheet } from '../../../controls/frames/Sheet.tsx';
import type { BetweenKind } from '../../../journal/entries.ts';

const choices = [
  { value: 'dry', label: 'Dry', hint: 'Clean and dry' },
  { value: 'grease', label: 'Grease' },
  { value: 'assembly-paste', label: 'Assembly paste', hint: 'Friction paste, as on carbon' },
  { value: 'anti-seize', label: 'Anti-seize' },
  {
    value: 'threadlocker',
    label: 'Threadlocker',
    hint: 'Curing starts now; set grade and surface on its own tile',
  },
] as const satisfies readonly { value: BetweenKind; label: string; hint?: string }[];

/** The word on the tile for what is on the thread. */
export function betweenWord(kind: BetweenKind): string {
  return choices.find(({ value }) => value === kind)?.label ?? kind.replace('-', ' ');
}

export interface BetweenSheetProps {
  between: BetweenKind | undefined;
  onBetween: (kind: BetweenKind) => void;
  onClose: () => void;
}

/** What is on the threads: it changes what a torque does, so it is logged with the torque. */
export function BetweenSheet({ between, onBetween, onClose }: BetweenSheetProps) {
  return (
    <Sheet open title="On the threads" onClose={onClose}>
      <Choice<BetweenKind>
        label="What is on them now"
        options={choices}
        value={between}
        onChoose={(kind) => {
          onBetween(kind);
          onClose();
        }}
      />
    </Sheet>
  );
}
