import { Screen } from '../../controls/frames/Screen.tsx';
import type { Id } from '../../journal/entries.ts';
import { Absent } from '../Absent.tsx';
import { useView } from '../door.tsx';
import { hrefOf } from '../route.ts';
import { Waits } from '../Waits.tsx';
import { RideForm } from './RideForm.tsx';

/** A ride on one bike, today's or a late one. */
export function Ride({ bikeId }: { bikeId: Id }) {
  const seen = useView('bike', { bikeId });
  const chosen = useView('settings');
  const view = seen.is === 'there' ? seen.value : undefined;
  if (view && chosen.is === 'there')
    return <RideForm bike={view.bike} rides={view.rides} settings={chosen.value} />;
  const missing = seen.is === 'there' && !view;
  return (
    <Screen
      title="A ride"
      back={missing ? hrefOf({ at: 'home' }) : hrefOf({ at: 'bike', bikeId })}
      waits={<Waits />}
    >
      <Absent what="bike" seen={[seen, chosen]} />
    </Screen>
  );
}
