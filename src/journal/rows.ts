import type { LengthUnit, TemperatureUnit, TorqueUnit, Typed } from '../mechanics/units.ts';
import type {
  BetweenKind,
  CheckAnswered,
  Entry,
  Id,
  JointAbout,
  OneWayChange,
  OpenItem,
  Outcome,
  PartAbout,
  Place,
  RecheckAbout,
  SealMark,
  Settings,
  StepAbout,
  ToolAbout,
  ToolSnapshot,
  WaitKind,
  WheelAbout,
  WheelReadings,
} from './entries.ts';
import type { Standing } from './order.ts';

/**
 * Views are rows: each is the reduction of the entries that touch it, and nothing else. They can be
 * thrown away and folded again from the journal; raise this when a shape or a reducer changes.
 */
export const VIEWS_VERSION = 6;

interface RowHead {
  /** `kind/id`; the store's key. */
  key: string;
  /** Rows read together share a group, such as `joint@<bike>`. */
  group?: string;
  /** Present while something here falls due; the store keeps an index of it. */
  dueAtMs?: number;
  /** Where the newest entry in this row stands in the order, and its id; what comes before it reduces the row anew. */
  lastMs: number;
  lastId: Id;
  /** How many of its entries stand before its beginning in the order; they count all the same. */
  early?: number;
}

export interface BikeRow extends RowHead {
  is: 'bike';
  bikeId: Id;
  name: string;
  about: string;
  photoId?: Id;
  demo: boolean;
  startedAtMs: number;
  putAway?: string;
  release?: {
    releaseId: Id;
    atMs: number;
    statement: 'first-ride' | 'ride' | 'not-to-ride';
    open: number;
    withdrawn?: string;
  };
  /** Why the last release no longer stands. */
  revoked?: { releaseId: Id; atMs: number; entryId: Id; because: Entry['type'] };
  openStepId?: Id;
  steps: number;
  stepsDone: number;
  stepsSkipped: number;
  handTight: number;
  /** The open problems with which it must not be ridden. */
  grave: { defectId: Id; words: string }[];
}

export interface PartRow extends RowHead, PartAbout {
  is: 'part';
  partId: Id;
  place: Place;
  addedAtMs: number;
  changes: (OneWayChange & { entryId: Id; atMs: number; by?: string })[];
  moves: { from: Place; to: Place; atMs: number; entryId: Id; why?: string }[];
}

export interface Applied {
  entryId: Id;
  atMs: number;
  applied: Typed<TorqueUnit>;
  bolts: number;
  passes: number;
  by?: string;
  tool?: ToolSnapshot;
  marked: boolean;
  between?: BetweenKind;
}

export interface Found {
  entryId: Id;
  atMs: number;
  outcome: Outcome;
  way: 'tightening' | 'mark';
  movedAt?: Typed<TorqueUnit>;
  turnedDeg?: number;
}

export interface Locked {
  entryId: Id;
  atMs: number;
  grade: string;
  surface: string;
  primer: boolean;
  temperature?: Typed<TemperatureUnit>;
  gap?: Typed<LengthUnit>;
  waitId: Id;
  curedAtMs: number;
  /** A re-check met the joint moved or turned: the bond is gone. */
  brokenAtMs?: number;
}

export type JointState = 'open' | 'hand-tight' | 'torqued' | 'apart';

export interface JointRow extends RowHead, JointAbout {
  is: 'joint';
  jointId: Id;
  bikeId: Id;
  madeAtMs: number;
  state: JointState;
  apartWhy?: string;
  applied?: Applied;
  appliedTimes: number;
  found?: Found;
  locked?: Locked;
  /** Threadlocker that went on before that, oldest first; each ended the cure of the one before. */
  lockedBefore?: Locked[];
  /** How often a re-check met it moved or turned since it was last taken apart. */
  moved: number;
  /** A re-check was set and it was not tightened or taken apart since; otherwise the next ride sets one. */
  recheckAsked?: true;
}

export type StepState = 'open' | 'done' | 'skipped' | 'dropped';

export interface StepRow extends RowHead, StepAbout {
  is: 'step';
  stepId: Id;
  bikeId: Id;
  addedAtMs: number;
  state: StepState;
  doneAtMs?: number;
  doneBy?: Id;
  why?: string;
}

