import type { Face, Measured } from '../../fit/faces/face.ts';
import type {
  BarAbout,
  Between,
  BetweenKind,
  ClampAbout,
  DiametersAbout,
  ExtensionAbout,
  Fastener,
  JointAbout,
  OneWayChange,
  OpenItem,
  PartAbout,
  Place,
  QuietHours,
  Reading,
  RecheckAbout,
  SealMark,
  Settings,
  StepAbout,
  Target,
  ToolAbout,
  ToolSnapshot,
  WaitKind,
} from '../../journal/entries.ts';
import type {
  AnyUnit,
  LengthUnit,
  PressureUnit,
  TemperatureUnit,
  TorqueUnit,
  Typed,
  VolumeUnit,
} from '../../mechanics/units.ts';
import { type FaceKind, faceKindIds } from '../../standards/faces/faceKinds.ts';
import { type JointKind, jointKinds } from '../../standards/jointKinds.ts';
import {
  above0,
  exactly,
  type Fields,
  figure,
  flag,
  id,
  keyed,
  listOf,
  oneOf,
  optional,
  orNull,
  record,
  type Shape,
  text,
  variants,
  whole,
} from './shape.ts';

/** Milliseconds since 1970 that a history can sort: thirteen digits, until the year 2286. */
export const instant = figure(0, 9_999_999_999_999);
/** No figure of a workshop is larger; the rules of each quantity are stricter. */
const MOST = 1e9;
const DAYS = above0(3660);
const RIDES = figure(0, 10_000);
const KM = figure(0, 1_000_000);
export const longestWait = above0(60 * 86_400_000);

/** A word out of a table of `standards`. */
const oneOfTable = <T extends string>(words: readonly T[]): Shape<T> => ({ json: { enum: [...words] } });

/** A quantity as it was typed, in one of its units. */
const typedIn = <U extends AnyUnit>(units: Shape<U>, value = figure(-MOST, MOST)): Shape<Typed<U>> =>
  record<Typed<U>>({ value, unit: units, typed: text } as Fields<Typed<U>>);

const torqueUnit = oneOf<TorqueUnit>({
  'N.m': 1,
  '[in_i].[lbf_av]': 1,
  '[ft_i].[lbf_av]': 1,
  'kgf.cm': 1,
});
const pressureUnit = oneOf<PressureUnit>({ bar: 1, '[psi]': 1, kPa: 1 });
const lengthUnit = oneOf<LengthUnit>({ mm: 1, '[in_i]': 1, cm: 1 });
const temperatureUnit = oneOf<TemperatureUnit>({ Cel: 1, '[degF]': 1 });
const volumeUnit = oneOf<VolumeUnit>({ mL: 1, '[foz_us]': 1 });
const anyUnit = oneOf<AnyUnit>({
  ...{ 'N.m': 1, '[in_i].[lbf_av]': 1, '[ft_i].[lbf_av]': 1, 'kgf.cm': 1 },
  ...{ bar: 1, '[psi]': 1, kPa: 1, mm: 1, '[in_i]': 1, cm: 1, km: 1, '[mi_i]': 1 },
  ...{ Cel: 1, '[degF]': 1, N: 1, kgf: 1, '[lbf_av]': 1, g: 1, kg: 1, '[lb_av]': 1 },
  ...{ mL: 1, '[foz_us]': 1, deg: 1, rad: 1 },
});

export const torque = typedIn(torqueUnit, above0(6000));
export const length = typedIn(lengthUnit);
export const temperature = typedIn(temperatureUnit);
export const anyQuantity = typedIn(anyUnit);

export const photoIds = listOf(id);

export const place = variants<Place, 'on'>('on', {
  shelf: { tag: optional(text) },
  bike: { bikeId: id },
  quarantine: { why: text },
  scrapped: { how: text },
  sold: { to: optional(text) },
});

const measured = record<Measured>({
  value: figure(-MOST, MOST),
  unit: oneOf({ mm: 1, '[in_i]': 1, cm: 1, bar: 1, '1': 1 }),
  typed: text,
  uncertaintyMm: figure(0, MOST),
});

const face = record<Face>({
  faceId: text,
  kind: oneOfTable<FaceKind>(faceKindIds),
  standard: orNull(text),
  nominal: keyed(figure(-MOST, MOST)),
  measured: keyed(measured),
  traits: optional(keyed(text)),
  notes: optional(text),
});

