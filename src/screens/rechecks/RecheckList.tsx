import { useState } from 'preact/hooks';
import { Button } from '../../controls/Button.tsx';
import { BikePicture } from '../../controls/figures/BikePicture.tsx';
import { Mark } from '../../controls/figures/Mark.tsx';
import { Ruler } from '../../controls/figures/Ruler.tsx';
import { Notice } from '../../controls/frames/Notice.tsx';
import { Screen } from '../../controls/frames/Screen.tsx';
import { ListRow } from '../../controls/lists/ListRow.tsx';
import { RowList } from '../../controls/lists/RowList.tsx';
import { figuresOf } from '../../drawing/bike/figuresOf.ts';
import { pileOf } from '../../fit/pileOf.ts';
import type { Id } from '../../journal/entries.ts';
import type { RecheckRow } from '../../journal/rows.ts';
import type { DistanceUnit } from '../../mechanics/units.ts';
import { spanLeft } from '../../planning/recheckSpan.ts';
import type { Sorted } from '../../practice/rechecks/recheckOrder.ts';
import { dueMarks, jointsByZone } from '../../practice/zones/jointMarks.ts';
import { lateText } from '../../words/lateText.ts';
import { leftText } from '../../words/leftText.ts';
import { BenchActs } from '../bench/frame/BenchActs.tsx';
import { DefectSheet } from '../bike/sheets/DefectSheet.tsx';
import { hrefOf } from '../route.ts';
import { Waits } from '../Waits.tsx';
import type { RechecksView } from './Rechecks.tsx';

export interface RecheckListProps {
  view: RechecksView;
  sorted: Sorted;
  unit: DistanceUnit;
  nowMs: number;
  onOpen: (recheckId: Id) => void;
}

/** What is due, loud and first, and what comes later with what is left of it. */
export function RecheckList({ view, sorted, unit, nowMs, onOpen }: RecheckListProps) {
  const { bike, joints, parts, rides } = view;
  const { bikeId } = bike;
  const { due, coming } = sorted;
  const [finding, setFinding] = useState(false);
  const dueJoints = due.map(({ jointId }) => jointId);
  const first = due[0];
  const moved = ({ jointId }: RecheckRow) => joints.find((joint) => joint.jointId === jointId)?.moved ?? 0;
  const movedMark = (recheck: RecheckRow) =>
    moved(recheck) >= 2 && (
      <span class="row-flag">
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
        <BenchActs
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
                {due.length === 1 ? 'Do the one that is due' : `Check ${due.length} now`}
              </Button>
            )
          }
        >
          <Button size="greasy" icon="bike" href={hrefOf({ at: 'ride', bikeId })}>
            Log a ride
          </Button>
          <Button size="greasy" icon="warning" onPress={() => setFinding(true)}>
            Report a problem
          </Button>
        </BenchActs>
      }
    >
      {due.length + coming.length === 0 && (
        <Notice kind="empty" title="No re-checks yet">
          Log the first ride to get a check for every joint.
        </Notice>
      )}
      {due.length > 0 && (
        <BikePicture
          figures={figuresOf(pileOf(parts))}
          marks={dueMarks(dueJoints, joints, parts)}
          label={`Due on ${bike.name}`}
          markedOnly
          onZone={(zone) => {
            const there = jointsByZone(joints, parts).get(zone) ?? [];
            const of = due.find(({ jointId }) => there.some((joint) => joint.jointId === jointId));
            if (of) onOpen(of.recheckId);
          }}
        />
      )}
      {due.length > 0 && (
        <>
          <Ruler label="Due" end={<b>{due.length}</b>} />
          <RowList
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
        <p class="lower">Nothing is due. What comes next is below; you can do it early.</p>
      )}
      {coming.length > 0 && (
        <>
          <Ruler label="Coming up" end={<b>{coming.length}</b>} />
          <RowList
            label="Coming up"
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
      {finding && <DefectSheet {...{ bikeId, joints, unit }} onClose={() => setFinding(false)} />}
    </Screen>
  );
}
