import './releaseStamp.css';
import type { ComponentChildren } from 'preact';
import { Button } from '../../controls/Button.tsx';
import { Stamp } from '../../controls/figures/Stamp.tsx';
import type { BikeRow } from '../../journal/rows.ts';
import { type ReleaseState, releaseState } from '../../practice/release/releaseState.ts';
import { dayText } from '../../words/dayText.ts';
import { hrefOf } from '../route.ts';

/** The stamp alone, for the release screen itself. */
export function StampOf({ state }: { state: ReleaseState }) {
  switch (state.is) {
    case 'never':
      return <Stamp kind="build" line="Not released yet" />;
    case 'problem':
      return <Stamp kind="held" word="Do not ride" line="Problem open" />;
    case 'stands':
      return <Stamp kind="released" line={dayText(state.atMs)} />;
    case 'not-to-ride':
      return <Stamp kind="held" word="Do not ride" line={dayText(state.atMs)} />;
    case 'withdrawn':
      return <Stamp kind="void" word="Withdrawn" line={`Release of ${dayText(state.atMs)}`} />;
    case 'revoked':
      return <Stamp kind="void" word="Revoked" line={`Release of ${dayText(state.atMs)}`} />;
  }
}

/** Why it stands as it does, where that wants saying. */
export function releaseReason(state: ReleaseState): string | undefined {
  if (state.is === 'stands') {
    return state.open === 0
      ? undefined
      : `Released with ${state.open} open ${state.open === 1 ? 'item' : 'items'}`;
  }
  if (state.is === 'problem')
    return state.more === 0 ? state.words : `${state.words}; and ${state.more} more.`;
  if (state.is === 'withdrawn') return `Why: ${state.why}`;
  if (state.is === 'revoked') return `On ${dayText(state.revokedAtMs)}: ${state.why}.`;
  return undefined;
}

interface ReleaseStampProps {
  bike: BikeRow;
  /** Stands to its left. */
  children?: ComponentChildren;
}

/** The stamp on the card: may it be ridden, since when, and what ended that. */
export function ReleaseStamp({ bike, children }: ReleaseStampProps) {
  const state = releaseState(bike);
  const why = releaseReason(state);
  return (
    <section class="bike-release" aria-label="Release">
      {children}
      <StampOf state={state} />
      {why && <p class="release-why">{why}</p>}
      <Button icon="check" href={hrefOf({ at: 'release', bikeId: bike.bikeId })}>
        Release
      </Button>
    </section>
  );
}
