import { Button } from '../../../controls/Button.tsx';
import { Fold } from '../../../controls/lists/Fold.tsx';
import { ListRow } from '../../../controls/lists/ListRow.tsx';
import type { Id } from '../../../journal/entries.ts';
import type { PartRow } from '../../../journal/rows.ts';
import { wheelsOf } from '../../../practice/wheel/wheelsOf.ts';
import { countWords } from '../../../words/phrases.ts';
import { useView } from '../../door.tsx';
import { hrefOf } from '../../route.ts';

/** Wheels made of parts of this bike, and the way to build one. */
export function WheelsSection({ bikeId, parts }: { bikeId: Id; parts: readonly PartRow[] }) {
  const seen = useView('wheels');
  const here = parts.map(({ partId }) => partId);
  const wheels = seen.is === 'there' ? wheelsOf(seen.value, here) : [];
  return (
    <Fold label="Wheels" end={wheels.length}>
      {wheels.map(({ wheelId, name, leftSide, driveSide }) => (
        <ListRow
          key={wheelId}
          icon="wheel"
          title={name}
          detail={countWords(leftSide.spokes + driveSide.spokes, 'spoke')}
          href={hrefOf({ at: 'wheel', wheelId })}
        />
      ))}
      <div class="buttons">
        <Button icon="plus" href={hrefOf({ at: 'new-wheel', place: `bike:${bikeId}` })}>
          Build a wheel
        </Button>
      </div>
    </Fold>
  );
}
