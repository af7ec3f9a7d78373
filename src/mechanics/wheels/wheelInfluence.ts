import { inRange } from '../range.ts';
import { solveSymmetric } from './solveSymmetric.ts';
import type { LaidSpoke } from './spokeLayout.ts';
import { spokeSpanMm } from './spokeLength.ts';
import { type SpokePiece, spokeStiffnessN } from './spokeLengthCorrections.ts';
import { NIPPLE_PITCH_MM } from './spokeTensionNipple.ts';

/** A rim as a bent ring. Stiffness in N·mm² about the two axes and in twist, E·A in N. */
export interface RimStiffness {
  radiusMm: number;
  /** bending in the plane of the wheel, E·I */
  roundNmm2: number;
  /** bending out of the plane, E·I */
  sidewaysNmm2: number;
  /** twist, G·J */
  twistNmm2: number;
  /** stretch all round, E·A */
  stretchN: number;
}

/** One side as the model needs it. */
export interface ModelSide {
  pcdMm: number;
  flangeMm: number;
  pieces: readonly SpokePiece[];
}

/**
 * What one full turn of each nipple does, tightening: for each spoke at which something is looked at, a row; for each
 * spoke that is turned, a column. Rows in spoke order.
 */
export interface WheelInfluence {
  /** rim at this spoke, mm toward the drive side */
  sideways: number[][];
  /** rim at this spoke, mm outward */
  outward: number[][];
  /** tension of this spoke, N */
  tension: number[][];
}

/** Shapes the rim can take: this many waves round it at most. More change less than 0.2 %. */
const MOST_WAVES = 24;

/** A wheel that is radial all round can turn a little on its hub; this holds it there, and is lost among crossed spokes. */
const HELD_N_PER_MM = 1e-3;

interface Shapes {
  /** what each shape costs the rim, N/mm */
  stiffness: number[];
  /** what a spoke is stretched by one unit of each shape */
  stretchOf(spoke: LaidSpoke, direction: Direction): number[];
  /** sideways and outward at an angle, for one unit of each shape */
  at(angle: number): { sideways: number[]; outward: number[] };
}

interface Direction {
  sideways: number;
  outward: number;
  along: number;
}

/**
 * The shapes of a thin ring: out of the plane it bends and twists, in the plane it bends without stretching, and it
 * shrinks as a whole. Moving, tilting and turning as a stiff body are among them and cost the rim nothing.
 */
function shapesOf(rim: RimStiffness): Shapes {
  const { radiusMm: radius, roundNmm2, sidewaysNmm2, twistNmm2, stretchN } = rim;
  const waves = Array.from({ length: MOST_WAVES }, (_, at) => at + 1);
  const sidewaysOf = (n: number) =>
    ((Math.PI / radius ** 3) * n ** 2 * (n ** 2 - 1) ** 2 * sidewaysNmm2 * twistNmm2) /
    (sidewaysNmm2 + n ** 2 * twistNmm2);
  const roundOf = (n: number) => (Math.PI / radius ** 3) * roundNmm2 * (n ** 2 - 1) ** 2;
  const twice = (of: (n: number) => number) => waves.flatMap((n) => [of(n), of(n)]);
  // In turn: sideways as a whole, its waves, shrinking as a whole, its waves, turning on the axle.
  const stiffness = [
    0,
    ...twice(sidewaysOf),
    (2 * Math.PI * stretchN) / radius,
    ...twice(roundOf),
    HELD_N_PER_MM,
  ];
  const none = waves.flatMap(() => [0, 0]);
  const round = (angle: number) => waves.flatMap((n) => [Math.cos(n * angle), Math.sin(n * angle)]);
  const along = (angle: number) => waves.flatMap((n) => [-Math.sin(n * angle) / n, Math.cos(n * angle) / n]);
  return {
    stiffness,
    at: (angle) => ({
      sideways: [1, ...round(angle), 0, ...none, 0],
      outward: [0, ...none, 1, ...round(angle), 0],
    }),
    stretchOf: ({ rimDeg }, direction) => {
      const angle = (rimDeg * Math.PI) / 180;
      const wave = round(angle);
      const shift = along(angle);
      return [
        direction.sideways,
        ...wave.map((one) => direction.sideways * one),
        direction.outward,
        ...wave.map((one, at) => direction.outward * one + direction.along * (shift[at] as number)),
        direction.along,
      ];
    },
  };
}