export interface WaitRow extends RowHead {
  is: 'wait';
  waitId: Id;
  bikeId: Id;
  jointId?: Id;
  waitKind: WaitKind;
  title: string;
  startedAtMs: number;
  waitMs: number;
  /** What the phone's clock was moved by while this ran. */
  clockMovedMs: number;
  /** The changes of the clock that were answered. */
  clockChanges?: string[];
  endedAtMs?: number;
  outcome?: string;
}

export interface RecheckRow extends RowHead, RecheckAbout {
  is: 'recheck';
  /** Where it was set, in the order; rides after it count. */
  setOrder: Standing;
  recheckId: Id;
  bikeId: Id;
  setAtMs: number;
  timeDueMs?: number;
  reachedAtMs?: number;
  answeredAtMs?: number;
  dropped?: string;
  found?: Outcome | 'as-it-should' | 'finding';
}

export interface SealRow extends RowHead {
  is: 'seal';
  jointId: Id;
  bikeId: Id;
  marks: (SealMark & { entryId: Id; atMs: number; note?: string })[];
  verdict?: 'holds' | 'still-sealing' | 'leaks' | 'will-not-seat';
}

export interface ToolRow extends RowHead, ToolAbout {
  is: 'tool';
  toolId: Id;
  putAway?: string;
  /** It was found to show wrong; a check after that day mends it. */
  foundOut?: { atMs: number; why: string };
}

export interface DefectRow extends RowHead {
  is: 'defect';
  defectId: Id;
  bikeId: Id;
  jointId?: Id;
  words: string;
  area: string;
  decision: 'do-not-ride' | 'ride-limited';
  untilMs?: number;
  untilKm?: number;
  restriction?: string;
  foundAtMs: number;
  foundOrder: Standing;
  /** When rides had covered `untilKm`. */
  reachedAtMs?: number;
  closed?: string;
}

export interface RidesRow extends RowHead {
  is: 'rides';
  bikeId: Id;
  count: number;
  km: number;
  minutes: number;
  firstAtMs?: number;
  lastAtMs?: number;
  /** Each ride where it stands in the order. */
  log: (Standing & { atMs: number; km: number })[];
}

export interface RideCheckRow extends RowHead {
  is: 'ridecheck';
  bikeId: Id;
  groups: Record<string, { atMs: number; items: CheckAnswered[] }>;
}

export interface WheelRow extends RowHead, WheelAbout {
  is: 'wheel';
  wheelId: Id;
  madeAtMs: number;
  readings: (WheelReadings & { entryId: Id; atMs: number })[];
  /** Why it is a wheel no more. */
  apart?: string;
}

export interface ReleaseRow extends RowHead {
  is: 'release';
  bikeId: Id;
  releases: {
    releaseId: Id;
    atMs: number;
    statement: string;
    covers: string;
    by: string;
    open: OpenItem[];
    restrictions?: string;
  }[];
}

export interface FixRow extends RowHead {
  is: 'fix';
  entryId: Id;
  fixes: {
    by: Id;
    atMs: number;
    reason: string;
    undo: boolean;
    becomes: Record<string, unknown> | null;
    /** It was struck out itself and counts no more. */
    struckOut?: true;
  }[];
}

export interface SettingsRow extends RowHead {
  is: 'settings';
  settings: Settings;
}

export interface FindingRow extends RowHead {
  is: 'finding';
  bikeId: Id;
  findingId: string;
  words: string;
  outcome: 'accepted' | 'not-known' | 'does-not-fit' | 'one-way-only';
}

export type Row =
  | BikeRow
  | PartRow
  | JointRow
  | StepRow
  | WaitRow
  | RecheckRow
  | SealRow
  | ToolRow
  | WheelRow
  | DefectRow
  | RidesRow
  | RideCheckRow
  | ReleaseRow
  | FixRow
  | SettingsRow
  | FindingRow;

/** Row types by the first word of their key. */
export interface RowOf {
  bike: BikeRow;
  part: PartRow;
  joint: JointRow;
  step: StepRow;
  wait: WaitRow;
  recheck: RecheckRow;
  seal: SealRow;
  tool: ToolRow;
  wheel: WheelRow;
  defect: DefectRow;
  rides: RidesRow;
  ridecheck: RideCheckRow;
  release: ReleaseRow;
  fix: FixRow;
  settings: SettingsRow;
  finding: FindingRow;
}

export type RowKind = keyof RowOf;
