import { Absent } from '../Absent.tsx';
import './bike.css';
import { Button } from '../../controls/Button.tsx';
import { Notice } from '../../controls/frames/Notice.tsx';
import { Screen } from '../../controls/frames/Screen.tsx';
import { ListRow } from '../../controls/lists/ListRow.tsx';
import type { Id } from '../../journal/entries.ts';
import type { StepRow } from '../../journal/rows.ts';
import type { Views } from '../../logbook.ts';
import { useView } from '../door.tsx';
import { hrefOf } from '../route.ts';
import { Waits } from '../Waits.tsx';
import { CardFoot } from './CardFoot.tsx';
import { JointCount, Outline } from './Outline.tsx';
import { ReleaseStamp } from './ReleaseStamp.tsx';
import { ChangesSection } from './sections/ChangesSection.tsx';
import { DefectsSection } from './sections/DefectsSection.tsx';
import { JointsSection } from './sections/JointsSection.tsx';
import { PartsSection } from './sections/PartsSection.tsx';
import { RechecksSection } from './sections/RechecksSection.tsx';
import { RidesSection } from './sections/RidesSection.tsx';
import { SealsSection } from './sections/SealsSection.tsx';
import { WaitsSection } from './sections/WaitsSection.tsx';
import { WheelsSection } from './sections/WheelsSection.tsx';
import { BikePhoto } from './sheets/BikePhoto.tsx';

type Card = NonNullable<Views['bike']['gives']>;

/** The step that is taken up next: the one left open, or the first not done. */
function nextStep(steps: readonly StepRow[], openStepId: Id | undefined): StepRow | undefined {
  const open = steps.filter(({ state }) => state === 'open');
  return open.find(({ stepId }) => stepId === openStepId) ?? open[0];
}

function planWords({ steps, stepsDone, stepsSkipped }: Card['bike']): string {
  if (steps === 0) return 'No steps yet';
  return `${stepsDone} of ${steps} steps done${stepsSkipped > 0 ? `, ${stepsSkipped} skipped` : ''}`;
}

function Sections({ card, open }: { card: Card; open: Id | undefined }) {
  const { bike, parts, joints, waits, rechecks, seals, defects, findings, rides } = card;
  const { bikeId, about, handTight, demo } = bike;
  const settings = useView('settings');
  const unit = settings.is === 'there' ? settings.value.distanceUnit : 'km';
  const openFindings = findings.filter(({ outcome }) => outcome !== 'accepted').length;
  return (
    <>
      {parts.length + joints.length > 0 && <Outline name={bike.name} parts={parts} joints={joints} />}
      <ReleaseStamp bike={bike}>
        <JointCount joints={joints} />
      </ReleaseStamp>
      {handTight > 0 && (
        <Notice
          kind="error"
          title={handTight === 1 ? '1 joint is only hand-tight' : `${handTight} joints are only hand-tight`}
        >
          Listed first under Joints.
        </Notice>
      )}
      {about !== '' && <p class="as-typed">{about}</p>}
      {demo && <p class="small">Demo bike, made-up data.</p>}
      <BikePhoto bike={bike} />
      <ListRow icon="tally" title="Plan" detail={planWords(bike)} href={hrefOf({ at: 'plan', bikeId })} />
      <ListRow
        icon="caliper"
        title="Fit check"
        detail={
          openFindings > 0
            ? `${openFindings} open ${openFindings === 1 ? 'issue' : 'issues'}`
            : 'Do these parts fit together?'
        }
        href={hrefOf({ at: 'fit', bikeId })}
      />
      <DefectsSection {...{ bikeId, open }} defects={defects} joints={joints} unit={unit} />
      <WaitsSection {...{ bikeId, open }} waits={waits} joints={joints} />
      <RechecksSection bikeId={bikeId} rechecks={rechecks} />
      <JointsSection bikeId={bikeId} joints={joints} />
      <PartsSection bikeId={bikeId} parts={parts} />
      <WheelsSection bikeId={bikeId} parts={parts} />
      <ChangesSection parts={parts} />
      <SealsSection joints={joints} seals={seals} />
      <RidesSection bikeId={bikeId} rides={rides} unit={unit} />
      <CardFoot bike={bike} />
    </>
  );
}

/** What is done next with the card: first its parts, then the plan, after that the bench. */
function NextActs({ card: { bike, parts, steps } }: { card: Card }) {
  const { bikeId } = bike;
  const next = nextStep(steps, bike.openStepId);
  const log = <Button href={hrefOf({ at: 'log', bikeId })}>Log</Button>;
  if (steps.length === 0 && parts.length === 0) {
    return (
      <>
        <Button kind="main" icon="plus" href={hrefOf({ at: 'new-part', place: `bike:${bikeId}` })}>
          Add a part
        </Button>
        <Button href={hrefOf({ at: 'plan', bikeId })}>Plan</Button>
        {log}
      </>
    );
  }
  if (steps.length === 0) {
    return (
      <>
        <Button kind="main" icon="tally" href={hrefOf({ at: 'plan', bikeId })}>
          Make the plan
        </Button>
        {log}
      </>
    );
  }
  return (
    <>
      <Button
        kind="main"
        icon="spanner"
        under={next ? `Next: ${next.title}` : 'All steps done'}
        href={hrefOf({ at: 'bench', bikeId })}
      >
        Start work
      </Button>
      <Button href={hrefOf({ at: 'plan', bikeId })}>Plan</Button>
      {log}
    </>
  );
}

/** The job card of one bike. */
export function Bike({ bikeId, open }: { bikeId: Id; open?: Id }) {
  const seen = useView('bike', { bikeId });
  const card = seen.is === 'there' ? seen.value : undefined;
  return (
    <Screen
      title={card?.bike.name ?? 'Bike'}
      back={hrefOf({ at: 'home' })}
      waits={<Waits />}
      actions={card && <NextActs card={card} />}
    >
      {card ? <Sections open={open} card={card} /> : <Absent what="bike" seen={[seen]} />}
    </Screen>
  );
}
