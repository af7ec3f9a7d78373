import type { Sourced } from '../known.ts';
import type { FaceKind } from './faceKinds.ts';

/** A size, or the span of sizes parts of this standard are met with. */
export type SizeSpan = number | readonly [lo: number, hi: number];

/** A size such parts are met with that no face asks for: something to hold the caliper against. */
export interface OtherSize {
  what: string;
  mm: SizeSpan;
  source: string;
}

/** One interface standard, and what it says about each face that may carry its name. */
export interface InterfaceRow extends Sourced {
  id: string;
  label: string;
  faces: Partial<Record<FaceKind, Readonly<Record<string, SizeSpan>>>>;
  /** Keys whose value is weaker than the row: from memory, so a measurement is asked for. */
  fromMemory?: readonly string[];
  remark?: string;
  /** All of them seen; nothing is reckoned with them. */
  others?: readonly OtherSize[];
}
