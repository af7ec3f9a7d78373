import './ride.css';
import { useState } from 'preact/hooks';
import { Button } from '../../controls/Button.tsx';
import { DateTimeField } from '../../controls/fields/DateTimeField.tsx';
import { NumberField } from '../../controls/fields/NumberField.tsx';
import { TextField } from '../../controls/fields/TextField.tsx';
import { Notice } from '../../controls/frames/Notice.tsx';
import { Screen } from '../../controls/frames/Screen.tsx';
import { noRide, type RideDraft, type RideWrong, rideTyped } from '../../drafts/rideDraft.ts';
import type { Settings } from '../../journal/entries.ts';
import type { BikeRow, RidesRow } from '../../journal/rows.ts';
import { type DistanceUnit, unitsOf } from '../../mechanics/units.ts';
import { SaveNotice } from '../bike/sheets/SaveNotice.tsx';
import { useNow, useRun } from '../door.tsx';
import { useDraft } from '../draft.ts';
import { useFirstWrong } from '../firstWrong.ts';
import { go, hrefOf } from '../route.ts';
import { Waits } from '../Waits.tsx';
import { NotReleased } from './NotReleased.tsx';

const QUICK = ['15', '30', '60'] as const;

export interface RideFormProps {
  bike: BikeRow;
  rides: RidesRow | undefined;
  settings: Settings;
}

/** A ride written down: when, how long, how far, and what was noticed. */
export function RideForm({ bike, rides, settings }: RideFormProps) {
  const { bikeId, name } = bike;
  const nowMs = useNow(60_000);
  const [draft, change, clear] = useDraft<RideDraft>(`ride:${bikeId}`, noRide);
  const [wrong, setWrong] = useState<RideWrong>({});
  const form = useFirstWrong<HTMLFormElement>(wrong);
  const { run, save } = useRun();
  const first = (rides?.count ?? 0) === 0;
  const write = async () => {
    if (save.is === 'saving') return;
    const typed = rideTyped(draft, settings.distanceUnit);
    setWrong(typed.ok ? {} : typed.wrong);
    if (!typed.ok) return;
    const entries = await run({ type: 'log-ride', bikeId, ...typed.ride }, { undo: 'Ride logged' });
    // Why it was refused stands at the top.
    if (!entries) return scrollTo(0, 0);
    clear();
    go({ at: 'rechecks', bikeId }, true);
  };
  return (
    <Screen
      title={`Log a ride: ${name}`}
      route="ride"
      back={hrefOf({ at: 'bike', bikeId })}
      waits={<Waits />}
      actions={
        <Button
          kind="main"
          icon="bike"
          disabled={save.is === 'saving'}
          under={first ? 'and make the list of re-checks' : 'and on to the re-checks'}
          onPress={write}
        >
          Log the ride
        </Button>
      }
    >
      <form
        class="stack"
        ref={form}
        onSubmit={(event) => {
          event.preventDefault();
          void write();
        }}
      >
        <SaveNotice save={save} />
        <NotReleased bike={bike} />
        {first && (
          <Notice kind="note" title="This is its first ride">
            Logging it schedules a check of every joint.
          </Notice>
        )}
        <DateTimeField
          label="Finished"
          atMs={draft.atMs ?? nowMs}
          latestMs={nowMs}
          onAt={(atMs) => change({ atMs })}
        />
        <NumberField
          label="How long, minutes"
          typed={draft.minutes}
          onTyped={(minutes) => change({ minutes })}
          error={wrong.minutes}
        />
        <div class="ride-quick">
          {QUICK.map((minutes) => (
            <Button key={minutes} pressed={draft.minutes === minutes} onPress={() => change({ minutes })}>
              {`${minutes} min`}
            </Button>
          ))}
        </div>
        <NumberField<DistanceUnit>
          label="How far"
          typed={draft.distance}
          unit={draft.unit ?? settings.distanceUnit}
          units={unitsOf.distance}
          onTyped={(distance, unit) => change({ distance, unit })}
          error={wrong.distance}
        />
        <TextField
          label="What was noticed"
          hint="A creak, a rub, a pull to one side, or nothing."
          lines={3}
          value={draft.noticed}
          onInput={(noticed) => change({ noticed })}
          maxLength={1000}
        />
      </form>
    </Screen>
  );
}
