import '../bench.css';
import type { ComponentChildren } from 'preact';
import { Progress } from '../../../controls/figures/Progress.tsx';
import { Screen } from '../../../controls/frames/Screen.tsx';
import { Worktop } from '../../../controls/frames/Worktop.tsx';
import { Icon } from '../../../controls/Icon.tsx';
import type { JointRow, StepRow } from '../../../journal/rows.ts';
import type { Views } from '../../../logbook.ts';
import { leftBehind } from '../../../practice/bench/stepInHand.ts';
import { hrefOf } from '../../route.ts';
import { Waits } from '../../Waits.tsx';
import { Awake } from '../Awake.tsx';
import { stepWords } from '../stepWords.ts';

export type BenchView = NonNullable<Views['bench']['gives']>;

export interface BenchFrameProps {
  view: BenchView;
  /** Place of the step in hand; the length of the list at its end. */
  index: number;
  onShow: (stepId: string) => void;
  actions: ComponentChildren;
  children: ComponentChildren;
}

const handTight = ({ state }: JointRow) => state === 'hand-tight';

/** The step at which a joint gets its torque. */
const torqueStepOf = (steps: StepRow[], joint: JointRow) =>
  steps.find(({ kind, jointId }) => kind === 'torque' && jointId === joint.jointId);

/** Joints that are only hand-tight, by number and name, with the way to the first of them. */
function HandTight({ view, onShow }: Pick<BenchFrameProps, 'view' | 'onShow'>) {
  const joints = view.joints.filter(handTight);
  if (joints.length === 0) return null;
  const count = joints.length === 1 ? '1 joint hand-tight' : `${joints.length} joints hand-tight`;
  const step = joints.map((joint) => torqueStepOf(view.steps, joint)).find((found) => found);
  const words = (
    <>
      <Icon name="handTight" sizePx={28} />
      <span>
        <strong>{count}</strong>
        <span class="bench-names">{joints.map(({ name }) => name).join(', ')}</span>
      </span>
    </>
  );
  if (!step) return <p class="bench-handtight">{words}</p>;
  return (
    <button type="button" class="bench-handtight" onClick={() => onShow(step.stepId)}>
      {words}
      <Icon name="more" sizePx={20} />
    </button>
  );
}

/** The frame round every step: where I am, what is only hand-tight, what comes next, and that the screen stays on. */
export function BenchFrame({ view, index, onShow, actions, children }: BenchFrameProps) {
  const { bike, steps } = view;
  const step = steps[index];
  const next = steps.find(({ state }, place) => place > index && state === 'open');
  return (
    <Screen
      title={bike.name}
      route={step?.stepId ?? 'end'}
      back={hrefOf({ at: 'bike', bikeId: bike.bikeId })}
      action={
        <a class="bench-plan" href={hrefOf({ at: 'plan', bikeId: bike.bikeId })}>
          <Icon name="tally" sizePx={28} />
          Plan
        </a>
      }
      waits={<Waits />}
      actions={actions}
    >
      <Worktop>
        {step && <Progress at={index + 1} of={steps.length} open={leftBehind(steps, index)} />}
        <HandTight view={view} onShow={onShow} />
        {children}
        {step && (
          <p class="bench-next">
            <Icon name="next" sizePx={22} />
            <span>
              {next ? `Next: ${stepWords(next.kind).order.toLowerCase()} ${next.title}` : 'Last step'}
            </span>
          </p>
        )}
        <Awake />
      </Worktop>
    </Screen>
  );
}
