import './rechecks.css';
import type { ComponentChildren } from 'preact';
import { useState } from 'preact/hooks';
import { Progress } from '../../controls/figures/Progress.tsx';
import { Notice } from '../../controls/frames/Notice.tsx';
import { Screen } from '../../controls/frames/Screen.tsx';
import { StepCard } from '../../controls/frames/StepCard.tsx';
import { Worktop } from '../../controls/frames/Worktop.tsx';
import { Tile } from '../../controls/Tile.tsx';
import { spanLeft } from '../../planning/recheckSpan.ts';
import { movedAgain } from '../../practice/rechecks/movedAdvice.ts';
import { lateText } from '../../words/lateText.ts';
import { leftText } from '../../words/leftText.ts';
import { Awake } from '../bench/Awake.tsx';
import { ReasonSheet } from '../bench/frame/ReasonSheet.tsx';
import { useRun } from '../door.tsx';
import { hrefOf } from '../route.ts';
import { Waits } from '../Waits.tsx';
import { LaterSheet } from './LaterSheet.tsx';
import type { RecheckProps } from './recheckProps.ts';
import { taskIcon } from './taskIcon.ts';

const dropReasons = ['Not needed on this bike', 'The part is gone', 'Set twice'] as const;

export interface RecheckFrameProps extends RecheckProps {
  actions: ComponentChildren;
  /** Tiles of this kind of check alone; they come first. */
  tiles?: ComponentChildren;
  /** The number that matters: above the words, so that it is in sight on a phone lying down. */
  figure?: ComponentChildren;
  children?: ComponentChildren;
}

/** The frame round one re-check: which it is, how late, what it asks for, and how to put it off. */
export function RecheckFrame(props: RecheckFrameProps) {
  const {
    view,
    recheck,
    joint,
    settings,
    nowMs,
    place,
    onAnswered,
    onBack,
    actions,
    tiles,
    figure,
    children,
  } = props;
  const { recheckId, title, instruction, dueAtMs, kind } = recheck;
  const [sheet, setSheet] = useState<'later' | 'drop'>();
  const { run, save, clear } = useRun();
  const late = dueAtMs !== undefined && dueAtMs <= nowMs;
  const shut = () => {
    setSheet(undefined);
    clear();
  };
  const drop = async (why: string) => {
    const entries = await run({ type: 'drop-recheck', recheckId, why }, { undo: `Removed: ${title}` });
    if (!entries) return false;
    shut();
    onAnswered(entries);
    return true;
  };
  return (
    <Screen title={view.bike.name} route={recheckId} back={onBack} waits={<Waits />} actions={actions}>
      <Worktop>
        {place && place.of > 1 && <Progress at={place.at} of={place.of} noun="Due" />}
        {joint && joint.moved >= 2 && (
          <Notice kind="error" title={`It moved at ${joint.moved} re-checks`}>
            {movedAgain}
          </Notice>
        )}
        <StepCard
          title={title}
          icon={taskIcon[kind]}
          state={late ? 'due' : 'noted'}
          stateWord={
            late
              ? lateText(nowMs - dueAtMs)
              : leftText(spanLeft(recheck, view.rides, nowMs), settings.distanceUnit)
          }
          caption={late ? 'Re-check' : 'Re-check, done early'}
        >
          {figure}
          <p class="far">{instruction}</p>
          {children}
          <div class="tiles">
            {tiles}
            <Tile icon="calendar" onPress={() => setSheet('later')}>
              Postpone
            </Tile>
            <Tile icon="cross" onPress={() => setSheet('drop')}>
              Remove
            </Tile>
            {joint && (
              <Tile icon="lookup" href={hrefOf({ at: 'joint', jointId: joint.jointId })}>
                Joint
              </Tile>
            )}
          </div>
        </StepCard>
        <Awake />
      </Worktop>
      {sheet === 'later' && (
        <LaterSheet
          {...{ recheck, nowMs }}
          rides={view.rides}
          unit={settings.distanceUnit}
          onChanged={(entries) => {
            shut();
            onAnswered(entries);
          }}
          onClose={shut}
        />
      )}
      {sheet === 'drop' && (
        <ReasonSheet
          about={`drop:${recheckId}`}
          title={`Remove: ${title}`}
          presets={dropReasons}
          act="Remove for this reason"
          save={save}
          onReason={drop}
          onClose={shut}
        />
      )}
    </Screen>
  );
}