export const partAbout: Fields<PartAbout> = {
  label: text,
  name: text,
  kind: text,
  serial: optional(text),
  origin: oneOf({
    ...{ 'bought-new': 1, 'bought-used': 1, 'off-a-bike': 1, gift: 1, found: 1, made: 1, unknown: 1 },
  }),
  originWords: optional(text),
  condition: optional(text),
  unknown: optional(text),
  note: optional(text),
  photoIds: optional(photoIds),
  faces: optional(listOf(face)),
  position: optional(oneOf({ front: 1, rear: 1 })),
  massG: optional(above0(100_000)),
  kmBefore: optional<number | 'unknown'>({ json: { anyOf: [KM.json, { const: 'unknown' }] } }),
};

export const betweenKind = oneOf<BetweenKind>({
  ...{ dry: 1, grease: 1, 'assembly-paste': 1, 'anti-seize': 1, threadlocker: 1 },
  ...{ 'retaining-compound': 1, adapter: 1, shim: 1, spacer: 1, washer: 1, other: 1 },
});

const between = record<Between>({ kind: betweenKind, partId: optional(id), words: optional(text) });

const fastener = record<Fastener>({
  thread: text,
  count: whole(1, 72),
  hand: oneOf({ right: 1, left: 1 }),
  words: optional(text),
  screw: optional(oneOf({ steel: 1, stainless: 1, aluminium: 1, titanium: 1, unknown: 1 })),
  propertyClass: optional(text),
  female: optional(
    oneOf({
      ...{ steel: 1, stainless: 1, 'cast-iron': 1, brass: 1, aluminium: 1, magnesium: 1 },
      ...{ titanium: 1, plastic: 1, unknown: 1 },
    }),
  ),
  onThread: optional(
    oneOf({
      ...{ none: 1, oil: 1, grease: 1, 'anti-seize': 1, moly: 1, wax: 1 },
      ...{ 'threadlocker-wet': 1, unknown: 1 },
    }),
  ),
  grip: optional(length),
  variant: optional(text),
});

const target = record<Target>({
  source: oneOf({
    ...{ 'printed-on-the-part': 1, 'makers-document': 1, 'mating-part': 1, 'general-table': 1 },
    ...{ 'own-judgement': 1, none: 1 },
  }),
  torque: optional(torque),
  upTo: optional(torque),
  partId: optional(id),
  reference: optional(text),
});

export const jointAbout: Fields<JointAbout> = {
  name: text,
  kind: oneOfTable<JointKind>(jointKinds.map(({ kind }) => kind)),
  partIds: listOf(id),
  between: listOf(between),
  fasteners: listOf(fastener),
  targets: listOf(target),
  matters: flag,
  note: optional(text),
  clamp: optional(
    record<ClampAbout>({
      construction: oneOf({ 'two-piece': 1, 'one-slit-flexible': 1, 'one-slit-stiff': 1 }),
      tubeArm: optional(length),
      boltArm: optional(length),
      shim: optional(oneOf({ slit: 1, closed: 1, bonded: 1 })),
    }),
  ),
  bar: optional(record<BarAbout>({ rise: length, reach: length })),
  extension: optional(record<ExtensionAbout>({ length, angleDeg: figure(-MOST, MOST) })),
  diameters: optional(record<DiametersAbout>({ bore: length, outside: length })),
};

export const stepAbout: Fields<StepAbout> = {
  kind: oneOf({
    ...{ fit: 1, torque: 1, press: 1, lock: 1, seat: 1, measure: 1, cut: 1, adjust: 1, check: 1 },
  }),
  title: text,
  detail: optional(text),
  jointId: optional(id),
  partId: optional(id),
  work: optional(
    oneOf({
      ...{ tension: 1, true: 1, dish: 1, play: 1, turns: 1, count: 1, slack: 1, bleed: 1, cable: 1, pads: 1 },
    }),
  ),
  rank: figure(-MOST, MOST),
};

export const rank = figure(-MOST, MOST);

export const waitKind = oneOf<WaitKind>({ cure: 1, seal: 1, adhesive: 1, other: 1 });

const NM = figure(0, 1000);

export const toolSnapshot = record<ToolSnapshot>({
  toolId: id,
  name: text,
  minNm: optional(figure(0, MOST)),
  maxNm: optional(NM),
  lastCheckMs: optional(instant),
  state: oneOf({ checked: 1, 'check-overdue': 1, 'never-checked': 1, dropped: 1 }),
});

