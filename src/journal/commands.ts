import type { AnyUnit, LengthUnit, TemperatureUnit, TorqueUnit, Typed } from '../mechanics/units.ts';
import type {
  BetweenKind,
  CheckAnswered,
  Described,
  EntryOf,
  Id,
  JointAbout,
  OneWayChange,
  Outcome,
  PartAbout,
  Place,
  SealMark,
  Settings,
  StepAbout,
  StepKind,
  ToolAbout,
  WaitKind,
  WheelAbout,
  WheelReadings,
} from './entries.ts';

/** A picture that goes into the store together with the entry that names it. */
export interface Photo {
  photoId: Id;
  buf: ArrayBuffer;
  type: string;
  widthPx: number;
  heightPx: number;
}

interface Common {
  /** When it happened, where that is not now. */
  happenedAtMs?: number;
}

/** Threadlocker as it was put on. */
export interface LockerOn {
  grade: string;
  surface: string;
  primer: boolean;
  temperature?: Typed<TemperatureUnit>;
  /** What it fills, measured across: bore less outside. */
  gap?: Typed<LengthUnit>;
  waitMs: number;
  /** The wait the person sets instead, and why. */
  own?: { waitMs: number; why: string };
}

/** What a person can ask of the logbook, by type. Ids of new things may be given so that a screen can go on with them. */
export type Command = Common &
  (
    | { type: 'start-bike'; bikeId?: Id; name: string; about?: string; demo?: true }
    | { type: 'describe-bike'; bikeId: Id; name?: string; about?: string; photoId?: Id }
    | { type: 'put-bike-away'; bikeId: Id; why: string }
    | { type: 'take-bike-out'; bikeId: Id }
    | ({ type: 'add-part'; partId?: Id; place: Place } & PartAbout)
    | ({ type: 'describe-part'; partId: Id } & Described<PartAbout>)
    | { type: 'move-part'; partId: Id; to: Place; why?: string; condition?: string }
    | ({ type: 'change-part'; partId: Id } & OneWayChange)
    | ({ type: 'make-joint'; jointId?: Id; bikeId: Id } & Omit<JointAbout, 'matters'> & { matters?: boolean })
    | ({ type: 'describe-joint'; jointId: Id } & Described<JointAbout>)
    | { type: 'take-joint-apart'; jointId: Id; why: string }
    | { type: 'plan-steps'; bikeId: Id }
    | ({ type: 'add-step'; stepId?: Id; bikeId: Id; afterStepId?: Id | null } & Omit<StepAbout, 'rank'>)
    | { type: 'describe-step'; stepId: Id; title?: string; detail?: string; kind?: StepKind }
    | { type: 'move-step'; stepId: Id; afterStepId: Id | null }
    | { type: 'split-step'; stepId: Id; titles: string[] }
    | { type: 'drop-step'; stepId: Id; why: string }
    | { type: 'skip-step'; stepId: Id; why: string }
    | { type: 'reopen-step'; stepId: Id; why: string }
    | { type: 'open-step'; stepId: Id }
    | {
        type: 'finish-step';
        stepId: Id;
        measured?: Typed<AnyUnit>;
        despite?: string;
        note?: string;
        photoIds?: Id[];
      }
    | {
        type: 'apply-torque';
        jointId: Id;
        stepId?: Id;
        applied: Typed<TorqueUnit>;
        entered: 'tap' | 'keypad';
        bolts: number;
        passes: number;
        toolId?: Id;
        between?: BetweenKind;
        /** Threadlocker went on with it: what, on which surface, and how long it waits. */
        locker?: LockerOn;
        /** Why it goes on though a bond that it loads has not set. */
        despite?: string;
        marked?: boolean;
        note?: string;
        photoIds?: Id[];
      }
    | { type: 'hand-tighten'; jointId: Id; stepId?: Id; bolts: number; note?: string }
    | {
        type: 'apply-locker';
        waitId?: Id;
        /** May be left out where the step is about no joint. */
        jointId?: Id;
        stepId?: Id;
        grade: string;
        surface: string;
        primer: boolean;
        temperature?: Typed<TemperatureUnit>;
        gap?: Typed<LengthUnit>;
        waitMs: number;
        /** The wait the person sets instead, and why. */
        own?: { waitMs: number; why: string };
        note?: string;
        photoIds?: Id[];
      }
    | {
        type: 'start-wait';
        waitId?: Id;
        bikeId: Id;
        jointId?: Id;
        stepId?: Id;
        kind: WaitKind;
        title: string;
        waitMs: number;
      }
    | { type: 'end-wait'; waitId: Id; outcome: EntryOf<'wait-ended'>['outcome']; words?: string }
    | { type: 'change-wait'; waitId: Id; waitMs: number; why: string }
    /** One change of the clock has one id, so that two pages that ask about it shift once. */
    | { type: 'shift-waits'; byMs: number; changeId: string }
    | {
        type: 'mark-seal';
        jointId: Id;
        stepId?: Id;
        mark: SealMark;
        /** Confirmed, though the pressure is above the limit of tyre or rim. */
        overLimit?: true;
        note?: string;
        photoIds?: Id[];
        lookAgainMs?: number;
        /** Id for the wait until then. */
        waitId?: Id;
      }
    | ({ type: 'make-wheel'; wheelId?: Id } & WheelAbout)
    | ({ type: 'describe-wheel'; wheelId: Id } & Described<WheelAbout>)
    | ({ type: 'read-wheel'; wheelId: Id } & WheelReadings)
    | { type: 'take-wheel-apart'; wheelId: Id; why: string }
    /** A built wheel with all its parts. */
    | { type: 'move-wheel'; wheelId: Id; to: Place; why?: string }
    | ({ type: 'add-tool'; toolId?: Id } & ToolAbout)
    | ({ type: 'describe-tool'; toolId: Id } & Described<ToolAbout>)
    | { type: 'put-tool-away'; toolId: Id; why: string }
    /** The tool showed wrong: every joint done with it since its last check is to be done again. */
    | { type: 'find-tool-out'; toolId: Id; why: string }
    | {
        type: 'find-defect';
        defectId?: Id;
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
    | { type: 'close-defect'; defectId: Id; how: string }
    | {
        type: 'confirm-ride-check';
        bikeId: Id;
        groupId: string;
        items: CheckAnswered[];
      }
    | {
        type: 'release-bike';
        releaseId?: Id;
        bikeId: Id;
        statement: 'first-ride' | 'ride' | 'not-to-ride';
        covers: string;
        by: string;
        restrictions?: string;
      }
    | { type: 'withdraw-release'; bikeId: Id; why: string }
    | {
        type: 'log-ride';
        rideId?: Id;
        bikeId: Id;
        minutes?: number;
        km?: number;
        noticed?: string;
        /** Ids for the re-checks that this ride sets, by `joint/kind`. */
        recheckIds?: Record<string, Id>;
      }
    | {
        type: 'set-recheck';
        recheckId?: Id;
        bikeId: Id;
        jointId?: Id;
        partId?: Id;
        kind: EntryOf<'recheck-set'>['kind'];
        title: string;
        instruction: string;
        dueDays?: number;
        dueRides?: number;
        dueKm?: number;
      }
    | {
        type: 'change-recheck';
        recheckId: Id;
        dueDays?: number;
        dueRides?: number;
        dueKm?: number;
        why: string;
      }
    | { type: 'drop-recheck'; recheckId: Id; why: string }
    | {
        type: 'find-torque';
        jointId: Id;
        recheckId?: Id;
        outcome: Outcome;
        way: 'tightening' | 'mark';
        movedAt?: Typed<TorqueUnit>;
        turnedDeg?: number;
        toolId?: Id;
        note?: string;
        photoIds?: Id[];
        /** What it was brought to afterwards, if it was. */
        broughtTo?: Typed<TorqueUnit>;
        /** What went on its threads before that. */
        between?: BetweenKind;
        /** Threadlocker that went on before that: what, on which surface, and how long it waits. */
        locker?: LockerOn;
        /** Id for the re-check that follows on this one. */
        nextRecheckId?: Id;
      }
    | {
        type: 'answer-recheck';
        recheckId: Id;
        nextRecheckId?: Id;
        outcome: 'as-it-should' | 'finding';
        words?: string;
        photoIds?: Id[];
      }
    | {
        type: 'add-note';
        noteId?: Id;
        words: string;
        bikeId?: Id;
        partId?: Id;
        jointId?: Id;
        stepId?: Id;
        photoIds?: Id[];
      }
    | { type: 'accept-finding'; bikeId: Id; findingId: string; words: string }
    | {
        type: 'note-finding';
        bikeId: Id;
        findingId: string;
        words: string;
        outcome: EntryOf<'finding-noted'>['outcome'];
      }
    | { type: 'undo'; entryIds: Id[] }
    | { type: 'correct'; entryId: Id; reason: string; becomes: Record<string, unknown> | null }
    | { type: 'change-settings'; change: Partial<Settings> }
  );

export type CommandType = Command['type'];
export type CommandOf<T extends CommandType> = Extract<Command, { type: T }>;

/** Why a command was not carried out. One sentence for each stands in screens/refusals.ts. */
export type Refusal =
  | 'no-such-bike'
  | 'no-such-part'
  | 'no-such-joint'
  | 'no-such-step'
  | 'no-such-wait'
  | 'no-such-tool'
  | 'no-such-wheel'
  | 'no-such-recheck'
  | 'no-such-defect'
  | 'no-such-entry'
  | 'already-there'
  | 'name-missing'
  | 'reason-missing'
  | 'words-missing'
  | 'same-place'
  | 'label-taken'
  | 'part-not-on-this-bike'
  | 'fastener-count'
  | 'not-a-number'
  | 'not-positive'
  | 'absurd-torque'
  | 'absurd-value'
  | 'malformed'
  | 'too-long'
  | 'nothing-changes'
  | 'already-applied'
  | 'already-done'
  | 'already-skipped'
  | 'already-answered'
  | 'already-closed'
  | 'already-ended'
  | 'already-undone'
  | 'double-tap'
  | 'joint-apart'
  | 'not-a-torque-step'
  | 'nothing-to-plan'
  | 'split-into-one'
  | 'out-of-order'
  | 'bolts-missing'
  | 'in-the-future'
  | 'undo-too-late'
  | 'cannot-be-corrected'
  | 'others-build-on-it'
  | 'must-not-be-deferred'
  | 'limit-missing'
  | 'check-incomplete'
  | 'must-be-done'
  | 'bond-not-set'
  | 'above-the-limit'
  | 'is-fitted'
  | 'cure-not-started'
  | 'change-not-logged'
  | 'change-unmeasured'
  | 'covers-missing'
  | 'not-released'
  | 'turning-breaks-the-bond'
  | 'ride-empty'
  | 'spokes-do-not-divide'
  | 'crossing-impossible'
  | 'rim-smaller-than-hub'
  | 'part-in-other-wheel'
  | 'readings-miscounted';

export interface Refused {
  refused: Refusal;
  /** What the sentence speaks of: a name, a bike, a list of open items. */
  about?: string;
  /** Which command of a list was refused, counted from 0. */
  at?: number;
}
