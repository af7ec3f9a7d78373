import type { Band } from '../mechanics/band.ts';
import type { FaceKind } from '../standards/faces/faceKinds.ts';
import type { Known, Sourced } from '../standards/known.ts';

export type FitOutcome = 'fits' | 'fits-with' | 'one-way-only' | 'does-not-fit' | 'not-known';

/** A measurement or a look that would settle an open question. */
export interface SizeAsked {
  faceId: string;
  kind: FaceKind;
  /** Dimension or trait key, or `standard` when the face has to be named. */
  key: string;
  /** Where the caliper goes. */
  how: string;
}

export type OneWayKind =
  | 'cold-set'
  | 'file-slot'
  | 'cut-hub'
  | 'ream-bore'
  | 'file-seat'
  | 'turn-spindle'
  | 'face-shell'
  | 'saw-steerer';

/** A change of a part that cannot be undone; the figures are what the hand aims at. */
export interface OneWayFix extends Sourced {
  change: OneWayKind;
  faceId: string;
  key: string;
  before: number;
  after: number;
  /** What else moves when this is done, as plain figures. */
  sideEffects: readonly string[];
  caution: string;
}

/** Rings between two faces, told by side because they move the chainline or the wheel. */
export interface SpacerSet {
  what: 'cup-spacer' | 'axle-washer';
  thicknessMm: number;
  driveCount: number;
  otherCount: number;
}

/** What two faces do when put together with nothing between them. */
export interface Meeting extends Sourced {
  meets: 'yes' | 'with-spacers' | 'no' | 'unknown';
  because: string;
  gapMm?: Band;
  spacers?: SpacerSet;
  oneWay: readonly OneWayFix[];
  asks: readonly SizeAsked[];
  notes: readonly string[];
  risk: string;
  /** No piece in between may help: the wrong hand of a thread, a rotor the fork is not allowed. */
  final?: boolean;
}

/** What a rule decides; its risk and source are added where it is called. */
export type Judgement = Pick<Meeting, 'meets' | 'because'> &
  Partial<Pick<Meeting, 'gapMm' | 'spacers' | 'oneWay' | 'asks' | 'notes' | 'final'>> & {
    source?: string;
    known?: Known;
  };
