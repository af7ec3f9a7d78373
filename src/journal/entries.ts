import type { Face } from '../fit/face.ts';
import type {
  AnyUnit,
  LengthUnit,
  PressureUnit,
  TemperatureUnit,
  TorqueUnit,
  Typed,
  VolumeUnit,
} from '../mechanics/units.ts';
import type { JointKind } from '../standards/jointKinds.ts';
import type { InstructionKind } from '../standards/recheckSchedule.ts';

/** Version of the entry shapes below. Raise it together with a new last step in upcasts.ts, never alone. */
export const ENTRY_VERSION = 1;

export type Id = string;

/** What every line of the journal carries besides its own content. */
export interface EntryHead {
  /** RFC 9562 UUID, version 7: sorts by when it was written. */
  id: Id;
  v: number;
  /** When it was written down. */
  writtenAtMs: number;
  /** When it happened; differs from `writtenAtMs` for a late entry. */
  happenedAtMs: number;
  /** Time zone of the phone when it was written, so that a day stays the day it was. */
  zone: string;
}

/** Where a part is. On a bike, or on none. */
export type Place =
  | { on: 'shelf'; tag?: string }
  | { on: 'bike'; bikeId: Id }
  | { on: 'quarantine'; why: string }
  | { on: 'scrapped'; how: string }
  | { on: 'sold'; to?: string };

export type Origin = 'bought-new' | 'bought-used' | 'off-a-bike' | 'gift' | 'found' | 'made' | 'unknown';

/** What is known of a part apart from where it is. */
export interface PartAbout {
  /** The builder's own label, as written on the tag. */
  label: string;
  name: string;
  /** A part kind of `fit/partKinds.ts`. */
  kind: string;
  serial?: string;
  origin: Origin;
  originWords?: string;
  condition?: string;
  /** What nobody knows about it; unknown life is not zero life. */
  unknown?: string;
  note?: string;
  photoIds?: Id[];
  faces?: Face[];
  /** Which wheel it belongs to, where a bike has two of the kind. */
  position?: 'front' | 'rear';
  massG?: number;
  /** Wear so far when it arrived, if anybody knows. */
  kmBefore?: number | 'unknown';
}

export type TargetSource =
  | 'printed-on-the-part'
  | 'makers-document'
  | 'mating-part'
  | 'general-table'
  | 'own-judgement'
  | 'none';

/** A torque asked for, by whom, and for which part. */
export interface Target {
  source: TargetSource;
  torque?: Typed<TorqueUnit>;
  /** Upper figure where a range is printed. */
  upTo?: Typed<TorqueUnit>;
  /** The part whose figure it is. */
  partId?: Id;
  /** Edition, page, photo: where the figure can be read again. */
  reference?: string;
}

export type BetweenKind =
  | 'dry'
  | 'grease'
  | 'assembly-paste'
  | 'anti-seize'
  | 'threadlocker'
  | 'retaining-compound'
  | 'adapter'
  | 'shim'
  | 'spacer'
  | 'washer'
  | 'other';

/** What goes between the faces; a shim or adapter is a part and is named by its id. */
export interface Between {
  kind: BetweenKind;
  partId?: Id;
  words?: string;
}

export interface Fastener {
  thread: string;
  count: number;
  hand: 'right' | 'left';
  words?: string;
}

export interface JointAbout {
  name: string;
  kind: JointKind;
  partIds: Id[];
  between: Between[];
  fasteners: Fastener[];
  targets: Target[];
  /** Brakes, steering, wheel retention, cranks and pedals, beads, seat: an entry here revokes a release. */
  matters: boolean;
  note?: string;
}

export type StepKind = 'fit' | 'torque' | 'press' | 'lock' | 'seat' | 'measure' | 'cut' | 'adjust' | 'check';

export interface StepAbout {
  kind: StepKind;
  title: string;
  detail?: string;
  jointId?: Id;
  partId?: Id;
  /** Place in the list; a step put between two others takes the middle. */
  rank: number;
}

export type WaitKind = 'cure' | 'seal' | 'adhesive' | 'other';

/** The tool as it was that day; a later change of the tool's record does not touch it. */
export interface ToolSnapshot {
  toolId: Id;
  name: string;
  minNm?: number;
  maxNm?: number;
  lastCheckMs?: number;
  state: 'checked' | 'check-overdue' | 'never-checked' | 'dropped';
}

export interface ToolAbout {
  name: string;
  minNm?: number;
  maxNm?: number;
  /** Tolerance class in per cent of the reading. */
  tolerancePercent?: number;
  lastCheckMs?: number;
  checkBasis?: 'laboratory' | 'bench-check' | 'unknown';
  checkEveryDays?: number;
  droppedAtMs?: number | null;
  note?: string;
}

export interface Reading {
  pressure?: Typed<PressureUnit>;
  temperature?: Typed<TemperatureUnit>;
  gauge?: string;
}

