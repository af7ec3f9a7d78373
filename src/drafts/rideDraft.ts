import type { CommandOf } from '../journal/commands.ts';
import { parseNumber } from '../mechanics/quantity.ts';
import { convert, type DistanceUnit } from '../mechanics/units.ts';

export interface RideDraft {
  /** When it was ridden, where that is not now. */
  atMs?: number | undefined;
  minutes: string;
  distance: string;
  unit?: DistanceUnit | undefined;
  noticed: string;
}

export const noRide: RideDraft = { minutes: '', distance: '', noticed: '' };

export interface RideWrong {
  minutes?: string;
  distance?: string;
}

type RideTold = Pick<CommandOf<'log-ride'>, 'minutes' | 'km' | 'noticed' | 'happenedAtMs'>;

/**
 * A ride as typed, in the units the logbook keeps.
 * @param unit of the distance, where none was chosen in the form
 * @returns what to log, or a sentence for each field that cannot be taken
 * @example rideTyped({ minutes: '38', distance: '', noticed: '' }, 'km') //=> { ok: true, ride: { minutes: 38 } }
 */
export function rideTyped(
  { atMs, minutes, distance, unit, noticed }: RideDraft,
  settingsUnit: DistanceUnit,
): { ok: true; ride: RideTold } | { ok: false; wrong: RideWrong } {
  const [time, way] = [minutes, distance].map((typed) =>
    typed.trim() === '' ? undefined : parseNumber(typed),
  );
  const wrong: RideWrong = {
    ...(time && !time.ok ? { minutes: 'Type the minutes in digits, or leave it empty.' } : {}),
    ...(way && !way.ok ? { distance: 'Type the distance in digits, or leave it empty.' } : {}),
  };
  if (wrong.minutes || wrong.distance) return { ok: false, wrong };
  return {
    ok: true,
    ride: {
      ...(time?.ok ? { minutes: time.value } : {}),
      ...(way?.ok ? { km: convert(way.value, unit ?? settingsUnit, 'km') } : {}),
      ...(noticed.trim() ? { noticed: noticed.trim() } : {}),
      ...(atMs === undefined ? {} : { happenedAtMs: atMs }),
    },
  };
}
