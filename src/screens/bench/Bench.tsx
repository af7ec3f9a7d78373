import { Button } from '../../controls/Button.tsx';
import { Notice } from '../../controls/frames/Notice.tsx';
import { Screen } from '../../controls/frames/Screen.tsx';
import { Absent } from '../Absent.tsx';
import { useView } from '../door.tsx';
import { hrefOf } from '../route.ts';
import { Waits } from '../Waits.tsx';
import { BenchWork } from './BenchWork.tsx';

/** Work at the bench, one step at a time. */
export function Bench({ bikeId }: { bikeId: string }) {
  const seen = useView('bench', { bikeId });
  const chosen = useView('settings');
  if (seen.is === 'there' && seen.value && seen.value.steps.length > 0 && chosen.is === 'there')
    return <BenchWork view={seen.value} settings={chosen.value} />;
  const plan = hrefOf({ at: 'plan', bikeId });
  return (
    <Screen
      title="Bench"
      back={seen.is === 'there' && seen.value ? hrefOf({ at: 'bike', bikeId }) : hrefOf({ at: 'home' })}
      waits={<Waits />}
    >
      {seen.is !== 'there' || !seen.value || chosen.is !== 'there' ? (
        <Absent what="bike" seen={[seen, chosen]} />
      ) : (
        <Notice
          kind="empty"
          title="No steps yet"
          action={
            <Button size="greasy" icon="tally" href={plan}>
              Make the plan
            </Button>
          }
        >
          The joints of the bike become the steps. Make the plan first, then come back here.
        </Notice>
      )}
    </Screen>
  );
}
