import type { JointKind } from '../jointKinds.ts';
import { type Founded, founded } from '../known.ts';
import { recheckTitles } from './recheckTitles.ts';

export type InstructionKind =
  | 'retorque'
  | 'look-at-mark'
  | 'headset'
  | 'spokes'
  | 'brake-bed-in'
  | 'seal'
  | 'inspect';

/** A span after which a check falls due: whichever of its figures is reached first. */
export interface RecheckSpan {
  /** Rides since the last check; 0 means before the next one. */
  readonly afterRides?: number;
  readonly km?: number;
  /** Hours ridden. */
  readonly hours?: number;
  readonly days?: number;
}

export interface ScheduleRow extends Founded {
  readonly jointKind: JointKind;
  readonly instruction: InstructionKind;
  readonly whenFirst: RecheckSpan;
  /** The second time; null where the check is done once. */
  readonly then: RecheckSpan | null;
  /** From the third time on; null where nothing more is due. */
  readonly afterwards: RecheckSpan | null;
}

/** What each instruction asks for at the bench. */
export const recheckInstructions: Record<InstructionKind, { title: string; words: string }> = {
  retorque: {
    title: recheckTitles.retorque,
    words: 'Do not loosen. Tighten slowly to the target. Did the bolt turn, and how far?',
  },
  'look-at-mark': {
    title: recheckTitles['look-at-mark'],
    words:
      'The threadlocker has cured; turning breaks its bond. See that the paint mark still lines up. If it moved: take out, clean, re-apply, and start a new cure.',
  },
  headset: {
    title: recheckTitles.headset,
    words:
      'Hold the front wheel, by its brake or against a wall, and rock: no knock. Lift the front: the bars swing freely to both sides.',
  },
  spokes: {
    title: recheckTitles.spokes,
    words:
      'Go round each side by sound or gauge, find the slack ones, bring tension level, then see that the wheel runs true.',
  },
  'brake-bed-in': {
    title: recheckTitles['brake-bed-in'],
    words:
      "Follow the pad maker's text. Otherwise slow down repeatedly from a moderate speed on a clear flat, never locking the wheel and never holding it stopped while hot.",
  },
  seal: {
    title: recheckTitles.seal,
    words:
      'Follow the bead line round both sides, read the pressure with the temperature, and look for wet spots at valve, tape and bead.',
  },
  inspect: {
    title: recheckTitles.inspect,
    words: 'Clean it, then look in raking light for cracks, gaps, shift, wear and anything that works loose.',
  },
};

const ownJudgement = (ground: string): Founded => founded(`our suggestion; ${ground}`, 'proposal', 0);

const manual = ownJudgement(
  "a generic owner's manual has a first check after 30 days or 3 to 15 hours, then every 10 to 20 hours",
);
const wheelLosing = ownJudgement("hub maker's article on wheel building: true again after about 100 km");
const settling = ownJudgement('16 CFR 1512.17 road test of 6.4 km as the first moment things work loose');
const heat = ownJudgement('ISO 4210-2 asks for heat-resistant locking at disc brakes');
const cable = ownJudgement('housing settles in about two weeks or some 100 km');
const sealing = ownJudgement('sealant maker: check and adjust every 3 to 4 months');
const lookOften = ownJudgement(
  'US rule for quick releases: the state must show; common practice to look before each ride',
);
const climbs = ownJudgement('common practice: an arm on a square taper only climbs when tightened for ever');
const retrofit = ownJudgement('no published interval for adapted brake mounts');

const firstRide: RecheckSpan = { afterRides: 1, km: 10, hours: 1, days: 30 };
const tenHours: RecheckSpan = { afterRides: 3, hours: 10, km: 150, days: 60 };
const service: RecheckSpan = { hours: 20, km: 500, days: 90 };
const everyRide: RecheckSpan = { afterRides: 1 };

const row = (
  jointKind: JointKind,
  instruction: InstructionKind,
  sourced: Founded,
  whenFirst: RecheckSpan = firstRide,
  then: RecheckSpan | null = tenHours,
  afterwards: RecheckSpan | null = service,
): ScheduleRow => ({ jointKind, instruction, whenFirst, then, afterwards, ...sourced });

