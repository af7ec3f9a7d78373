import { Notice } from '../../controls/frames/Notice.tsx';
import { listWords } from '../../words/phrases.ts';
import { Absent } from '../Absent.tsx';
import './joint.css';
import { useState } from 'preact/hooks';
import { Button } from '../../controls/Button.tsx';
import { Ruler } from '../../controls/figures/Ruler.tsx';
import { Stamp } from '../../controls/figures/Stamp.tsx';
import { Screen } from '../../controls/frames/Screen.tsx';
import type { Id } from '../../journal/entries.ts';
import type { JointRow } from '../../journal/rows.ts';
import type { Views } from '../../logbook.ts';
import { boltCount } from '../../mechanics/screws/boltCount.ts';
import type { TorqueUnit } from '../../mechanics/units.ts';
import { rulingTarget } from '../../planning/rulingTarget.ts';
import { torqueTimes } from '../../practice/joint/torqueTimes.ts';
import { dayText } from '../../words/dayText.ts';
import { quantityText } from '../../words/quantityText.ts';
import { Photos } from '../bike/sheets/Photos.tsx';
import { SaveNotice } from '../bike/sheets/SaveNotice.tsx';
import { type SaveState, useRun, useView } from '../door.tsx';
import { hrefOf } from '../route.ts';
import { Waits } from '../Waits.tsx';
import { FiguresFold } from '../workings/FiguresFold.tsx';
import { JointActs } from './JointActs.tsx';
import { JointCheck } from './JointCheck.tsx';
import { LockerSection } from './LockerSection.tsx';
import { MadeOf } from './MadeOf.tsx';
import { MattersNotice } from './MattersNotice.tsx';
import { ThreeFigures } from './ThreeFigures.tsx';
import { TorqueEntry } from './TorqueEntry.tsx';
import { TorquePlot } from './TorquePlot.tsx';

type JointView = NonNullable<Views['joint']['gives']>;

function StateStamp({ joint: { state, applied, apartWhy } }: { joint: JointRow }) {
  if (state === 'torqued' && applied) {
    return <Stamp kind="applied" line={`${quantityText(applied.applied)}, ${dayText(applied.atMs)}`} />;
  }
  if (state === 'hand-tight') return <Stamp kind="held" word="Hand-tight" line="Not torqued" />;
  if (state === 'apart') return <Stamp kind="void" word="Apart" line={apartWhy} />;
  return null;
}

/** What the history of the joint adds: its torques over time, and the pictures taken of it. */
function OverTime({ joint, unit }: { joint: JointRow; unit: TorqueUnit }) {
  const seen = useView('history', { place: `j:${joint.jointId}`, limit: 200 });
  if (seen.is !== 'there') return null;
  const { lines } = seen.value;
  const times = torqueTimes(lines, unit);
  const photoIds = lines.flatMap((line) => {
    const entry = line.now;
    return entry && 'photoIds' in entry ? (entry.photoIds ?? []) : [];
  });
  return (
    <>
      {times.length > 1 && <Ruler label="Over time" />}
      <TorquePlot times={times} ruling={rulingTarget(joint.targets)} unit={unit} />
      {photoIds.length > 0 && (
        <>
          <Ruler label="Photos" />
          <Photos photoIds={photoIds} alt={joint.name} />
        </>
      )}
    </>
  );
}

/** Parts of a joint that came apart which are not on its bike: without them it cannot be put together again. */
function awayFrom({ joint, parts }: JointView): string[] {
  if (joint.state !== 'apart') return [];
  return parts
    .filter(({ place }) => place.on !== 'bike' || place.bikeId !== joint.bikeId)
    .map(({ name }) => name);
}

function Sections({ seen, unit, save }: { seen: JointView; unit: TorqueUnit; save: SaveState }) {
  const { joint, parts, waits, rechecks } = seen;
  return (
    <>
      <SaveNotice save={save} />
      <StateStamp joint={joint} />
      <MattersNotice joint={joint} />
      {awayFrom(seen).length > 0 && (
        <Notice kind="note" title="Not all its parts are here">
          {`Put ${listWords(awayFrom(seen))} on the bike first; then log its torque.`}
        </Notice>
      )}
      {joint.early !== undefined && (
        <Notice
          kind="note"
          title={joint.early === 1 ? 'One entry is older' : `${joint.early} entries are older`}
        >
          They happened before the joint was added. They still count.
        </Notice>
      )}
      <ThreeFigures joint={joint} parts={parts} unit={unit} />
      <FiguresFold jointId={joint.jointId} />
      {joint.locked && <LockerSection joint={joint} locked={joint.locked} waits={waits} />}
      <OverTime joint={joint} unit={unit} />
      <MadeOf joint={joint} parts={parts} />
      <JointCheck kind={joint.kind} />
      {rechecks.length > 0 && (
        <p class="buttons">
          <Button icon="bell" href={hrefOf({ at: 'rechecks', bikeId: joint.bikeId })}>
            {rechecks.length === 1 ? 'One re-check is set' : `${rechecks.length} re-checks are set`}
          </Button>
        </p>
      )}
      <JointActs joint={joint} />
    </>
  );
}

/** One joint with everything that is known of it. */
export function Joint({ jointId }: { jointId: Id }) {
  const view = useView('joint', { jointId });
  const seen = view.is === 'there' ? view.value : undefined;
  const bench = useView('bench', { bikeId: seen?.joint.bikeId ?? '' });
  const settings = useView('settings');
  const { run, save } = useRun();
  const [atKeypad, setAtKeypad] = useState(false);
  const unit = settings.is === 'there' ? settings.value.torqueUnit : 'N.m';
  const temperatureUnit = settings.is === 'there' ? settings.value.temperatureUnit : 'Cel';
  const joint = seen?.joint;
  const steps = (bench.is === 'there' && bench.value?.steps) || [];
  const stepWaits = steps.some(
    (step) => step.jointId === jointId && step.kind === 'torque' && step.state === 'open',
  );
  const partsAway = seen ? awayFrom(seen) : [];
  const handTighten = () => {
    if (!joint) return;
    const bolts = Math.max(1, boltCount(joint.fasteners));
    void run({ type: 'hand-tighten', jointId, bolts }, { undo: `${joint.name} left hand-tight` });
  };
  if (joint && atKeypad) {
    return (
      <TorqueEntry {...{ joint, unit, temperatureUnit, stepWaits }} onClose={() => setAtKeypad(false)} />
    );
  }
  return (
    <Screen
      title={joint?.name ?? 'Joint'}
      back={hrefOf(joint ? { at: 'bike', bikeId: joint.bikeId } : { at: 'home' })}
      waits={<Waits />}
      actions={
        joint &&
        partsAway.length === 0 && (
          <>
            <Button kind="main" icon="spanner" onPress={() => setAtKeypad(true)}>
              Log a torque
            </Button>
            {joint.state !== 'hand-tight' && (
              <Button icon="handTight" onPress={handTighten}>
                Hand-tight only
              </Button>
            )}
          </>
        )
      }
    >
      {seen ? <Sections seen={seen} unit={unit} save={save} /> : <Absent what="joint" seen={[view]} />}
    </Screen>
  );
}
