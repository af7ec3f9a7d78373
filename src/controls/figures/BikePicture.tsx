import './BikePicture.css';
import { useMemo } from 'preact/hooks';
import { bikeDrawing } from '../../drawing/bike/bikeDrawing.ts';
import type { BikeFigures } from '../../drawing/bike/figures.ts';
import type { BikeZone, Spot } from '../../drawing/bike/shape.ts';
import type { ZoneMark, ZoneMarks, ZoneState } from '../../drawing/bike/zoneMark.ts';

/** What a zone is called. */
export const zoneLabel: Record<BikeZone, string> = {
  saddle: 'Saddle',
  brakes: 'Brakes',
  'fork-and-bars': 'Fork and bars',
  'rear-wheel': 'Rear wheel',
  cranks: 'Cranks',
  'front-wheel': 'Front wheel',
};

export interface BikePictureProps {
  figures: BikeFigures;
  marks: ZoneMarks;
  /** What the picture shows: "Joints of Magpie". */
  label: string;
  onZone: (zone: BikeZone) => void;
  /** Zones without a mark are no links here. */
  markedOnly?: boolean;
}

/** Outlines round a mark's middle, on a field of 2 by 2: what each state looks like without its colour. */
const outlines: Record<ZoneState, string> = {
  open: 'M-.9 0a.9 .9 0 1 0 1.8 0a.9 .9 0 1 0 -1.8 0',
  done: 'M-.9 0a.9 .9 0 1 0 1.8 0a.9 .9 0 1 0 -1.8 0',
  due: 'M0 -1.1L1.15 .85H-1.15z',
  wrong: 'M-.4 -.95H.4L.95 -.4V.4L.4 .95H-.4L-.95 .4V-.4z',
  unknown: 'M0 -1.15L1.15 0 0 1.15 -1.15 0z',
  bridged: 'M-.85 -.85H.85V.85H-.85z',
};

function Badge({ mark: { state, count }, at, size }: { mark: ZoneMark; at: Spot; size: number }) {
  return (
    <g class={`zone-badge zone-${state}`} transform={`translate(${at.x} ${at.y}) scale(${size})`}>
      <path d={outlines[state]} />
      {state === 'done' ? (
        <path class="zone-tick" d="M-.42 .02 -.1 .36 .46 -.36" />
      ) : (
        <text y={state === 'due' ? '.58' : '.38'} text-anchor="middle">
          {state === 'unknown' ? '?' : count}
        </text>
      )}
    </g>
  );
}

/** The bike from its right in grease pencil, drawn from its own figures, with a mark and a target for each of six zones. */
export function BikePicture({ figures, marks, label, onZone, markedOnly }: BikePictureProps) {
  const key = JSON.stringify(figures);
  const drawing = useMemo(() => bikeDrawing(figures), [key]);
  const { width, height, strokes, rows } = drawing;
  return (
    // biome-ignore lint/a11y/useSemanticElements: a fieldset cannot be laid out as a grid in every browser
    <div class="bike-picture" role="group" aria-label={label}>
      <svg viewBox={`0 0 ${width} ${height}`} aria-hidden="true" focusable="false">
        {strokes.map(({ part, path, weight, dashed, widthMm }) => (
          <path
            key={part}
            class={`pencil-${weight}${dashed ? ' pencil-dashed' : ''}`}
            d={path}
            style={widthMm === undefined ? undefined : { strokeWidth: String(widthMm) }}
          />
        ))}
        {rows.flat().map((zone) => {
          const mark = marks[zone];
          return mark && <Badge key={zone} mark={mark} at={drawing.marks[zone]} size={width * 0.048} />;
        })}
      </svg>
      {rows.flat().map((zone, at) => {
        const mark = marks[zone];
        return (
          <button
            key={zone}
            type="button"
            class={at < 3 ? 'zone zone-above' : 'zone'}
            disabled={markedOnly && !mark}
            onClick={() => onZone(zone)}
          >
            {zoneLabel[zone]}
            <span class="unseen">{mark ? `: ${mark.words}` : ''}</span>
          </button>
        );
      })}
    </div>
  );
}
