import { Button } from '../../controls/Button.tsx';
import { TextField } from '../../controls/fields/TextField.tsx';
import { Sheet } from '../../controls/frames/Sheet.tsx';
import type { StepRow } from '../../journal/rows.ts';
import { SaveLine } from '../bench/frame/SaveLine.tsx';
import type { SaveState } from '../door.tsx';
import { useDraft } from '../draft.ts';

export interface SplitSheetProps {
  step: StepRow;
  save: SaveState;
  /** Resolves to whether they were made. */
  onSplit: (titles: string[]) => Promise<boolean>;
  onClose: () => void;
}

/** One step made into several of the same kind: left and right, upper and lower. */
export function SplitSheet({ step, save, onSplit, onClose }: SplitSheetProps) {
  const [{ titles }, change, clear] = useDraft(`split:${step.stepId}`, {
    titles: [`${step.title}, first`, `${step.title}, second`],
  });
  // Two lines are for reading a long title to its end; a title itself has no second line.
  const write = (index: number, typed: string) =>
    change({ titles: titles.map((old, place) => (place === index ? typed.replaceAll('\n', ' ') : old)) });
  const given = titles.map((title) => title.trim()).filter((title) => title !== '');
  const split = async () => {
    if (await onSplit(given)) clear();
  };
  // Shut by hand it is given up: nothing half said is left to wait for.
  const shut = () => {
    clear();
    onClose();
  };
  return (
    <Sheet
      open
      title={`Split: ${step.title}`}
      onClose={shut}
      actions={
        <>
          <SaveLine save={save} />
          <Button icon="plus" onPress={() => change({ titles: [...titles, ''] })}>
            One more
          </Button>
          <Button kind="main" icon="check" disabled={given.length < 2} onPress={split}>
            Make {given.length} steps
          </Button>
        </>
      }
    >
      <div class="stack">
        {titles.map((title, index) => (
          <TextField
            key={index}
            label={`Step ${index + 1}`}
            lines={2}
            value={title}
            onInput={(typed) => write(index, typed)}
            maxLength={120}
          />
        ))}
      </div>
    </Sheet>
  );
}
