import { inRange } from '../range.ts';
import type { SpokePiece } from './spokeLengthCorrections.ts';

/** How the ends of a spoke are held: hub end first. A clamped end lets nothing tilt, a pinned one lets it swing. */
export type SpokeEnds = 'pinned-pinned' | 'clamped-pinned' | 'clamped-clamped';

/** A spoke that sounds: its pieces from the hub to the nipple, and how it is held. */
export interface SoundingSpoke {
  pieces: readonly SpokePiece[];
  /** clamped at the elbow and pinned at the nipple unless given: a published table of pitches fits that within 7 cents */
  ends?: SpokeEnds;
  /** the steel; 193 GPa and 7900 kg/m³ unless given */
  wire?: { gpa: number; densityKgM3: number };
}

/** Stainless spoke wire as material sheets print it: 187.5 to 200 GPa, 7850 to 8000 kg/m³. */
const STAINLESS = { gpa: 193, densityKgM3: 7900 };

/** One piece in SI units. */
interface Beam {
  metres: number;
  /** E·I, N·m² */
  bending: number;
  /** kg/m */
  mass: number;
}

/** A spoke ready to be asked about its first mode. */
export interface VibratingSpoke {
  beams: Beam[];
  ends: SpokeEnds;
  /** kg/m of its heaviest piece, and its whole length in m */
  heaviest: number;
  metres: number;
}

/**
 * The same spoke in SI units.
 * @param spoke at least one piece, each 0.1 to 400 mm long and 1 to 4 mm thick; steel of 50 to 250 GPa, 1000 to 20 000 kg/m³
 * @throws RangeError when a figure is out of range
 * @example vibratingSpoke({ pieces: [{ lengthMm: 180, diameterMm: 2 }] }).heaviest //=> 0.024819 kg/m (about)
 */
export function vibratingSpoke({
  pieces,
  ends = 'clamped-pinned',
  wire = STAINLESS,
}: SoundingSpoke): VibratingSpoke {
  inRange('number of pieces', pieces.length, 1, 12);
  const pascals = inRange('gpa', wire.gpa, 50, 250) * 1e9;
  const density = inRange('densityKgM3', wire.densityKgM3, 1000, 20_000);
  const beams = pieces.map(({ lengthMm, diameterMm }) => {
    const thick = inRange('diameterMm', diameterMm, 1, 4) / 1000;
    return {
      metres: inRange('lengthMm', lengthMm, 0.1, 400) / 1000,
      bending: (pascals * Math.PI * thick ** 4) / 64,
      mass: (density * Math.PI * thick ** 2) / 4,
    };
  });
  const heaviest = Math.max(...beams.map(({ mass }) => mass));
  return { beams, ends, heaviest, metres: beams.reduce((sum, { metres }) => sum + metres, 0) };
}

type Pair = [number, number, number, number];

/** Half of a piece, from its middle to its end: force and moment there for a unit of shift and of tilt. */
function halfStiffness([tilt1, force1, moment1]: number[], trig: number[], height: number): Pair {
  const [tilt2, force2, moment2] = trig as [number, number, number];
  // Two shapes, the first one unit high at the end, solved for shift and tilt there.
  const whole = tilt2 - height * tilt1!;
  const shift = [tilt2 / whole, -tilt1! / whole] as const;
  const tilt = [-height / whole, 1 / whole] as const;
  return [
    force1! * shift[0] + force2 * shift[1],
    force1! * tilt[0] + force2 * tilt[1],
    moment1! * shift[0] + moment2 * shift[1],
    moment1! * tilt[0] + moment2 * tilt[1],
  ];
}

/**
 * Stiffness of one piece against shift and tilt of its two ends while it swings, with its tension: shapes that are even
 * and odd about its middle are taken apart. Null when its own first mode with both ends held lies below.
 */
function pieceStiffness(
  { metres, bending, mass }: Beam,
  tensionN: number,
  radPerS: number,
): number[][] | null {
  const root = Math.sqrt(tensionN ** 2 + 4 * bending * mass * radPerS ** 2);
  const across = (tensionN + root) / (2 * bending);
  // The difference of two near figures, written as a quotient.
  const along = (2 * mass * radPerS ** 2) / (tensionN + root);
  const [a, b, half] = [Math.sqrt(across), Math.sqrt(along), metres / 2];
  const [t, c, s] = [Math.tanh(a * half), Math.cos(b * half), Math.sin(b * half)];
  const belowOwn = b * half < Math.PI / 2 || (b * half < Math.PI && a * t * c + b * s > 0);
  if (!belowOwn) return null;
  const even = halfStiffness(
    [a * t, -a * t * bending * along, bending * across],
    [-b * s, -b * s * bending * across, -bending * along * c],
    c,
  );
  const odd = halfStiffness(
    [a / t, (-a / t) * bending * along, bending * across],
    [b * c, b * c * bending * across, -bending * along * s],
    s,
  );
  const [p, q, r, u] = even.map((value, at) => (value + odd[at]!) / 2) as Pair;
  const [v, w, x, y] = even.map((value, at) => (value - odd[at]!) / 2) as Pair;
  // At the far end as it is; at the near one tilt and moment turn over.
  return [
    [p, -q, v, w],
    [-r, u, -x, -y],
    [v, -w, p, q],
    [x, -y, r, u],
  ];
}

/** Whether a symmetric matrix resists every motion: all pivots above zero. */
function resists(matrix: number[][]): boolean {
  for (let at = 0; at < matrix.length; at += 1) {
    const pivot = matrix[at]![at]!;
    if (!(pivot > 0)) return false;
    for (let row = at + 1; row < matrix.length; row += 1) {
      const share = matrix[row]![at]! / pivot;
      if (share === 0) continue;
      for (let column = at; column < matrix.length; column += 1)
        matrix[row]![column]! -= share * matrix[at]![column]!;
    }
  }
  return true;
}

/**
 * Whether a frequency lies below the first mode of the spoke: then no shape of it gives way.
 * @param tensionN 0 to 10 000 N
 * @param hz above 0
 * Source: dynamic stiffness of a beam under tension, and the count of modes by its pivots (Wittrick and Williams 1971);
 * derived here, compared in the tests with the exact equation of a uniform beam.
 * @example belowFirstMode(vibratingSpoke({ pieces: [{ lengthMm: 180, diameterMm: 2 }] }), 1000, 600) //=> true
 */
export function belowFirstMode({ beams, ends }: VibratingSpoke, tensionN: number, hz: number): boolean {
  const size = 2 * (beams.length + 1);
  const whole = Array.from({ length: size }, () => new Array<number>(size).fill(0));
  for (const [at, beam] of beams.entries()) {
    const piece = pieceStiffness(beam, tensionN, 2 * Math.PI * hz);
    if (!piece) return false;
    for (const [row, values] of piece.entries())
      for (const [column, value] of values.entries()) whole[2 * at + row]![2 * at + column]! += value;
  }
  // No end shifts; a clamped one does not tilt either.
  const held = [0, size - 2];
  if (ends !== 'pinned-pinned') held.push(1);
  if (ends === 'clamped-clamped') held.push(size - 1);
  const free = whole.map((_, at) => at).filter((at) => !held.includes(at));
  return resists(free.map((row) => free.map((column) => whole[row]![column]!)));
}
