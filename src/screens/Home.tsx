import { Button } from '../controls/Button.tsx';
import { Notice } from '../controls/Notice.tsx';
import { Screen } from '../controls/Screen.tsx';
import type { BikeRow } from '../journal/rows.ts';
import { useView } from './door.tsx';
import { BikeList } from './home/BikeList.tsx';
import { DemoNotice } from './home/DemoNotice.tsx';
import { DueList } from './home/DueList.tsx';
import { FirstWords } from './home/FirstWords.tsx';
import { hrefOf } from './route.ts';

function Filled({ bikes }: { bikes: BikeRow[] }) {
  return (
    <>
      <DueList />
      <BikeList bikes={bikes} />
      {bikes.some(({ demo }) => demo) && <DemoNotice />}
    </>
  );
}

/** The first screen: what is due, what waits, the bikes. */
export function Home() {
  const bikes = useView('bikes', undefined);
  return (
    <Screen
      title="Workshop"
      actions={
        <>
          <Button icon="shelf" href={hrefOf({ at: 'shelf' })}>
            Shelf
          </Button>
          <Button icon="spanner" href={hrefOf({ at: 'tools' })}>
            Tools
          </Button>
          <Button icon="settings" label="Settings" href={hrefOf({ at: 'settings' })}>
            Set
          </Button>
        </>
      }
    >
      {bikes.is === 'failed' && (
        <Notice
          kind="error"
          title="The logbook could not be read"
          action={<Button onPress={() => location.reload()}>Reload</Button>}
        >
          What is recorded is safe. Reload the page.
        </Notice>
      )}
      {bikes.is === 'there' && (bikes.value.length === 0 ? <FirstWords /> : <Filled bikes={bikes.value} />)}
    </Screen>
  );
}
