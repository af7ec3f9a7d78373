import './wheel.css';
import type { WheelSideName } from '../../mechanics/wheels/spokeLayout.ts';
import { lacingDrawing } from '../../practice/wheel/lacingDrawing.ts';
import type { WheelFigures } from '../../practice/wheel/wheelFigures.ts';
import { onSide } from '../../words/wheel/wheelWords.ts';

export interface LacingPictureProps {
  figures: Pick<WheelFigures, 'layout' | 'erdMm' | 'sides'>;
  seenFrom: WheelSideName;
  laced: ReadonlySet<number>;
  now?: number | undefined;
}

/** The lacing to scale, seen from one side, valve on top; the spoke at hand stands out. */
export function LacingPicture({ figures, seenFrom, laced, now }: LacingPictureProps) {
  const { layout, erdMm, sides } = figures;
  const pcdMm = { left: sides.left.pcdMm, drive: sides.drive.pcdMm };
  const drawing = lacingDrawing(layout, { erdMm, pcdMm }, seenFrom, laced, now);
  const { size, rimRadius, nearRadius, farRadius, label } = drawing;
  const middle = size / 2;
  const at = layout.find(({ spoke }) => spoke === now);
  const alt = `The wheel from the ${onSide[seenFrom]}, valve on top: ${laced.size} of ${layout.length} spokes laced${at ? `, now spoke ${at.spoke} on the ${onSide[at.side]}` : ''}.`;
  return (
    <figure class="wheel-picture">
      <svg viewBox={`0 0 ${size} ${size}`} role="img" aria-label={alt}>
        <circle class="wheel-rim" cx={middle} cy={middle} r={rimRadius + 6} />
        <circle class="wheel-far" cx={middle} cy={middle} r={farRadius} />
        <circle class="wheel-near" cx={middle} cy={middle} r={nearRadius + 4} />
        {drawing.spokes.map(({ spoke, x1, y1, x2, y2, near, state }) => (
          <path
            key={spoke}
            class={`wheel-spoke ${near ? 'wheel-spoke-near' : 'wheel-spoke-far'} wheel-spoke-${state}`}
            d={`M${x1} ${y1}L${x2} ${y2}`}
          />
        ))}
        {drawing.holes.map(({ x, y }, at) => (
          <circle key={at} class="wheel-hole" cx={x} cy={y} r={2.2} />
        ))}
        <path class="wheel-valve" d={`M${middle - 5} ${middle - rimRadius - 12}h10v22l-5 7-5-7z`} />
        {label && (
          <text class="wheel-number" x={label.x} y={label.y + 8} text-anchor="middle">
            {label.spoke}
          </text>
        )}
      </svg>
    </figure>
  );
}
