import { useEffect, useState } from 'preact/hooks';
import { Button } from '../../controls/Button.tsx';
import { Notice } from '../../controls/frames/Notice.tsx';
import type { Demo } from './useDemo.ts';

/** A browser tab on a phone that keeps a separate store for what is put on its Home Screen. */
function useTabToLeave(): boolean {
  const [toLeave, setToLeave] = useState(false);
  useEffect(() => {
    // Only the browsers of iPhone and iPad know the word at all.
    if (!('standalone' in navigator)) return;
    let current = true;
    import('../../sensing/platform.ts')
      .then(({ readAbilities }) => readAbilities())
      .then(({ installed }) => current && setToLeave(!installed));
    return () => {
      current = false;
    };
  }, []);
  return toLeave;
}

/** The first screen of an empty logbook: what it is for, and what it cannot do. */
export function FirstWords({ state, load }: Demo) {
  const toLeave = useTabToLeave();
  return (
    <div class="stack">
      {toLeave && (
        <Notice kind="caution" title="Put it on the Home Screen first">
          From Share, choose Add to Home Screen and open it there. A browser tab can be wiped after about a
          week unused, and what you enter here does not move to the home-screen app.
        </Notice>
      )}
      <p>
        A build log for bikes made from mixed parts. See what fits, log torques, cuts and curing times, see
        what is unfinished before you ride, look it all up later.
      </p>
      <Button kind="main" icon="plus" wide href="#/new-bike">
        New bike
      </Button>
      <Button icon="lookup" wide onPress={load} under="Two made-up bikes">
        Look at the demo
      </Button>
      {state.is === 'failed' && <Notice kind="error" title={state.sentence} />}
      <Notice kind="caution" title="You are responsible for your own safety">
        If a brake, bar, stem, fork or wheel fails you can be killed. Follow the makers’ figures and local
        law. A tick means logged, not safe. Not sure? Ask a qualified mechanic.
      </Notice>
      <Notice kind="note" title="Stored on this phone only">
        No account, no network, no copy on any server: a lost or wiped phone takes the logbook with it. Save a
        copy under Settings after each build day, and keep it elsewhere.
      </Notice>
    </div>
  );
}
