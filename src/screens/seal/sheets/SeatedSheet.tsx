import { useState } from 'preact/hooks';
import { Button } from '../../../controls/Button.tsx';
import { Choice } from '../../../controls/fields/Choice.tsx';
import { Toggle } from '../../../controls/fields/Toggle.tsx';
import { Sheet } from '../../../controls/frames/Sheet.tsx';
import type { SealMark } from '../../../journal/entries.ts';
import { BenchActs } from '../../bench/frame/BenchActs.tsx';
import type { SaveState } from '../../door.tsx';

export type Seated = Extract<SealMark, { mark: 'seated' }>;

export interface SeatedSheetProps {
  /** Sealant is in already, so dry is no longer what it was seated. */
  sealantIn: boolean;
  save: SaveState;
  onSeated: (seated: Seated, goesOnTo: 'pressure' | 'log') => void;
  onClose: () => void;
}

/** How the bead sits, looked at all round. */
export function SeatedSheet({ sealantIn, save, onSeated, onClose }: SeatedSheetProps) {
  const [beadLine, setBeadLine] = useState<Seated['beadLine']>();
  const [wet, setWet] = useState(sealantIn);
  const tell = (goesOnTo: 'pressure' | 'log') => {
    if (beadLine) onSeated({ mark: 'seated', dry: !wet, beadLine }, goesOnTo);
  };
  return (
    <Sheet
      open
      title="On its seats"
      onClose={onClose}
      actions={
        <BenchActs
          save={save}
          main={
            <Button
              kind="main"
              size="greasy"
              icon="scale"
              disabled={!beadLine}
              onPress={() => tell('pressure')}
            >
              {beadLine ? 'Type the pressure' : 'Check the bead line'}
            </Button>
          }
        >
          <Button size="greasy" icon="pencil" disabled={!beadLine} onPress={() => tell('log')}>
            Log without a pressure
          </Button>
        </BenchActs>
      }
    >
      <Choice<Seated['beadLine']>
        label="The bead line, all round on both sides"
        value={beadLine}
        onChoose={setBeadLine}
        options={[
          { value: 'even', label: 'Even', icon: 'check' },
          {
            value: 'uneven',
            label: 'Uneven',
            icon: 'warning',
            hint: 'Deflate, wet the bead, re-seat. More pressure will not help.',
          },
          { value: 'not-looked', label: 'Not checked', icon: 'question' },
        ]}
      />
      <Toggle label="Sealant is in it" on={wet} onToggle={setWet} />
    </Sheet>
  );
}
