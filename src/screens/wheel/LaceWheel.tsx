import './wheel.css';
import { useState } from 'preact/hooks';
import { Button } from '../../controls/Button.tsx';
import { Progress } from '../../controls/figures/Progress.tsx';
import { Notice } from '../../controls/frames/Notice.tsx';
import { Screen } from '../../controls/frames/Screen.tsx';
import { Filters } from '../../controls/lists/Filters.tsx';
import type { WheelRow } from '../../journal/rows.ts';
import { lacingOrder } from '../../mechanics/wheels/lacingOrder.ts';
import type { WheelSideName } from '../../mechanics/wheels/spokeLayout.ts';
import { pictureFigures } from '../../practice/wheel/pictureFigures.ts';
import { lacingWords } from '../../words/wheel/lacingWords.ts';
import { sideNames } from '../../words/wheel/wheelWords.ts';
import { Absent } from '../Absent.tsx';
import { useView } from '../door.tsx';
import { useDraft } from '../draft.ts';
import { hrefOf } from '../route.ts';
import { Waits } from '../Waits.tsx';
import { LacingPicture } from './LacingPicture.tsx';
import { Unlaced } from './Unlaced.tsx';

const sideTabs = (['left', 'drive'] as const).map((value) => ({ value, label: sideNames[value] }));

function LacingOf({ wheel }: { wheel: WheelRow }) {
  const { wheelId, name } = wheel;
  const figures = pictureFigures(wheel);
  const [draft, change, clear] = useDraft(`lacing:${wheelId}`, { laced: 0 });
  const [looked, setLooked] = useState<WheelSideName>();
  if (!figures) return <Unlaced title={`Lacing: ${name}`} back={hrefOf({ at: 'wheel', wheelId })} />;
  const order = lacingOrder(figures.layout, {
    left: wheel.leftSide.crosses,
    drive: wheel.driveSide.crosses,
  });
  const at = Math.min(Math.max(0, draft.laced), order.length);
  const step = order[at];
  const seenFrom = looked ?? step?.spoke.side ?? 'drive';
  const laced = new Set(order.slice(0, at).map(({ spoke }) => spoke.spoke));
  const words = step && lacingWords(step);
  const to = (next: number) => {
    setLooked(undefined);
    change({ laced: next });
    // The picture stands on top: wherever the page was left, it comes into sight.
    scrollTo(0, 0);
    // All in: nothing is half done any more.
    if (next >= order.length) clear();
  };
  return (
    <Screen
      title={`Lacing: ${name}`}
      route={`lace-wheel ${wheelId}`}
      back={hrefOf({ at: 'wheel', wheelId })}
      waits={<Waits />}
      actions={
        step ? (
          <Button kind="main" size="greasy" icon="check" onPress={() => to(at + 1)}>
            {`Spoke ${step.spoke.spoke} is in`}
          </Button>
        ) : (
          <>
            <Button kind="main" icon="wheel" href={hrefOf({ at: 'wheel', wheelId })} onPress={clear}>
              To the wheel
            </Button>
            <Button icon="undo" onPress={() => to(0)}>
              Start again
            </Button>
          </>
        )
      }
    >
      <Progress at={Math.min(at + 1, order.length)} of={order.length} noun="Spoke" />
      {words && <h2 class="wheel-step-title">{words.title}</h2>}
      {!step && (
        <Notice kind="note" title="All spokes are in">
          Bring all nipples to the same thread depth, then tension evenly in small turns.
        </Notice>
      )}
      <LacingPicture figures={figures} seenFrom={seenFrom} laced={laced} now={step?.spoke.spoke} />
      {words && (
        <p class="far" aria-live="polite">
          {words.detail}
        </p>
      )}
      {words?.round && (
        <Notice kind="note" title={`Round ${step?.spoke.round} of 4`}>
          {words.round}
        </Notice>
      )}
      <Filters label="Look from" tabs={sideTabs} on={[seenFrom]} onToggle={setLooked} />
      {at > 0 && (
        <p class="buttons">
          <Button icon="back" onPress={() => to(at - 1)}>
            One spoke back
          </Button>
        </p>
      )}
      <p class="small">
        To scale. Thick: laced; broken: the far side. The order is common practice; where the hub maker’s
        differs, follow that.
      </p>
    </Screen>
  );
}

/** The lacing of a wheel, spoke by spoke, key spoke first. */
export function LaceWheel({ wheelId }: { wheelId: string }) {
  const seen = useView('wheel', { wheelId });
  if (seen.is === 'there' && seen.value) return <LacingOf wheel={seen.value.wheel} />;
  return (
    <Screen title="Wheel" back={hrefOf({ at: 'home' })} waits={<Waits />}>
      <Absent what="wheel" seen={[seen]} />
    </Screen>
  );
}
