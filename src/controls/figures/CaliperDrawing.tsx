import './CaliperDrawing.css';
import type { FaceKind } from '../../standards/faces/faceKinds.ts';
import { type CaliperShape, caliperShapeFor, caliperShapes } from './caliperShapes.ts';

export interface CaliperDrawingProps {
  /** The face measured, and which of its sizes. */
  face: FaceKind;
  dimension: string;
}

/** The jaws, rod or rule where they touch the part. */
function tool({ end, from, to, at = 62, reach = 72 }: CaliperShape): string {
  switch (end) {
    case 'outside':
      return `M${from} ${reach}V6h-14v${reach - 24}zM${to} ${reach}V6h14v${reach - 24}z`;
    case 'inside':
      return `M${from} ${reach}V6h9v${reach - 20}zM${to} ${reach}V6h-9v${reach - 20}z`;
    case 'rod':
      return `M${at - 44} ${from}v-12h60v12zM${at - 3} ${from}h6V${to}h-6z`;
    case 'rule':
      return `M${from} ${at - 9}v18M${to} ${at - 9}v18`;
  }
}

/** The distance that is read, with its two ends. */
function span({ end, from, to, at = 62, reach = 72 }: CaliperShape): string {
  if (end === 'rod') return `M${at + 14} ${from}V${to}m-5-7 5 7 5-7M${at + 9} ${from + 7}l5-7 5 7`;
  const y = end === 'rule' ? at : reach - 8;
  return `M${from} ${y}H${to}m-7-5 7 5-7 5M${from + 7} ${y - 5}l-7 5 7 5`;
}

/** A small drawing of where the caliper goes. The words beside it say the same, so it is not spoken. */
export function CaliperDrawing({ face, dimension }: CaliperDrawingProps) {
  const name = caliperShapeFor(face, dimension);
  if (!name) return null;
  const shape: CaliperShape = caliperShapes[name];
  return (
    <svg class="caliper" viewBox="0 0 220 118" aria-hidden="true">
      <path class="caliper-metal" d={`${shape.metal}${shape.hole ?? ''}`} />
      <path class={shape.end === 'rule' ? 'caliper-rule' : 'caliper-jaw'} d={tool(shape)} />
      <path class="caliper-span" d={span(shape)} />
    </svg>
  );
}
