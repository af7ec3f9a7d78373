import type { CutKind, Id, Origin } from '../../journal/entries.ts';
import type {
  DistanceUnit,
  LengthUnit,
  PressureUnit,
  TorqueUnit,
  VolumeUnit,
} from '../../mechanics/units.ts';
import type { CureSurface } from '../../standards/screws/cureGrid.ts';
import type { LockerGrade } from '../../standards/screws/lockers.ts';

/** The eight kinds of line. */
export type LineKind = 'torque' | 'locker' | 'tyre' | 'cut' | 'part' | 'problem' | 'ride' | 'note';

/** A line as it is typed and tapped; each form uses what it needs, and each form has its own. */
export interface LineDraft {
  /** The bike, by id where it is one of the logbook, otherwise by the name of a new one. */
  bikeId: Id;
  bikeName: string;
  /** Which joint or part, in words, and its id where it was picked. */
  where: string;
  whereId: Id;
  /** A figure, as typed; its unit where it is not that of the settings. */
  figure: string;
  torqueUnit?: TorqueUnit;
  pressureUnit?: PressureUnit;
  volumeUnit?: VolumeUnit;
  lengthUnit?: LengthUnit;
  distanceUnit?: DistanceUnit;
  /** A tool: its id, or the name of a new one. */
  toolId: Id;
  toolName: string;
  grade: LockerGrade | '';
  surface: CureSurface;
  mark: 'sealant' | 'reading' | 'pumped' | 'burped';
  /** When to look again, ms from now; 0 for not at all. */
  lookAgainMs: number;
  cut: CutKind;
  /** Where on the part. */
  spot: string;
  origin: Origin;
  fromBikeId: Id;
  fromPartId: Id;
  words: string;
  decision: 'do-not-ride' | 'ride-limited';
  minutes: string;
}

export const emptyLine: LineDraft = {
  ...{ bikeId: '', bikeName: '', where: '', whereId: '', figure: '' },
  ...{ toolId: '', toolName: '', grade: '', surface: 'aluminium' },
  ...{ mark: 'sealant', lookAgainMs: 0, cut: 'file', spot: '' },
  ...{ origin: 'bought-used', fromBikeId: '', fromPartId: '' },
  ...{ words: '', decision: 'do-not-ride', minutes: '' },
};

/** The fields of a form in which something can be wrong, each with the sentence that stands there. */
export type LineWrong = Partial<Record<keyof LineDraft, string>>;
