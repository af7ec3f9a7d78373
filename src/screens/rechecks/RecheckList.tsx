import { useState } from 'preact/hooks';
import { Button } from '../../controls/Button.tsx';
import { ListRow } from '../../controls/ListRow.tsx';
import { Mark } from '../../controls/Mark.tsx';
import { Notice } from '../../controls/Notice.tsx';
import { Ruler } from '../../controls/Ruler.tsx';
import { Screen } from '../../controls/Screen.tsx';
import type { Id } from '../../journal/entries.ts';
import type { RecheckRow } from '../../journal/rows.ts';
import type { DistanceUnit } from '../../mechanics/units.ts';
import { Acts } from '../bench/Acts.tsx';
import { DefectSheet } from '../bike/DefectSheet.tsx';
import { Rows } from '../bike/Rows.tsx';
import { lateText } from '../home/lateText.ts';
import type { RechecksView } from '../Rechecks.tsx';
import { hrefOf } from '../route.ts';
import { Waits } from '../Waits.tsx';
import { leftText } from './leftText.ts';
import type { Sorted } from './recheckOrder.ts';
import { spanLeft } from './recheckSpan.ts';

export interface RecheckListProps {
  view: RechecksView;
  sorted: Sorted;
  unit: DistanceUnit;
  nowMs: number;
  onOpen: (recheckId: Id) => void;
}

/** What is due, loud and first, and what comes later with what is left of it. */
export function RecheckList({ view, sorted, unit, nowMs, onOpen }: RecheckListProps) {
  const { bike, joints, rides } = view;
  const { bikeId } = bike;
  const { due, coming } = sorted;
  const [finding, setFinding] = useState(false);
  const first = due[0];
  const moved = ({ jointId }: RecheckRow) => joints.find((joint) => joint.jointId === jointId)?.moved ?? 0;
  const movedMark = (recheck: RecheckRow) =>
    moved(recheck) >= 2 && (
      <span class="joint-moved">
        <Mark state="held" word={`Moved at ${moved(recheck)} re-checks`} />
      </span>
    );
  return (
    <Screen
      title={`Re-checks, ${bike.name}`}
      route="rechecks"
      back={hrefOf({ at: 'bike', bikeId })}
      waits={<Waits />}
      actions={
        <Acts
          save={{ is: 'idle' }}
          main={
            first && (
              <Button
                kind="main"
                size="greasy"
                icon="next"
                under={first.title}
                onPress={() => onOpen(first.recheckId)}
              >
                {due.length === 1 ? 'Do the one that is due' : `Go through ${due.length}`}
              </Button>
            )
          }
        >
          <Button size="greasy" icon="bike" href={hrefOf({ at: 'ride', bikeId })}>
            Log a ride
          </Button>
          <Button size="greasy" icon="warning" onPress={() => setFinding(true)}>
            Found a defect
          </Button>
        </Acts>
      }
    >
      {due.length + coming.length === 0 && (
        <Notice kind="empty" title="No re-checks yet">
          The first ride makes the list: every joint once, each in the way it can bear.
        </Notice>
      )}
      {due.length > 0 && (
        <>
          <Ruler label="Due" end={<b>{due.length}</b>} />
          <Rows
            label="Due"
            of={due}
            keyOf={({ recheckId }) => recheckId}
            draw={(recheck) => (
              <ListRow
                title={recheck.title}
                detail={movedMark(recheck)}
                state="due"
                stateWord={lateText(Math.max(0, nowMs - (recheck.dueAtMs ?? nowMs)))}
                onPress={() => onOpen(recheck.recheckId)}
              />
            )}
          />
        </>
      )}
      {due.length === 0 && coming.length > 0 && (
        <p class="recheck-none">Nothing is due. What comes stands below; any of it can be done early.</p>
      )}
      {coming.length > 0 && (
        <>
          <Ruler label="To come" end={<b>{coming.length}</b>} />
          <Rows
            label="To come"
            of={coming}
            keyOf={({ recheckId }) => recheckId}
            draw={(recheck) => (
              <ListRow
                title={recheck.title}
                detail={movedMark(recheck)}
                state="noted"
                stateWord={leftText(spanLeft(recheck, rides, nowMs), unit)}
                onPress={() => onOpen(recheck.recheckId)}
              />
            )}
          />
        </>
      )}
      {finding && (
        <DefectSheet
          {...{ bikeId, joints, unit }}
          kmSoFar={rides?.km ?? 0}
          onClose={() => setFinding(false)}
        />
      )}
    </Screen>
  );
}
