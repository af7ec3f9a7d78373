import './wheel.css';
import { Fold } from '../../controls/lists/Fold.tsx';
import { numberText } from '../../mechanics/numberText.ts';
import type { LaidSpoke } from '../../mechanics/wheels/spokeLayout.ts';
import { EVEN_PERCENT } from '../../mechanics/wheels/spokeTension.ts';
import { tensionRing } from '../../practice/wheel/tensionRing.ts';
import type { WheelBalance } from '../../practice/wheel/wheelBalance.ts';
import { countWords } from '../../words/phrases.ts';
import { awayWords, onSide } from '../../words/wheel/wheelWords.ts';

export interface TensionPlotProps {
  layout: readonly LaidSpoke[];
  balance: WheelBalance;
  limitN: number | undefined;
}

/** All tensions round the wheel, both sides in one plot, and the same as a list. */
export function TensionPlot({ layout, balance, limitN }: TensionPlotProps) {
  const { spokes, sides } = balance;
  if (spokes.length === 0) return null;
  const means = {
    ...(sides.left ? { left: sides.left.spread.meanN } : {}),
    ...(sides.drive ? { drive: sides.drive.spread.meanN } : {}),
  };
  const ring = tensionRing(layout, spokes, means, limitN, EVEN_PERCENT);
  const { size, centre, innerRadius } = ring;
  const out = ring.bars.filter(({ out }) => out).map(({ spoke }) => spoke);
  const alt = `Tension of ${countWords(spokes.length, 'spoke')} round the wheel, from the drive side. ${out.length === 0 ? `All within ${EVEN_PERCENT} % of their side.` : `Outside ${EVEN_PERCENT} % of their side: ${out.join(', ')}.`}`;
  return (
    <>
      <figure class="wheel-picture">
        <svg viewBox={`0 0 ${size} ${size}`} role="img" aria-label={alt}>
          <circle class="wheel-near" cx={centre} cy={centre} r={innerRadius} />
          {ring.circles.map(({ of, radius }) => (
            <circle key={of} class={`wheel-mean wheel-mean-${of}`} cx={centre} cy={centre} r={radius} />
          ))}
          {ring.bars.map(({ spoke, side, x1, y1, x2, y2, out }) => (
            <g key={spoke}>
              <path
                class={`wheel-bar wheel-bar-${side}${out ? ' wheel-bar-out' : ''}`}
                d={`M${x1} ${y1}L${x2} ${y2}`}
              />
              {out && <circle class="wheel-out" cx={x2} cy={y2} r={5} />}
            </g>
          ))}
          {ring.numbers.map(({ spoke, x, y }) => (
            <text key={spoke} class="wheel-tick" x={x} y={y + 6} text-anchor="middle">
              {spoke}
            </text>
          ))}
        </svg>
        <figcaption class="small">
          {`Valve on top, from the drive side. Thick: drive side; thin blue: left. Rings: mean of each side${limitN === undefined ? '' : '; broken red: rim maker’s maximum'}. A dot: more than ${EVEN_PERCENT} % from its side.`}
        </figcaption>
      </figure>
      <Fold label="Every spoke" end={spokes.length}>
        <table class="wheel-table lower">
          <thead>
            <tr>
              <th scope="col">Spoke</th>
              <th scope="col">Side</th>
              <th scope="col">N</th>
              <th scope="col">From its side</th>
            </tr>
          </thead>
          <tbody>
            {spokes.map(({ spoke, side, tensionN, awayPercent, overLimit }) => (
              <tr key={spoke}>
                <th scope="row">{spoke}</th>
                <td>{onSide[side]}</td>
                <td>{numberText(tensionN, 0)}</td>
                <td>{`${awayWords(awayPercent)}${overLimit ? ', over the maximum' : ''}`}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </Fold>
    </>
  );
}
