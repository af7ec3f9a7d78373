import { useState } from 'preact/hooks';
import { Button } from '../../../controls/Button.tsx';
import { Choice } from '../../../controls/fields/Choice.tsx';
import { TextField } from '../../../controls/fields/TextField.tsx';
import { Sheet } from '../../../controls/frames/Sheet.tsx';
import type { SealMark } from '../../../journal/entries.ts';
import { lookPresets } from '../../../practice/seal/lookAgain.ts';
import { SaveLine } from '../../bench/frame/SaveLine.tsx';
import type { SaveState } from '../../door.tsx';
import { verdictWords } from '../sealText.ts';

type VerdictMark = Extract<SealMark, { mark: 'verdict' }>;

export interface VerdictSheetProps {
  save: SaveState;
  onVerdict: (verdict: VerdictMark, lookAgainMs?: number) => void;
  onClose: () => void;
}

/** What the person at the wheel makes of it. */
export function VerdictSheet({ save, onVerdict, onClose }: VerdictSheetProps) {
  const [verdict, setVerdict] = useState<VerdictMark['verdict']>();
  const [words, setWords] = useState('');
  const tell = (lookAgainMs?: number) => {
    if (!verdict) return;
    onVerdict({ mark: 'verdict', verdict, ...(words.trim() ? { words: words.trim() } : {}) }, lookAgainMs);
  };
  const label = (of: VerdictMark['verdict']) => verdictWords[of];
  return (
    <Sheet
      open
      title="Verdict"
      onClose={onClose}
      actions={
        <>
          <SaveLine save={save} />
          <Button kind="main" size="greasy" icon="pencil" disabled={!verdict} onPress={() => tell()}>
            {verdict ? `Log: ${label(verdict).toLowerCase()}` : 'Choose first'}
          </Button>
        </>
      }
    >
      <div class="stack">
        <Choice<VerdictMark['verdict']>
          label="Your verdict on this tyre"
          value={verdict}
          onChoose={setVerdict}
          options={[
            {
              value: 'holds',
              label: label('holds'),
              icon: 'check',
              hint: 'Pressure loss acceptable.',
            },
            {
              value: 'still-sealing',
              label: label('still-sealing'),
              icon: 'hourglass',
              hint: 'Losing less each time.',
            },
            { value: 'leaks', label: label('leaks'), icon: 'drop', hint: 'Still leaking at the same rate.' },
            {
              value: 'will-not-seat',
              label: label('will-not-seat'),
              icon: 'stop',
              hint: 'Blocks release.',
            },
          ]}
        />
        {verdict === 'still-sealing' && (
          <div>
            <p class="field-label">Log it, and look again in</p>
            <div class="button-presets seal-presets">
              {lookPresets.map((preset) => (
                <Button key={preset.label} size="greasy" onPress={() => tell(preset.ms)}>
                  {preset.label}
                </Button>
              ))}
            </div>
          </div>
        )}
        <TextField label="In words" value={words} onInput={setWords} maxLength={300} />
      </div>
    </Sheet>
  );
}
