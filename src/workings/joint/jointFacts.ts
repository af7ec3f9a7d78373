import type { FemaleMaterial, Lubricant, ScrewMaterial } from '../../mechanics/screws/preloadRefusal.ts';
import type { JointKind } from '../../standards/jointKinds.ts';
import type { ClampSurface } from '../../standards/screws/friction.ts';
import type { ToolClass } from '../../standards/screws/toolClasses.ts';

/** One kind of screw in a joint. */
export interface ScrewFacts {
  /** As written down: "M5", "3/8-26". */
  thread: string;
  count: number;
  screw?: ScrewMaterial | undefined;
  /** Mark on the head. */
  propertyClass?: string | undefined;
  female?: FemaleMaterial | undefined;
  gripMm?: number | undefined;
  /** Which make of the joint, as the printed torques tell them apart. */
  variant?: string | undefined;
}

/** The figure that rules at the bench, and who stands behind it. */
export interface TargetFacts {
  loNm: number;
  hiNm: number;
  /** In words: "printed on the part". */
  source: string;
  /** A part maker's figure, as against a table or a judgement. */
  byMaker: boolean;
  /** The other figures given, N·m. */
  othersNm: readonly number[];
}

export interface ToolFacts {
  name: string;
  toolClass?: ToolClass | undefined;
  minNm?: number | undefined;
  maxNm?: number | undefined;
  /** Per cent of the reading, where its papers say so. */
  tolerancePercent?: number | undefined;
  lastCheckMs?: number | undefined;
  checkEveryDays?: number | undefined;
  cyclesSinceCheck?: number | undefined;
  /** Dropped since its last check. */
  dropped?: boolean;
  /** Found to show wrong since its last check. */
  foundOut?: boolean;
  /** Middle of the square to the middle of the hand. */
  leverMm?: number | undefined;
}

/** Everything the computations of a joint may need; what was not recorded is left out. */
export interface JointFacts {
  kind: JointKind;
  screws: readonly ScrewFacts[];
  /** Names of the parts that were cut, filed, drilled, brazed or bent. */
  changed: readonly string[];
  target?: TargetFacts | undefined;
  appliedNm?: number | undefined;
  /** What is on the threads. */
  onThread?: Lubricant | undefined;
  /** What meets in the clamp, where a tube is clamped. */
  clampFace?: ClampSurface | undefined;
  clamp?:
    | {
        construction: 'two-piece' | 'one-slit-flexible' | 'one-slit-stiff';
        tubeArmMm?: number | undefined;
        boltArmMm?: number | undefined;
        shim?: 'slit' | 'closed' | 'bonded' | undefined;
      }
    | undefined;
  /** Outside of the tube that is clamped, mm. */
  tubeMm?: number | undefined;
  /** Bore of the clamp, mm. */
  boreMm?: number | undefined;
  bar?: { riseMm: number; reachMm: number } | undefined;
  /** Shims, adapters, spacers and washers in the stack. */
  piecesBetween: number;
  /** Paste, paint or carbon in the stack. */
  softLayer: boolean;
  tool?: ToolFacts | undefined;
  extension?: { lengthMm: number; angleDeg: number } | undefined;
  locker?: { grade: string; surface: string; primer: boolean; temperatureC?: number | undefined } | undefined;
  /** Threadlocker is meant for it and not on yet. */
  lockerMeant: boolean;
  found?:
    | { way: 'tightening' | 'mark'; outcome: 'held' | 'moved' | 'turned'; movedAtNm?: number | undefined }
    | undefined;
  /** Sizes of the disc brake this joint belongs to, mm. */
  rotorMm?: number | undefined;
  nativeRotorMm?: number | undefined;
  nowMs: number;
}
