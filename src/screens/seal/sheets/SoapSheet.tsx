import { useState } from 'preact/hooks';
import { Button } from '../../../controls/Button.tsx';
import { TextField } from '../../../controls/fields/TextField.tsx';
import { Sheet } from '../../../controls/frames/Sheet.tsx';
import type { SealMark } from '../../../journal/entries.ts';
import { SaveLine } from '../../bench/frame/SaveLine.tsx';
import type { SaveState } from '../../door.tsx';
import { bubbleWords } from '../sealText.ts';

type Soaped = Extract<SealMark, { mark: 'soaped' }>;
const places = Object.keys(bubbleWords) as Soaped['bubbles'][];

export interface SoapSheetProps {
  save: SaveState;
  onSoaped: (soaped: Soaped) => void;
  onClose: () => void;
}

/** Where soap shows air coming out. One tap is enough; words are optional. */
export function SoapSheet({ save, onSoaped, onClose }: SoapSheetProps) {
  const [words, setWords] = useState('');
  const withWords = words.trim() ? { words: words.trim() } : {};
  return (
    <Sheet open title="What the soap shows" onClose={onClose}>
      <div class="stack">
        <SaveLine save={save} />
        <div class="button-presets">
          {places.map((bubbles) => (
            <Button
              key={bubbles}
              size="greasy"
              icon={bubbles === 'none' ? 'check' : 'drop'}
              onPress={() => onSoaped({ mark: 'soaped', bubbles, ...withWords })}
            >
              {bubbleWords[bubbles]}
            </Button>
          ))}
        </div>
        <TextField
          label="Where exactly"
          hint="Optional, type it before you tap: left, opposite the valve."
          value={words}
          onInput={setWords}
          maxLength={200}
        />
      </div>
    </Sheet>
  );
}
