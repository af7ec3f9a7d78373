import { rollerCircleMm } from '../../mechanics/drive/pitchDiameter.ts';
import type { BarShape, Filled } from './figures.ts';
import { brakesMark, type Corners, STEER_DEG } from './points.ts';
import {
  away,
  type BikeZone,
  bendTo,
  circleAt,
  lineThrough,
  type PencilLine,
  partWay,
  type Spot,
  tangent,
  type Weight,
} from './shape.ts';

const stroke = (
  part: string,
  zone: PencilLine['zone'],
  weight: Weight,
  known: boolean,
  path: string,
): PencilLine => ({ part, zone, weight, dashed: !known, path });

function wheel(end: 'front' | 'rear', at: Corners, figures: Filled): PencilLine[] {
  const zone: BikeZone = `${end}-wheel`;
  const axle = end === 'front' ? at.frontAxle : at.rearAxle;
  const radius = end === 'front' ? at.frontRadius : at.rearRadius;
  const widthMm = end === 'front' ? figures.of.frontTyreMm : figures.of.rearTyreMm;
  const known = figures.known(`${end}WheelMm`);
  const tyre = stroke(`${end} tyre`, zone, 'tyre', known, circleAt(axle, radius - widthMm / 2));
  return [
    // A pencil line has a least thickness, or a narrow tyre would not be seen on a phone.
    { ...tyre, widthMm: Math.max(14, widthMm * 0.55) },
    stroke(`${end} rim`, zone, 'thin', known, circleAt(axle, radius - widthMm - 16)),
    stroke(`${end} hub`, zone, 'line', true, circleAt(axle, 22)),
  ];
}

function frame(at: Corners, figures: Filled): PencilLine[] {
  const { kind, spindle, rearAxle, seatTop, headLow, headTop, crown } = at;
  const tube = (part: string, known: boolean, ...spots: [Spot, ...Spot[]]) =>
    stroke(part, 'frame', 'tube', known, lineThrough(...spots));
  const front = figures.known('toFrontAxleMm');
  const seat = figures.known('seatTubeMm');
  const rear = figures.known('toRearAxleMm');
  const stayTop = partWay(seatTop, spindle, kind === 'diamond' || kind === 'long' ? 0.1 : 0.25);
  const stays = [
    tube('chain stay', rear, spindle, rearAxle),
    tube('seat stay', rear && seat, rearAxle, stayTop),
    tube('seat tube', seat, spindle, seatTop),
    tube('head tube', front, headLow, headTop),
  ];
  if (kind === 'beam')
    return [...stays, tube('beam', front, partWay(headLow, headTop, 0.4), partWay(spindle, seatTop, 0.45))];
  if (kind === 'long') {
    const floor = { x: crown.x - at.frontRadius * 0.75, y: spindle.y + 50 };
    const frontHead = away(crown, 110, STEER_DEG);
    return [
      ...stays,
      tube('top tube', front, partWay(headLow, headTop, 0.6), partWay(spindle, seatTop, 0.8)),
      tube('column', front, headLow, { x: headLow.x + 60, y: floor.y }),
      tube('bed', front, spindle, floor, partWay(crown, frontHead, 0.2)),
      tube('front head', front, crown, frontHead),
      stroke(
        'steering rod',
        'fork-and-bars',
        'line',
        front,
        lineThrough(
          { x: headLow.x + 70, y: floor.y + 70 },
          { x: at.frontAxle.x - 60, y: at.frontAxle.y - 20 },
        ),
      ),
    ];
  }
  return [
    ...stays,
    tube('down tube', front, partWay(headLow, headTop, 0.2), spindle),
    tube('top tube', front && seat, partWay(headLow, headTop, 0.75), partWay(seatTop, spindle, 0.05)),
  ];
}

function fork(at: Corners, figures: Filled): PencilLine[] {
  const { crown, frontAxle, headTop, clamp } = at;
  const known = figures.known('toFrontAxleMm');
  const straight = partWay(crown, frontAxle, 0.7);
  const bend = { x: straight.x - 18, y: straight.y };
  const height = figures.known('barHeightMm');
  return [
    stroke('fork', 'fork-and-bars', 'tube', known, bendTo(crown, bend, frontAxle)),
    stroke('stem', 'fork-and-bars', 'tube', height, lineThrough(headTop, ...stemTo(headTop, clamp))),
  ];
}

/** Up along the steerer, then forward to the clamp. */
function stemTo(headTop: Spot, clamp: Spot): Spot[] {
  const rise = headTop.y - clamp.y;
  const corner = { x: headTop.x - rise / Math.tan(((180 - STEER_DEG) * Math.PI) / 180), y: clamp.y };
  return clamp.x - corner.x > 20 ? [corner, clamp] : [corner];
}

