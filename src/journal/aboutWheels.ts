import type { ForceUnit, LengthUnit, Typed } from '../mechanics/units.ts';
import type { Id } from './about.ts';

/**
 * What a part is on its wheel; the spokes of a side may be one set each, or one for both. Tyre, rotor and sprockets
 * go with it.
 */
export type WheelPlace = 'hub' | 'rim' | 'spokes' | 'left-spokes' | 'drive-spokes' | 'nipples' | 'goes-with';

export interface WheelPart {
  as: WheelPlace;
  partId: Id;
}

/** One flange and the spokes that start at it. */
export interface WheelSideAbout {
  spokes: number;
  /** Spokes of the same flange that each spoke crosses; 0 is radial. */
  crosses: number;
  /** Circle of the spoke holes; of the heads' seats on a straight-pull hub. */
  pcd?: Typed<LengthUnit>;
  /** Middle of the flange to the middle between the locknuts. */
  flange?: Typed<LengthUnit>;
  /** Axle's centre to the line of the spoke: straight-pull hubs only. */
  lineOffset?: Typed<LengthUnit>;
  /** Thickness of the spoke's middle, and of its ends where they are thicker. */
  thin?: Typed<LengthUnit>;
  thick?: Typed<LengthUnit>;
  /** The length that was bought or is at hand. */
  bought?: Typed<LengthUnit>;
}

/** Where a rod or nipple ended when the rim was measured. */
export type ErdEnd = 'nipple-slot' | 'nipple-seat' | 'nipple-top' | 'printed';

export interface WheelEar {
  ends: 'pinned-pinned' | 'clamped-pinned' | 'clamped-clamped';
  /** What sounds: the free spoke, the touching pair, or the outer piece up to the crossing. Chosen once for the wheel. */
  sounds: 'free' | 'pair' | 'outer';
  /** Two pitches with the tension that a gauge or a weight gave. */
  known?: { hz: number; tensionN: number }[];
}

/** What is known of a wheel apart from its readings. */
export interface WheelAbout {
  name: string;
  position?: 'front' | 'rear';
  parts: WheelPart[];
  drilling: 'even' | 'two-to-one' | 'paired';
  /** Between the two rim holes of a pair, both of one side; paired rims only. */
  pairGapDeg?: number;
  /** Whether the hub stands so that the two spokes of a pair lean toward each other at the hub, or apart. */
  pairsLean?: 'together' | 'apart';
  head: 'elbow' | 'straight-pull';
  leftSide: WheelSideAbout;
  driveSide: WheelSideAbout;
  /** The side of spoke 1: the first after the valve hole, clockwise as seen from the drive side. */
  firstSide: 'left' | 'drive';
  /** Several measurements of the effective rim diameter; their mean counts. */
  erds?: Typed<LengthUnit>[];
  erdEnd?: ErdEnd;
  /** From there on to where the spoke is to end. */
  erdToEnd?: Typed<LengthUnit>;
  hubHole?: Typed<LengthUnit>;
  /** Rim holes beside the middle: toward the drive side, the other way with a minus. */
  rimOffset?: Typed<LengthUnit>;
  /** Rim holes left and right in turn: each toward its own flange, the other way with a minus. */
  stagger?: Typed<LengthUnit>;
  /** Tension of the tighter side, and the most the rim maker allows on any spoke. */
  target?: Typed<ForceUnit>;
  limit?: Typed<ForceUnit>;
  /** The table that came with the gauge. */
  gauge?: { reading: number; tensionN: number }[];
  ear?: WheelEar;
  note?: string;
}

/** When a set of readings was taken, in the life of the wheel. */
export type WheelMoment = 'building' | 'before' | 'after' | 'stress-relieved' | 'first-ride' | 'later';

/** A walk round the wheel: what every spoke read, and how true the rim ran. */
export interface WheelReadings {
  moment: WheelMoment;
  tyre: 'on' | 'off';
  /** What was read: a tension, a gauge's scale, or a pitch. */
  readIn: ForceUnit | 'scale' | 'Hz';
  /** As read, spoke 1 first; null where a spoke was left out. */
  read: (number | null)[];
  /** The tension each came to that day, with the table or calibration of that day. */
  tensionsN: (number | null)[];
  /** Full run of the rim, sideways and up and down, over one turn. */
  lateral?: Typed<LengthUnit>;
  radial?: Typed<LengthUnit>;
  /** Rim from the middle between the locknuts: toward the drive side, the other way with a minus. */
  dish?: Typed<LengthUnit>;
  /** Rim at each spoke, against a pointer: mm toward the drive side, mm outward. */
  sidewaysMm?: (number | null)[];
  outwardMm?: (number | null)[];
  note?: string;
}
