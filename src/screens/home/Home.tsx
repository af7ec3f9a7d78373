import { Button } from '../../controls/Button.tsx';
import { Notice } from '../../controls/frames/Notice.tsx';
import { Screen } from '../../controls/frames/Screen.tsx';
import type { BikeRow } from '../../journal/rows.ts';
import { useView } from '../door.tsx';
import { hrefOf } from '../route.ts';
import { Slow } from '../Slow.tsx';
import { BikeList } from './BikeList.tsx';
import { DemoNotice } from './DemoNotice.tsx';
import { DueList } from './DueList.tsx';
import { EmptyHome } from './EmptyHome.tsx';
import { OnlyHere } from './OnlyHere.tsx';
import { type Demo, useDemo } from './useDemo.ts';

function Bikes({ bikes, demo }: { bikes: BikeRow[]; demo: Demo }) {
  const away = new Set(bikes.flatMap((bike) => (bike.putAway === undefined ? [] : bike.bikeId)));
  const bringing = demo.state.is === 'loading';
  return (
    <>
      {bringing && <DemoNotice {...demo} />}
      <DueList away={away} />
      <BikeList bikes={bikes} />
      <OnlyHere />
      {!bringing && bikes.some((bike) => bike.demo) && <DemoNotice {...demo} />}
    </>
  );
}

/** The first screen: what is due, what waits, the bikes. */
export function Home() {
  const bikes = useView('bikes');
  const demo = useDemo();
  return (
    <Screen
      title="Workshop"
      actions={
        <>
          <Button kind="main" icon="pencil" href="#/log">
            Log
          </Button>
          <Button href={hrefOf({ at: 'shelf' })}>Shelf</Button>
          <Button href={hrefOf({ at: 'tools' })}>Tools</Button>
          <Button href={hrefOf({ at: 'settings' })}>Settings</Button>
        </>
      }
    >
      {bikes.is === 'reading' && <Slow />}
      {bikes.is === 'failed' && (
        <Notice
          kind="error"
          title="The logbook could not be read"
          action={
            <>
              <Button onPress={() => location.reload()}>Reload</Button>
              <Button href={hrefOf({ at: 'check' })}>Check the logbook</Button>
            </>
          }
        >
          Reload the page. If that does not help, check the logbook.
        </Notice>
      )}
      {bikes.is === 'there' &&
        (bikes.value.length === 0 ? <EmptyHome demo={demo} /> : <Bikes bikes={bikes.value} demo={demo} />)}
    </Screen>
  );
}
