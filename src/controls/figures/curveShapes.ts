import { type LeakReading, leakLine } from '../../mechanics/leak/leakFit.ts';
import { lawShapes, leakLaws } from '../../mechanics/leak/leakLaws.ts';
import { type PressureUnit, pressureFromBar } from '../../mechanics/units.ts';
import { ticks } from './ticks.ts';

const WIDTH = 360;
const HEIGHT = 240;
const LEFT = 44;
const RIGHT = 10;
const TOP = 28;
const BOTTOM = 46;
const SAMPLES = 24;
const MOST_BAR = 1000;
/** Of each law's own band, as the forecast takes it. */
const BAND_Z = 1.8;

const axes = [
  { most: 3, hours: 1 / 60, label: 'minutes' },
  { most: 96, hours: 1, label: 'hours' },
  { most: Number.POSITIVE_INFINITY, hours: 24, label: 'days' },
];

export interface CurveShapes {
  width: number;
  height: number;
  left: number;
  right: number;
  bottom: number;
  points: { x: number; y: number; low: number; high: number }[];
  /** Likeliest course of the last segment, and what all laws together allow; absent while nothing is proven. */
  course?: string;
  spread?: string;
  /** Where the pressure was moved by hand, or the gauge changed. */
  cuts: number[];
  lines: { is: 'ceiling' | 'riding'; y: number }[];
  xTicks: { x: number; value: number }[];
  yTicks: { y: number; value: number }[];
  xLabel: string;
}

export interface CurveParts {
  readings: readonly LeakReading[];
  /** Whether a course may be drawn: only for a leak that stays what it is. */
  steady: boolean;
  /** Hours of the next look, on the clock of the readings. */
  lookHours: number | undefined;
  ceilingBar: number | undefined;
  ridingBar: number | undefined;
  unit: PressureUnit;
}

/** A path through points, closed or not. */
const path = (points: readonly (readonly [number, number])[], closed = false) =>
  `M${points.map(([x, y]) => `${x.toFixed(1)} ${y.toFixed(1)}`).join('L')}${closed ? 'Z' : ''}`;

/**
 * The drawing of a seal: readings with their error, the course, its band, ceiling and riding pressure.
 * @returns nothing while there are fewer than two readings
 * @example curveShapes({ readings: [], steady: false, lookHours: undefined, ceilingBar: undefined, ridingBar: undefined,
 *   unit: 'bar' }) //=> undefined
 */
export function curveShapes(parts: CurveParts): CurveShapes | undefined {
  const { readings, steady, ceilingBar, ridingBar, unit } = parts;
  const last = readings.at(-1);
  const first = readings[0];
  if (!last || !first || readings.length < 2) return undefined;
  const inUnit = (bar: number) => pressureFromBar(bar, unit);
  const spanHours = Math.max(last.hours, 0.05);
  // Looked ahead at most as far as was looked back.
  const toHours = Math.min(Math.max(parts.lookHours ?? spanHours, spanHours), 2 * spanHours);
  const ends = readings.flatMap(({ bar, sigmaBar }) => [bar - sigmaBar, bar + sigmaBar]);
  const wanted = [ceilingBar, ridingBar].filter((bar): bar is number => bar !== undefined);
  const yTicksAt = ticks(
    inUnit(Math.max(0, Math.min(...ends, ...wanted))),
    inUnit(Math.max(...ends, ...wanted)) + 1e-6,
    4,
  );
  const [yLow, yHigh] = [yTicksAt[0]!, yTicksAt.at(-1)!];
  const across = (hours: number) => LEFT + (hours / toHours) * (WIDTH - LEFT - RIGHT);
  const upward = (bar: number) => {
    // A laminar line that is followed back far enough has no upper end.
    const share = (inUnit(Math.min(bar, MOST_BAR)) - yLow) / (yHigh - yLow);
    return HEIGHT - BOTTOM - Math.min(1, Math.max(0, share)) * (HEIGHT - TOP - BOTTOM);
  };
  const axis = axes.find(({ most }) => toHours <= most)!;
  const shapes: CurveShapes = {
    ...{ width: WIDTH, height: HEIGHT, left: LEFT, right: WIDTH - RIGHT, bottom: HEIGHT - BOTTOM },
    points: readings.map(({ hours, bar, sigmaBar }) => ({
      ...{ x: across(hours), y: upward(bar), low: upward(bar - sigmaBar), high: upward(bar + sigmaBar) },
    })),
    cuts: readings
      .slice(1)
      .flatMap((one, i) => (one.segment === readings[i]!.segment ? [] : [across(one.hours)])),
    lines: [
      ...(ceilingBar === undefined ? [] : [{ is: 'ceiling' as const, y: upward(ceilingBar) }]),
      ...(ridingBar === undefined ? [] : [{ is: 'riding' as const, y: upward(ridingBar) }]),
    ],
    xTicks: ticks(0, toHours / axis.hours, 5)
      .filter((value) => value * axis.hours <= toHours * 1.0001)
      .map((value) => ({ x: across(value * axis.hours), value })),
    yTicks: yTicksAt.map((value) => ({
      y: HEIGHT - BOTTOM - ((value - yLow) / (yHigh - yLow)) * (HEIGHT - TOP - BOTTOM),
      value,
    })),
    xLabel: axis.label,
  };
  return steady ? { ...shapes, ...courseOf(readings, toHours, across, upward) } : shapes;
}

/** The last segment's course by permeation, and the outermost of all laws with their bands. */
function courseOf(
  readings: readonly LeakReading[],
  toHours: number,
  across: (hours: number) => number,
  upward: (bar: number) => number,
): Pick<CurveShapes, 'course' | 'spread'> {
  const segment = readings.at(-1)!.segment;
  const fromHours = readings.find((one) => one.segment === segment)!.hours;
  const hours = Array.from(
    { length: SAMPLES + 1 },
    (_, i) => fromHours + ((toHours - fromHours) * i) / SAMPLES,
  );
  const lines = leakLaws.flatMap((law) => leakLine(readings, law) ?? []);
  const main = lines.find(({ law }) => law === 'permeation');
  if (!main) return {};
  const at = (line: typeof main, hour: number, z: number) => {
    const { start, slope, startSigma, slopeSigma, covariance } = line;
    const variance = startSigma ** 2 + 2 * hour * covariance + hour ** 2 * slopeSigma ** 2;
    return lawShapes[line.law].bar(start + slope * hour + z * Math.sqrt(Math.max(0, variance)));
  };
  const top = hours.map((hour) => Math.max(...lines.map((line) => at(line, hour, BAND_Z))));
  const low = hours.map((hour) => Math.min(...lines.map((line) => at(line, hour, -BAND_Z))));
  const drawn = (bars: readonly number[]) => bars.map((bar, i) => [across(hours[i]!), upward(bar)] as const);
  return {
    course: path(drawn(hours.map((hour) => at(main, hour, 0)))),
    spread: path([...drawn(top), ...drawn(low).toReversed()], true),
  };
}