/**
 * Default re-checks per kind of joint; the owner may change every span. A joint may have two rows when two
 * different things are due (a rotor is bedded in and its bolts are checked).
 */
export const recheckSchedule: readonly ScheduleRow[] = [
  row('headset', 'headset', settling, { ...firstRide, days: 14 }),
  row('crown-race', 'inspect', settling),
  row('fork', 'inspect', manual, firstRide, service, service),
  row('stem-steerer', 'retorque', manual),
  row('stem-quill', 'retorque', manual),
  row('bar-clamp', 'retorque', manual),
  row('grip', 'retorque', manual),
  row('lever-clamp', 'retorque', manual),
  row('cable-anchor', 'inspect', cable, firstRide, { days: 14, km: 100 }, service),
  row('brake-mount', 'retorque', retrofit, firstRide, { afterRides: 4, km: 100, days: 30 }),
  row('caliper', 'retorque', heat),
  row(
    'rotor',
    'brake-bed-in',
    ownJudgement('several published recipes that differ; the pad maker goes first'),
    { afterRides: 0 },
    null,
    null,
  ),
  row('rotor', 'retorque', heat),
  row('bottom-bracket', 'inspect', manual, firstRide, service, service),
  row('crank', 'retorque', climbs, firstRide, { km: 75, days: 30 }),
  row('crank-pinch', 'retorque', manual, firstRide, { km: 75, days: 30 }),
  row('chainring', 'retorque', manual, firstRide, { km: 75, days: 30 }),
  row('pedal', 'retorque', manual, firstRide, { km: 75, days: 30 }),
  row('sprocket', 'retorque', manual, firstRide, service, service),
  row('freewheel', 'inspect', manual, firstRide, service, service),
  row('lockring', 'retorque', manual),
  row('chain', 'inspect', manual, { afterRides: 1, km: 50, days: 30 }, service, service),
  row('seatpost', 'retorque', manual),
  row('saddle-rails', 'retorque', manual),
  row('front-axle', 'retorque', lookOften, firstRide, everyRide, everyRide),
  row('rear-axle', 'retorque', lookOften, firstRide, everyRide, everyRide),
  row('thru-axle', 'retorque', lookOften, firstRide, everyRide, everyRide),
  row('bead', 'seal', sealing, { afterRides: 1, days: 1 }, { afterRides: 1, days: 7 }, { days: 90 }),
  row('spokes', 'spokes', wheelLosing, { afterRides: 1, km: 20, days: 14 }, { km: 100, days: 30 }),
  row('mudguard', 'retorque', manual, firstRide, service, service),
  row('rack', 'retorque', manual),
  row('other', 'inspect', manual, firstRide, service, service),
];

/**
 * The default re-checks of one kind of joint.
 * @param cured threadlocker has cured in it: a pull would break the bond, so the eye takes the wrench's place
 * @example recheckRows('rotor', true).map((row) => row.instruction) //=> ['brake-bed-in', 'look-at-mark']
 */
export function recheckRows(jointKind: JointKind, cured: boolean): readonly ScheduleRow[] {
  return recheckSchedule
    .filter((row) => row.jointKind === jointKind)
    .map((row) =>
      cured && row.instruction === 'retorque' ? { ...row, instruction: 'look-at-mark' as const } : row,
    );
}

/**
 * The span before a given turn of a re-check; null when nothing more is due.
 * @param turn 0 for the first time
 * @throws RangeError when `turn` is not a whole number from 0
 * @example spanOfTurn(recheckRows('spokes', false)[0], 1) //=> { km: 100, days: 30 }
 */
export function spanOfTurn(row: ScheduleRow, turn: number): RecheckSpan | null {
  if (!Number.isInteger(turn) || turn < 0) throw new RangeError(`not a turn: ${turn}`);
  if (turn === 0) return row.whenFirst;
  return turn === 1 ? row.then : row.afterwards;
}
