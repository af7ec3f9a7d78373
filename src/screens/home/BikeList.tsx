import { useState } from 'preact/hooks';
import { Button } from '../../controls/Button.tsx';
import { TextField } from '../../controls/fields/TextField.tsx';
import { Ruler } from '../../controls/figures/Ruler.tsx';
import { Fold } from '../../controls/lists/Fold.tsx';
import { WindowedList } from '../../controls/lists/WindowedList.tsx';
import type { BikeRow } from '../../journal/rows.ts';
import { BikeLine } from './BikeLine.tsx';

/** With more bikes than this the list is searched rather than read. */
const READ_AT_A_GLANCE = 12;

/** Bikes in work, newest touched first, and behind a fold those put away. */
export function BikeList({ bikes }: { bikes: BikeRow[] }) {
  const [sought, setSought] = useState('');
  const newest = bikes.toSorted((one, other) => other.lastMs - one.lastMs);
  const wanted = sought.trim().toLocaleLowerCase();
  const inWork = newest.filter(({ putAway }) => putAway === undefined);
  const shown = inWork.filter(({ name }) => name.toLocaleLowerCase().includes(wanted));
  const away = newest.filter(({ putAway }) => putAway !== undefined);
  return (
    <>
      <Ruler label="Bikes" end={<b>{inWork.length}</b>} />
      {inWork.length > READ_AT_A_GLANCE && (
        <div class="home-find">
          <TextField label="Find by name" type="search" value={sought} onInput={setSought} />
        </div>
      )}
      <WindowedList
        label="Bikes"
        count={shown.length}
        estimatePx={100}
        rowKey={(row) => shown[row]!.bikeId}
        renderRow={(row) => <BikeLine bike={shown[row]!} />}
      />
      {wanted !== '' && shown.length === 0 && <p>No match.</p>}
      <p class="home-start">
        <Button icon="plus" wide href="#/new-bike">
          New bike
        </Button>
      </p>
      {away.length > 0 && (
        <Fold label="Archived" end={away.length}>
          {away.map((bike) => (
            <BikeLine key={bike.bikeId} bike={bike} />
          ))}
        </Fold>
      )}
    </>
  );
}
