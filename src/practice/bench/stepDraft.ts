import type { BetweenKind } from '../../journal/entries.ts';
import type { CureSurface } from '../../standards/screws/cureGrid.ts';
import type { LockerGrade } from '../../standards/screws/lockers.ts';
import { type BoltCount, uncounted } from './boltCount.ts';

/** What is chosen of a threadlocker before it is logged. */
export interface LockerDraft {
  grade?: LockerGrade;
  surface?: CureSurface;
  primer: boolean;
  temperatureC: number;
  /** The wait the person sets in place of one that is too long, h, and why. */
  ownWaitH?: number | undefined;
  ownWhy?: string;
}

/** What is gathered at a step before it is logged. Mirrored, so that a killed app keeps the count. */
export interface StepDraft extends BoltCount, LockerDraft {
  typed: string;
  unit?: string;
  toolId?: string;
  between?: BetweenKind;
  marked: boolean;
  note: string;
}

const ROOM_C = 20;
export const emptyLockerDraft: LockerDraft = { primer: false, temperatureC: ROOM_C };
export const emptyStepDraft: StepDraft = {
  ...uncounted,
  ...emptyLockerDraft,
  typed: '',
  marked: false,
  note: '',
};
