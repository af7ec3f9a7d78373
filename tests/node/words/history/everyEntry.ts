import type { EntryBody, EntryOf, EntryType } from '../../../../src/journal/entries.ts';
import type { AnyUnit, Typed } from '../../../../src/mechanics/units.ts';

type BodyOf<T extends EntryType> = Extract<EntryBody, { type: T }>;

export const typed = <U extends AnyUnit>(text: string, unit: U): Typed<U> => ({
  value: Number(text.replace(',', '.')),
  unit,
  typed: text,
});

const tool = { toolId: 't1', name: 'small wrench', state: 'check-overdue' } as const;
const joint = { jointId: 'j1', bikeId: 'b1' };

/** One entry of every type with most of its fields filled; complete by type. Everything in it is invented. */
const bodies: { [T in EntryType]: BodyOf<T> } = {
  'bike-started': { type: 'bike-started', bikeId: 'b1', name: 'Magpie', about: 'a track frame for town.' },
  'bike-described': { type: 'bike-described', bikeId: 'b1', about: 'for all weathers', photoId: 'ph1' },
  'bike-put-away': { type: 'bike-put-away', bikeId: 'b1', why: 'winter' },
  'bike-taken-out': { type: 'bike-taken-out', bikeId: 'b1' },
  'part-added': {
    type: 'part-added',
    partId: 'p1',
    place: { on: 'shelf', tag: 'box two' },
    label: 'P-001',
    name: 'Fork',
    kind: 'fork',
    origin: 'bought-used',
    originWords: 'flea market',
    serial: '4711',
    condition: 'scratched',
    unknown: 'age',
    massG: 820,
    kmBefore: 'unknown',
    faces: [{ faceId: 'f1', kind: 'steerer', standard: null, nominal: {}, measured: {} }],
  },
  'part-described': {
    type: 'part-described',
    partId: 'p1',
    bikeId: 'b1',
    name: 'Steel fork',
    label: 'P-002',
  },
  'part-moved': {
    type: 'part-moved',
    partId: 'p1',
    from: { on: 'bike', bikeId: 'b2' },
    to: { on: 'quarantine', why: 'a dent' },
    why: 'fell over',
    condition: 'dented',
  },
  'part-changed': {
    type: 'part-changed',
    partId: 'p1',
    cut: 'cold-set',
    where: 'rear ends',
    before: typed('120', 'mm'),
    after: typed('130,0', 'mm'),
    left: typed('5', 'mm'),
    leftWords: 'of each end',
    how: 'threaded rod',
    why: 'a wider hub',
    rulesOut: 'narrow hubs',
    inspection: { everyDays: 30, everyKm: 500, words: 'look at the bridge' },
  },
  'joint-made': {
    type: 'joint-made',
    ...joint,
    name: 'Stem on steerer',
    kind: 'stem-steerer',
    partIds: ['p1', 'p2'],
    between: [{ kind: 'grease' }, { kind: 'shim', partId: 'p3' }],
    fasteners: [{ thread: 'M5', count: 2, hand: 'left' }],
    targets: [
      {
        source: 'printed-on-the-part',
        torque: typed('5', 'N.m'),
        upTo: typed('6', 'N.m'),
        partId: 'p2',
        reference: 'face plate',
      },
    ],
    matters: true,
  },
  'joint-described': { type: 'joint-described', ...joint, wasMatters: true, name: 'Stem', note: 'tight fit' },
  'joint-taken-apart': { type: 'joint-taken-apart', ...joint, why: 'for paint', matters: true },
  'step-added': {
    type: 'step-added',
    stepId: 's1',
    bikeId: 'b1',
    kind: 'fit',
    title: 'Fit the fork',
    rank: 1,
  },
  'step-described': { type: 'step-described', stepId: 's1', bikeId: 'b1', title: 'Fit the fork again' },
  'step-moved': { type: 'step-moved', stepId: 's1', bikeId: 'b1', rank: 2 },
  'step-dropped': {
    type: 'step-dropped',
    stepId: 's1',
    bikeId: 'b1',
    why: 'two at once',
    splitInto: ['s2', 's3'],
  },
  'step-skipped': { type: 'step-skipped', stepId: 's1', bikeId: 'b1', why: 'no shim', jointId: 'j1' },
  'step-reopened': { type: 'step-reopened', stepId: 's1', bikeId: 'b1', why: 'knocks' },
  'step-opened': { type: 'step-opened', stepId: 's1', bikeId: 'b1' },
  'step-done': { type: 'step-done', stepId: 's1', bikeId: 'b1', measured: typed('28.6', 'mm'), note: 'snug' },
  'torque-applied': {
    type: 'torque-applied',
    ...joint,
    applied: typed('5,2', 'N.m'),
    entered: 'keypad',
    bolts: 2,
    passes: 2,
    tool,
    between: 'grease',
    marked: true,
    matters: true,
  },
  'hand-tightened': { type: 'hand-tightened', ...joint, bolts: 2, matters: true },
  'locker-applied': {
    type: 'locker-applied',
    ...joint,
    waitId: 'w1',
    grade: 'medium',
    surface: 'zinc-plated',
    primer: false,
    waitMs: 86_400_000,
    matters: true,
  },
  'wait-started': {
    type: 'wait-started',
    waitId: 'w1',
    ...joint,
    kind: 'adhesive',
    title: 'grips',
    waitMs: 5_400_000,
  },
  'wait-ended': { type: 'wait-ended', waitId: 'w1', ...joint, outcome: 'cut-short', words: 'rain' },
  'wait-changed': { type: 'wait-changed', waitId: 'w1', ...joint, waitMs: 7_200_000, why: 'cold' },
  'clock-moved': { type: 'clock-moved', bikeId: 'b1', waitId: 'w1', byMs: -3_600_000 },
  'seal-marked': {
    type: 'seal-marked',
    ...joint,
    matters: true,
    mark: { mark: 'seated', dry: true, beadLine: 'even', reading: { pressure: typed('2,5', 'bar') } },
  },
  'tool-added': {
    type: 'tool-added',
    toolId: 't1',
    name: 'small wrench',
    minNm: 2,
    maxNm: 24,
    lastCheckMs: Date.UTC(2026, 0, 5, 12),
  },
  'tool-described': { type: 'tool-described', toolId: 't1', droppedAtMs: Date.UTC(2026, 1, 5, 12) },
  'tool-put-away': { type: 'tool-put-away', toolId: 't1', why: 'broken' },
  'tool-found-out': { type: 'tool-found-out', toolId: 't1', why: 'clicks at 4 where 5 is set' },
  'defect-found': {
    type: 'defect-found',
    defectId: 'd1',
    ...joint,
    words: 'pad rubs',
    area: 'brakes',
    decision: 'ride-limited',
    untilMs: Date.UTC(2026, 5, 3, 12),
    untilKm: 20,
    restriction: 'slowly',
  },
  'defect-closed': { type: 'defect-closed', defectId: 'd1', bikeId: 'b1', how: 'new pads' },
  'ride-check-confirmed': {
    type: 'ride-check-confirmed',
    bikeId: 'b1',
    groupId: 'front-wheel',
    items: [
      { itemId: 'front-axle', ok: true },
      { itemId: 'front-rim', ok: false, words: 'a bulge' },
    ],
  },
  'bike-released': {
    type: 'bike-released',
    bikeId: 'b1',
    releaseId: 'r1',
    statement: 'not-to-ride',
    covers: 'the whole build',
    by: 'the builder',
    open: [{ what: 'uncured', words: 'Stem: threadlocker not cured', blocks: true }],
    restrictions: 'short rides',
  },
  'release-withdrawn': { type: 'release-withdrawn', bikeId: 'b1', why: 'a crack' },
  'ride-logged': {
    type: 'ride-logged',
    rideId: 'ri1',
    bikeId: 'b1',
    minutes: 30,
    km: 8.5,
    noticed: 'creaks',
    first: true,
  },
  'recheck-set': {
    type: 'recheck-set',
    recheckId: 'c1',
    ...joint,
    kind: 'retorque',
    title: 'Stem: pull to the target',
    instruction: 'Pull slowly.',
    dueRides: 1,
    dueDays: 30,
    turn: 0,
  },
  'recheck-changed': { type: 'recheck-changed', recheckId: 'c1', ...joint, dueKm: 100, why: 'a long trip' },
  'recheck-dropped': { type: 'recheck-dropped', recheckId: 'c1', ...joint, why: 'taken apart' },
  'torque-found': {
    type: 'torque-found',
    ...joint,
    outcome: 'moved',
    way: 'tightening',
    movedAt: typed('4.2', 'N.m'),
    turnedDeg: 15,
    tool,
    matters: true,
  },
  'recheck-answered': {
    type: 'recheck-answered',
    recheckId: 'c1',
    ...joint,
    outcome: 'finding',
    words: 'play',
  },
  'note-added': { type: 'note-added', noteId: 'n1', words: 'squeaks when wet', ...joint, photoIds: ['ph1'] },
  'finding-accepted': { type: 'finding-accepted', bikeId: 'b1', findingId: 'f1', words: 'shim between' },
  'finding-noted': {
    type: 'finding-noted',
    bikeId: 'b1',
    findingId: 'f1',
    words: 'hub too wide',
    outcome: 'one-way-only',
  },
  'entry-corrected': {
    type: 'entry-corrected',
    corrects: 'e0',
    reason: 'misread the dial',
    undo: false,
    becomes: { applied: typed('5,5', 'N.m') },
    bikeId: 'b1',
  },
  'settings-changed': { type: 'settings-changed', change: { torqueUnit: 'N.m' } },
  'demo-removed': { type: 'demo-removed', lines: 300 },
};

const head = {
  id: '0198-entry',
  v: 1,
  writtenAtMs: Date.UTC(2026, 4, 3, 9),
  happenedAtMs: Date.UTC(2026, 4, 3, 9),
  zone: 'UTC',
};

/** An entry of a type, with fields changed where a test wants them otherwise. */
export const entryOf = <T extends EntryType>(type: T, change: Partial<BodyOf<T>> = {}): EntryOf<T> =>
  ({ ...head, ...bodies[type], ...change }) as unknown as EntryOf<T>;

export const entryTypes = Object.keys(bodies) as EntryType[];

const table =
  (names: Record<string, string>) =>
  (id: string): string | undefined =>
    names[id];

export const names = {
  bike: table({ b1: 'Magpie', b2: 'Ferry' }),
  part: table({ p1: 'Fork (P-001)', p2: 'Stem (P-002)', p3: 'Shim (P-003)' }),
  joint: table({ j1: 'Stem on steerer' }),
  step: table({ s1: 'Fit the fork' }),
  wait: table({ w1: 'medium' }),
  recheck: table({ c1: 'Stem: pull to the target' }),
  defect: table({ d1: 'pad rubs' }),
  tool: table({ t1: 'small wrench' }),
};
