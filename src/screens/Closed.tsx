import type { ComponentChildren } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import { Button } from '../controls/Button.tsx';
import { Notice } from '../controls/frames/Notice.tsx';
import { Screen } from '../controls/frames/Screen.tsx';
import type { LogbookState } from '../logbook.ts';
import type { Beside } from './App.tsx';

type Ways = Pick<typeof import('./check/Check.tsx'), 'Unopened' | 'LookForNewer'>;

/** What more can be done; its script is loaded only then, and the message before it does without. */
function More({ of: drawn }: { of(ways: Ways): ComponentChildren }) {
  const [ways, setWays] = useState<Ways | 'failed'>();
  useEffect(() => {
    import('./check/Check.tsx').then(setWays, () => setWays('failed'));
  }, []);
  if (ways === 'failed')
    return (
      <p role="alert">
        Reload the page. <a href="/rescue.html">The rescue page</a> saves the logbook as a file.
      </p>
    );
  return ways ? drawn(ways) : null;
}

function Why({ state, beside }: { state: LogbookState; beside: Beside }) {
  const reload = <Button onPress={() => location.reload()}>Reload</Button>;
  if (state.is === 'newer-version')
    return (
      <>
        <Notice kind="error" title="This page cannot use the logbook any more" action={reload}>
          A newer version of the app has opened it. This page saves nothing more. Reload it; if this message
          comes again, this page is an older version of the app.
        </Notice>
        <More of={({ LookForNewer }) => <LookForNewer beside={beside} />} />
      </>
    );
  if (state.is === 'deleted') {
    return (
      <Notice kind="error" title="The logbook was deleted" action={reload}>
        The data of this app was deleted on this phone while this page was open. This page writes nothing
        more. Reload it to start an empty logbook; a saved copy can be restored in Settings.
      </Notice>
    );
  }
  if (state.is === 'blocked') {
    return (
      <Notice kind="error" title="The logbook is open in another tab" action={reload}>
        Close the other pages of this app, then reload.
      </Notice>
    );
  }
  if (state.is === 'lost')
    return (
      <>
        <Notice kind="error" title="The logbook could not be opened">
          {`Close other pages of this app, then try again. In a private window the browser may keep nothing: use an ordinary one. (${state.why})`}
        </Notice>
        <More of={({ Unopened }) => <Unopened />} />
      </>
    );
  if (state.is === 'rebuilding') {
    return (
      <Notice kind="note" title="Updating the logbook">
        {`${Math.round(state.share * 100)} % done. This happens once after an update.`}
      </Notice>
    );
  }
  return null;
}

/** The states in which no screen can be shown, and what to do about each. */
export function Closed({ state, beside }: { state: LogbookState; beside: Beside }) {
  return (
    <Screen title="Logbook">
      <div class="stack">
        <Why state={state} beside={beside} />
      </div>
    </Screen>
  );
}