export const toolAbout: Fields<ToolAbout> = {
  name: text,
  minNm: optional(figure(0, MOST)),
  maxNm: optional(NM),
  tolerancePercent: optional(figure(0, MOST)),
  lastCheckMs: optional(instant),
  checkBasis: optional(oneOf({ laboratory: 1, 'bench-check': 1, unknown: 1 })),
  checkEveryDays: optional(DAYS),
  droppedAtMs: optional(orNull(instant)),
  note: optional(text),
  toolClass: optional(
    oneOf({
      ...{ click: 1, 'click-fixed': 1, beam: 1, dial: 1, electronic: 1, screwdriver: 1, 'by-hand': 1 },
    }),
  ),
  cyclesSinceCheck: optional(figure(0, MOST)),
  lever: optional(length),
};

const reading = record<Reading>({
  pressure: optional(typedIn(pressureUnit, figure(0, 10_000))),
  temperature: optional(typedIn(temperatureUnit, figure(-200, 200))),
  gauge: optional(text),
});

export const sealMark = variants<SealMark, 'mark'>('mark', {
  seated: {
    dry: flag,
    beadLine: oneOf({ even: 1, uneven: 1, 'not-looked': 1 }),
    reading: optional(reading),
  },
  'dry-reading': { reading },
  sealant: { sealantKind: optional(text), amount: optional(typedIn(volumeUnit, above0(1000))) },
  'spun-and-shaken': {},
  'laid-left': {},
  'laid-right': {},
  soaped: {
    bubbles: oneOf({ none: 1, bead: 1, valve: 1, 'spoke-holes': 1, sidewall: 1 }),
    words: optional(text),
  },
  reading: { reading },
  burped: { words: optional(text) },
  pumped: { reading },
  'let-down': { reading: optional(reading) },
  riding: {
    pressure: typedIn(pressureUnit, figure(0, 10_000)),
    temperature: optional(typedIn(temperatureUnit, figure(-200, 200))),
  },
  verdict: {
    verdict: oneOf({ holds: 1, 'still-sealing': 1, leaks: 1, 'will-not-seat': 1 }),
    words: optional(text),
  },
});

export const oneWayChange: Fields<OneWayChange> = {
  cut: oneOf({
    ...{
      file: 1,
      saw: 1,
      drill: 1,
      braze: 1,
      'cold-set': 1,
      ream: 1,
      grind: 1,
      turn: 1,
      tap: 1,
      bond: 1,
      other: 1,
    },
  }),
  where: text,
  before: optional(length),
  after: optional(length),
  amount: optional(length),
  left: optional(length),
  leftWords: optional(text),
  how: optional(text),
  why: optional(text),
  rulesOut: optional(text),
  photoIds: optional(photoIds),
  inspection: optional(
    record<NonNullable<OneWayChange['inspection']>>({
      everyDays: optional(DAYS),
      everyKm: optional(above0(100_000)),
      words: text,
    }),
  ),
};

export const recheckSpans = {
  dueDays: optional(figure(0, 3660)),
  dueRides: optional(RIDES),
  dueKm: optional(figure(0, 100_000)),
  dueAtMs: optional(instant),
};

export const recheckAbout: Fields<Omit<RecheckAbout, 'ridesThen' | 'kmThen'>> = {
  kind: oneOf({
    ...{ retorque: 1, 'look-at-mark': 1, headset: 1, spokes: 1, 'brake-bed-in': 1, seal: 1, inspect: 1 },
  }),
  title: text,
  instruction: text,
  jointId: optional(id),
  partId: optional(id),
  ...recheckSpans,
  turn: figure(0, MOST),
};

export const openItem = record<OpenItem>({
  what: oneOf({
    ...{ 'joint-open': 1, 'hand-tight': 1, 'no-torque-source': 1, uncured: 1, unsealed: 1 },
    ...{ 'step-open': 1, 'step-skipped': 1, 'recheck-overdue': 1, defect: 1, 'check-open': 1 },
    ...{ 'check-finding': 1, 'not-fitted': 1, 'fit-finding': 1, 'moved-twice': 1 },
    'change-open': 1,
  }),
  words: text,
  jointId: optional(id),
  partId: optional(id),
  blocks: flag,
  blocksFull: optional(exactly(true)),
});

export const settings: Fields<Settings> = {
  torqueUnit,
  pressureUnit,
  lengthUnit,
  temperatureUnit,
  distanceUnit: oneOf({ km: 1, '[mi_i]': 1 }),
  theme: oneOf({ 'as-the-phone': 1, light: 1, dark: 1 }),
  doer: text,
  schedule: optional(
    keyed(
      orNull(
        record<{ rides?: number; km?: number; days?: number }>({
          rides: optional(figure(0, MOST)),
          km: optional(figure(0, MOST)),
          days: optional(figure(0, MOST)),
        }),
      ),
    ),
  ),
  quiet: optional(orNull(record<QuietHours>({ fromMin: figure(0, MOST), toMin: figure(0, MOST) }))),
};
