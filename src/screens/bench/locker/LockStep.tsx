import { Button } from '../../../controls/Button.tsx';
import { StepCard } from '../../../controls/frames/StepCard.tsx';
import type { JointRow } from '../../../journal/rows.ts';
import { nearDiscBrake } from '../../../planning/lockerWait.ts';
import { isBonded } from '../../../planning/unsetBonds.ts';
import { cardTitle } from '../../../practice/bench/cardTitle.ts';
import { lockerCommand, lockerSaid } from '../../../practice/bench/lockerCommand.ts';
import { gapOf } from '../../../practice/joint/measuredFit.ts';
import { spanText } from '../../../words/dayText.ts';
import { withRideAfter } from '../../../words/rideAfter.ts';
import { useRun } from '../../door.tsx';
import { useBenchKeys } from '../benchKeys.ts';
import { BenchFrame } from '../frame/BenchFrame.tsx';
import { StepFoot } from '../frame/StepFoot.tsx';
import { useSteadyTap } from '../steadyTap.ts';
import type { StepProps } from '../stepProps.ts';
import { Extras } from '../torque/Extras.tsx';
import { useStepDraft } from '../useStepDraft.ts';
import { LockerForm } from './LockerForm.tsx';

/** Threadlocker on a joint, or on what the step alone names: what went on which surface, and the wait that starts. */
export function LockStep(props: StepProps & { joint: JointRow | undefined }) {
  const { view, step, index, joint, settings, onShow, onBack, onNext, onLogged, onUndo } = props;
  const gathered = useStepDraft(step.stepId, undefined);
  const { draft, change } = gathered;
  const { run, save } = useRun();
  const steady = useSteadyTap();
  const command = lockerCommand(draft, joint, step);
  const put = steady(async () => {
    if (!command || !draft.grade || save.is === 'saving') return;
    const { photos } = gathered;
    const entries = await run(
      { ...command, ...gathered.noteAndPhotos() },
      { photos, undo: withRideAfter(lockerSaid(draft.grade)) },
    );
    if (!entries) return;
    gathered.clear();
    onLogged(entries);
  });
  useBenchKeys({ next: onNext, back: onBack, applied: put, undo: () => void onUndo() });
  return (
    <BenchFrame
      view={view}
      index={index}
      onShow={onShow}
      actions={
        <StepFoot
          save={save}
          main={
            <Button
              kind="main"
              size="greasy"
              icon="drop"
              disabled={!command}
              under={
                command
                  ? `Starts a timer of ${spanText(command.own?.waitMs ?? command.waitMs)}`
                  : draft.ownWaitH === undefined
                    ? 'Choose grade and surface first'
                    : 'Say why you set this time'
              }
              onPress={put}
            >
              Applied: start curing
            </Button>
          }
          onBack={onBack}
          onNext={onNext}
        />
      }
    >
      <StepCard
        title={cardTitle(step, joint)}
        icon="drop"
        state="open"
        caption={joint && isBonded(joint) ? 'Retaining compound' : 'Threadlocker'}
      >
        {step.detail && <p class="far">{step.detail}</p>}
        <LockerForm
          draft={draft}
          change={change}
          nearDiscBrake={joint !== undefined && nearDiscBrake(joint)}
          screwed={joint === undefined || (joint.fasteners.length > 0 && !isBonded(joint))}
          gapMm={joint && gapOf(joint)}
          temperatureUnit={settings.temperatureUnit}
        />
        <Extras {...{ step, joint, onLogged, gathered }} />
      </StepCard>
    </BenchFrame>
  );
}
