import { Button } from '../../../controls/Button.tsx';
import { Choice } from '../../../controls/fields/Choice.tsx';
import { NumberField } from '../../../controls/fields/NumberField.tsx';
import { TextField } from '../../../controls/fields/TextField.tsx';
import { Ruler } from '../../../controls/figures/Ruler.tsx';
import { type FastenerDraft, withThread } from '../../../drafts/jointDraft.ts';
import { threads } from '../../../standards/screws/threads.ts';

/** Every size of the table can be picked; anything else can be written. */
const offered = threads.map(({ id }) => id);

export interface FastenerFieldsProps {
  fasteners: readonly FastenerDraft[];
  trouble: Record<number, string>;
  onFasteners: (fasteners: FastenerDraft[]) => void;
}

const hands = [
  { value: 'right', label: 'Right-hand thread' },
  { value: 'left', label: 'Left-hand thread', hint: 'Tightens anti-clockwise' },
] as const;

/** The screws of the joint: size, how many, and which way they turn. */
export function FastenerFields({ fasteners, trouble, onFasteners }: FastenerFieldsProps) {
  const put = (at: number, row: FastenerDraft) =>
    onFasteners(fasteners.map((old, index) => (index === at ? row : old)));
  return (
    <>
      <Ruler label="Fasteners" />
      {fasteners.length === 0 && <p>No fasteners.</p>}
      {fasteners.map((row, at) => (
        <fieldset class="joint-box stack" key={at}>
          <legend class="caption">{row.words || `Fasteners ${at + 1}`}</legend>
          <TextField
            label="Thread"
            hint={threads.find(({ id }) => id === row.thread)?.label ?? 'As M5, 3/8-26, 9/16-20'}
            value={row.thread}
            onInput={(thread) => put(at, withThread(row, thread))}
            offers={offered}
            maxLength={40}
          />
          <NumberField
            label="How many"
            typed={row.count}
            onTyped={(count) => put(at, { ...row, count })}
            error={trouble[at]}
          />
          <Choice
            label="Thread direction"
            options={hands}
            value={row.hand}
            onChoose={(hand) => put(at, { ...row, hand })}
          />
          <Button icon="cross" onPress={() => onFasteners(fasteners.filter((_, index) => index !== at))}>
            Remove
          </Button>
        </fieldset>
      ))}
      <Button
        icon="plus"
        wide
        onPress={() => onFasteners([...fasteners, { thread: '', count: '1', hand: 'right', words: '' }])}
      >
        More fasteners
      </Button>
    </>
  );
}
