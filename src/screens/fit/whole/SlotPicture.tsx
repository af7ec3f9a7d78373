import type { AxlePositions, AxleStop } from '../../../fit/wholes/axlePosition.ts';
import { numberText } from '../../../mechanics/numberText.ts';

const WIDTH = 360;
const HEIGHT = 148;
const EDGE = 26;
/** Middle line of the slot, and half its height. */
const LINE = 62;
const HALF = 20;

/** Marks closer than this would be written over each other, px. */
const ROOM = 40;

/** Labels in two rows, above and below by turns where two stops stand close. */
function rowsOf(xs: readonly number[]): number[] {
  let last = Number.NEGATIVE_INFINITY;
  let row = 0;
  return xs.map((x) => {
    row = x - last < ROOM ? 1 - row : 0;
    last = x;
    return row;
  });
}

function positionsAlt({ stops, frontMm, rearMm }: AxlePositions): string {
  const lines = stops.map(
    ({ pitches, kind, tautMm }) =>
      `${pitches} links${kind === 'half-link' ? ' with a half-link' : ''} at ${numberText(tautMm, 1)} mm`,
  );
  return `Slot from ${numberText(frontMm, 1)} to ${numberText(rearMm, 1)} mm: ${lines.join(', ') || 'no chain length puts the axle in it'}`;
}

/** The slot of the frame from the side, front at the left, with every place a whole chain puts the axle. */
export function SlotPicture({ positions }: { positions: AxlePositions }) {
  const { stops, frontMm, rearMm, filedFrontMm, beyondFront } = positions;
  const ghost = beyondFront && beyondFront.missingMm < 14 ? beyondFront : null;
  const lowMm = Math.min(filedFrontMm, frontMm, ghost?.tautMm ?? filedFrontMm) - 1;
  const highMm = Math.max(rearMm, ...stops.map(({ wornMm }) => wornMm.hi)) + 1;
  const across = (mm: number) => EDGE + ((mm - lowMm) / (highMm - lowMm)) * (WIDTH - 2 * EDGE);
  const rows = rowsOf(stops.map(({ tautMm }) => across(tautMm)));
  const stop = ({ pitches, kind, tautMm, wornMm, outgrows }: AxleStop, at: number) => {
    const x = across(tautMm);
    const y = rows[at] === 0 ? LINE - HALF - 14 : LINE + HALF + 26;
    return (
      <g key={pitches} class={kind === 'even' ? undefined : 'slot-half'}>
        <path class="slot-worn" d={`M${x} ${LINE}H${across(wornMm.hi)}`} />
        <circle cx={x} cy={LINE} r={9} />
        {kind === 'half-link' && <path d={`M${x - 5} ${LINE}H${x + 5}`} />}
        {outgrows !== 'no' && <path class="slot-out" d={`M${across(rearMm) + 4} ${LINE - 6}l10 6-10 6`} />}
        <text x={x} y={y} text-anchor="middle">
          {pitches}
        </text>
      </g>
    );
  };
  return (
    <figure class="slot">
      <svg viewBox={`0 0 ${WIDTH} ${HEIGHT}`} role="img" aria-label={positionsAlt(positions)}>
        <path
          class="slot-edge"
          d={`M${across(rearMm) + HALF / 2} ${LINE - HALF}H${across(frontMm)}a${HALF} ${HALF} 0 0 0 0 ${HALF * 2}H${across(rearMm) + HALF / 2}`}
        />
        {filedFrontMm < frontMm && (
          <path
            class="slot-filed"
            d={`M${across(frontMm)} ${LINE - HALF}H${across(filedFrontMm)}a${HALF} ${HALF} 0 0 0 0 ${HALF * 2}H${across(frontMm)}`}
          />
        )}
        {ghost && (
          <g class="slot-ghost">
            <circle cx={across(ghost.tautMm)} cy={LINE} r={9} />
            <text x={across(ghost.tautMm)} y={LINE + HALF + 26} text-anchor="middle">
              {ghost.pitches}
            </text>
          </g>
        )}
        {stops.map(stop)}
        <text class="slot-end" x={across(filedFrontMm)} y={HEIGHT - 6} text-anchor="start">
          {`front ${numberText(filedFrontMm, 1)}`}
        </text>
        <text class="slot-end" x={across(rearMm)} y={HEIGHT - 6} text-anchor="end">
          {`rear ${numberText(rearMm, 1)} mm`}
        </text>
      </svg>
      <figcaption class="small">
        {`Chain length in half-inch links for each axle position; blue: as the chain wears.${stops.some(({ kind }) => kind === 'half-link') ? ' A barred ring closes with a half-link.' : ''}`}
      </figcaption>
    </figure>
  );
}
