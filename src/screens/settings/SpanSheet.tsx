import { Fragment } from 'preact';
import { useState } from 'preact/hooks';
import { Button } from '../../controls/Button.tsx';
import { NumberField } from '../../controls/fields/NumberField.tsx';
import { Toggle } from '../../controls/fields/Toggle.tsx';
import { Ruler } from '../../controls/figures/Ruler.tsx';
import { Sheet } from '../../controls/frames/Sheet.tsx';
import {
  draftOfSpan,
  type Interval,
  intervalWords,
  ownSpan,
  readSpan,
  type Schedule,
  type SpanDraft,
  scheduleTurns,
  spanFields,
  type Turn,
  tableSpan,
  turnNames,
  withSpan,
} from '../../drafts/spans.ts';
import type { ScheduleRow } from '../../standards/checks/recheckSchedule.ts';

const labels: Record<keyof Interval, string> = { rides: 'Rides', km: 'Kilometres', days: 'Days' };

export interface SpanSheetProps {
  title: string;
  row: ScheduleRow;
  schedule: Schedule | undefined;
  onSchedule: (schedule: Schedule) => void;
  onClose: () => void;
}

/** Own figures for one re-check, turn by turn, with the table's beside them. */
export function SpanSheet({ title, row, schedule, onSchedule, onClose }: SpanSheetProps) {
  const [drafts, setDrafts] = useState<Record<Turn, SpanDraft>>({
    0: draftOfSpan(ownSpan(schedule, row, 0)),
    1: draftOfSpan(ownSpan(schedule, row, 1)),
    2: draftOfSpan(ownSpan(schedule, row, 2)),
  });
  const [wrong, setWrong] = useState<{ turn: Turn; field: keyof Interval }>();
  const set = (turn: Turn, change: Partial<SpanDraft>) =>
    setDrafts((old) => ({ ...old, [turn]: { ...old[turn], ...change } }));
  // Behind the turn that ends it there is nothing left to ask.
  const end = scheduleTurns.find((turn) => drafts[turn].ended);
  const shown = scheduleTurns.filter((turn) => end === undefined || turn <= end);
  const keep = () => {
    let next = schedule ?? {};
    for (const turn of shown) {
      const read = readSpan(drafts[turn]);
      if (read !== null && read !== 'table' && 'wrong' in read) return setWrong({ turn, field: read.wrong });
      next = withSpan(next, row, turn, read);
    }
    onSchedule(next);
  };
  return (
    <Sheet
      open
      title={title}
      onClose={onClose}
      actions={
        <Button kind="main" icon="check" onPress={keep}>
          Save
        </Button>
      }
    >
      <div class="stack">
        <p class="small">{`The table: ${row.source}.`}</p>
        {shown.map((turn) => (
          <Fragment key={turn}>
            <Ruler label={turnNames[turn]} />
            {turn > 0 && (
              <Toggle
                label="No more after this"
                hint="A new torque starts again with the first interval."
                on={drafts[turn].ended}
                onToggle={(ended) => set(turn, { ended })}
              />
            )}
            {!drafts[turn].ended && (
              <p class="small">{`Table: ${intervalWords(tableSpan(row, turn))}. Left empty, the table counts.`}</p>
            )}
            {(drafts[turn].ended ? [] : spanFields).map((field) => (
              <NumberField
                key={field}
                label={`${labels[field]}, ${turnNames[turn].toLowerCase()}`}
                typed={drafts[turn][field]}
                onTyped={(typed) => set(turn, { [field]: typed })}
                error={
                  wrong?.turn === turn && wrong.field === field
                    ? field === 'rides'
                      ? 'Whole rides, in digits.'
                      : 'Enter a number above 0.'
                    : undefined
                }
              />
            ))}
          </Fragment>
        ))}
      </div>
    </Sheet>
  );
}
