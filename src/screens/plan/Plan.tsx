import { Absent } from '../Absent.tsx';
import './plan.css';
import { useState } from 'preact/hooks';
import { Button } from '../../controls/Button.tsx';
import { Screen } from '../../controls/frames/Screen.tsx';
import { Icon } from '../../controls/Icon.tsx';
import { ListRow } from '../../controls/lists/ListRow.tsx';
import { WindowedList } from '../../controls/lists/WindowedList.tsx';
import type { StepRow } from '../../journal/rows.ts';
import { SaveLine } from '../bench/frame/SaveLine.tsx';
import { chooseStep, sitAt } from '../bench/sitting.ts';
import { stepMark, stepWords } from '../bench/stepWords.ts';
import { useLogbook, useRun, useView } from '../door.tsx';
import { go, hrefOf } from '../route.ts';
import { Waits } from '../Waits.tsx';
import { AddStepSheet } from './AddStepSheet.tsx';
import { Day } from './Day.tsx';
import { EmptyPlan } from './EmptyPlan.tsx';
import { MoveMark } from './MoveMark.tsx';
import { MoveStep } from './MoveStep.tsx';
import { StepSheet } from './StepSheet.tsx';

type Opened = { sheet: 'step' | 'move'; stepId: string } | { sheet: 'add'; afterStepId?: string };

/** The list of steps of a bike: its order, what is in it, and the way to the bench at any of them. */
export function Plan({ bikeId }: { bikeId: string }) {
  const seen = useView('bench', { bikeId });
  const logbook = useLogbook();
  const { run, save } = useRun();
  const [opened, setOpened] = useState<Opened>();
  const close = () => setOpened(undefined);
  const value = seen.is === 'there' ? seen.value : undefined;
  const back = value ? hrefOf({ at: 'bike', bikeId }) : hrefOf({ at: 'home' });
  if (!value)
    return (
      <Screen title="Plan" back={back} waits={<Waits />}>
        <Absent what="bike" seen={[seen]} />
      </Screen>
    );

  const { bike, steps, joints, parts, waits } = value;
  const toBench = async ({ stepId, state }: StepRow) => {
    if (state === 'open' && bike.openStepId !== stepId && !(await run({ type: 'open-step', stepId }))) return;
    // Chosen here and now, the bench need not ask what became of it.
    sitAt(bikeId, stepId, logbook.now());
    chooseStep(bikeId, stepId);
    go({ at: 'bench', bikeId });
  };
  const planSteps = () => void run({ type: 'plan-steps', bikeId }, { undo: 'Steps added from the joints' });
  const count = (state: StepRow['state']) => steps.filter((step) => step.state === state).length;
  const step =
    opened && opened.sheet !== 'add' ? steps.find(({ stepId }) => stepId === opened.stepId) : undefined;
  if (step && opened?.sheet === 'move')
    return <MoveStep step={step} steps={steps} joints={joints} parts={parts} onClose={close} />;
  const row = (index: number) => {
    const one = steps[index];
    if (!one) return null;
    const mark = stepMark[one.state];
    const words = stepWords(one.kind);
    return (
      <div class="plan-row">
        <ListRow
          title={`${index + 1}  ${one.title}`}
          detail={one.state === 'skipped' && one.why ? `${words.work}; ${one.why}` : words.work}
          icon={words.icon}
          state={mark.state}
          stateWord={one.stepId === bike.openStepId && one.state === 'open' ? 'Current' : mark.word}
          onPress={() => void toBench(one)}
          current={one.stepId === bike.openStepId && one.state === 'open'}
        />
        <div class="plan-beside">
          <button
            type="button"
            class="plan-change"
            aria-label={`Move step ${index + 1}: ${one.title}`}
            onClick={() => setOpened({ sheet: 'move', stepId: one.stepId })}
          >
            <MoveMark />
          </button>
          <button
            type="button"
            class="plan-change"
            aria-label={`Change step ${index + 1}: ${one.title}`}
            onClick={() => setOpened({ sheet: 'step', stepId: one.stepId })}
          >
            <Icon name="pencil" sizePx={26} />
          </button>
        </div>
      </div>
    );
  };
  return (
    <Screen
      title={`Plan: ${bike.name}`}
      back={back}
      waits={<Waits />}
      actions={
        <div class="plan-foot">
          <SaveLine save={save.is === 'saved' ? { is: 'idle' } : save} />
          {steps.length > 0 && (
            <Button kind="main" icon="spanner" href={hrefOf({ at: 'bench', bikeId })}>
              Start work
            </Button>
          )}
          <Button icon="plus" onPress={() => setOpened({ sheet: 'add' })}>
            Add a step
          </Button>
          {joints.length > 0 && (
            <Button kind={steps.length > 0 ? 'plain' : 'main'} icon="tally" onPress={planSteps}>
              From the joints
            </Button>
          )}
        </div>
      }
    >
      {steps.length === 0 ? (
        <EmptyPlan bikeId={bikeId} joints={joints.length} />
      ) : (
        <>
          <p class="plan-count">
            <strong>{count('open')} not done</strong>
            {count('skipped') > 0 && <strong>, {count('skipped')} skipped</strong>}, {count('done')} done of{' '}
            {steps.length}
          </p>
          <Day {...{ steps, joints, parts, waits }} onBegin={(one) => void toBench(one)} />
          <WindowedList
            label="Steps"
            count={steps.length}
            estimatePx={104}
            rowKey={(index) => steps[index]?.stepId ?? index}
            renderRow={row}
          />
        </>
      )}
      {step && (
        <StepSheet
          key={step.stepId}
          step={step}
          steps={steps}
          onBench={() => void toBench(step)}
          onMove={() => setOpened({ sheet: 'move', stepId: step.stepId })}
          onAddBehind={() => setOpened({ sheet: 'add', afterStepId: step.stepId })}
          onClose={close}
        />
      )}
      {opened?.sheet === 'add' && (
        <AddStepSheet
          bikeId={bikeId}
          joints={joints}
          behind={steps.find(({ stepId }) => stepId === opened.afterStepId)}
          onClose={close}
        />
      )}
    </Screen>
  );
}
