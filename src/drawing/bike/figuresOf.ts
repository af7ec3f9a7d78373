import { readingOf, traitOf } from '../../fit/faces/reading.ts';
import type { PartKind } from '../../fit/partKinds.ts';
import type { PilePart } from '../../fit/pile.ts';
import { parseTyreSize } from '../../mechanics/tyres/tyreDesignation.ts';
import type { FaceKind } from '../../standards/faces/faceKinds.ts';
import { type BarShape, type BikeFigures, barShapes } from './figures.ts';
import { endDrawn } from './zoneOf.ts';

type KnownSizes = Partial<Record<keyof BikeFigures, number | undefined>>;

/** The first size of that name on parts of a kind. */
function sizeOf(parts: readonly PilePart[], kind: PartKind, face: FaceKind, key: string): number | undefined {
  for (const part of parts)
    if (part.kind === kind)
      for (const one of part.faces) {
        const reading = one.kind === face ? readingOf(one, key) : undefined;
        if (reading) return reading.mid;
      }
  return undefined;
}

/** Size of a tyre by its face, or by the marking that stands in its name: "Front tyre, 50-406". */
function tyreSize(part: PilePart): { widthMm: number; beadSeatMm: number } | undefined {
  const face = part.faces.find(({ kind }) => kind === 'tyre-bead');
  const widthMm = face && readingOf(face, 'widthMm')?.mid;
  const beadSeatMm = face && readingOf(face, 'beadSeatMm')?.mid;
  if (widthMm !== undefined && beadSeatMm !== undefined) return { widthMm, beadSeatMm };
  const marking = /\b\d{2,3}-\d{3}\b/.exec(part.name)?.[0];
  const size = marking === undefined ? undefined : parseTyreSize(marking, [], []);
  const [seat] = size?.ok ? size.beadSeatsMm : [];
  return size?.ok && seat !== undefined ? { widthMm: size.widthMm, beadSeatMm: seat } : undefined;
}

function wheelFigures(parts: readonly PilePart[], end: 'front' | 'rear'): KnownSizes {
  const tyres = parts.filter(({ kind }) => kind === 'tyre');
  const tyre = tyres.find((part) => endDrawn(part) === end) ?? tyres.find((part) => !endDrawn(part));
  const size = tyre && tyreSize(tyre);
  if (!size) return {};
  return { [`${end}WheelMm`]: size.beadSeatMm + 2 * size.widthMm, [`${end}TyreMm`]: size.widthMm };
}

const rotorAt = (parts: readonly PilePart[], end: 'front' | 'rear') => {
  const rotors = parts.filter((part) => part.kind === 'rotor' && (endDrawn(part) ?? 'front') === end);
  return rotors.length === 0 ? undefined : (sizeOf(rotors, 'rotor', 'rotor-size', 'diameterMm') ?? 160);
};

/** Where the slot leaves the axle: its middle, if its ends are all that is known. */
function slotMiddle(parts: readonly PilePart[]): number | undefined {
  const nearest = sizeOf(parts, 'frame', 'axle-slot', 'nearestMm');
  const farthest = sizeOf(parts, 'frame', 'axle-slot', 'farthestMm');
  return nearest === undefined || farthest === undefined ? undefined : (nearest + farthest) / 2;
}

/**
 * What the parts of a bike tell of how it looks from the side.
 * @param parts on the bike, with their faces
 * @returns the figures that are known, mm and counts
 * @example figuresOf([{ kind: 'tyre', name: 'Front tyre, 50-406', … }]).frontWheelMm //=> 506
 */
export function figuresOf(parts: readonly PilePart[]): BikeFigures {
  const bar = parts.flatMap(({ faces }) => faces).find(({ kind }) => kind === 'bar-centre');
  const shape = bar && traitOf(bar, 'shape');
  const found: KnownSizes = {
    ...wheelFigures(parts, 'front'),
    ...wheelFigures(parts, 'rear'),
    toFrontAxleMm: sizeOf(parts, 'frame', 'shell', 'toFrontAxleMm'),
    toRearAxleMm: slotMiddle(parts) ?? sizeOf(parts, 'frame', 'shell', 'toRearAxleMm'),
    seatTubeMm: sizeOf(parts, 'frame', 'seat-tube', 'lengthMm'),
    postOutMm: sizeOf(parts, 'seatpost', 'post', 'outMm'),
    crankMm: sizeOf(parts, 'cranks', 'pedal-hole', 'crankMm'),
    ringTeeth: sizeOf(parts, 'chainring', 'ring-teeth', 'teethCount'),
    sprocketTeeth: sizeOf(parts, 'sprocket', 'sprocket-teeth', 'teethCount'),
    frontRotorMm: rotorAt(parts, 'front'),
    rearRotorMm: rotorAt(parts, 'rear'),
  };
  const known = Object.fromEntries(Object.entries(found).filter(([, value]) => value !== undefined));
  const isBar = (word: string | undefined): word is BarShape => barShapes.some((one) => one === word);
  return { ...known, ...(isBar(shape) ? { bar: shape } : {}) };
}
