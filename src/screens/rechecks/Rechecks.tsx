import { Absent } from '../Absent.tsx';
import './rechecks.css';
import { useState } from 'preact/hooks';
import { Screen } from '../../controls/frames/Screen.tsx';
import type { Id, Settings } from '../../journal/entries.ts';
import type { JointRow, RecheckRow } from '../../journal/rows.ts';
import type { Views } from '../../logbook.ts';
import { askedToday } from '../../practice/rechecks/askedToday.ts';
import { sortRechecks } from '../../practice/rechecks/recheckOrder.ts';
import { pullFigure } from '../../standards/checks/pullFigure.ts';
import { useNow, useView } from '../door.tsx';
import { hrefOf } from '../route.ts';
import { Waits } from '../Waits.tsx';
import { LookCheck } from './LookCheck.tsx';
import { MarkCheck } from './MarkCheck.tsx';
import { RecheckList } from './RecheckList.tsx';
import type { RecheckProps } from './recheckProps.ts';
import { TorqueCheck } from './TorqueCheck.tsx';

export type RechecksView = NonNullable<Views['bike']['gives']>;

/** Each re-check in the way its joint can bear today: threadlocker or a figure may have come since it was set. */
function One(props: RecheckProps) {
  const { recheck, joint } = props;
  const byTorque = recheck.kind === 'retorque' || recheck.kind === 'look-at-mark';
  if (!joint || !byTorque) return <LookCheck {...props} />;
  if (!joint.locked && recheck.kind === 'retorque' && pullFigure(joint) === 'none')
    return <LookCheck {...props} byHand />;
  if (joint.locked || recheck.kind === 'look-at-mark') return <MarkCheck {...props} joint={joint} />;
  return <TorqueCheck {...props} joint={joint} />;
}

const jointOfRecheck = (view: RechecksView, { jointId }: RecheckRow): JointRow | undefined =>
  view.joints.find((joint) => joint.jointId === jointId);

/** The one being answered. It stays in hand while the view moves on, so that nothing is torn from under a finger. */
interface InHand {
  recheck: RecheckRow;
  /** Its place among those due when it was taken up; absent for one done early. */
  index?: number;
}

interface WorkProps {
  view: RechecksView;
  settings: Settings;
  /** The one to begin with. */
  opened: Id | undefined;
}

function RechecksWork({ view, settings, opened }: WorkProps) {
  const nowMs = useNow(30_000);
  const [doneHere, setDoneHere] = useState(0);
  const [toolId, setToolId] = useState<Id>();
  const rechecks = view.rechecks.map((one) => askedToday(one, jointOfRecheck(view, one)));
  const { due, ...sorted } = sortRechecks(rechecks, view.rides, nowMs);
  const handOf = (recheckId: Id | undefined): InHand | undefined => {
    const recheck = rechecks.find((one) => one.recheckId === recheckId);
    const index = due.findIndex((one) => one.recheckId === recheckId);
    return recheck && { recheck, ...(index === -1 ? {} : { index }) };
  };
  const [inHand, setInHand] = useState(() => handOf(opened));
  const take = (next: InHand | undefined) => {
    setInHand(next);
    if (!next) setDoneHere(0);
    scrollTo(0, 0);
  };
  if (!inHand)
    return (
      <RecheckList
        {...{ view, nowMs }}
        sorted={{ due, ...sorted }}
        unit={settings.distanceUnit}
        onOpen={(recheckId) => take(handOf(recheckId))}
      />
    );
  const { index } = inHand;
  const recheck = rechecks.find(({ recheckId }) => recheckId === inHand.recheck.recheckId) ?? inHand.recheck;
  const others = due.filter(({ recheckId }) => recheckId !== recheck.recheckId);
  const goOn = () => {
    setDoneHere((done) => done + 1);
    // After one that was due, the one behind it; after one done early, the list.
    const behind = index === undefined ? undefined : (others[index] ?? others[0]);
    take(behind && { recheck: behind, index: Math.max(0, others.indexOf(behind)) });
  };
  return (
    <One
      key={recheck.recheckId}
      {...{ view, recheck, settings, nowMs, toolId }}
      joint={jointOfRecheck(view, recheck)}
      place={index === undefined ? undefined : { at: doneHere + 1, of: doneHere + others.length + 1 }}
      onTool={setToolId}
      onAnswered={goOn}
      onBack={() => take(undefined)}
    />
  );
}

/** The re-checks of a bike: a list, and one at a time for greasy hands. */
export function Rechecks({ bikeId, open }: { bikeId: Id; open?: Id }) {
  const seen = useView('bike', { bikeId });
  const chosen = useView('settings');
  const view = seen.is === 'there' ? seen.value : undefined;
  if (view && chosen.is === 'there')
    return <RechecksWork view={view} settings={chosen.value} opened={open} />;
  const missing = seen.is === 'there' && !view;
  return (
    <Screen
      title="Re-checks"
      back={missing ? hrefOf({ at: 'home' }) : hrefOf({ at: 'bike', bikeId })}
      waits={<Waits />}
    >
      <Absent what="bike" seen={[seen, chosen]} />
    </Screen>
  );
}
