import { useState } from 'preact/hooks';
import { Button } from '../../controls/Button.tsx';
import { Choice } from '../../controls/fields/Choice.tsx';
import { SelectField } from '../../controls/fields/SelectField.tsx';
import { TextField } from '../../controls/fields/TextField.tsx';
import { Notice } from '../../controls/frames/Notice.tsx';
import { Sheet } from '../../controls/frames/Sheet.tsx';
import type { Place } from '../../journal/entries.ts';
import type { JointRow, PartRow } from '../../journal/rows.ts';
import { listWords } from '../../words/phrases.ts';
import { SaveNotice } from '../bike/sheets/SaveNotice.tsx';
import { useRun, useView } from '../door.tsx';

type Where = Place['on'];

const wheres: { value: Where; label: string; hint: string }[] = [
  { value: 'shelf', label: 'The shelf', hint: 'Ready to reuse.' },
  { value: 'bike', label: 'Another bike', hint: 'Fit it there now.' },
  { value: 'quarantine', label: 'Quarantine', hint: 'Do not use until inspected.' },
  { value: 'scrapped', label: 'Scrapped', hint: 'Destroyed so it cannot be reused.' },
  { value: 'sold', label: 'Sold or given away', hint: 'Its record goes with it.' },
];

export interface MovePartProps {
  part: PartRow;
  /** Joints that come apart when it leaves. */
  joints: readonly JointRow[];
  onClose: () => void;
}

/** Where a part goes when it leaves where it is; each way asks only what belongs to it. */
export function MovePart({ part, joints, onClose }: MovePartProps) {
  const onBike = part.place.on === 'bike' ? part.place.bikeId : undefined;
  const bikes = useView('bikes');
  const { run, save } = useRun();
  const [where, setWhere] = useState<Where | undefined>(onBike === undefined ? 'bike' : undefined);
  const [bikeId, setBikeId] = useState<string>();
  const [words, setWords] = useState('');
  const [why, setWhy] = useState('');
  const [condition, setCondition] = useState('');
  const open = bikes.is === 'there' ? bikes.value.filter((bike) => bike.putAway === undefined) : [];
  const others = open.filter((bike) => bike.bikeId !== onBike);
  const text = words.trim();
  const to = ((): Place | undefined => {
    switch (where) {
      case 'shelf':
        return text === '' ? { on: 'shelf' } : { on: 'shelf', tag: text };
      case 'bike':
        return bikeId === undefined ? undefined : { on: 'bike', bikeId };
      case 'quarantine':
        return { on: 'quarantine', why: text };
      case 'scrapped':
        return { on: 'scrapped', how: text };
      case 'sold':
        return text === '' ? { on: 'sold' } : { on: 'sold', to: text };
      case undefined:
        return undefined;
    }
  })();
  const move = async () => {
    if (!to || save.is === 'saving') return;
    const reason = why.trim();
    const state = condition.trim();
    const entries = await run(
      {
        type: 'move-part',
        partId: part.partId,
        to,
        ...(reason === '' ? {} : { why: reason }),
        ...(state === '' ? {} : { condition: state }),
      },
      { undo: `${part.name} moved` },
    );
    if (entries) onClose();
  };
  const holding = joints.filter(({ state, partIds }) => state !== 'apart' && partIds.includes(part.partId));
  const asked: Partial<Record<Where, { label: string; hint: string; offers?: string[] }>> = {
    shelf: { label: 'Tag', hint: 'Where on the shelf: a box, a nail.' },
    quarantine: {
      label: 'Why',
      hint: 'Stays with the part until it leaves quarantine.',
      offers: ['crash', 'crack suspected', 'unknown past', 'bent'],
    },
    scrapped: {
      label: 'How it was made unusable',
      hint: 'Sawn through, bent, drilled.',
      offers: ['sawn through', 'bent', 'drilled'],
    },
    sold: { label: 'To whom', hint: 'Optional.' },
  };
  const field = where && asked[where];
  return (
    <Sheet
      open
      title={onBike === undefined ? `Where does ${part.name} go?` : `Take ${part.name} off`}
      onClose={onClose}
      actions={
        <Button kind="main" wide disabled={!to || save.is === 'saving'} onPress={move}>
          {onBike === undefined ? 'Move it' : 'Take it off'}
        </Button>
      }
    >
      <div class="stack">
        <SaveNotice save={save} />
        {holding.length > 0 && (
          <Notice
            kind="caution"
            title={holding.length === 1 ? 'One joint comes apart' : `${holding.length} joints come apart`}
          >
            {`${listWords(holding.map(({ name }) => name))}: logged as taken apart with it.`}
          </Notice>
        )}
        <Choice
          label="Where it goes"
          value={where}
          options={wheres.filter(({ value }) => value !== part.place.on || value === 'bike')}
          onChoose={(value) => {
            setWhere(value);
            setWords('');
          }}
        />
        {where === 'bike' &&
          (others.length > 0 ? (
            <SelectField
              label="Which bike"
              value={bikeId}
              options={others.map((bike) => ({ value: bike.bikeId, label: bike.name }))}
              onChoose={setBikeId}
            />
          ) : (
            <Notice kind="note" title="No other bike">
              Add a bike first; the part stays where it is.
            </Notice>
          ))}
        {field && <TextField {...field} value={words} onInput={setWords} maxLength={200} />}
        {where && where !== 'quarantine' && (
          <TextField label="Why it moves" hint="Optional." value={why} onInput={setWhy} maxLength={200} />
        )}
        {where && where !== 'scrapped' && (
          <TextField
            label="Condition now"
            hint={part.condition ? `Now: ${part.condition}` : 'Optional.'}
            value={condition}
            onInput={setCondition}
            maxLength={200}
          />
        )}
      </div>
    </Sheet>
  );
}
