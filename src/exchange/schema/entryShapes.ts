import type {
  BetweenKind,
  CheckAnswered,
  Described,
  EntryBody,
  EntryHead,
  EntryType,
  JointAbout,
  PartAbout,
  Settings,
  StepAbout,
  ToolAbout,
  Unknowable,
  WheelAbout,
} from '../../journal/entries.ts';
import { PHONE_NAME_SIGNS } from '../../journal/phoneName.ts';
import * as about from './aboutShapes.ts';
import {
  above0,
  exactly,
  type Fields,
  figure,
  flag,
  id,
  listOf,
  oneOf,
  optional,
  orNull,
  partly,
  record,
  type Shape,
  text,
  whole,
} from './shape.ts';
import { wheelAbout, wheelReadings } from './wheelShapes.ts';

type FieldsOf<T extends EntryType> = Fields<Omit<Extract<EntryBody, { type: T }>, 'type'>>;

/** The fields that need not be known of a thing: those that a description may empty again. */
const cleared = <T>(fields: Fields<T>): Shape<Unknowable<T>[]> =>
  listOf<Unknowable<T>>({
    json: { enum: Object.keys(fields).filter((name) => 'optional' in fields[name as keyof T]) },
  });

const described = <T>(fields: Fields<T>): Fields<Described<T>> =>
  ({ ...partly(fields), cleared: optional(cleared(fields)) }) as unknown as Fields<Described<T>>;

const MOST_DEPTH = 8;

/** Anything JSON can say, a few levels deep: what a correction puts in place of a field is held against that field. */
function anything(depth: number): Shape<unknown> {
  const flat = [
    { type: 'null' },
    { type: 'boolean' },
    figure(-1e15, 1e15).json,
    text.json,
  ] as const satisfies Shape<unknown>['json'][];
  if (depth === 0) return { json: { anyOf: flat } };
  const inside = { $ref: `#/$defs/json${depth - 1}` };
  return {
    json: {
      anyOf: [
        ...flat,
        { type: 'array', items: inside, maxItems: 1000 },
        {
          type: 'object',
          propertyNames: { pattern: '^(?!(__proto__|constructor|prototype)$)[^\\u0000-\\u001f]{1,200}$' },
          additionalProperties: inside,
          maxProperties: 1000,
        },
      ],
    },
  };
}

/** Definitions that a schema refers to by name. */
export const shared: Record<string, Shape<unknown>['json']> = Object.fromEntries(
  Array.from({ length: MOST_DEPTH }, (_, depth) => [`json${depth}`, anything(depth).json]),
);

const becomes: Shape<Record<string, unknown> | null> = orNull({
  json: {
    type: 'object',
    propertyNames: { pattern: '^(?!(__proto__|constructor|prototype)$)[A-Za-z]{1,60}$' },
    additionalProperties: { $ref: `#/$defs/json${MOST_DEPTH - 1}` },
    maxProperties: 60,
  },
});

const wheel = { wheelId: id, bikeId: optional(id), partIds: listOf(id) };
const onBike = { bikeId: id };
const joint = { jointId: id, bikeId: id };
const step = { stepId: id, bikeId: id };
const note = { note: optional(text), photoIds: optional(about.photoIds) };
const count = whole(1, 100_000);

/** What every entry carries besides its own content. */
export const entryHead: Fields<EntryHead> = {
  id: {
    json: {
      type: 'string',
      pattern: '^[0-9a-f]{8}-[0-9a-f]{4}-7[0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}$',
    },
  },
  v: whole(1, 10_000),
  writtenAtMs: about.instant,
  happenedAtMs: about.instant,
  zone: { json: { type: 'string', pattern: '^[A-Za-z0-9_+/-]{1,60}$' } },
  by: optional(text),
  phone: optional({ json: { type: 'string', minLength: 1, maxLength: PHONE_NAME_SIGNS } }),
  orderMs: optional(about.instant),
  asked: optional(text),
};

