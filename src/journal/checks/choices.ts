import type { CheckAnswered, QuietHours, Settings, ToolAbout } from '../about.ts';
import type { EntryOf } from '../entries.ts';
import {
  amount,
  type Check,
  either,
  exactly,
  flag,
  id,
  list,
  maybe,
  object,
  oneOf,
  record,
  short,
  text,
  whole,
} from './field.ts';
import { temperature } from './quantities.ts';

/** Checks of what an entry chooses between, and of its spans and limits. */

export const dueDays: Check = maybe(amount(0, 3660));
export const dueRides: Check = maybe(amount(0, 10_000));
export const dueKm: Check = maybe(amount(0, 100_000));

/** Names of fields that a description takes away. */
export const fieldNames: Check = list(id, 60);

export const partId: Check = id;
export const entered: Check = oneOf<EntryOf<'torque-applied'>['entered']>({ tap: 1, keypad: 1 });
export const foundOutcome: Check = oneOf<EntryOf<'torque-found'>['outcome']>({
  held: 1,
  moved: 1,
  turned: 1,
});
export const foundWay: Check = oneOf<EntryOf<'torque-found'>['way']>({ tightening: 1, mark: 1 });
/** Ten turns: more, and the screw is out. */
export const turnedDeg: Check = maybe(amount(0, 3600, { above: true }));
export const celsius: Check = temperature;
/** Halves of halves between two steps; far from where doubles end. */
export const rank: Check = amount(-1e12, 1e12);
export const waitOutcome: Check = oneOf<EntryOf<'wait-ended'>['outcome']>({
  looked: 1,
  'cut-short': 1,
  'no-longer-needed': 1,
});
/** A clock that was wrong by more than a century says nothing about a wait. Own judgement. */
export const clockMs: Check = amount(-100 * 366 * 86_400_000, 100 * 366 * 86_400_000);

export const decision: Check = oneOf<EntryOf<'defect-found'>['decision']>({
  'do-not-ride': 1,
  'ride-limited': 1,
});
export const statement: Check = oneOf<EntryOf<'bike-released'>['statement']>({
  'first-ride': 1,
  ride: 1,
  'not-to-ride': 1,
});
export const limitKm: Check = maybe(amount(0, 100_000, { above: true }));
export const rideMinutes: Check = maybe(amount(0, 10_000, { above: true }));
/** More than one ride can be. Own judgement. */
export const rideKm: Check = maybe(amount(0, 3000, { above: true }));
export const answer: Check = oneOf<EntryOf<'recheck-answered'>['outcome']>({ 'as-it-should': 1, finding: 1 });
export const findingOutcome: Check = oneOf<EntryOf<'finding-noted'>['outcome']>({
  'not-known': 1,
  'does-not-fit': 1,
  'one-way-only': 1,
});

export const checkItems: Check = list(
  object<CheckAnswered>({
    itemId: id,
    ok: flag,
    words: maybe(text),
    absent: maybe(exactly(true)),
  }),
  100,
);

const span = either(
  exactly(null),
  object<{ rides?: number; km?: number; days?: number }>({ rides: dueRides, km: dueKm, days: dueDays }),
);

const minuteOfDay = whole(0, 24 * 60 - 1);

/** Settings as far as they are changed. */
export const settings: Check = object<Settings>({
  torqueUnit: maybe(
    oneOf<Settings['torqueUnit']>({ 'N.m': 1, '[in_i].[lbf_av]': 1, '[ft_i].[lbf_av]': 1, 'kgf.cm': 1 }),
  ),
  pressureUnit: maybe(oneOf<Settings['pressureUnit']>({ bar: 1, '[psi]': 1, kPa: 1 })),
  lengthUnit: maybe(oneOf<Settings['lengthUnit']>({ mm: 1, cm: 1, '[in_i]': 1 })),
  temperatureUnit: maybe(oneOf<Settings['temperatureUnit']>({ Cel: 1, '[degF]': 1 })),
  distanceUnit: maybe(oneOf<Settings['distanceUnit']>({ km: 1, '[mi_i]': 1 })),
  theme: maybe(oneOf<Settings['theme']>({ 'as-the-phone': 1, light: 1, dark: 1 })),
  doer: maybe(short),
  schedule: maybe(record(id, span, 500)),
  quiet: maybe(either(exactly(null), object<QuietHours>({ fromMin: minuteOfDay, toMin: minuteOfDay }))),
});

export const checkBasis: Check = oneOf<NonNullable<ToolAbout['checkBasis']>>({
  laboratory: 1,
  'bench-check': 1,
  unknown: 1,
});

export const turn: Check = whole(0, 10_000);