/** From the hub hole to the rim hole, as a unit: sideways toward the drive side, outward, and along the rim, clockwise. */
function directionOf({ side, lean, crossingDeg }: LaidSpoke, { pcdMm, flangeMm }: ModelSide, erdMm: number) {
  const span = spokeSpanMm({ erdMm, pcdMm, flangeMm }, crossingDeg);
  const angle = (crossingDeg * Math.PI) / 180;
  return {
    span,
    direction: {
      sideways: ((side === 'left' ? 1 : -1) * flangeMm) / span,
      outward: (erdMm / 2 - (pcdMm / 2) * Math.cos(angle)) / span,
      along: (-lean * (pcdMm / 2) * Math.sin(angle)) / span,
    },
  };
}

/**
 * Influence of every nipple on rim and tensions: a linear model of an elastic rim on elastic spokes, without the
 * softening of the rim under its own compression, which grows with the tension.
 * @param layout every spoke, from `spokeLayout`
 * @param sides both flanges and the thickness of their spokes
 * @param erdMm circle of the spoke ends, mm, 100 to 800
 * @param rim its stiffness
 * @param pitchMm thread of the nipples, mm
 * @throws RangeError when a figure is out of range
 * Source: energy of a thin ring in bending and twist, expanded in waves; derived here, held against a finite-element
 * wheel in the tests.
 * @example wheelInfluence(layout, sides, 601, usualRim(601)).tension[0]?.[0] // own tension for one turn, N
 */
export function wheelInfluence(
  layout: readonly LaidSpoke[],
  sides: { left: ModelSide; drive: ModelSide },
  erdMm: number,
  rim: RimStiffness,
  pitchMm = NIPPLE_PITCH_MM,
): WheelInfluence {
  inRange('pitchMm', pitchMm, 0.3, 0.7);
  for (const [name, value] of Object.entries(rim)) inRange(name, value, 1, 1e12);
  const shapes = shapesOf(rim);
  const spokes = layout.map((spoke) => {
    const side = sides[spoke.side];
    const { span, direction } = directionOf(spoke, side, erdMm);
    const perMm = spokeStiffnessN(side.pieces) / span;
    return {
      perMm,
      stretch: shapes.stretchOf(spoke, direction),
      ...shapes.at((spoke.rimDeg * Math.PI) / 180),
    };
  });
  const size = shapes.stiffness.length;
  const matrix = Array.from({ length: size }, (_, row) => {
    const line = new Float64Array(size);
    line[row] = shapes.stiffness[row] as number;
    return line;
  });
  for (const { perMm, stretch } of spokes)
    for (let row = 0; row < size; row++) {
      const pull = perMm * (stretch[row] as number);
      const line = matrix[row] as Float64Array;
      // The other half is the same; only this one is read.
      for (let column = 0; column <= row; column++) line[column]! += pull * (stretch[column] as number);
    }
  // A turn shortens the spoke by one pitch; the rim follows until all pulls balance.
  const loads = spokes.map(({ perMm, stretch }) => stretch.map((one) => -perMm * pitchMm * one));
  const answers = solveSymmetric(matrix, loads);
  const along = (shape: readonly number[], answer: readonly number[]) => {
    let sum = 0;
    for (let at = 0; at < size; at++) sum += (shape[at] as number) * (answer[at] as number);
    return sum;
  };
  const each = (of: (spoke: (typeof spokes)[number], answer: number[], same: boolean) => number) =>
    spokes.map((spoke, row) => answers.map((answer, column) => of(spoke, answer, row === column)));
  return {
    sideways: each((spoke, answer) => along(spoke.sideways, answer)),
    outward: each((spoke, answer) => along(spoke.outward, answer)),
    tension: each(
      ({ perMm, stretch }, answer, same) => perMm * (along(stretch, answer) + (same ? pitchMm : 0)),
    ),
  };
}

/**
 * Stiffness of a rim that was not measured: a double-wall aluminium rim of middling weight. Turns worked out from it are
 * a first try; what a quarter turn really did is seen at the next reading.
 * @param erdMm 100 to 800
 * Source: order of magnitude of published rim measurements in a dissertation on bicycle wheels; from memory.
 * @example usualRim(601).radiusMm //=> 304.5
 */
export function usualRim(erdMm: number): RimStiffness {
  return {
    radiusMm: inRange('erdMm', erdMm, 100, 800) / 2 + 4,
    roundNmm2: 1e8,
    sidewaysNmm2: 2.2e8,
    twistNmm2: 2.5e7,
    stretchN: 69_000 * 104,
  };
}
