import { useState } from 'preact/hooks';
import { Button } from '../../../controls/Button.tsx';
import { Choice } from '../../../controls/fields/Choice.tsx';
import { DateTimeField } from '../../../controls/fields/DateTimeField.tsx';
import { NumberField } from '../../../controls/fields/NumberField.tsx';
import { SelectField } from '../../../controls/fields/SelectField.tsx';
import { TextField } from '../../../controls/fields/TextField.tsx';
import { Sheet } from '../../../controls/frames/Sheet.tsx';
import { emptyDefect, readDefect } from '../../../drafts/defectDraft.ts';
import type { Id } from '../../../journal/entries.ts';
import type { JointRow } from '../../../journal/rows.ts';
import { type DistanceUnit, unitLabel } from '../../../mechanics/units.ts';
import { neverDeferred } from '../../../standards/checks/releaseRules.ts';
import { useLogbook, useRun } from '../../door.tsx';
import { useDraft } from '../../draft.ts';
import { SaveNotice } from './SaveNotice.tsx';

export interface DefectSheetProps {
  bikeId: Id;
  joints: readonly JointRow[];
  unit: DistanceUnit;
  /** Words, joint and kind to begin with, where a check has met something. */
  words?: string;
  jointId?: Id;
  area?: string;
  onClose: () => void;
}

/** Something found wrong, and the decision on riding: the bike stays, or is ridden within a limit. */
export function DefectSheet({ bikeId, joints, unit, words, area, onClose, jointId }: DefectSheetProps) {
  const logbook = useLogbook();
  const { run, save } = useRun();
  const [draft, change, clear] = useDraft(`defect:${bikeId}`, {
    ...emptyDefect,
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
    const command = readDefect(draft, bikeId, decision, unit);
    setFarWrong(command ? undefined : 'Type a distance in digits, or leave it empty.');
    if (!command) return;
    const entries = await run(command, { undo: 'Problem logged' });
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
