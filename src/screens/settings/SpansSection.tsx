import { useState } from 'preact/hooks';
import { Fold } from '../../controls/lists/Fold.tsx';
import { ListRow } from '../../controls/lists/ListRow.tsx';
import { ownSpan, scheduleTurns, scheduleWords } from '../../drafts/spans.ts';
import {
  recheckInstructions,
  recheckSchedule,
  type ScheduleRow,
} from '../../standards/checks/recheckSchedule.ts';
import { jointKindRow } from '../../standards/jointKinds.ts';
import { SpanSheet } from './SpanSheet.tsx';
import type { ChangeProps } from './UnitsSection.tsx';

const titleOf = ({ jointKind, instruction }: ScheduleRow) =>
  `${jointKindRow(jointKind).label}: ${recheckInstructions[instruction].title.toLowerCase()}`;

/** When each kind of joint is checked again, from the table or by own figures. */
export function SpansSection({ settings, change }: ChangeProps) {
  const [shown, setShown] = useState<ScheduleRow>();
  const { schedule } = settings;
  const own = (row: ScheduleRow) => scheduleTurns.some((turn) => ownSpan(schedule, row, turn) !== undefined);
  const changed = recheckSchedule.filter(own).length;
  return (
    <Fold label="Re-check intervals" end={changed > 0 ? `${changed} own` : recheckSchedule.length}>
      <p class="small lower">
        Whichever comes first. Our own suggestions, not from any maker. Changes apply to new re-checks.
      </p>
      {recheckSchedule.map((row) => (
        <ListRow
          key={titleOf(row)}
          title={titleOf(row)}
          detail={scheduleWords(schedule, row)}
          state={own(row) ? 'noted' : undefined}
          stateWord="Own figures"
          onPress={() => setShown(row)}
        />
      ))}
      {shown && (
        <SpanSheet
          title={titleOf(shown)}
          row={shown}
          schedule={schedule}
          onSchedule={(next) => {
            change({ schedule: next });
            setShown(undefined);
          }}
          onClose={() => setShown(undefined)}
        />
      )}
    </Fold>
  );
}
