import type { Entry } from '../../journal/entries.ts';
import { plausibleTorque } from '../../mechanics/screws/torquePlausible.ts';
import { convert, type LengthUnit, type TorqueUnit, type Typed, torqueNm } from '../../mechanics/units.ts';

/** The thickest thread the rule knows; what thread it was is not in the entry. */
const THICKEST_THREAD_MM = 16;
/** The length of a bicycle, a tandem's frame included: the rule of the logbook for what is cut. */
const LONGEST_MM = 3000;

function absurd({ value, unit }: Typed<TorqueUnit>): boolean {
  const nm = torqueNm(value, unit);
  // Without the thread the rule is strict from 300 N·m on; a thick one may still have been given it.
  const asked = [plausibleTorque(nm), plausibleTorque(nm, THICKEST_THREAD_MM)];
  return asked.every((answer) => !answer.ok && answer.reason === 'absurd');
}

function absurdCut({ value, unit }: Typed<LengthUnit>): boolean {
  return value < 0 || convert<LengthUnit>(value, unit, 'mm') > LONGEST_MM;
}

/**
 * Whether an entry that has its shape also says what the logbook would have written: the field that cannot be, or
 * undefined. Never stricter than the commands, which see more than one entry.
 * @example implausibleField({ ...torqueApplied, applied: { value: 5000, unit: 'N.m', typed: '5000' } }) //=> 'applied'
 */
export function implausibleField(entry: Entry): string | undefined {
  // A command may tell of the past, and of a minute ahead where two clocks differ.
  if (entry.happenedAtMs > entry.writtenAtMs + 60_000) return 'happenedAtMs';
  switch (entry.type) {
    case 'torque-applied':
      return absurd(entry.applied) ? 'applied' : undefined;
    case 'torque-found':
      return entry.movedAt && absurd(entry.movedAt) ? 'movedAt' : undefined;
    case 'part-changed':
      return (['before', 'after', 'left'] as const).find((field) => {
        const size = entry[field];
        return size !== undefined && absurdCut(size);
      });
    case 'tool-added':
      return (entry.minNm ?? 0) > (entry.maxNm ?? Number.POSITIVE_INFINITY) ? 'minNm' : undefined;
    case 'ride-logged':
      return entry.km === undefined && entry.minutes === undefined ? 'km' : undefined;
    default:
      return undefined;
  }
}