/** Paths that follow one another without lifting the pencil. */
const oneStroke = (first: string, ...more: string[]): string =>
  first + more.map((path) => path.replace(/^M[^LQ]*/, '')).join('');

/** The path of a bar from where it is clamped; the grip lies where the hand holds it. */
function barPath(shape: BarShape, { x, y }: Spot): string {
  const to = (dx: number, dy: number): Spot => ({ x: x + dx, y: y + dy });
  switch (shape) {
    case 'flat':
      return lineThrough(to(0, 0), to(-60, -6));
    case 'riser':
      return lineThrough(to(0, 0), to(20, -70), to(-60, -78));
    case 'swept':
      return oneStroke(bendTo(to(0, 0), to(90, -60), to(0, -60)), lineThrough(to(0, -60), to(-150, -40)));
    case 'drop':
      return oneStroke(
        lineThrough(to(0, 0), to(80, 0)),
        bendTo(to(80, 0), to(150, 20), to(110, 90)),
        bendTo(to(110, 90), to(80, 130), to(0, 125)),
      );
  }
}

function saddle(at: Corners, figures: Filled): PencilLine[] {
  if (figures.of.withoutSaddle) return [];
  const known = figures.known('postOutMm');
  const { seatTop, rails } = at;
  const top = rails.y - 45;
  return [
    stroke('seatpost', 'saddle', 'line', known, lineThrough(seatTop, rails)),
    stroke(
      'saddle',
      'saddle',
      'tube',
      known,
      lineThrough(
        { x: rails.x - 125, y: top - 8 },
        { x: rails.x - 40, y: top },
        { x: rails.x + 130, y: top + 2 },
      ),
    ),
  ];
}

function drive(at: Corners, figures: Filled): PencilLine[] {
  const { spindle, rearAxle } = at;
  const { ringTeeth, sprocketTeeth, crankMm } = figures.of;
  const ring = rollerCircleMm(ringTeeth) / 2;
  const sprocket = rollerCircleMm(sprocketTeeth) / 2;
  const pedal = away(spindle, crankMm, -35);
  const both = figures.known('ringTeeth', 'sprocketTeeth');
  const [ringTop, sprocketTop] = tangent(spindle, ring, rearAxle, sprocket, -1);
  const [ringLow, sprocketLow] = tangent(spindle, ring, rearAxle, sprocket, 1);
  return [
    stroke(
      'chain',
      'cranks',
      'thin',
      both,
      `${lineThrough(ringTop, sprocketTop)}${lineThrough(ringLow, sprocketLow)}`,
    ),
    stroke('chainring', 'cranks', 'line', figures.known('ringTeeth'), circleAt(spindle, ring)),
    stroke('sprocket', 'rear-wheel', 'line', figures.known('sprocketTeeth'), circleAt(rearAxle, sprocket)),
    stroke('crank', 'cranks', 'tube', figures.known('crankMm'), lineThrough(spindle, pedal)),
    stroke(
      'pedal',
      'cranks',
      'line',
      true,
      lineThrough({ x: pedal.x - 45, y: pedal.y }, { x: pedal.x + 45, y: pedal.y }),
    ),
  ];
}

function brakes(at: Corners, figures: Filled): PencilLine[] {
  const { frontRotorMm, rearRotorMm, leverBrake } = figures.of;
  const disc = (end: 'front' | 'rear', axle: Spot, mm: number | undefined) =>
    mm === undefined ? [] : [stroke(`${end} rotor`, 'brakes', 'thin', true, circleAt(axle, mm / 2))];
  if (!leverBrake)
    return [...disc('front', at.frontAxle, frontRotorMm), ...disc('rear', at.rearAxle, rearRotorMm)];
  const lever = { x: at.clamp.x + 30, y: at.clamp.y + 20 };
  return [
    ...disc('front', at.frontAxle, frontRotorMm),
    ...disc('rear', at.rearAxle, rearRotorMm),
    stroke(
      'brake cable',
      'brakes',
      'thin',
      true,
      bendTo(at.clamp, { x: at.headTop.x - 60, y: at.headTop.y - 60 }, brakesMark(at)),
    ),
    stroke(
      'brake lever',
      'brakes',
      'line',
      true,
      lineThrough({ x: at.clamp.x - 20, y: at.clamp.y }, lever, { x: lever.x - 20, y: lever.y + 60 }),
    ),
  ];
}

/** All strokes of a bike, what lies behind first. */
export const strokesOf = (at: Corners, figures: Filled): PencilLine[] => [
  ...wheel('rear', at, figures),
  ...wheel('front', at, figures),
  ...frame(at, figures),
  ...fork(at, figures),
  ...saddle(at, figures),
  stroke('bar', 'fork-and-bars', 'tube', figures.known('bar'), barPath(figures.of.bar, at.clamp)),
  ...drive(at, figures),
  ...brakes(at, figures),
];
