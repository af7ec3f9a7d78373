import { readingOf } from '../../fit/faces/reading.ts';
import { endOf, type PilePart } from '../../fit/pile.ts';
import { facesOf, onlyFace } from '../../fit/placed.ts';
import { developmentM, gainRatio, gearInches, gearRatio, speedKmh } from '../../mechanics/drive/gearing.ts';
import { wheelDiameterMm } from '../../mechanics/drive/gearingWheel.ts';
import { TEETH } from '../../mechanics/drive/pitchDiameter.ts';

/**
 * What the parts of a bike say about its one gear; a figure that no part gives, or two parts give, is left
 * out.
 */
export interface Drivetrain {
  ringTeeth?: number;
  sprocketTeeth?: number;
  /** Outer diameter of the rear tyre by its designation, mm. */
  wheelMm?: number;
  /** Where the axle's centre may stand, mm from the spindle's centre. */
  slot?: { frontMm: number; rearMm: number; readingMm: number };
}

const teethAt = (parts: readonly PilePart[], kind: 'ring-teeth' | 'sprocket-teeth'): number | undefined => {
  const placed = onlyFace(parts, kind);
  const teeth = placed && readingOf(placed.face, 'teethCount')?.mid;
  const likely =
    teeth !== undefined && Number.isInteger(teeth) && teeth >= TEETH.fewest && teeth <= TEETH.most;
  return likely ? teeth : undefined;
};

function rearWheelMm(parts: readonly PilePart[]): number | undefined {
  const rear = facesOf(parts, 'tyre-bead').filter(({ part }) => endOf(part) !== 'front');
  const [tyre, ...more] = rear;
  const width = tyre && readingOf(tyre.face, 'widthMm')?.mid;
  const seat = tyre && readingOf(tyre.face, 'beadSeatMm')?.mid;
  if (width === undefined || seat === undefined || more.length > 0) return undefined;
  // Out of these a designation is a slip of the finger, told as a contradiction of the face.
  if (width < 15 || width > 130 || seat < 100 || seat > 700) return undefined;
  return wheelDiameterMm({ known: 'designation', widthMm: width, beadSeatMm: seat });
}

function slotOf(parts: readonly PilePart[]): Drivetrain['slot'] {
  const slot = onlyFace(parts, 'axle-slot', 'frame');
  const front = slot && readingOf(slot.face, 'nearestMm');
  const rear = slot && readingOf(slot.face, 'farthestMm');
  if (!front || !rear) return undefined;
  const readingMm = Math.max(front.hi - front.mid, rear.hi - rear.mid);
  return { frontMm: front.mid, rearMm: rear.mid, readingMm };
}

/**
 * The gear of a bike by the faces of its parts.
 * @example drivetrainOf(magpie).ringTeeth //=> 36
 */
export function drivetrainOf(parts: readonly PilePart[]): Drivetrain {
  const found = {
    ringTeeth: teethAt(parts, 'ring-teeth'),
    sprocketTeeth: teethAt(parts, 'sprocket-teeth'),
    wheelMm: rearWheelMm(parts),
    slot: slotOf(parts),
  };
  return Object.fromEntries(Object.entries(found).filter(([, value]) => value !== undefined));
}

export interface GearFigures {
  ratio: number;
  inches?: number;
  developmentM?: number;
  gain?: number;
  speedKmh?: number;
}

/**
 * The figures of one gear that what is known allows.
 * @param cadence crank turns a minute, if given, 0 to 300
 * @param crankMm if given, 50 to 300
 * @example gearFigures({ ringTeeth: 36, sprocketTeeth: 15, wheelMm: 660 }, {})?.ratio //=> 2.4
 */
export function gearFigures(
  { ringTeeth, sprocketTeeth, wheelMm }: Drivetrain,
  { cadence, crankMm }: { cadence?: number | undefined; crankMm?: number | undefined },
): GearFigures | undefined {
  if (ringTeeth === undefined || sprocketTeeth === undefined) return undefined;
  const ratio = gearRatio(ringTeeth, sprocketTeeth);
  if (wheelMm === undefined) return { ratio };
  const metres = developmentM(ratio, wheelMm);
  return {
    ratio,
    inches: gearInches(ratio, wheelMm),
    developmentM: metres,
    ...(crankMm !== undefined && crankMm >= 50 && crankMm <= 300
      ? { gain: gainRatio(ratio, wheelMm, crankMm) }
      : {}),
    ...(cadence !== undefined && cadence <= 300 ? { speedKmh: speedKmh(metres, cadence) } : {}),
  };
}
