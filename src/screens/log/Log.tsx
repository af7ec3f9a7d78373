import { Screen } from '../../controls/frames/Screen.tsx';
import type { IconName } from '../../controls/Icon.tsx';
import { Tile } from '../../controls/Tile.tsx';
import type { Id } from '../../journal/entries.ts';
import type { LineKind } from '../../practice/log/lineDraft.ts';
import { Absent } from '../Absent.tsx';
import { useView } from '../door.tsx';
import { hrefOf } from '../route.ts';
import { Waits } from '../Waits.tsx';
import { LineForm } from './LineForm.tsx';

/** In place of a bike where none is chosen yet. */
const NO_BIKE = '-';

const lineKinds: readonly { kind: LineKind; words: string; onTile?: string; icon: IconName }[] = [
  { kind: 'torque', words: 'Torque', icon: 'spanner' },
  { kind: 'locker', words: 'Threadlocker', onTile: 'Thread\u00adlocker', icon: 'drop' },
  { kind: 'tyre', words: 'Tyre', icon: 'tyre' },
  { kind: 'cut', words: 'Cut or filed', icon: 'file' },
  { kind: 'part', words: 'Part', icon: 'part' },
  { kind: 'problem', words: 'Problem', icon: 'warning' },
  { kind: 'ride', words: 'Ride', icon: 'bike' },
  { kind: 'note', words: 'Note', icon: 'note' },
];

/** One door for a line: what it is, then its form. */
export function Log({ bikeId = NO_BIKE, kind }: { bikeId?: Id; kind?: string }) {
  const bikes = useView('bikes');
  const settings = useView('settings');
  const tools = useView('tools');
  const chosen = lineKinds.find((one) => one.kind === kind);
  const back =
    bikeId === NO_BIKE || bikes.is !== 'there' ? hrefOf({ at: 'home' }) : hrefOf({ at: 'bike', bikeId });
  if (!chosen)
    return (
      <Screen title="Log" back={back} waits={<Waits />}>
        <nav class="tiles" aria-label="What to log">
          {lineKinds.map((one) => (
            <Tile key={one.kind} icon={one.icon} href={hrefOf({ at: 'log', bikeId, kind: one.kind })}>
              {one.onTile ?? one.words}
            </Tile>
          ))}
        </nav>
      </Screen>
    );
  if (bikes.is !== 'there' || settings.is !== 'there' || tools.is !== 'there')
    return (
      <Screen title={chosen.words} back={hrefOf({ at: 'log', bikeId })} waits={<Waits />}>
        <Absent what="bike" seen={[bikes, settings, tools]} />
      </Screen>
    );
  const inUse = bikes.value.filter((bike) => bike.putAway === undefined);
  return (
    <LineForm
      key={chosen.kind}
      kind={chosen.kind}
      title={chosen.words}
      icon={chosen.icon}
      given={bikes.value.find((bike) => bike.bikeId === bikeId)}
      bikes={inUse}
      tools={tools.value}
      settings={settings.value}
      back={hrefOf({ at: 'log', bikeId })}
    />
  );
}
