import { Button } from '../../controls/Button.tsx';
import { StepCard } from '../../controls/frames/StepCard.tsx';
import { cardTitle } from '../../practice/bench/cardTitle.ts';
import { useRun } from '../door.tsx';
import { hrefOf } from '../route.ts';
import { BondSheet, UnsetBonds } from './BondSheet.tsx';
import { useBenchKeys } from './benchKeys.ts';
import { BenchFrame } from './frame/BenchFrame.tsx';
import { StepFoot } from './frame/StepFoot.tsx';
import { LeftHand } from './LeftHand.tsx';
import { useSteadyTap } from './steadyTap.ts';
import type { StepProps } from './stepProps.ts';
import { stepWords } from './stepWords.ts';
import { Extras } from './torque/Extras.tsx';
import { useStepDraft } from './useStepDraft.ts';

/** A step that is done when it is done: fit, press, seat, cut, adjust, check. */
export function PlainStep(props: StepProps) {
  const { view, step, index, joint, onShow, onBack, onNext, onLogged, onUndo } = props;
  const gathered = useStepDraft(step.stepId, undefined);
  const { run, save } = useRun();
  const steady = useSteadyTap();
  const words = stepWords(step.kind);
  const sealJointId = step.kind === 'seat' ? joint?.jointId : undefined;
  const seal = view.seals.find(({ jointId }) => jointId === sealJointId);
  const seated = seal?.marks.some(({ mark }) => mark === 'seated') ?? false;
  const log = async (despite?: string) => {
    if (save.is === 'saving') return false;
    const { photos } = gathered;
    const command = {
      type: 'finish-step',
      stepId: step.stepId,
      ...(despite ? { despite } : {}),
      ...gathered.noteAndPhotos(),
    } as const;
    const entries = await run(command, { photos, undo: `Done: ${step.title}` });
    if (!entries) return false;
    gathered.clear();
    onLogged(entries);
    return true;
  };
  const finish = steady(() => void log());
  // A change for good is written down with what is left; that finishes its step.
  const changing =
    step.kind === 'cut' && step.partId
      ? hrefOf({ at: 'change-part', partId: step.partId, stepId: step.stepId })
      : undefined;
  const toSeal = sealJointId !== undefined && !seated;
  useBenchKeys({
    next: onNext,
    back: onBack,
    applied: toSeal || changing ? undefined : finish,
    undo: () => void onUndo(),
  });
  return (
    <BenchFrame
      view={view}
      index={index}
      onShow={onShow}
      actions={
        <StepFoot
          save={save}
          main={
            toSeal ? (
              <Button
                kind="main"
                size="greasy"
                icon="tyre"
                under="Bead, sealant and pressure are logged there"
                href={hrefOf({ at: 'seal', jointId: sealJointId })}
              >
                Seat the tyre
              </Button>
            ) : changing ? (
              <Button
                kind="main"
                size="greasy"
                icon="saw"
                under="Before, after and what is left"
                href={changing}
              >
                Log the change
              </Button>
            ) : (
              <Button
                kind="main"
                size="greasy"
                icon="check"
                under={seated ? 'The tyre is logged as seated' : undefined}
                onPress={finish}
              >
                Done
              </Button>
            )
          }
          middle={
            toSeal ? (
              <Button size="greasy" onPress={finish}>
                Already seated
              </Button>
            ) : (
              changing && (
                <Button size="greasy" onPress={finish}>
                  Logged already
                </Button>
              )
            )
          }
          onBack={onBack}
          onNext={onNext}
        />
      }
    >
      <StepCard title={cardTitle(step, joint)} icon={words.icon} state="open" caption={words.order}>
        {step.kind === 'fit' && <LeftHand joint={joint} />}
        {step.kind === 'press' && <UnsetBonds view={view} joint={joint} />}
        {joint && <BondSheet jointId={joint.jointId} save={save} onWord={log} />}
        {step.detail && <p class="far">{step.detail}</p>}
        {step.kind === 'cut' && <p class="far">Permanent. Measure before and after.</p>}
        <Extras {...{ step, joint, onLogged, gathered }} />
      </StepCard>
    </BenchFrame>
  );
}
