import { Button } from '../../../controls/Button.tsx';
import { Fold } from '../../../controls/lists/Fold.tsx';
import type { Id } from '../../../journal/entries.ts';
import type { RidesRow } from '../../../journal/rows.ts';
import { numberText } from '../../../mechanics/numberText.ts';
import { convert, type DistanceUnit, unitLabel } from '../../../mechanics/units.ts';
import { dayText } from '../../../words/dayText.ts';
import { hrefOf } from '../../route.ts';

export interface RidesSectionProps {
  bikeId: Id;
  rides: RidesRow | undefined;
  unit: DistanceUnit;
}

/** What the bike has been ridden since it was built. */
export function RidesSection({ bikeId, rides, unit }: RidesSectionProps) {
  const count = rides?.count ?? 0;
  const distance = `${numberText(convert(rides?.km ?? 0, 'km', unit), 0)} ${unitLabel[unit]}`;
  const end = count === 0 ? 'None' : `${count}, ${distance}`;
  return (
    <Fold label="Rides" end={end}>
      <p class="lower">
        {rides?.lastAtMs === undefined
          ? 'No rides yet. After the first, every joint is due a check.'
          : `First ${dayText(rides.firstAtMs ?? rides.lastAtMs)}, last ${dayText(rides.lastAtMs)}.`}
      </p>
      <div class="buttons">
        <Button icon="bike" href={hrefOf({ at: 'ride', bikeId })}>
          Log a ride
        </Button>
      </div>
    </Fold>
  );
}
