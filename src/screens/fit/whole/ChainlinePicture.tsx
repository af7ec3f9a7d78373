import type { Chainline } from '../../../fit/wholes/chainlineFinding.ts';
import { numberText } from '../../../mechanics/numberText.ts';
import { mmToTenth } from '../../../words/slotWords.ts';

const WIDTH = 360;
const HEIGHT = 168;
/** Where ring and sprocket stand along the bike, and half of what is seen of each from above. */
const RING = 84;
const RING_HALF = 54;
const SPROCKET = 306;
const SPROCKET_HALF = 24;
/** Height at which the nearer of the two stands, and that of the middle of the bike. */
const MIDDLE = 136;
const BETWEEN = 66;
/** Sideways, a millimetre is drawn so many px, or fewer where the two would leave the picture. */
const PX_PER_MM = 7;
const SPREAD_MOST = 56;

function chainlineAlt({ frontMm, rearMm, offsetMm, angleDeg }: Chainline): string {
  const angle = angleDeg === null ? '' : `, the chain slants by ${numberText(angleDeg, 2)} degrees`;
  return `From above: the ring runs ${mmToTenth(frontMm)} from the middle of the bike, the sprocket ${mmToTenth(rearMm)}; they are ${mmToTenth(Math.abs(offsetMm))} apart${angle}`;
}

/** Ring, chain and sprocket from above, front at the left; sideways drawn larger than along. */
export function ChainlinePicture({ line }: { line: Chainline }) {
  const { frontMm, rearMm, offsetMm, angleDeg, judgement } = line;
  const spread = Math.sign(offsetMm) * Math.min(SPREAD_MOST, Math.abs(offsetMm) * PX_PER_MM);
  const [ringY, sprocketY] = [BETWEEN - spread / 2, BETWEEN + spread / 2];
  const off = judgement === 'too-far' || judgement === 'noticeable';
  const mid = (RING + SPROCKET) / 2 + 24;
  return (
    <figure class="slot">
      <svg viewBox={`0 0 ${WIDTH} ${HEIGHT}`} role="img" aria-label={chainlineAlt(line)}>
        <path class="line-middle" d={`M8 ${MIDDLE}H${WIDTH - 8}`} />
        <path
          class="line-measure"
          d={`M${RING} ${ringY + 9}V${MIDDLE}M${SPROCKET} ${sprocketY + 9}V${MIDDLE}`}
        />
        <path
          class={off ? 'line-chain line-off' : 'line-chain'}
          d={`M${RING} ${ringY}L${SPROCKET} ${sprocketY}`}
        />
        <path class="line-teeth" d={`M${RING - RING_HALF} ${ringY}H${RING + RING_HALF}`} />
        <path
          class="line-teeth"
          d={`M${SPROCKET - SPROCKET_HALF} ${sprocketY}H${SPROCKET + SPROCKET_HALF}`}
        />
        <text x={RING + 8} y={MIDDLE - 8} text-anchor="start">
          {numberText(frontMm, 1)}
        </text>
        <text x={SPROCKET - 8} y={MIDDLE - 8} text-anchor="end">
          {numberText(rearMm, 1)}
        </text>
        <text x={mid} y={Math.min(ringY, sprocketY, BETWEEN) - 14} text-anchor="middle">
          {`${mmToTenth(Math.abs(offsetMm))}${angleDeg === null ? '' : `, ${numberText(angleDeg, 2)}°`}`}
        </text>
        <text class="slot-end" x={8} y={HEIGHT - 10} text-anchor="start">
          middle of the bike
        </text>
      </svg>
      <figcaption class="small">
        From above, ring at the left. The sideways offset is drawn larger than it is.
      </figcaption>
    </figure>
  );
}
