import './acts.css';
import type { ComponentChildren } from 'preact';
import { Button } from '../../../controls/Button.tsx';
import type { SaveState } from '../../door.tsx';
import { SaveLine } from './SaveLine.tsx';

export interface StepFootProps {
  save: SaveState;
  /** The one thing to do, over the whole width. */
  main?: ComponentChildren;
  /** Between back and next. */
  middle?: ComponentChildren;
  onBack: () => void;
  /** Left out at the end of the list. */
  onNext?: () => void;
}

/** What the thumb does: the main action over the whole width, back and next below it. */
export function StepFoot({ save, main, middle, onBack, onNext }: StepFootProps) {
  return (
    <div class="acts">
      <SaveLine save={save} />
      {main}
      <div class="acts-more">
        <Button size="greasy" icon="back" onPress={onBack}>
          Back
        </Button>
        {middle}
        {onNext && (
          <Button size="greasy" icon="next" onPress={onNext}>
            Next
          </Button>
        )}
      </div>
    </div>
  );
}
