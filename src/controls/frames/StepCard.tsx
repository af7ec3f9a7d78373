import './StepCard.css';
import type { ComponentChildren } from 'preact';
import { Mark, type MarkState, Stroke } from '../figures/Mark.tsx';
import { Icon, type IconName } from '../Icon.tsx';

export interface StepCardProps {
  /** What to do, as an order: "Tighten the stem's face plate". */
  title: string;
  /** Drawing of the kind of work. */
  icon: IconName;
  state: MarkState;
  /** Closer word for the state: "Done 14:02". */
  stateWord?: string | undefined;
  /** Printed above: "Step 7 of 23", the joint's name. */
  caption?: ComponentChildren;
  /** The number that matters: it stands above everything else, and the title under it. */
  figure?: ComponentChildren;
  /** The number, the picture, the sentence: whatever the step needs. */
  children?: ComponentChildren;
}

/** From here on a title would push the figure below the edge of the phone. */
const LONG_TITLE = 48;

/** One step at the bench. Anything but done carries a grease-pencil stroke down its edge. */
export function StepCard({ title, icon, state, stateWord, caption, figure, children }: StepCardProps) {
  return (
    <article class={`step step-${state}`}>
      <Stroke state={state} />
      <div>
        {figure}
        {(!figure || stateWord) && (
          <div class="step-head">
            <span class="caption">{caption}</span>
            <Mark state={state} word={stateWord} />
          </div>
        )}
        <h2 class={figure || title.length > LONG_TITLE ? 'step-title step-title-long' : 'step-title'}>
          <Icon name={icon} sizePx={36} />
          <span>{title}</span>
        </h2>
        {children && <div class="step-body stack">{children}</div>}
      </div>
    </article>
  );
}
