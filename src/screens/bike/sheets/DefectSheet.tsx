import { useState } from 'preact/hooks';
import { Button } from '../../../controls/Button.tsx';
import { Choice } from '../../../controls/fields/Choice.tsx';
import { DateTimeField } from '../../../controls/fields/DateTimeField.tsx';
import { NumberField } from '../../../controls/fields/NumberField.tsx';
import { SelectField } from '../../../controls/fields/SelectField.tsx';
import { TextField } from '../../../controls/fields/TextField.tsx';
import { Sheet } from '../../../controls/frames/Sheet.tsx';
import type { Id } from '../../../journal/entries.ts';
import type { JointRow } from '../../../journal/rows.ts';
import { parseNumber } from '../../../mechanics/quantity.ts';
import { convert, type DistanceUnit, unitLabel } from '../../../mechanics/units.ts';
import { neverDeferred } from '../../../standards/checks/releaseRules.ts';
import { useLogbook, useRun } from '../../door.tsx';
import { useDraft } from '../../draft.ts';
import { SaveNotice } from './SaveNotice.tsx';

export interface DefectSheetProps {
  bikeId: Id;
  joints: readonly JointRow[];
  kmSoFar: number;
  unit: DistanceUnit;
  /** Words, joint and kind to begin with, where a check has met something. */
  words?: string;
  jointId?: Id;
  area?: string;
  onClose: () => void;
}

interface DefectDraft {
  words: string;
  area: string;
  jointId: string;
  decision: 'do-not-ride' | 'ride-limited';
  untilMs?: number | undefined;
  further: string;
  restriction: string;
}

const first: DefectDraft = {
  words: '',
  area: 'other',
  jointId: '',
  decision: 'do-not-ride',
  further: '',
  restriction: '',
};

/** Something found wrong, and the decision on riding: the bike stays, or is ridden within a limit. */
export function DefectSheet({
  bikeId,
  joints,
  kmSoFar,
  unit,
  words,
  area,
  onClose,
  jointId,
}: DefectSheetProps) {
  const logbook = useLogbook();
  const { run, save } = useRun();
  const [draft, change, clear] = useDraft(`defect:${bikeId}`, {
    ...first,
    ...(words === undefined ? {} : { words }),
    ...(jointId === undefined ? {} : { jointId }),
    ...(area === undefined ? {} : { area }),
  });
  const [farWrong, setFarWrong] = useState<string>();
  const grave =
    neverDeferred.some(({ id }) => id === draft.area) ||
    joints.some(({ jointId, matters }) => jointId === draft.jointId && matters);
  const decision = grave ? 'do-not-ride' : draft.decision;
  const limited = decision === 'ride-limited';
  const write = async () => {
    const far = limited && draft.further.trim() !== '' ? parseNumber(draft.further) : undefined;
    setFarWrong(far && !far.ok ? 'Type a distance in digits, or leave it empty.' : undefined);
    if (far && !far.ok) return;
    const entries = await run(
      {
        type: 'find-defect',
        ...{ bikeId, words: draft.words, area: draft.area, decision },
        ...(draft.jointId ? { jointId: draft.jointId } : {}),
        ...(limited && draft.untilMs !== undefined ? { untilMs: draft.untilMs } : {}),
        ...(far?.ok ? { untilKm: kmSoFar + convert(far.value, unit, 'km') } : {}),
        ...(limited && draft.restriction.trim() ? { restriction: draft.restriction.trim() } : {}),
      },
      { undo: 'Defect written down' },
    );
    if (!entries) return;
    clear();
    onClose();
  };
  return (
    <Sheet
      open
      title="Report a problem"
      onClose={onClose}
      actions={
        <Button kind="main" icon="warning" disabled={save.is === 'saving'} onPress={write}>
          Save
        </Button>
      }
    >
      <div class="stack">
        <SaveNotice save={save} />
        <TextField
          label="What is wrong"
          value={draft.words}
          onInput={(typed) => change({ words: typed })}
          maxLength={300}
        />
        <SelectField
          label="Type of problem"
          value={draft.area}
          onChoose={(chosen) => change({ area: chosen })}
          options={[
            ...neverDeferred.map(({ id, words }) => ({ value: id, label: words })),
            { value: 'other', label: 'Something else' },
          ]}
        />
        <SelectField
          label="At which joint"
          value={draft.jointId}
          onChoose={(chosen) => change({ jointId: chosen })}
          options={[
            { value: '', label: 'No joint' },
            ...joints.map(({ jointId, name }) => ({ value: jointId, label: name })),
          ]}
        />
        <Choice
          label="Decision"
          value={decision}
          onChoose={(chosen) => change({ decision: chosen })}
          options={[
            {
              value: 'do-not-ride',
              label: 'Do not ride',
              icon: 'stop',
              hint: 'Until it is fixed.',
            },
            {
              value: 'ride-limited',
              label: 'Ride within a limit',
              icon: 'warning',
              disabled: grave,
              hint: grave ? 'Not available: no limit makes this safe.' : 'By a date or a distance.',
            },
          ]}
        />
        {limited && (
          <>
            <DateTimeField
              label="Until the day"
              kind="date"
              atMs={draft.untilMs}
              earliestMs={logbook.now()}
              onAt={(untilMs) => change({ untilMs })}
            />
            <NumberField
              label={`Or for another … ${unitLabel[unit]}`}
              typed={draft.further}
              onTyped={(further) => change({ further })}
              error={farWrong}
            />
            <TextField
              label="How it may be ridden"
              hint="Slowly, without load, on the flat."
              value={draft.restriction}
              onInput={(restriction) => change({ restriction })}
              maxLength={200}
            />
          </>
        )}
      </div>
    </Sheet>
  );
}
