import { Button } from '../../controls/Button.tsx';
import { Ruler } from '../../controls/figures/Ruler.tsx';
import { Notice } from '../../controls/frames/Notice.tsx';
import { Facts } from '../../controls/lists/Facts.tsx';
import type { WheelRow } from '../../journal/rows.ts';
import { numberText } from '../../mechanics/numberText.ts';
import type { WheelSideName } from '../../mechanics/wheels/spokeLayout.ts';
import { countWithin } from '../../mechanics/wheels/spokeTension.ts';
import { lastSet } from '../../practice/wheel/lastSet.ts';
import { pictureFigures } from '../../practice/wheel/pictureFigures.ts';
import { type SideBalance, wheelBalance } from '../../practice/wheel/wheelBalance.ts';
import { wheelSides } from '../../practice/wheel/wheelFigures.ts';
import { inNewtons, sideTargetsN, workedWheel } from '../../practice/wheel/wheelResult.ts';
import { dayText } from '../../words/dayText.ts';
import { quantityText } from '../../words/quantityText.ts';
import { awayWords, balanceWords, momentLabels, sideNames } from '../../words/wheel/wheelWords.ts';
import { hrefOf } from '../route.ts';
import { NextTurns } from './NextTurns.tsx';
import { TensionPlot } from './TensionPlot.tsx';

function BalanceOf({ side, of }: { side: WheelSideName; of: SideBalance }) {
  const { spread, balance, tightest, slackest } = of;
  const { count, meanN, deviationN } = spread;
  return (
    <section class="wheel-side">
      <h3 class="field-label">{sideNames[side]}</h3>
      <p class="wheel-exact">
        {numberText(meanN, 0)} <span class="wheel-unit">N mean</span>
      </p>
      <p class="wheel-buy">{balanceWords[balance]}</p>
      <Facts
        of={[
          ['Tightest', `spoke ${tightest.spoke}, ${awayWords(tightest.awayPercent)}`],
          ['Slackest', `spoke ${slackest.spoke}, ${awayWords(slackest.awayPercent)}`],
          ['Scatter', deviationN === null ? '' : `${numberText(deviationN, 0)} N`],
          ['Within 5 %, 10 %', `${countWithin(spread, 5)}, ${countWithin(spread, 10)} of ${count}`],
        ]}
      />
    </section>
  );
}

/** What the spokes are to have, what they have, and what to turn next. */
export function TensionSection({ wheel }: { wheel: WheelRow }) {
  const { wheelId, limit, target } = wheel;
  const worked = workedWheel(wheel);
  const set = lastSet(wheel);
  const figures = pictureFigures(wheel);
  const limitN = inNewtons(limit);
  const balance = set && figures && wheelBalance(figures.layout, set.tensionsN, limitN);
  const targets = worked.is === 'known' ? sideTargetsN(worked.result) : undefined;
  const targetN = inNewtons(target);
  return (
    <section>
      <Ruler label="Tension" />
      <Facts
        of={[
          [
            'Target',
            targets
              ? wheelSides.map((side) => `${sideNames[side]} ${numberText(targets[side], 0)} N`).join(', ')
              : target && `${quantityText(target)} on the tighter side`,
          ],
          ['Rim maker’s maximum', limit ? quantityText(limit) : 'Not entered'],
        ]}
      />
      {limitN !== undefined && targetN !== undefined && targetN > limitN && (
        <Notice kind="error" title="The target lies above the rim maker’s maximum">
          The maximum limits the tightest single spoke: set the target below it.
        </Notice>
      )}
      <p class="buttons">
        <Button icon="scale" href={hrefOf({ at: 'read-wheel', wheelId })}>
          Read the wheel
        </Button>
      </p>
      {set && balance && figures && (
        <>
          <p class="lead">
            <b>{momentLabels[set.moment]}</b>
            {`, ${dayText(set.atMs)}, tyre ${set.tyre}`}
          </p>
          {set.tyre === 'on' && (
            <p class="small">
              An inflated tyre lowers the tension by some per cent: targets are for tyre off.
            </p>
          )}
          {balance.over.length > 0 && (
            <Notice
              kind="error"
              title={`Over the maximum: spoke ${balance.over.map(({ spoke }) => spoke).join(', ')}`}
            >
              Loosen before anything else. The rim can crack.
            </Notice>
          )}
          <div class="wheel-sides">
            {wheelSides.map((side) => {
              const of = balance.sides[side];
              return of && <BalanceOf key={side} side={side} of={of} />;
            })}
          </div>
          <TensionPlot layout={figures.layout} balance={balance} limitN={limitN} />
          {worked.is === 'known' && (
            <NextTurns wheel={wheel} figures={worked.figures} result={worked.result} set={set} />
          )}
          <p class="small lower">
            Up to 5 % from the mean of its side: very even; 10 %: even; 20 %: usable (unverified). Sources: a
            wheel builder’s article on tension balance; a dissertation on bicycle wheels.
          </p>
        </>
      )}
    </section>
  );
}
