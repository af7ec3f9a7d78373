import type { ComponentType } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import { Button } from '../controls/Button.tsx';
import { Notice } from '../controls/frames/Notice.tsx';
import { Screen } from '../controls/frames/Screen.tsx';
import type { LogbookState } from '../logbook.ts';
import type { Beside } from './App.tsx';

const looked = {
  yes: 'A newer version is being loaded. It is offered here when it is ready.',
  no: 'There is no newer version on the server now. Try again later; what is recorded is safe.',
  failed: 'The server could not be reached. Try again with a connection; what is recorded is safe.',
} as const;

/** A newer version of the app has the logbook, or this build is an older one. */
function NotThisPage({ beside }: { beside: Beside }) {
  const [found, setFound] = useState<keyof typeof looked>();
  const { lookForUpdate, update } = beside;
  const look = () =>
    lookForUpdate?.().then(
      (newer) => setFound(newer ? 'yes' : 'no'),
      () => setFound('failed'),
    );
  return (
    <Notice
      kind="error"
      title="This page cannot use the logbook any more"
      action={
        <>
          {update ? (
            <Button kind="main" onPress={update.takeOver}>
              Use the newer version now
            </Button>
          ) : (
            lookForUpdate && <Button onPress={look}>Look for a newer version</Button>
          )}
          <Button onPress={() => location.reload()}>Reload</Button>
        </>
      }
    >
      <p>
        A newer version of the app has opened it. This page writes nothing more. Reload it; if this message
        comes again, this page is an older version of the app.
      </p>
      {found && <p role="status">{looked[found]}</p>}
    </Notice>
  );
}

/** What can be done about a store that does not open; its script is loaded only then. */
function NotOpened({ why }: { why: string }) {
  const [ways, setWays] = useState<{ Unopened: ComponentType } | 'failed'>();
  useEffect(() => {
    import('./check/Check.tsx').then(setWays, () => setWays('failed'));
  }, []);
  return (
    <div class="stack">
      <Notice kind="error" title="The logbook could not be opened">
        {`Close other pages of this app, then try again. In a private window the browser may keep nothing: use an ordinary one. (${why})`}
      </Notice>
      {ways === 'failed' && (
        <p role="alert">
          Reload the page. <a href="/rescue.html">The rescue page</a> saves the logbook as a file.
        </p>
      )}
      {typeof ways === 'object' && <ways.Unopened />}
    </div>
  );
}

function Why({ state, beside }: { state: LogbookState; beside: Beside }) {
  const reload = <Button onPress={() => location.reload()}>Reload</Button>;
  if (state.is === 'newer-version') return <NotThisPage beside={beside} />;
  if (state.is === 'deleted') {
    return (
      <Notice kind="error" title="The logbook was deleted" action={reload}>
        The data of this app was deleted on this phone while this page was open. This page writes nothing
        more. Reload it to begin an empty logbook; a saved copy can be restored in the settings.
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
  if (state.is === 'lost') return <NotOpened why={state.why} />;
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
      <Why state={state} beside={beside} />
    </Screen>
  );
}
