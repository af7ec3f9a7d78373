import { Button } from '../../../controls/Button.tsx';
import { Fold } from '../../../controls/lists/Fold.tsx';
import { ListRow } from '../../../controls/lists/ListRow.tsx';
import { RowList } from '../../../controls/lists/RowList.tsx';
import type { Id } from '../../../journal/entries.ts';
import type { RecheckRow } from '../../../journal/rows.ts';
import { dayText } from '../../../words/dayText.ts';
import { lateText } from '../../../words/lateText.ts';
import { useNow } from '../../door.tsx';
import { hrefOf } from '../../route.ts';

const MINUTE_MS = 60_000;
/** The rest stands on the page of re-checks. */
const SHOWN = 4;

/** What is left before it falls due by rides or distance, where no day is set. */
function leftToRideWords({ dueRides, dueKm }: RecheckRow): string {
  const rides =
    dueRides === undefined ? [] : [dueRides === 1 ? 'after the next ride' : `after ${dueRides} rides`];
  return [...rides, ...(dueKm === undefined ? [] : [`after ${dueKm} km`])].join(', ');
}

export interface RechecksSectionProps {
  bikeId: Id;
  rechecks: RecheckRow[];
}

/** Re-checks of this bike: what is due is shown line by line, the others are counted. */
export function RechecksSection({ bikeId, rechecks }: RechecksSectionProps) {
  const nowMs = useNow(MINUTE_MS);
  const at = ({ dueAtMs }: RecheckRow) => dueAtMs ?? Number.POSITIVE_INFINITY;
  const sorted = rechecks.toSorted((a, b) => at(a) - at(b));
  const due = sorted.filter((recheck) => at(recheck) <= nowMs);
  const href = hrefOf({ at: 'rechecks', bikeId });
  return (
    <Fold
      label="Re-checks"
      end={due.length > 0 ? `${due.length} due` : rechecks.length}
      open={due.length > 0}
    >
      {rechecks.length === 0 && <p class="lower">None yet. Log the first ride and every joint gets one.</p>}
      <RowList
        label="Re-checks"
        of={sorted.slice(0, SHOWN)}
        keyOf={({ recheckId }) => recheckId}
        draw={(recheck) => {
          const dueAtMs = at(recheck);
          const late = dueAtMs <= nowMs;
          const when = Number.isFinite(dueAtMs) ? dayText(dueAtMs) : leftToRideWords(recheck);
          return (
            <ListRow
              title={recheck.title}
              state={late ? 'due' : 'noted'}
              stateWord={late ? lateText(nowMs - dueAtMs) : `Due ${when}`}
              href={href}
            />
          );
        }}
      />
      {rechecks.length > 0 && (
        <div class="buttons">
          <Button icon="check" href={href}>
            {due.length > 0 ? `Check ${due.length} now` : `All ${rechecks.length}`}
          </Button>
        </div>
      )}
    </Fold>
  );
}
