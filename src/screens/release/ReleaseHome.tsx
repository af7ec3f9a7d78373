import './release.css';
import { useState } from 'preact/hooks';
import { Button } from '../../controls/Button.tsx';
import { Ruler } from '../../controls/figures/Ruler.tsx';
import { Screen } from '../../controls/frames/Screen.tsx';
import { Fold } from '../../controls/lists/Fold.tsx';
import { inReadingOrder } from '../../practice/release/openOrder.ts';
import { releaseState } from '../../practice/release/releaseState.ts';
import { type RideCheckGroup, rideCheck } from '../../standards/checks/rideCheck.ts';
import { remark } from '../../words/phrases.ts';
import { statementText } from '../../words/statements.ts';
import { BenchActs } from '../bench/frame/BenchActs.tsx';
import { releaseReason, StampOf } from '../bike/ReleaseStamp.tsx';
import { DefectSheet, type DefectSheetProps } from '../bike/sheets/DefectSheet.tsx';
import { useNow } from '../door.tsx';
import { hrefOf } from '../route.ts';
import { Waits } from '../Waits.tsx';
import { CheckGroups } from './CheckGroups.tsx';
import { EarlierReleases } from './EarlierReleases.tsx';
import { OpenList } from './OpenList.tsx';
import type { ReleaseView } from './Release.tsx';
import { WithdrawSheet } from './WithdrawSheet.tsx';

export interface ReleaseHomeProps {
  view: ReleaseView;
  unit: DefectSheetProps['unit'];
  onGroup: (group: RideCheckGroup) => void;
  onSign: () => void;
}

/** Where the release stands, what is open, and how far the check before riding has come. */
export function ReleaseHome({ view, unit, onGroup, onSign }: ReleaseHomeProps) {
  const { bike, check, releases, joints } = view;
  const { bikeId } = bike;
  const nowMs = useNow(60_000);
  const [sheet, setSheet] = useState<'defect' | 'withdraw'>();
  const stopping = view.open.flatMap(({ what, words, blocks }) =>
    what === 'defect' && blocks ? [words] : [],
  );
  const state = releaseState(bike, stopping);
  const why = releaseReason(state);
  const last = releases.at(-1);
  const says = last ? statementText(last) : '';
  // What no longer holds must not be read as if it did: why it ended goes first.
  const over = state.is === 'revoked' || state.is === 'withdrawn';
  const groups = check?.groups ?? {};
  const next = rideCheck.find(({ id }) => !groups[id]);
  // Groups not done stand below as lines of their own.
  const open = inReadingOrder(view.open.filter(({ what }) => what !== 'check-open'));
  const blocking = open.filter(({ blocks }) => blocks);
  const others = open.filter(({ blocks }) => !blocks);
  const left = rideCheck.filter(({ id }) => !groups[id]).length;
  // A release that stands has used up its check: the next one is no duty yet.
  const rested = state.is === 'stands' && left === rideCheck.length;
  const list = <CheckGroups groups={groups} nowMs={nowMs} onGroup={onGroup} />;
  return (
    <Screen
      title={`Release ${bike.name}`}
      route="release"
      back={hrefOf({ at: 'bike', bikeId })}
      waits={<Waits />}
      actions={
        <BenchActs
          save={{ is: 'idle' }}
          main={
            rested ? (
              <Button size="greasy" wide icon="bike" href={hrefOf({ at: 'ride', bikeId })}>
                Log a ride
              </Button>
            ) : next ? (
              <Button
                kind="main"
                size="greasy"
                icon="lookup"
                under={`Check before riding, ${left} of ${rideCheck.length} to go`}
                onPress={() => onGroup(next)}
              >
                {next.title}
              </Button>
            ) : (
              <Button
                kind="main"
                size="greasy"
                icon="flag"
                under={blocking.length > 0 ? `${blocking.length} still blocking` : 'The check is done'}
                onPress={onSign}
              >
                Sign off
              </Button>
            )
          }
        >
          <Button size="greasy" icon="warning" onPress={() => setSheet('defect')}>
            Report a problem
          </Button>
          {next && (
            <Button size="greasy" icon="flag" onPress={onSign}>
              Statement
            </Button>
          )}
        </BenchActs>
      }
    >
      <section class="release-head" aria-label="Release">
        <StampOf state={state} />
        <div class="release-says">
          {over && <p>{why}</p>}
          {last && (
            <p>
              {over ? `Statement: ${says.toLowerCase()}.` : `${says}.`}
              {remark('Covers', last.covers)}
              {remark('Signed by', last.by)}
              {!over && remark('Only', last.restrictions)}
            </p>
          )}
          {!over && why && <p>{why}</p>}
        </div>
        {state.is === 'stands' && (
          <Button icon="cross" onPress={() => setSheet('withdraw')}>
            Withdraw
          </Button>
        )}
      </section>
      {blocking.length > 0 && (
        <>
          <Ruler label="Must fix before riding" end={<b>{blocking.length}</b>} />
          <OpenList label="Must fix before riding" bikeId={bikeId} items={blocking} />
        </>
      )}
      {rested ? (
        // Keys, or the one takes over from the other that it stands open.
        <Fold key="again" label="Check again, for the next release" end={rideCheck.length}>
          {list}
        </Fold>
      ) : (
        <>
          <Ruler label="Check before riding" end={left > 0 ? <b>{left} to go</b> : 'Done'} />
          {list}
        </>
      )}
      <Fold key="others" label="Also open" end={others.length} open={others.length > 0}>
        {others.length === 0 ? (
          <p class="lower">Nothing else is open in the logbook.</p>
        ) : (
          <OpenList label="Also open" bikeId={bikeId} items={others} />
        )}
      </Fold>
      <EarlierReleases releases={releases} />
      {sheet === 'defect' && (
        <DefectSheet {...{ bikeId, joints, unit }} onClose={() => setSheet(undefined)} />
      )}
      {sheet === 'withdraw' && <WithdrawSheet bikeId={bikeId} onClose={() => setSheet(undefined)} />}
    </Screen>
  );
}
