import type { ComponentType } from 'preact';
import { useState } from 'preact/hooks';
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

/** The check of the logbook, below what is wrong; its script is loaded when it is asked for. */
function CheckHere() {
  const [check, setCheck] = useState<{ Shown: ComponentType } | 'failed'>();
  const load = () =>
    import('./check/Check.tsx').then(
      ({ CheckLogbook }) => setCheck({ Shown: CheckLogbook }),
      () => setCheck('failed'),
    );
  if (check === 'failed') return <p role="alert">The check could not be loaded. Reload the page.</p>;
  return check ? <check.Shown /> : <Button onPress={load}>Check the logbook</Button>;
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
  if (state.is === 'lost') {
    return (
      <Notice
        kind="error"
        title="The logbook could not be opened"
        action={
          <>
            {reload}
            <CheckHere />
          </>
        }
      >
        {`Reload the page. In a private window the browser may keep nothing: use an ordinary one. (${state.why})`}
      </Notice>
    );
  }
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
