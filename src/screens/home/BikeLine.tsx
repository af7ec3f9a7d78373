import './home.css';
import { Stamp } from '../../controls/figures/Stamp.tsx';
import { Icon } from '../../controls/Icon.tsx';
import { ListRow } from '../../controls/lists/ListRow.tsx';
import type { BikeRow } from '../../journal/rows.ts';
import { type ReleaseState, releaseState } from '../../practice/release/releaseState.ts';
import { dayText } from '../../words/dayText.ts';
import { hrefOf } from '../route.ts';

function notReleased(state: ReleaseState): string {
  if (state.is === 'revoked') return `Release revoked: ${state.why}`;
  if (state.is === 'withdrawn') return `Release withdrawn: ${state.why}`;
  if (state.is === 'problem') return `Do not ride: ${state.words}`;
  return state.is === 'not-to-ride' ? 'Marked do not ride' : 'In build, not released yet';
}

/** One bike of the list: how far it is, what is only hand-tight, and whether it may be ridden. */
export function BikeLine({ bike }: { bike: BikeRow }) {
  const { bikeId, name, demo, steps, stepsDone, handTight } = bike;
  const state = releaseState(bike);
  const inBuild = state.is === 'never';
  const stands = state.is === 'stands';
  return (
    <ListRow
      title={demo ? `${name} (demo)` : name}
      detail={
        <>
          {steps > 0 && <span class="home-fact">{`${stepsDone} of ${steps} steps done`}</span>}
          {!stands && (
            <span class={`home-fact ${inBuild ? 'home-build' : 'home-held'}`}>
              <Icon name={inBuild ? 'spanner' : 'stop'} sizePx={20} />
              {notReleased(state)}
            </span>
          )}
        </>
      }
      state={handTight > 0 ? 'open' : undefined}
      stateWord={handTight === 1 ? '1 joint only hand-tight' : `${handTight} joints only hand-tight`}
      end={stands && <Stamp kind="released" line={dayText(state.atMs)} />}
      href={hrefOf({ at: 'bike', bikeId })}
    />
  );
}
