import './Plot.css';
import './SealCurve.css';
import { numberText } from '../../mechanics/numberText.ts';
import type { PressureUnit } from '../../mechanics/units.ts';
import { unitLabel } from '../../mechanics/units.ts';
import type { SealOutlook } from '../../practice/seal/sealOutlook.ts';
import { leakStateWords } from '../../words/leakWords.ts';
import { curveShapes } from './curveShapes.ts';

export interface SealCurveProps {
  outlook: SealOutlook;
  ceilingBar: number | undefined;
  unit: PressureUnit;
}

const HOUR_MS = 3_600_000;
const names = { ceiling: 'limit', riding: 'riding' } as const;

/** The pressure over time as it was read, at workshop temperature, with where it goes. */
export function SealCurve({ outlook, ceilingBar, unit }: SealCurveProps) {
  const { readings, judged, look, ridingBar } = outlook;
  const firstMs = readings[0]?.atMs ?? 0;
  const shapes = curveShapes({
    ...{ readings, ceilingBar, ridingBar, unit },
    steady: judged.state === 'steady' || judged.state === 'holding',
    lookHours: look && (look.atMs - firstMs) / HOUR_MS,
  });
  if (!shapes) return null;
  const { width, height, left, right, bottom } = shapes;
  return (
    <figure class="plot seal-plot">
      <figcaption class="caption">Pressure at 20 °C</figcaption>
      <svg
        viewBox={`0 0 ${width} ${height}`}
        role="img"
        aria-label={`Pressure over ${shapes.xLabel}, ${readings.length} readings. ${leakStateWords(judged)}.`}
      >
        {shapes.yTicks.map(({ y, value }) => (
          <g key={value}>
            <path class="plot-grid" d={`M${left} ${y}H${right}`} />
            <text x={left - 8} y={y + 5} text-anchor="end">
              {numberText(value, 2)}
            </text>
          </g>
        ))}
        <text x={0} y={14}>
          {unitLabel[unit]}
        </text>
        {shapes.spread && <path class="plot-band" d={shapes.spread} />}
        {shapes.cuts.map((x) => (
          <path key={x} class="seal-cut" d={`M${x} 28V${bottom}`} />
        ))}
        {shapes.lines.map(({ is, y }) => (
          <g key={is}>
            <path class={`seal-line-${is}`} d={`M${left} ${y}H${right}`} />
            <text x={right} y={y - 4} text-anchor="end">
              {names[is]}
            </text>
          </g>
        ))}
        <path class="plot-axis" d={`M${left} 28V${bottom}H${right}`} fill="none" />
        {shapes.xTicks.map(({ x, value }) => (
          <g key={value}>
            <path class="plot-axis" d={`M${x} ${bottom}v5`} />
            <text x={x} y={bottom + 21} text-anchor="middle">
              {numberText(value, 2)}
            </text>
          </g>
        ))}
        <text x={right} y={height - 4} text-anchor="end">
          {shapes.xLabel}
        </text>
        {shapes.course && <path class="plot-line" d={shapes.course} />}
        {shapes.points.map(({ x, y, low, high }) => (
          <g key={x}>
            <path class="plot-axis" d={`M${x} ${low}V${high}`} />
            <circle class="plot-point" cx={x} cy={y} r={5} />
          </g>
        ))}
      </svg>
    </figure>
  );
}
