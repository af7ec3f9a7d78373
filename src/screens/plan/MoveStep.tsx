import { useMemo } from 'preact/hooks';
import { Button } from '../../controls/Button.tsx';
import { Screen } from '../../controls/frames/Screen.tsx';
import { ListRow } from '../../controls/lists/ListRow.tsx';
import { WindowedList } from '../../controls/lists/WindowedList.tsx';
import type { JointRow, PartRow, StepRow } from '../../journal/rows.ts';
import { orderedJoints } from '../../planning/orderedJoints.ts';
import { type MovePlace, movePlaces } from '../../practice/bench/movePlaces.ts';
import { SaveLine } from '../bench/frame/SaveLine.tsx';
import { stepMark, stepWords } from '../bench/stepWords.ts';
import { useRun } from '../door.tsx';
import { Waits } from '../Waits.tsx';

export interface MoveStepProps {
  step: StepRow;
  steps: readonly StepRow[];
  joints: readonly JointRow[];
  parts: readonly PartRow[];
  onClose: () => void;
}

/** The list with one step picked up: a tap on another puts it down after that; where it may not stand, it says why. */
export function MoveStep({ step, steps, joints, parts, onClose }: MoveStepProps) {
  const { run, save } = useRun();
  const places = useMemo(
    () => movePlaces(steps, step.stepId, orderedJoints(joints, parts)),
    [steps, step.stepId, joints, parts],
  );
  const others = steps.filter(({ stepId }) => stepId !== step.stepId);
  const putDown = async ({ afterStepId, here }: MovePlace) => {
    if (save.is === 'saving') return;
    const { stepId, title } = step;
    if (here || (await run({ type: 'move-step', stepId, afterStepId }, { undo: `Moved: ${title}` })))
      onClose();
  };
  const first = places[0];
  const row = (index: number) => {
    const [other, place] = [others[index], places[index + 1]];
    if (!other || !place) return null;
    const detail = place.refused ?? (place.here ? 'After this one now' : stepWords(other.kind).work);
    return (
      <ListRow
        title={other.title}
        detail={detail}
        icon={stepWords(other.kind).icon}
        {...(place.refused ? { state: 'void', stateWord: 'Not after this' } : stepMark[other.state])}
        {...(place.refused ? {} : { onPress: () => void putDown(place) })}
        current={place.here === true}
      />
    );
  };
  return (
    <Screen
      title={`Move: ${step.title}`}
      waits={<Waits />}
      actions={
        <div class="plan-foot">
          <SaveLine save={save} />
          <Button icon="cross" onPress={onClose}>
            Cancel
          </Button>
          {first && (
            <Button
              icon="up"
              disabled={first.refused !== undefined || first.here === true}
              under={first.refused}
              onPress={() => void putDown(first)}
            >
              Put it first
            </Button>
          )}
        </div>
      }
    >
      <p class="plan-count" role="status">
        Tap the step it comes after.
      </p>
      <WindowedList
        label="Places"
        count={others.length}
        estimatePx={104}
        rowKey={(index) => others[index]?.stepId ?? index}
        renderRow={row}
      />
    </Screen>
  );
}