export type SealMark =
  | { mark: 'seated'; dry: boolean; beadLine: 'even' | 'uneven' | 'not-looked'; reading?: Reading }
  | { mark: 'dry-reading'; reading: Reading }
  | { mark: 'sealant'; sealantKind: string; amount: Typed<VolumeUnit> }
  | { mark: 'spun-and-shaken' }
  | { mark: 'laid-left' }
  | { mark: 'laid-right' }
  | { mark: 'soaped'; bubbles: 'none' | 'bead' | 'valve' | 'spoke-holes' | 'sidewall'; words?: string }
  | { mark: 'reading'; reading: Reading }
  | { mark: 'burped'; words?: string }
  | { mark: 'pumped'; reading: Reading }
  | { mark: 'let-down'; reading?: Reading }
  | { mark: 'verdict'; verdict: 'holds' | 'still-sealing' | 'leaks' | 'will-not-seat'; words?: string };

export type CutKind = 'file' | 'saw' | 'drill' | 'braze' | 'cold-set' | 'ream' | 'grind' | 'other';

/** A one-way change: it belongs to the part for life. */
export interface OneWayChange {
  cut: CutKind;
  where: string;
  before: Typed<LengthUnit>;
  after: Typed<LengthUnit>;
  /** What is left: wall, web, metal in front of a slot. */
  left?: Typed<LengthUnit>;
  leftWords?: string;
  how: string;
  why: string;
  rulesOut?: string;
  photoIds?: Id[];
  inspection?: { everyDays?: number; everyKm?: number; words: string };
}

export type Outcome = 'held' | 'moved' | 'turned';

export interface RecheckAbout {
  kind: InstructionKind;
  title: string;
  instruction: string;
  jointId?: Id;
  partId?: Id;
  /** Due by whichever comes first; the instant is fixed when it is set, so a journey does not move it. */
  dueDays?: number;
  dueRides?: number;
  dueKm?: number;
  dueAtMs?: number;
  /** Which turn of the schedule this is; 0 is the first. */
  turn: number;
  /** Rides and distance on the bike when it was set; counts start from there. */
  ridesThen: number;
  kmThen: number;
}

export interface OpenItem {
  what:
    | 'joint-open'
    | 'hand-tight'
    | 'no-torque-source'
    | 'uncured'
    | 'unsealed'
    | 'step-open'
    | 'step-skipped'
    | 'recheck-overdue'
    | 'defect'
    | 'check-open'
    | 'check-finding'
    | 'fit-finding'
    | 'moved-twice';
  words: string;
  jointId?: Id;
  /** May not ride with it open. */
  blocks: boolean;
}

export interface Settings {
  torqueUnit: TorqueUnit;
  pressureUnit: PressureUnit;
  lengthUnit: LengthUnit;
  temperatureUnit: TemperatureUnit;
  distanceUnit: 'km' | '[mi_i]';
  theme: 'as-the-phone' | 'light' | 'dark';
  /** Who does the work; stands on the sheet. */
  doer: string;
  /** Own figures in place of the default re-check spans, by joint kind and turn. */
  schedule?: Record<string, { rides?: number; km?: number; days?: number }>;
}

