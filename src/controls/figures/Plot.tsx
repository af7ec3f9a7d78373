import { numberText } from '../../mechanics/numberText.ts';
import './Plot.css';
import { ticks } from './ticks.ts';

export interface PlotPoint {
  x: number;
  y: number;
}

export interface PlotProps {
  /** What is drawn, for the heading and for screen readers. */
  label: string;
  /** In order of x. */
  points: readonly PlotPoint[];
  /** Shaded target band, in units of y. */
  band?: { lo: number; hi: number } | undefined;
  /** Captions of the axes, with their units: "minutes", "N·m". */
  xLabel: string;
  yLabel: string;
  /** Joins the points with a line. */
  joined?: boolean;
  /** Writes a value of x at the axis; digits in the phone's way when left out. */
  xText?: (x: number) => string;
}

const WIDTH = 360;
const HEIGHT = 220;
const LEFT = 44;
const RIGHT = 10;
const TOP = 28;
const BOTTOM = 46;

/** Ticks are round already; only the decimal sign is the phone's own. */
const digits = (value: number) => numberText(value, 6);

const spread = (values: readonly number[]): [low: number, high: number] => {
  const low = Math.min(...values);
  const high = Math.max(...values);
  return low < high ? [low, high] : [low - 0.5, high + 0.5];
};

/** A small drawing of one quantity over another on ruled paper, with the band it should lie in. Points outside are solid red. */
export function Plot({ label, points, band, xLabel, yLabel, joined, xText = digits }: PlotProps) {
  if (points.length === 0) return null;
  const [xLow, xHigh] = spread(points.map((point) => point.x));
  const yTicks = ticks(
    ...spread([...points.map((point) => point.y), ...(band ? [band.lo, band.hi] : [])]),
    4,
  );
  const xTicks = ticks(xLow, xHigh, 6).filter((x) => x >= xLow && x <= xHigh);
  const yLow = yTicks[0]!;
  const yHigh = yTicks.at(-1)!;
  const across = (x: number) => LEFT + ((x - xLow) / (xHigh - xLow)) * (WIDTH - LEFT - RIGHT);
  const upward = (y: number) => HEIGHT - BOTTOM - ((y - yLow) / (yHigh - yLow)) * (HEIGHT - TOP - BOTTOM);
  const outside = (y: number) => band !== undefined && (y < band.lo || y > band.hi);
  const outCount = points.filter((point) => outside(point.y)).length;
  const last = points.at(-1)!;
  const alt = `${label}: ${points.length} points, last ${last.y} ${yLabel}${band ? `, band ${band.lo} to ${band.hi}, ${outCount} outside` : ''}`;
  return (
    <figure class="plot">
      <figcaption class="caption">{label}</figcaption>
      <svg viewBox={`0 0 ${WIDTH} ${HEIGHT}`} role="img" aria-label={alt}>
        {yTicks.map((y) => (
          <g key={y}>
            <path class="plot-grid" d={`M${LEFT} ${upward(y)}H${WIDTH - RIGHT}`} />
            <text x={LEFT - 8} y={upward(y) + 5} text-anchor="end">
              {digits(y)}
            </text>
          </g>
        ))}
        <text x={0} y={14}>
          {yLabel}
        </text>
        {band && (
          <rect
            class="plot-band"
            x={LEFT}
            y={upward(band.hi)}
            width={WIDTH - LEFT - RIGHT}
            height={upward(band.lo) - upward(band.hi)}
          />
        )}
        <path class="plot-axis" d={`M${LEFT} ${TOP}V${HEIGHT - BOTTOM}H${WIDTH - RIGHT}`} fill="none" />
        {xTicks.map((x) => (
          <g key={x}>
            <path class="plot-axis" d={`M${across(x)} ${HEIGHT - BOTTOM}v5`} />
            <text x={across(x)} y={HEIGHT - BOTTOM + 21} text-anchor="middle">
              {xText(x)}
            </text>
          </g>
        ))}
        <text x={WIDTH - RIGHT} y={HEIGHT - 4} text-anchor="end">
          {xLabel}
        </text>
        {joined && (
          <path class="plot-line" d={`M${points.map(({ x, y }) => `${across(x)} ${upward(y)}`).join('L')}`} />
        )}
        {points.map(({ x, y }, index) => (
          <circle
            key={index}
            class={outside(y) ? 'plot-point plot-out' : 'plot-point'}
            cx={across(x)}
            cy={upward(y)}
            r={points.length > 40 ? 2 : 5}
          />
        ))}
      </svg>
    </figure>
  );
}
