import { Button } from '../../controls/Button.tsx';
import { Notice } from '../../controls/frames/Notice.tsx';
import { Screen } from '../../controls/frames/Screen.tsx';
import type { Id } from '../../journal/entries.ts';
import { Absent } from '../Absent.tsx';
import { useView } from '../door.tsx';
import { hrefOf } from '../route.ts';
import { Waits } from '../Waits.tsx';
import { type SealView, SealWork } from './SealWork.tsx';

/** The step of the plan that a seating finishes. */
function useSeatStep({ joint }: SealView): string | undefined {
  const bench = useView('bench', { bikeId: joint.bikeId });
  const steps = (bench.is === 'there' && bench.value?.steps) || [];
  return steps.find(
    ({ kind, jointId, state }) => kind === 'seat' && jointId === joint.jointId && state === 'open',
  )?.stepId;
}

function SealWithSettings({ view, asked }: { view: SealView; asked: string | undefined }) {
  const settings = useView('settings');
  const stepId = useSeatStep(view);
  if (settings.is !== 'there') return <p role="status">One moment…</p>;
  return <SealWork view={view} settings={settings.value} asked={asked} {...(stepId ? { stepId } : {})} />;
}

/** The seal check of one wheel. */
export function Seal({ jointId, open }: { jointId: Id; open?: string }) {
  const seen = useView('joint', { jointId });
  const view = seen.is === 'there' ? seen.value : undefined;
  if (view && view.joint.kind === 'bead' && view.joint.state !== 'apart')
    return <SealWithSettings view={view} asked={open} />;
  const back = view ? hrefOf({ at: 'bike', bikeId: view.joint.bikeId }) : hrefOf({ at: 'home' });
  return (
    <Screen title={view?.joint.name ?? 'Seal'} back={back} waits={<Waits />}>
      {!view ? (
        <Absent what="joint" seen={[seen]} />
      ) : (
        <Notice
          kind="empty"
          title={view.joint.state === 'apart' ? 'The tyre is off the rim' : 'No tyre on a rim'}
          action={<Button href={hrefOf({ at: 'joint', jointId })}>Go to the joint</Button>}
        >
          {view.joint.state === 'apart'
            ? 'It was taken apart. Put it together as a joint again, then seat it.'
            : 'Only a tyre on its rim has a seal to look after.'}
        </Notice>
      )}
    </Screen>
  );
}
