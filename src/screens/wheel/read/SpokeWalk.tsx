import { useState } from 'preact/hooks';
import { Button } from '../../../controls/Button.tsx';
import { Keypad } from '../../../controls/fields/Keypad.tsx';
import { Screen } from '../../../controls/frames/Screen.tsx';
import { Filters } from '../../../controls/lists/Filters.tsx';
import { typedTension, type Walk, type WheelReadingDraft } from '../../../drafts/wheelReadingDraft.ts';
import type { WheelRow } from '../../../journal/rows.ts';
import { numberText } from '../../../mechanics/numberText.ts';
import { lastSet } from '../../../practice/wheel/lastSet.ts';
import { readingOrder } from '../../../practice/wheel/nextMoment.ts';
import { pictureFigures } from '../../../practice/wheel/pictureFigures.ts';
import type { WheelByEar } from '../../../practice/wheel/wheelEar.ts';
import { onSide } from '../../../words/wheel/wheelWords.ts';
import { Waits } from '../../Waits.tsx';
import { Unlaced } from '../Unlaced.tsx';
import { EarPart } from './EarPart.tsx';

export interface SpokeWalkProps {
  wheel: WheelRow;
  walk: Walk;
  draft: WheelReadingDraft;
  change: (changed: Partial<WheelReadingDraft>) => void;
  /** where tensions are read by ear, and rim and hub are measured */
  byEar: WheelByEar | undefined;
  onDone: () => void;
}

const labels: Record<Walk, string> = {
  tension: 'Tension',
  sideways: 'Rim sideways',
  outward: 'Rim up and down',
};
/** What the two directions of a run are called; the second is written with a minus. */
const ways: Record<Exclude<Walk, 'tension'>, readonly [string, string]> = {
  sideways: ['To the drive side', 'To the left'],
  outward: ['Outward', 'Inward'],
};

/** One spoke after the other, with big keys: what it reads, or where the rim stands beside it. */
export function SpokeWalk({ wheel, walk, draft, change, byEar, onDone }: SpokeWalkProps) {
  const layout = pictureFigures(wheel)?.layout ?? [];
  const [sidesApart, setSidesApart] = useState(true);
  const order = readingOrder(layout, sidesApart);
  const values = draft[walk];
  const [turn, setTurn] = useState(() =>
    Math.max(
      0,
      order.findIndex((place) => values[place] === ''),
    ),
  );
  const place = order[turn];
  const spoke = place === undefined ? undefined : layout[place];
  if (place === undefined || !spoke) return <Unlaced title={labels[walk]} back={onDone} />;
  const value = values[place] ?? '';
  const minus = value.startsWith('-');
  const put = (typed: string) => change({ [walk]: values.map((old, at) => (at === place ? typed : old)) });
  const bare = minus ? value.slice(1) : value;
  const next = () => (turn + 1 < order.length ? setTurn(turn + 1) : onDone());
  const answer =
    walk === 'tension'
      ? typedTension(value, draft.readIn, wheel.gauge, byEar && ((hz) => byEar.read(place, hz)))
      : undefined;
  const before = lastSet(wheel)?.tensionsN[place];
  const unit =
    walk !== 'tension' ? 'mm' : draft.readIn === 'scale' || draft.readIn === 'Hz' ? 'N' : draft.readIn;
  return (
    <Screen
      title={`Spoke ${spoke.spoke}, ${onSide[spoke.side]}`}
      route={`walk ${walk}`}
      back={onDone}
      waits={<Waits />}
      actions={
        <Button kind="main" size="greasy" icon="next" disabled={answer?.ok === false} onPress={next}>
          {turn + 1 < order.length ? 'Next spoke' : 'All round'}
        </Button>
      }
    >
      <div class="wheel-walk">
        <Keypad
          label={`${labels[walk]}, ${turn + 1} of ${order.length}`}
          typed={bare}
          unit={unit}
          unitText={
            walk !== 'tension'
              ? undefined
              : draft.readIn === 'scale'
                ? 'on the gauge'
                : draft.readIn === 'Hz'
                  ? 'Hz'
                  : undefined
          }
          onTyped={(typed) => put(minus && typed !== '' ? `-${typed}` : typed)}
          onDone={next}
          error={answer?.ok === false ? answer.sentence : undefined}
        >
          {walk !== 'tension' && (
            <Filters
              label="Direction"
              tabs={ways[walk].map((label, at) => ({ value: at === 0 ? '+' : '-', label }))}
              on={[minus ? '-' : '+']}
              onToggle={(way) => put(way === '-' ? `-${bare || '0'}` : bare)}
            />
          )}
          {walk === 'tension' && draft.readIn === 'Hz' && byEar && (
            <EarPart
              {...{ byEar, place, spoke: spoke.spoke }}
              next={layout[order[turn + 1] ?? -1]?.spoke}
              unit={wheel.target?.unit ?? 'N'}
              hz={answer?.ok ? answer.read : undefined}
              onHeard={(hz) => {
                put(hz.toFixed(1));
                if (turn + 1 < order.length) setTurn(turn + 1);
              }}
            />
          )}
          {walk === 'tension' && (
            <p class="small">
              {answer?.ok && draft.readIn !== 'N' ? `${numberText(answer.tensionN, 0)} N. ` : ''}
              {typeof before === 'number' ? `Last time ${numberText(before, 0)} N.` : ''}
            </p>
          )}
        </Keypad>
        <p class="buttons">
          <Button icon="back" disabled={turn === 0} onPress={() => setTurn(turn - 1)}>
            Spoke before
          </Button>
        </p>
        <Filters
          label="Order"
          tabs={[
            { value: 'sides', label: 'One side at a time' },
            { value: 'round', label: 'In turn' },
          ]}
          on={[sidesApart ? 'sides' : 'round']}
          onToggle={(way) => setSidesApart(way === 'sides')}
        />
      </div>
    </Screen>
  );
}
