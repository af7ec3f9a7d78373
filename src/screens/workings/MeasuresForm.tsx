import { unitsOf } from '../../mechanics/units.ts';
import './workings.css';
import { useState } from 'preact/hooks';
import { Button } from '../../controls/Button.tsx';
import { NumberField } from '../../controls/fields/NumberField.tsx';
import { SelectField } from '../../controls/fields/SelectField.tsx';
import { describedAnew } from '../../drafts/describedAnew.ts';
import type { JointAbout } from '../../journal/entries.ts';
import type { JointRow } from '../../journal/rows.ts';
import {
  type MeasureKey,
  measuresOf,
  type ReadMeasures,
  readMeasures,
  rowsFor,
} from '../../practice/joint/measures.ts';
import { quantityRefusals } from '../../words/quantityRefusals.ts';
import { SaveNotice } from '../bike/sheets/SaveNotice.tsx';
import { useRun } from '../door.tsx';
import { useEdit } from '../draft.ts';
import { Meanwhile } from '../Meanwhile.tsx';

/** Asks once for what the computations of a joint need, and writes it down with the joint. */
export function MeasuresForm({ joint }: { joint: JointRow }) {
  const { draft, change, clear, meanwhile } = useEdit(`workings:${joint.jointId}`, measuresOf(joint));
  const [wrong, setWrong] = useState<Extract<ReadMeasures, { ok: false }>['wrong']>({});
  const { run, save } = useRun();
  const labels = Object.fromEntries(rowsFor(joint, draft.construction).map(({ key, label }) => [key, label]));
  const error = (key: MeasureKey) => {
    const reason = wrong[key];
    return reason && quantityRefusals[reason];
  };
  const keep = async () => {
    if (save.is === 'saving') return;
    const read = readMeasures(draft, joint);
    setWrong(read.ok ? {} : read.wrong);
    if (!read.ok) return;
    const untouched = readMeasures(measuresOf(joint), joint);
    const known = untouched.ok ? { ...joint, ...untouched.about } : joint;
    const changed = describedAnew<JointAbout>(known, read.about, ['clamp', 'bar', 'extension', 'diameters']);
    const command = { type: 'describe-joint', jointId: joint.jointId, ...changed } as const;
    if (Object.keys(changed).length === 0 || (await run(command, { undo: `Measured: ${joint.name}` })))
      clear();
  };
  return (
    <div class="stack">
      <SaveNotice save={save} />
      <Meanwhile changed={meanwhile} labels={labels} onTake={change} />
      <div class="working-fields">
        {rowsFor(joint, draft.construction).map((row) =>
          'options' in row ? (
            <SelectField
              key={row.key}
              label={row.label}
              hint={row.hint}
              options={[{ value: '', label: 'Not known' }, ...row.options]}
              value={draft[row.key]}
              onChoose={(value) => change({ [row.key]: value })}
              error={error(row.key) && 'Choose one here.'}
            />
          ) : row.bare ? (
            <NumberField
              key={row.key}
              label={row.label}
              hint={row.hint}
              typed={draft[row.key]}
              onTyped={(typed) => change({ [row.key]: typed })}
              error={error(row.key)}
            />
          ) : (
            <NumberField
              key={row.key}
              label={row.label}
              hint={row.hint}
              typed={draft[row.key]}
              unit={draft.unit}
              units={unitsOf.length}
              onTyped={(typed, unit = draft.unit) => change({ [row.key]: typed, unit })}
              error={error(row.key)}
            />
          ),
        )}
      </div>
      <Button kind="main" icon="check" wide disabled={save.is === 'saving'} onPress={keep}>
        Save it with the joint
      </Button>
    </div>
  );
}
