import { useId } from 'preact/hooks';
import { Button } from '../../controls/Button.tsx';
import { Icon } from '../../controls/Icon.tsx';
import type { CheckAnswer } from '../../practice/release/checkAnswers.ts';
import { notFitted } from '../../standards/checks/notFitted.ts';
import type { RideCheckItem } from '../../standards/checks/rideCheck.ts';

export interface CheckItemProps {
  item: RideCheckItem;
  answer: CheckAnswer | undefined;
  onOk: () => void;
  onFinding: () => void;
  /** The bike has no such thing; left out where it has. */
  onAbsent: (() => void) | undefined;
  /** Writes the finding down as a defect too. */
  onDefect: () => void;
}

/** One thing to look at: the state that is wanted, and two answers. */
export function CheckItem({ item, answer, onOk, onFinding, onAbsent, onDefect }: CheckItemProps) {
  const id = useId();
  const ok = answer?.ok === true;
  const absent = answer !== undefined && 'absent' in answer;
  const bad = answer !== undefined && 'words' in answer;
  const { caution } = notFitted[item.id] ?? {};
  return (
    // biome-ignore lint/a11y/useSemanticElements: a fieldset cannot be laid out as a row in every browser
    <div class={`check-item${answer ? '' : ' check-item-open'}`} role="group" aria-labelledby={id}>
      <p class="check-words" id={id}>
        {item.words}
      </p>
      <div class="check-answers">
        <Button size="greasy" icon={ok ? 'check' : 'ring'} pressed={ok} onPress={onOk}>
          OK
        </Button>
        <Button size="greasy" icon="warning" pressed={bad} onPress={onFinding}>
          Problem
        </Button>
        {onAbsent && (
          <Button size="greasy" icon={absent ? 'minus' : 'ring'} pressed={absent} onPress={onAbsent}>
            Not fitted
          </Button>
        )}
      </div>
      {absent && <p class="far">The release names it.{caution ? ` ${caution}` : ''}</p>}
      {bad && (
        <p class="loud">
          <Icon name="warning" sizePx={24} />
          <span>
            {answer.words}
            {item.neverDefer && <span class="check-never">Must be fixed first.</span>}
          </span>
        </p>
      )}
      {bad && <Button onPress={onDefect}>Report it as a problem</Button>}
    </div>
  );
}
