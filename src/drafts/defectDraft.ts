import type { CommandOf } from '../journal/commands.ts';
import type { Id } from '../journal/entries.ts';
import { parseNumber } from '../mechanics/quantity.ts';
import { convert, type DistanceUnit } from '../mechanics/units.ts';

/** The form of a problem. */
export interface DefectDraft {
  words: string;
  area: string;
  jointId: string;
  decision: 'do-not-ride' | 'ride-limited';
  untilMs?: number | undefined;
  /** How much further it may be ridden, as typed. */
  further: string;
  restriction: string;
}

export const emptyDefect: DefectDraft = {
  words: '',
  area: 'other',
  jointId: '',
  decision: 'do-not-ride',
  further: '',
  restriction: '',
};

/**
 * The problem as a command. Its distance counts from when it was found, as the logbook counts it.
 * @param decision what holds: some problems take no limit, whatever the form says
 * @param unit of the distance
 * @returns undefined where the distance is no number
 * @example readDefect({ ...emptyDefect, words: 'Worn grip', further: '20' }, 'b', 'ride-limited', 'km')?.untilKm //=> 20
 */
export function readDefect(
  { words, area, jointId, untilMs, further, restriction }: DefectDraft,
  bikeId: Id,
  decision: DefectDraft['decision'],
  unit: DistanceUnit,
): CommandOf<'find-defect'> | undefined {
  const limited = decision === 'ride-limited';
  const far = limited && further.trim() !== '' ? parseNumber(further) : undefined;
  if (far && !far.ok) return undefined;
  return {
    ...{ type: 'find-defect', bikeId, words, area, decision },
    ...(jointId ? { jointId } : {}),
    ...(limited && untilMs !== undefined ? { untilMs } : {}),
    ...(far ? { untilKm: convert(far.value, unit, 'km') } : {}),
    ...(limited && restriction.trim() ? { restriction: restriction.trim() } : {}),
  };
}
