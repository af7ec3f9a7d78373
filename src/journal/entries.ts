import type { AnyUnit, LengthUnit, TemperatureUnit, TorqueUnit, Typed } from '../mechanics/units.ts';
import type {
  BetweenKind,
  CheckAnswered,
  Described,
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
} from './about.ts';
import type { WheelAbout, WheelReadings } from './aboutWheels.ts';

/** Version of the entry shapes below. Raise it together with a new last step in upcasts.ts, never alone. */
export const ENTRY_VERSION = 3;

export type * from './about.ts';
export type * from './aboutWheels.ts';

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
  /** Who did it, as the settings named the person that day. */
  by?: string;
  /** Which phone wrote it, as it was called that day; absent where it had no name. */
  phone?: string;
  /**
   * Where the entry stands in the order, when that is not when it happened: the phone's clock stood before
   * something the entry answers, so it comes right after that.
   */
  orderMs?: number;
  /** What was asked, as a short sum of its characters: a second tap on the same thing is known by it. */
  asked?: string;
}

/** The content of an entry, by type. */
export type EntryBody =
  | { type: 'bike-started'; bikeId: Id; name: string; about?: string; demo?: true }
  | { type: 'bike-described'; bikeId: Id; name?: string; about?: string; photoId?: Id }
  | { type: 'bike-put-away'; bikeId: Id; why: string }
  | { type: 'bike-taken-out'; bikeId: Id }
  | ({ type: 'part-added'; partId: Id; place: Place } & PartAbout)
  | ({ type: 'part-described'; partId: Id; bikeId?: Id } & Described<PartAbout>)
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
  | ({
      type: 'joint-described';
      jointId: Id;
      bikeId: Id;
      wasMatters: boolean;
      /** A release that stands covered the joint as it was: it does not cover it like this. */
      revokes?: true;
    } & Described<JointAbout>)
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
      /** Why it was pressed though a bond that it loads had not set. */
      despite?: string;
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
      /** Why it was tightened though a bond that it loads had not set. */
      despite?: string;
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
      /** Absent where a step alone says where it went. */
      jointId?: Id;
      bikeId: Id;
      stepId?: Id;
      waitId: Id;
      /** What the wait is called: the joint's name that day. */
      title?: string;
      grade: string;
      surface: string;
      primer: boolean;
      /** Of the joint when it went on. */
      temperature?: Typed<TemperatureUnit>;
      /** What it fills, measured across: bore less outside. */
      gap?: Typed<LengthUnit>;
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
  | { type: 'clock-moved'; bikeId: Id; waitId: Id; byMs: number; changeId?: string }
  | {
      type: 'seal-marked';
      jointId: Id;
      bikeId: Id;
      stepId?: Id;
      note?: string;
      photoIds?: Id[];
      matters: boolean;
      mark: SealMark;
      /** Confirmed when asked: the pressure is above the limit of tyre or rim. */
      overLimit?: true;
    }
  | ({ type: 'wheel-made'; wheelId: Id; bikeId?: Id; partIds: Id[] } & WheelAbout)
  | ({ type: 'wheel-described'; wheelId: Id; bikeId?: Id; partIds: Id[] } & Described<WheelAbout>)
  | ({ type: 'wheel-read'; wheelId: Id; bikeId?: Id; partIds: Id[] } & WheelReadings)
  | { type: 'wheel-taken-apart'; wheelId: Id; bikeId?: Id; partIds: Id[]; why: string; matters: boolean }
  | ({ type: 'tool-added'; toolId: Id } & ToolAbout)
  | ({ type: 'tool-described'; toolId: Id } & Described<ToolAbout>)
  | { type: 'tool-put-away'; toolId: Id; why: string }
  | { type: 'tool-found-out'; toolId: Id; why: string }
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
      items: CheckAnswered[];
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
  | ({ type: 'recheck-set'; recheckId: Id; bikeId: Id } & Omit<RecheckAbout, 'ridesThen' | 'kmThen'>)
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
  | { type: 'settings-changed'; change: Partial<Settings> }
  /** The demo's own lines were taken out; this one stands in their place. */
  | { type: 'demo-removed'; lines: number };

export type EntryType = EntryBody['type'];

/** One line of the journal. Written once; only a later entry corrects it. */
export type Entry = EntryHead & EntryBody;

export type EntryOf<T extends EntryType> = EntryHead & Extract<EntryBody, { type: T }>;

/** Every kind of entry by its name: light to carry, where the whole table of kinds is not needed. */
export const entryTypes: Record<EntryType, true> = {
  'bike-started': true,
  'bike-described': true,
  'bike-put-away': true,
  'bike-taken-out': true,
  'part-added': true,
  'part-described': true,
  'part-moved': true,
  'part-changed': true,
  'joint-made': true,
  'joint-described': true,
  'joint-taken-apart': true,
  'step-added': true,
  'step-described': true,
  'step-moved': true,
  'step-dropped': true,
  'step-skipped': true,
  'step-reopened': true,
  'step-opened': true,
  'step-done': true,
  'torque-applied': true,
  'hand-tightened': true,
  'locker-applied': true,
  'wait-started': true,
  'wait-ended': true,
  'wait-changed': true,
  'clock-moved': true,
  'seal-marked': true,
  'wheel-made': true,
  'wheel-described': true,
  'wheel-read': true,
  'wheel-taken-apart': true,
  'tool-added': true,
  'tool-described': true,
  'tool-put-away': true,
  'tool-found-out': true,
  'defect-found': true,
  'defect-closed': true,
  'ride-check-confirmed': true,
  'bike-released': true,
  'release-withdrawn': true,
  'ride-logged': true,
  'recheck-set': true,
  'recheck-changed': true,
  'recheck-dropped': true,
  'torque-found': true,
  'recheck-answered': true,
  'note-added': true,
  'finding-accepted': true,
  'finding-noted': true,
  'entry-corrected': true,
  'settings-changed': true,
  'demo-removed': true,
};
