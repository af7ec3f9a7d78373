import { Notice } from '../../controls/frames/Notice.tsx';
import { Facts } from '../../controls/lists/Facts.tsx';
import { Fold } from '../../controls/lists/Fold.tsx';
import type { PartRow } from '../../journal/rows.ts';
import { numberText } from '../../mechanics/numberText.ts';
import type { WheelSideName } from '../../mechanics/wheels/spokeLayout.ts';
import { wheelDoubts } from '../../practice/wheel/wheelDoubts.ts';
import { sideAbout, type WheelSketch, wheelSides } from '../../practice/wheel/wheelFigures.ts';
import { type LengthOfSome, type WheelResult, workedWheel } from '../../practice/wheel/wheelResult.ts';
import { countWords } from '../../words/phrases.ts';
import { quantityText } from '../../words/quantityText.ts';
import { sentenceOf } from '../../words/refusals.ts';
import { crossingWords } from '../../words/wheel/crossingWords.ts';
import { doubtWords, unmeasuredWords } from '../../words/wheel/measureWords.ts';
import { concernWords, differenceWords, erdEndWords, sideNames } from '../../words/wheel/wheelWords.ts';

function Length({ of, straight }: { of: LengthOfSome; straight: boolean }) {
  const { exactMm, stocked, inTwos, count, crossingDeg } = of;
  const twos =
    inTwos && inTwos.stockedMm !== stocked?.stockedMm ? `; in 2 mm steps ${inTwos.stockedMm} mm` : '';
  return (
    <div class="wheel-length">
      <p class="wheel-exact">
        {numberText(exactMm, 1)} <span class="wheel-unit">mm exact</span>
      </p>
      {stocked && (
        <p class="wheel-buy">{`Buy ${count} × ${stocked.stockedMm} mm (${differenceWords(stocked.differenceMm)}${twos})`}</p>
      )}
      {!straight && <p class="small">{`${numberText(crossingDeg, 1)}° between hub hole and rim hole`}</p>}
    </div>
  );
}

function Side({ wheel, side, result }: { wheel: WheelSketch; side: WheelSideName; result: WheelResult }) {
  const { lengths, sensitivity, mostCrosses, concerns, bracingDeg } = result.sides[side];
  const about = sideAbout(wheel, side);
  const { crosses, spokes, bought } = about;
  return (
    <section class="wheel-side">
      <h3 class="field-label">{`${sideNames[side]}: ${countWords(spokes, 'spoke')}, ${crossingWords(crosses)}`}</h3>
      {lengths.map((of) => (
        <Length key={of.crossingDeg} of={of} straight={wheel.head === 'straight-pull'} />
      ))}
      <Facts
        of={[
          ['Bought', bought && quantityText(bought)],
          ['Most crossings', mostCrosses === undefined ? '' : `${mostCrosses}`],
          ['Bracing angle', `${numberText(bracingDeg, 1)}°`],
          [
            '1 mm of rim diameter',
            sensitivity ? `${numberText(Math.abs(sensitivity.perErd), 2)} mm of spoke` : '',
          ],
        ]}
      />
      {concerns.map((concern) => (
        <Notice key={concern} kind="caution" title={concernWords[concern]} />
      ))}
      {mostCrosses !== undefined && crosses > mostCrosses && concerns.length === 0 && (
        <Notice kind="caution" title={`At most ${mostCrosses} crossings are usual here`} />
      )}
    </section>
  );
}

function ratioWords({ tensions, targetN }: WheelResult): string {
  if (!tensions.ok) return '';
  if (tensions.tighter === 'even') return 'Both sides alike';
  const { leftN, driveN } = tensions;
  const share = Math.round((100 * Math.min(leftN, driveN)) / Math.max(leftN, driveN));
  const slack = tensions.tighter === 'left' ? 'Drive side' : 'Left side';
  const tight = tensions.tighter === 'left' ? 'left' : 'drive side';
  const newtons =
    targetN === undefined
      ? ''
      : `: ${numberText(Math.min(leftN, driveN), 0)} N and ${numberText(targetN, 0)} N`;
  return `${slack} has ${share} % of the ${tight}${newtons}`;
}

/** Lengths, lacing and lean of both sides, or what still stands in the way. */
export function SpokeLengths({ wheel, parts }: { wheel: WheelSketch; parts: readonly PartRow[] }) {
  const worked = workedWheel(wheel);
  if (worked.is === 'refused') return <Notice kind="error" title={sentenceOf(worked.refused)} />;
  if (worked.is === 'absurd')
    return (
      <Notice kind="error" title="A figure is out of range">
        No wheel has such sizes. Check the units, the rim diameter and the hole circles.
      </Notice>
    );
  if (worked.is === 'unmeasured')
    return (
      <Notice kind="note" title="Still to be measured">
        <ul class="wheel-list">
          {worked.asks.map((ask) => (
            <li key={ask}>{unmeasuredWords[ask]}</li>
          ))}
        </ul>
      </Notice>
    );
  const { figures, result } = worked;
  return (
    <>
      {wheelDoubts(figures, parts).map((one) => (
        <Notice key={one.doubt} kind="caution" title="Check a figure">
          {doubtWords(one)}
        </Notice>
      ))}
      <div class="wheel-sides">
        {wheelSides.map((side) => (
          <Side key={side} wheel={wheel} side={side} result={result} />
        ))}
      </div>
      {result.tensions.ok ? (
        <Facts of={[['Tension of the two sides', ratioWords(result)]]} />
      ) : (
        <Notice kind="error" title="Nothing holds this rim sideways">
          A flange lies at or beyond the plane of the rim’s holes. Check the flange distances.
        </Notice>
      )}
      <Fold label="How it is worked out">
        <p class="small lower">
          {`Effective rim diameter ${numberText(figures.erdMm, 1)} mm, measured to: ${erdEndWords[wheel.erdEnd ?? 'nipple-slot'].toLowerCase()}. L = √(R² + r² + w² − 2·R·r·cos α) − h/2, with the angle between the two actual holes and w from the plane of the rim’s own holes. At full tension stretch and rim draw the spoke about ${numberText(result.drawnInMm, 1)} mm further into the nipple, so take the shorter size.`}
        </p>
        <p class="small">
          Highest usable crossing: a ninth of the spokes, and short of the tangent at the flange. Source:
          wheelbuilding notes with worked examples; geometry.
        </p>
      </Fold>
    </>
  );
}
