import { useState } from 'preact/hooks';
import { Button } from '../../../controls/Button.tsx';
import { Choice } from '../../../controls/fields/Choice.tsx';
import { SelectField } from '../../../controls/fields/SelectField.tsx';
import { TextField } from '../../../controls/fields/TextField.tsx';
import { Sheet } from '../../../controls/frames/Sheet.tsx';
import type { Id } from '../../../journal/entries.ts';
import type { JointRow } from '../../../journal/rows.ts';
import { spanTyped, usualSpans } from '../../../planning/spanTyped.ts';
import { useRun } from '../../door.tsx';
import { useDraft } from '../../draft.ts';
import { SaveNotice } from './SaveNotice.tsx';

interface WaitDraft {
  title: string;
  /** How long, as typed. */
  typed: string;
  jointId: Id;
  kind: 'adhesive' | 'other';
}

const noWait: WaitDraft = { title: '', typed: '', jointId: '', kind: 'adhesive' };

export interface StartWaitProps {
  bikeId: Id;
  joints: readonly JointRow[];
  onClose: () => void;
}

/** A wait of one's own: glue under a grip, paint on a tube. Threadlocker and tyres start theirs where they are logged. */
export function StartWait({ bikeId, joints, onClose }: StartWaitProps) {
  const { run, save } = useRun();
  const [draft, change, clear] = useDraft<WaitDraft>(`wait:${bikeId}`, noWait);
  const { title, typed, jointId, kind } = draft;
  const [wrong, setWrong] = useState<{ title?: string; hours?: string }>({});
  const start = async () => {
    const waitMs = spanTyped(typed, 'h');
    const words = title.trim();
    const found = {
      ...(words === '' ? { title: 'Enter what it is.' } : {}),
      ...(waitMs === undefined ? { hours: 'Enter a time, e.g. 20 min or 1.5 h; 60 days at most.' } : {}),
    };
    setWrong(found);
    if (waitMs === undefined || words === '') return;
    const done = await run(
      { type: 'start-wait', bikeId, kind, title: words, waitMs, ...(jointId ? { jointId } : {}) },
      { undo: `Timer started: ${words}` },
    );
    if (!done) return;
    clear();
    onClose();
  };
  return (
    <Sheet
      open
      title="Start a timer"
      onClose={onClose}
      actions={
        <Button kind="main" icon="hourglass" disabled={save.is === 'saving'} onPress={start}>
          Start timer
        </Button>
      }
    >
      <div class="stack">
        <SaveNotice save={save} />
        <TextField
          label="What are you waiting for?"
          value={title}
          onInput={(words) => change({ title: words })}
          error={wrong.title}
          maxLength={120}
        />
        <div class="stack">
          <div class="button-presets">
            {usualSpans.map(({ words }) => (
              <Button key={words} pressed={typed === words} onPress={() => change({ typed: words })}>
                {words}
              </Button>
            ))}
          </div>
          <TextField
            label="How long"
            value={typed}
            onInput={(span) => change({ typed: span })}
            error={wrong.hours}
            hint="20 min, 2 days; a number alone is hours"
            maxLength={40}
          />
        </div>
        <SelectField
          label="At which joint"
          hint="Uncured glue on a safety-critical joint blocks release."
          value={jointId}
          onChoose={(chosen) => change({ jointId: chosen })}
          options={[
            { value: '', label: 'No joint' },
            ...joints
              .filter(({ state }) => state !== 'apart')
              .map((joint) => ({ value: joint.jointId, label: joint.name })),
          ]}
        />
        <Choice
          label="Kind"
          value={kind}
          onChoose={(chosen) => change({ kind: chosen })}
          options={[
            { value: 'adhesive', label: 'Adhesive curing' },
            { value: 'other', label: 'Something else' },
          ]}
        />
      </div>
    </Sheet>
  );
}
