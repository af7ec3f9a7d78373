import type { Face } from '../fit/faces/face.ts';
import type { FemaleMaterial, Lubricant, ScrewMaterial } from '../mechanics/screws/preloadRefusal.ts';
import type {
  LengthUnit,
  PressureUnit,
  TemperatureUnit,
  TorqueUnit,
  Typed,
  VolumeUnit,
} from '../mechanics/units.ts';
import type { InstructionKind } from '../standards/checks/recheckSchedule.ts';
import type { JointKind } from '../standards/jointKinds.ts';
import type { WorkId } from '../standards/jointWork.ts';
import type { ToolClass } from '../standards/screws/toolClasses.ts';

export type Id = string;

/** The fields of a thing that need not be known. */
export type Unknowable<T> = { [K in keyof T]-?: T extends Record<K, T[K]> ? never : K }[keyof T];

/** A thing described anew: the fields that read differently, and those that are not known any more. */
export type Described<T> = Partial<T> & { cleared?: Unknowable<T>[] };

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
  /** What is not known about it; unknown life is not zero life. */
  unknown?: string;
  note?: string;
  photoIds?: Id[];
  faces?: Face[];
  /** Which wheel it belongs to, where a bike has two of the kind. */
  position?: 'front' | 'rear';
  massG?: number;
  /** Wear so far when it arrived, where it is known. */
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
  /** What the screw is of; without it no preload is computed. */
  screw?: ScrewMaterial;
  /** The mark on the head, as in `standards/propertyClasses.ts`. */
  propertyClass?: string;
  /** What it is screwed into. */
  female?: FemaleMaterial;
  /** What is on its thread; what lies between the parts stands with the joint. */
  onThread?: Lubricant;
  /** Underside of the head to the first thread that bites. */
  grip?: Typed<LengthUnit>;
  /** Which of the printed torques of its kind of joint is meant for it, as in `standards/screws/torqueBands.ts`. */
  variant?: string;
}

/** How a clamp closes round its tube; lengths as measured. */
export interface ClampAbout {
  construction: 'two-piece' | 'one-slit-flexible' | 'one-slit-stiff';
  /** From the closed side to the middle of the tube, and to the screw; only a stiff clamp needs them. */
  tubeArm?: Typed<LengthUnit>;
  boltArm?: Typed<LengthUnit>;
  /** What was done to the shim in it, where there is one. */
  shim?: 'slit' | 'closed' | 'bonded';
}

/** Where the hands are, seen from the middle of the clamp: up and forwards count positive. */
export interface BarAbout {
  rise: Typed<LengthUnit>;
  reach: Typed<LengthUnit>;
}

/** What stands between a torque wrench and the screws of one joint. */
export interface ExtensionAbout {
  length: Typed<LengthUnit>;
  /** 0 straight out, 90 across, 180 folded back. */
  angleDeg: number;
}

/** Two faces that are pressed or bonded into one another, as measured. */
export interface DiametersAbout {
  bore: Typed<LengthUnit>;
  outside: Typed<LengthUnit>;
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
  clamp?: ClampAbout;
  bar?: BarAbout;
  extension?: ExtensionAbout;
  diameters?: DiametersAbout;
}

export type StepKind = 'fit' | 'torque' | 'press' | 'lock' | 'seat' | 'measure' | 'cut' | 'adjust' | 'check';

export interface StepAbout {
  kind: StepKind;
  title: string;
  detail?: string;
  jointId?: Id;
  partId?: Id;
  /** What is done at its joint beside putting it together and tightening it. */
  work?: WorkId;
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
  toolClass?: ToolClass;
  /** Uses since its last check, where they are counted. */
  cyclesSinceCheck?: number;
  /** Middle of the square to the middle of the hand. */
  lever?: Typed<LengthUnit>;
}

export interface Reading {
  pressure?: Typed<PressureUnit>;
  temperature?: Typed<TemperatureUnit>;
  gauge?: string;
}

export type SealMark =
  | { mark: 'seated'; dry: boolean; beadLine: 'even' | 'uneven' | 'not-looked'; reading?: Reading }
  | { mark: 'dry-reading'; reading: Reading }
  | { mark: 'sealant'; sealantKind?: string; amount?: Typed<VolumeUnit> }
  | { mark: 'spun-and-shaken' }
  | { mark: 'laid-left' }
  | { mark: 'laid-right' }
  | { mark: 'soaped'; bubbles: 'none' | 'bead' | 'valve' | 'spoke-holes' | 'sidewall'; words?: string }
  | { mark: 'reading'; reading: Reading }
  | { mark: 'burped'; words?: string }
  | { mark: 'pumped'; reading: Reading }
  | { mark: 'let-down'; reading?: Reading }
  /** What it is to have on the road, and how cold it is there. */
  | { mark: 'riding'; pressure: Typed<PressureUnit>; temperature?: Typed<TemperatureUnit> }
  | { mark: 'verdict'; verdict: 'holds' | 'still-sealing' | 'leaks' | 'will-not-seat'; words?: string };

export type CutKind =
  | 'file'
  | 'saw'
  | 'drill'
  | 'braze'
  | 'cold-set'
  | 'ream'
  | 'grind'
  | 'turn'
  | 'tap'
  | 'bond'
  | 'other';

/** A one-way change: it belongs to the part for life. Either both sizes are known, or the amount; the rest may follow. */
export interface OneWayChange {
  cut: CutKind;
  where: string;
  before?: Typed<LengthUnit>;
  after?: Typed<LengthUnit>;
  /** By how much, where that is all that was said: 2 mm off, a hole of 5 mm. */
  amount?: Typed<LengthUnit>;
  /** What is left: wall, web, metal in front of a slot. */
  left?: Typed<LengthUnit>;
  leftWords?: string;
  how?: string;
  why?: string;
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

/** An item of the pre-ride check as it was answered. */
export interface CheckAnswered {
  itemId: string;
  /** As it should be. */
  ok: boolean;
  words?: string;
  /** The bike has no such thing: neither as it should be nor a finding. */
  absent?: true;
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
    | 'not-fitted'
    | 'fit-finding'
    | 'moved-twice'
    | 'change-open';
  words: string;
  jointId?: Id;
  /** The part that a change for good is not fully written down of. */
  partId?: Id;
  /** May not ride with it open. */
  blocks: boolean;
  /** May ride only a first short ride with it open. */
  blocksFull?: true;
}

/** When nothing is announced, by the clock on the wall; minutes after midnight, over midnight where from is later. */
export interface QuietHours {
  fromMin: number;
  toMin: number;
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
  /** Own figures in place of the default re-check spans, by joint kind and turn; null ends it before that turn. */
  schedule?: Record<string, { rides?: number; km?: number; days?: number } | null>;
  /** Absent or null: none. */
  quiet?: QuietHours | null;
}
