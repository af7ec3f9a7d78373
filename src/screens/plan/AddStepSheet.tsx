import { useId } from 'preact/hooks';
import { Button } from '../../controls/Button.tsx';
import { Choice } from '../../controls/fields/Choice.tsx';
import { FieldFrame } from '../../controls/fields/FieldFrame.tsx';
import { TextField } from '../../controls/fields/TextField.tsx';
import { Sheet } from '../../controls/frames/Sheet.tsx';
import type { StepKind } from '../../journal/entries.ts';
import type { JointRow, StepRow } from '../../journal/rows.ts';
import { SaveLine } from '../bench/frame/SaveLine.tsx';
import { stepKinds, stepWords } from '../bench/stepWords.ts';
import { useRun } from '../door.tsx';
import { useDraft } from '../draft.ts';

export interface AddStepSheetProps {
  bikeId: string;
  joints: readonly JointRow[];
  /** The step it comes behind; the end of the list when left out. */
  behind: StepRow | undefined;
  onClose: () => void;
}

interface NewStep {
  kind?: StepKind;
  title: string;
  detail: string;
  jointId: string;
}

/** A step of one's own, at the end of the list or behind another. */
export function AddStepSheet({ bikeId, joints, behind, onClose }: AddStepSheetProps) {
  const [draft, change, clear] = useDraft<NewStep>(`plan:${bikeId}`, { title: '', detail: '', jointId: '' });
  const { run, save } = useRun();
  const jointField = useId();
  const { kind, detail, jointId } = draft;
  const joint = joints.find((each) => each.jointId === jointId);
  // A step on a joint may go by the joint's name; a torque cannot do without the joint.
  const title = draft.title.trim() || joint?.name || '';
  const missing =
    kind === undefined
      ? 'Choose what kind of step it is.'
      : kind === 'torque' && !joint
        ? 'Choose the joint for this torque.'
        : title === ''
          ? 'Give it a title.'
          : undefined;
  const add = async () => {
    if (missing !== undefined || kind === undefined || save.is === 'saving') return;
    const entries = await run(
      {
        type: 'add-step',
        ...{ bikeId, kind, title },
        ...(detail.trim() ? { detail: detail.trim() } : {}),
        ...(joint ? { jointId } : {}),
        ...(behind ? { afterStepId: behind.stepId } : {}),
      },
      { undo: `Step added: ${title}` },
    );
    if (!entries) return;
    clear();
    onClose();
  };
  return (
    <Sheet
      open
      title={behind ? `Add after: ${behind.title}` : 'Add a step'}
      onClose={onClose}
      actions={
        <>
          <SaveLine save={save} />
          <Button
            kind="main"
            wide
            icon="plus"
            disabled={missing !== undefined}
            under={missing}
            onPress={() => void add()}
          >
            Add it
          </Button>
        </>
      }
    >
      <div class="stack">
        <TextField
          label="Title"
          hint={joint ? 'Left empty, it takes the name of the joint.' : undefined}
          value={draft.title}
          onInput={(typed) => change({ title: typed })}
          maxLength={120}
        />
        {joints.length > 0 && (
          <FieldFrame id={jointField} label="Joint it belongs to">
            <select
              id={jointField}
              class="field-box"
              value={jointId}
              onChange={(event) => change({ jointId: event.currentTarget.value })}
            >
              <option value="">None</option>
              {joints.map((each) => (
                <option key={each.jointId} value={each.jointId}>
                  {each.name}
                </option>
              ))}
            </select>
          </FieldFrame>
        )}
        <Choice
          label="Type of step"
          value={kind}
          onChoose={(chosen) => change({ kind: chosen })}
          options={stepKinds.map((value) => ({
            value,
            label: stepWords(value).work,
            icon: stepWords(value).icon,
          }))}
        />
        <TextField
          label="Notes"
          lines={3}
          value={detail}
          onInput={(typed) => change({ detail: typed })}
          maxLength={1000}
        />
      </div>
    </Sheet>
  );
}
