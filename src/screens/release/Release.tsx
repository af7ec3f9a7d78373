import { useState } from 'preact/hooks';
import { Screen } from '../../controls/frames/Screen.tsx';
import type { Id } from '../../journal/entries.ts';
import type { Views } from '../../logbook.ts';
import { type RideCheckGroup, rideCheck } from '../../standards/checks/rideCheck.ts';
import { Absent } from '../Absent.tsx';
import { useView } from '../door.tsx';
import { hrefOf } from '../route.ts';
import { Waits } from '../Waits.tsx';
import { CheckGroup } from './CheckGroup.tsx';
import { ReleaseHome } from './ReleaseHome.tsx';
import { SignPage } from './SignPage.tsx';

export type ReleaseView = NonNullable<Views['release']['gives']>;

type Page = { at: 'home' } | { at: 'sign' } | { at: 'group'; group: RideCheckGroup };

/** The check before riding, and the release that stands on it. */
export function Release({ bikeId }: { bikeId: Id }) {
  const seen = useView('release', { bikeId });
  const chosen = useView('settings');
  const [page, setPage] = useState<Page>({ at: 'home' });
  const turnTo = (next: Page) => {
    setPage(next);
    scrollTo(0, 0);
  };
  const view = seen.is === 'there' ? seen.value : undefined;
  if (!view || chosen.is !== 'there') {
    const missing = seen.is === 'there' && !view;
    return (
      <Screen
        title="Release"
        back={missing ? hrefOf({ at: 'home' }) : hrefOf({ at: 'bike', bikeId })}
        waits={<Waits />}
      >
        <Absent what="bike" seen={[seen, chosen]} />
      </Screen>
    );
  }
  const { bike, check, rides, joints, parts, open } = view;
  const { distanceUnit: unit, doer } = chosen.value;
  if (page.at === 'group') {
    const { group } = page;
    const groups = check?.groups ?? {};
    const following = rideCheck.find(({ id }) => id !== group.id && !groups[id]);
    return (
      <CheckGroup
        key={group.id}
        {...{ bikeId, group, joints, parts, unit }}
        confirmed={groups[group.id]}
        onConfirmed={() => turnTo(following ? { at: 'group', group: following } : { at: 'home' })}
        onBack={() => turnTo({ at: 'home' })}
      />
    );
  }
  if (page.at === 'sign')
    return (
      <SignPage
        {...{ bikeId, open, doer }}
        bikeName={bike.name}
        ridden={(rides?.count ?? 0) > 0}
        onSigned={() => turnTo({ at: 'home' })}
        onBack={() => turnTo({ at: 'home' })}
      />
    );
  return (
    <ReleaseHome
      {...{ view, unit }}
      onGroup={(group) => turnTo({ at: 'group', group })}
      onSign={() => turnTo({ at: 'sign' })}
    />
  );
}
