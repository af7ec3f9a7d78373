import { convert, type LengthUnit, type Typed } from '../mechanics/units.ts';
import type { WheelAbout, WheelReadings } from './aboutWheels.ts';
import type { Refused } from './commands.ts';
import { RefusedCommand, refuse } from './decide/ruling.ts';

/** What must hold between the figures of a wheel, for a new entry and for a corrected one alike. */

const inMm = (length: Typed<LengthUnit> | undefined): number | undefined =>
  length && convert(length.value, length.unit, 'mm');

/** Beyond this angle a spoke would run round its own flange; no hub reaches it. Own judgement. */
const STEEPEST_DEG = 100;

/** The spokes of the two sides fit one rim, each side can be laced, and the hub goes into the rim. */
export function checkWheel({ drilling, leftSide, driveSide, erds }: Partial<WheelAbout>): void {
  if (!leftSide || !driveSide) return;
  const [few, many] = [leftSide.spokes, driveSide.spokes].sort((a, b) => a - b) as [number, number];
  // On a paired rim each side's holes come two by two.
  const oddPairs = drilling === 'paired' && few % 2 === 1;
  if (oddPairs || many !== (drilling === 'two-to-one' ? 2 * few : few))
    refuse('spokes-do-not-divide', `${leftSide.spokes} + ${driveSide.spokes}`);
  for (const { spokes, crosses, pcd } of [leftSide, driveSide]) {
    // Crossed spokes lean forward and back in turn, so each side needs an even number.
    const uneven = crosses > 0 && spokes % 2 === 1;
    if (uneven || (crosses * 360) / spokes > STEEPEST_DEG) refuse('crossing-impossible', `${crosses}`);
    const flangeMm = inMm(pcd);
    for (const erd of erds ?? []) {
      const rimMm = inMm(erd);
      if (flangeMm !== undefined && rimMm !== undefined && rimMm < flangeMm + 20)
        refuse('rim-smaller-than-hub', erd.typed);
    }
  }
}

/**
 * Why such a wheel would be refused, before anything is saved.
 * @returns undefined where nothing speaks against it
 * @example wheelRefusal({ drilling: 'even', leftSide: { spokes: 18, crosses: 3 }, driveSide: { spokes: 16, crosses: 3 } })?.refused //=> 'spokes-do-not-divide'
 */
export function wheelRefusal(about: Partial<WheelAbout>): Refused | undefined {
  try {
    checkWheel(about);
    return undefined;
  } catch (thrown) {
    if (thrown instanceof RefusedCommand) return thrown.refused;
    throw thrown;
  }
}

/** Every list of a set of readings speaks of the same spokes. */
export function checkWheelReadings(
  set: Pick<WheelReadings, 'read' | 'tensionsN' | 'sidewaysMm' | 'outwardMm'>,
): void {
  const { read, tensionsN, sidewaysMm = read, outwardMm = read } = set;
  const counts = new Set([read, tensionsN, sidewaysMm, outwardMm].map((list) => list.length));
  if (counts.size > 1) refuse('readings-miscounted', `${read.length}`);
}
