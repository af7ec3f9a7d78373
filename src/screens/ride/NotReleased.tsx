import { Button } from '../../controls/Button.tsx';
import { Notice } from '../../controls/frames/Notice.tsx';
import type { BikeRow } from '../../journal/rows.ts';
import { releaseState } from '../../practice/release/releaseState.ts';
import { hrefOf } from '../route.ts';

/** Said before a ride is logged on a bike whose release does not stand; nothing otherwise. */
export function NotReleased({ bike }: { bike: BikeRow }) {
  if (releaseState(bike).is === 'stands') return null;
  return (
    <Notice
      kind="caution"
      title="This bike is not released"
      action={
        <Button icon="flag" href={hrefOf({ at: 'release', bikeId: bike.bikeId })}>
          Go to the release
        </Button>
      }
    >
      You can log the ride anyway.
    </Notice>
  );
}