/** The content of an entry, by type. */
export type EntryBody =
  | { type: 'bike-started'; bikeId: Id; name: string; about?: string; demo?: true }
  | { type: 'bike-described'; bikeId: Id; name?: string; about?: string; photoId?: Id }
  | { type: 'bike-put-away'; bikeId: Id; why: string }
  | { type: 'bike-taken-out'; bikeId: Id }
  | ({ type: 'part-added'; partId: Id; place: Place } & PartAbout)
  | ({ type: 'part-described'; partId: Id; bikeId?: Id } & Partial<PartAbout>)
  | {
      type: 'part-moved';
      partId: Id;
      from: Place;
      to: Place;
      why?: string;
      condition?: string;
      matters?: boolean;
    }
  | ({ type: 'part-changed'; partId: Id; bikeId?: Id } & OneWayChange)
  | ({ type: 'joint-made'; jointId: Id; bikeId: Id } & JointAbout)
  | ({ type: 'joint-described'; jointId: Id; bikeId: Id; wasMatters: boolean } & Partial<JointAbout>)
  | { type: 'joint-taken-apart'; jointId: Id; bikeId: Id; why: string; matters: boolean }
  | ({ type: 'step-added'; stepId: Id; bikeId: Id } & StepAbout)
  | ({ type: 'step-described'; stepId: Id; bikeId: Id } & Partial<StepAbout>)
  | { type: 'step-moved'; stepId: Id; bikeId: Id; rank: number }
  | { type: 'step-dropped'; stepId: Id; bikeId: Id; why: string; splitInto?: Id[] }
  | { type: 'step-skipped'; stepId: Id; bikeId: Id; why: string; jointId?: Id }
  | { type: 'step-reopened'; stepId: Id; bikeId: Id; why: string }
  | { type: 'step-opened'; stepId: Id; bikeId: Id }
  | {
      type: 'step-done';
      stepId: Id;
      bikeId: Id;
      jointId?: Id;
      partId?: Id;
      measured?: Typed<AnyUnit>;
      note?: string;
      photoIds?: Id[];
      matters?: boolean;
    }
  | {
      type: 'torque-applied';
      jointId: Id;
      bikeId: Id;
      stepId?: Id;
      applied: Typed<TorqueUnit>;
      entered: 'tap' | 'keypad';
      bolts: number;
      passes: number;
      tool?: ToolSnapshot;
      between?: BetweenKind;
      marked?: boolean;
      note?: string;
      photoIds?: Id[];
      matters: boolean;
    }
  | {
      type: 'hand-tightened';
      jointId: Id;
      bikeId: Id;
      stepId?: Id;
      bolts: number;
      note?: string;
      matters: boolean;
    }
  | {
      type: 'locker-applied';
      jointId: Id;
      bikeId: Id;
      stepId?: Id;
      waitId: Id;
      grade: string;
      surface: string;
      primer: boolean;
      waitMs: number;
      note?: string;
      photoIds?: Id[];
      matters: boolean;
    }
  | {
      type: 'wait-started';
      waitId: Id;
      bikeId: Id;
      jointId?: Id;
      stepId?: Id;
      kind: WaitKind;
      title: string;
      waitMs: number;
    }
  | {
      type: 'wait-ended';
      waitId: Id;
      bikeId: Id;
      jointId?: Id;
      outcome: 'looked' | 'cut-short' | 'no-longer-needed';
      words?: string;
    }
  | { type: 'wait-changed'; waitId: Id; bikeId: Id; jointId?: Id; waitMs: number; why: string }
  | { type: 'clock-moved'; bikeId: Id; waitId: Id; byMs: number }
  | {
      type: 'seal-marked';
      jointId: Id;
      bikeId: Id;
      stepId?: Id;
      note?: string;
      photoIds?: Id[];
      matters: boolean;
      mark: SealMark;
    }
  | ({ type: 'tool-added'; toolId: Id } & ToolAbout)
  | ({ type: 'tool-described'; toolId: Id } & Partial<ToolAbout>)
  | { type: 'tool-put-away'; toolId: Id; why: string }
  | {
      type: 'defect-found';
      defectId: Id;
      bikeId: Id;
      jointId?: Id;
      partId?: Id;
      words: string;
      area: string;
      decision: 'do-not-ride' | 'ride-limited';
      untilMs?: number;
      untilKm?: number;
      restriction?: string;
    }
  | { type: 'defect-closed'; defectId: Id; bikeId: Id; how: string }
  | {
      type: 'ride-check-confirmed';
      bikeId: Id;
      groupId: string;
      items: { itemId: string; ok: boolean; words?: string }[];
    }
  | {
      type: 'bike-released';
      bikeId: Id;
      releaseId: Id;
      statement: 'first-ride' | 'ride' | 'not-to-ride';
      covers: string;
      by: string;
      open: OpenItem[];
      restrictions?: string;
    }
  | { type: 'release-withdrawn'; bikeId: Id; why: string }
  | {
      type: 'ride-logged';
      rideId: Id;
      bikeId: Id;
      minutes?: number;
      km?: number;
      noticed?: string;
      first: boolean;
    }
  | ({ type: 'recheck-set'; recheckId: Id; bikeId: Id } & RecheckAbout)
  | {
      type: 'recheck-changed';
      recheckId: Id;
      bikeId: Id;
      jointId?: Id;
      dueDays?: number;
      dueRides?: number;
      dueKm?: number;
      dueAtMs?: number;
      why: string;
    }
  | { type: 'recheck-dropped'; recheckId: Id; bikeId: Id; jointId?: Id; why: string }
  | {
      type: 'torque-found';
      jointId: Id;
      bikeId: Id;
      recheckId?: Id;
      outcome: Outcome;
      way: 'tightening' | 'mark';
      movedAt?: Typed<TorqueUnit>;
      turnedDeg?: number;
      tool?: ToolSnapshot;
      note?: string;
      photoIds?: Id[];
      matters: boolean;
    }
  | {
      type: 'recheck-answered';
      recheckId: Id;
      bikeId: Id;
      jointId?: Id;
      partId?: Id;
      outcome: 'as-it-should' | 'finding';
      words?: string;
      photoIds?: Id[];
    }
  | {
      type: 'note-added';
      noteId: Id;
      words: string;
      bikeId?: Id;
      partId?: Id;
      jointId?: Id;
      stepId?: Id;
      photoIds?: Id[];
    }
  | { type: 'finding-accepted'; bikeId: Id; findingId: string; words: string }
  | {
      type: 'finding-noted';
      bikeId: Id;
      findingId: string;
      words: string;
      outcome: 'not-known' | 'does-not-fit' | 'one-way-only';
    }
  | {
      type: 'entry-corrected';
      /** The entry that no longer counts as it stands. */
      corrects: Id;
      reason: string;
      undo: boolean;
      /** The fields that read differently from now on; null strikes the entry out. */
      becomes: Record<string, unknown> | null;
      bikeId?: Id;
      matters?: boolean;
    }
  | { type: 'settings-changed'; change: Partial<Settings> };

export type EntryType = EntryBody['type'];

/** One line of the journal. Written once; only a later entry corrects it. */
export type Entry = EntryHead & EntryBody;

export type EntryOf<T extends EntryType> = EntryHead & Extract<EntryBody, { type: T }>;
