import { Button } from '../controls/Button.tsx';
import { Notice } from '../controls/Notice.tsx';
import { Screen } from '../controls/Screen.tsx';
import { Work } from './bench/Work.tsx';
import { useView } from './door.tsx';
import { hrefOf } from './route.ts';
import { Waits } from './Waits.tsx';

/** Work at the bench, one step at a time. */
export function Bench({ bikeId }: { bikeId: string }) {
  const seen = useView('bench', { bikeId });
  const chosen = useView('settings', {});
  if (seen.is === 'there' && seen.value && seen.value.steps.length > 0 && chosen.is === 'there')
    return <Work view={seen.value} settings={chosen.value} />;
  const failed = [seen, chosen].find((each) => each.is === 'failed');
  const reading = seen.is === 'reading' || chosen.is === 'reading';
  const plan = hrefOf({ at: 'plan', bikeId });
  return (
    <Screen
      title="Bench"
      back={seen.is === 'there' && seen.value ? hrefOf({ at: 'bike', bikeId }) : hrefOf({ at: 'home' })}
      waits={<Waits />}
    >
      {failed?.is === 'failed' ? (
        <Notice kind="error" title="The steps could not be read">
          Go back and come again. What is recorded is safe. ({failed.why})
        </Notice>
      ) : reading ? (
        <p role="status">One moment…</p>
      ) : seen.is === 'there' && !seen.value ? (
        <Notice kind="error" title="No such bike">
          It is not in this logbook. Open it from the list at the start.
        </Notice>
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
