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
          From Share, choose Add to Home Screen and open it there. A tab of this browser loses its logbook
          after some days of rest, and what is written here does not move along.
        </Notice>
      )}
      <p>
        A logbook for bikes built out of parts that were never meant for each other. Before the first bolt it
        says whether the pile makes a bike; at the bench it keeps each torque, cut and cure; before a ride it
        shows what is still open; months later it tells what sits on which thread, and why.
      </p>
      <Button kind="main" icon="plus" wide href="#/new-bike">
        Start a bike
      </Button>
      <Button icon="lookup" wide onPress={load} under="Two invented bikes">
        Look at the demo
      </Button>
      {state.is === 'failed' && <Notice kind="error" title={state.sentence} />}
      <Notice kind="caution" title="Your neck, your check">
        A brake, a bar, a stem, a fork or a wheel that lets go can maim or kill. Makers' figures and local
        rules come first. What is ticked here was written down, nothing more: let a qualified mechanic look
        over what you are not sure of.
      </Notice>
      <Notice kind="note" title="It lives on this phone alone">
        No account, no network, no copy on any server: a lost or wiped phone takes the logbook with it. Save a
        copy under Settings after each build day, and keep it elsewhere.
      </Notice>
    </div>
  );
}