/** The shape of every kind of entry. A kind or a field that is added to the journal and not here does not compile. */
export const entryShapes: { [T in EntryType]: FieldsOf<T> } = {
  'bike-started': { ...onBike, name: text, about: optional(text), demo: optional(exactly(true)) },
  'bike-described': { ...onBike, name: optional(text), about: optional(text), photoId: optional(id) },
  'bike-put-away': { ...onBike, why: text },
  'bike-taken-out': onBike,
  'part-added': { partId: id, place: about.place, ...about.partAbout },
  'part-described': { partId: id, bikeId: optional(id), ...described<PartAbout>(about.partAbout) },
  'part-moved': {
    partId: id,
    from: about.place,
    to: about.place,
    why: optional(text),
    condition: optional(text),
    matters: optional(flag),
  },
  'part-changed': { partId: id, bikeId: optional(id), ...about.oneWayChange },
  'joint-made': { ...joint, ...about.jointAbout },
  'joint-described': {
    ...joint,
    wasMatters: flag,
    revokes: optional(exactly(true)),
    ...described<JointAbout>(about.jointAbout),
  },
  'joint-taken-apart': { ...joint, why: text, matters: flag },
  'step-added': { ...step, ...about.stepAbout },
  'step-described': { ...step, ...partly<StepAbout>(about.stepAbout) },
  'step-moved': { ...step, rank: about.rank },
  'step-dropped': { ...step, why: text, splitInto: optional(listOf(id)) },
  'step-skipped': { ...step, why: text, jointId: optional(id) },
  'step-reopened': { ...step, why: text },
  'step-opened': step,
  'step-done': {
    ...step,
    jointId: optional(id),
    partId: optional(id),
    measured: optional(about.anyQuantity),
    despite: optional(text),
    ...note,
    matters: optional(flag),
  },
  'torque-applied': {
    ...joint,
    stepId: optional(id),
    applied: about.torque,
    entered: oneOf({ tap: 1, keypad: 1 }),
    bolts: count,
    passes: count,
    tool: optional(about.toolSnapshot),
    between: optional<BetweenKind>(about.betweenKind),
    marked: optional(flag),
    despite: optional(text),
    ...note,
    matters: flag,
  },
  'hand-tightened': {
    ...joint,
    stepId: optional(id),
    bolts: whole(0, 100_000),
    note: optional(text),
    matters: flag,
  },
  'locker-applied': {
    ...onBike,
    jointId: optional(id),
    stepId: optional(id),
    waitId: id,
    title: optional(text),
    grade: text,
    surface: text,
    primer: flag,
    temperature: optional(about.temperature),
    gap: optional(about.length),
    waitMs: about.longestWait,
    ...note,
    matters: flag,
  },
  'wait-started': {
    waitId: id,
    ...onBike,
    jointId: optional(id),
    stepId: optional(id),
    kind: about.waitKind,
    title: text,
    waitMs: about.longestWait,
  },
  'wait-ended': {
    waitId: id,
    ...onBike,
    jointId: optional(id),
    outcome: oneOf({ looked: 1, 'cut-short': 1, 'no-longer-needed': 1 }),
    words: optional(text),
  },
  'wait-changed': { waitId: id, ...onBike, jointId: optional(id), waitMs: about.longestWait, why: text },
  'clock-moved': {
    ...onBike,
    waitId: id,
    byMs: figure(-9_999_999_999_999, 9_999_999_999_999),
    changeId: optional(text),
  },
  'seal-marked': {
    ...joint,
    stepId: optional(id),
    ...note,
    matters: flag,
    mark: about.sealMark,
    overLimit: optional(exactly(true)),
  },
  'wheel-made': { ...wheel, ...wheelAbout },
  'wheel-described': { ...wheel, ...described<WheelAbout>(wheelAbout) },
  'wheel-read': { ...wheel, ...wheelReadings },
  'wheel-taken-apart': { ...wheel, why: text, matters: flag },
  'tool-added': { toolId: id, ...about.toolAbout },
  'tool-described': { toolId: id, ...described<ToolAbout>(about.toolAbout) },
  'tool-put-away': { toolId: id, why: text },
  'tool-found-out': { toolId: id, why: text },
  'defect-found': {
    defectId: id,
    ...onBike,
    jointId: optional(id),
    partId: optional(id),
    words: text,
    area: text,
    decision: oneOf({ 'do-not-ride': 1, 'ride-limited': 1 }),
    untilMs: optional(about.instant),
    untilKm: optional(figure(0, 1e9)),
    restriction: optional(text),
  },
  'defect-closed': { defectId: id, ...onBike, how: text },
  'ride-check-confirmed': {
    ...onBike,
    groupId: text,
    items: listOf(
      record<CheckAnswered>({
        itemId: text,
        ok: flag,
        words: optional(text),
        absent: optional(exactly(true)),
      }),
    ),
  },
  'bike-released': {
    ...onBike,
    releaseId: id,
    statement: oneOf({ 'first-ride': 1, ride: 1, 'not-to-ride': 1 }),
    covers: text,
    by: text,
    open: listOf(about.openItem),
    restrictions: optional(text),
  },
  'release-withdrawn': { ...onBike, why: text },
  'ride-logged': {
    rideId: id,
    ...onBike,
    minutes: optional(above0(10_000)),
    km: optional(above0(3000)),
    noticed: optional(text),
    first: flag,
  },
  'recheck-set': { recheckId: id, ...onBike, ...about.recheckAbout },
  'recheck-changed': { recheckId: id, ...onBike, jointId: optional(id), ...about.recheckSpans, why: text },
  'recheck-dropped': { recheckId: id, ...onBike, jointId: optional(id), why: text },
  'torque-found': {
    ...joint,
    recheckId: optional(id),
    outcome: oneOf({ held: 1, moved: 1, turned: 1 }),
    way: oneOf({ tightening: 1, mark: 1 }),
    movedAt: optional(about.torque),
    turnedDeg: optional(figure(-1e6, 1e6)),
    tool: optional(about.toolSnapshot),
    ...note,
    matters: flag,
  },
  'recheck-answered': {
    recheckId: id,
    ...onBike,
    jointId: optional(id),
    partId: optional(id),
    outcome: oneOf({ 'as-it-should': 1, finding: 1 }),
    words: optional(text),
    photoIds: optional(about.photoIds),
  },
  'note-added': {
    noteId: id,
    words: text,
    bikeId: optional(id),
    partId: optional(id),
    jointId: optional(id),
    stepId: optional(id),
    photoIds: optional(about.photoIds),
  },
  'finding-accepted': { ...onBike, findingId: text, words: text },
  'finding-noted': {
    ...onBike,
    findingId: text,
    words: text,
    outcome: oneOf({ 'not-known': 1, 'does-not-fit': 1, 'one-way-only': 1 }),
  },
  'entry-corrected': {
    corrects: entryHead.id,
    reason: text,
    undo: flag,
    becomes,
    bikeId: optional(id),
    matters: optional(flag),
  },
  'settings-changed': { change: record<Partial<Settings>>(partly<Settings>(about.settings)) },
  'demo-removed': { lines: figure(0, 1e9) },
};

/** Every kind of entry there is. */
export const entryTypes = Object.keys(entryShapes) as EntryType[];
