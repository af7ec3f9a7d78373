import { Button } from '../controls/Button.tsx';
import { Notice } from '../controls/frames/Notice.tsx';
import { Screen } from '../controls/frames/Screen.tsx';
import type { LogbookState } from '../logbook.ts';

function Why({ state }: { state: LogbookState }) {
  const reload = <Button onPress={() => location.reload()}>Reload</Button>;
  if (state.is === 'newer-version') {
    return (
      <Notice kind="error" title="A newer version has the logbook open" action={reload}>
        This page has stopped writing so that nothing is lost. Reload it to go on.
      </Notice>
    );
  }
  if (state.is === 'blocked') {
    return (
      <Notice kind="error" title="Another page keeps the logbook closed" action={reload}>
        Close the other pages of this app, then reload.
      </Notice>
    );
  }
  if (state.is === 'lost') {
    return (
      <Notice kind="error" title="The logbook could not be opened" action={reload}>
        {`Reload the page. In a private window the browser may keep nothing: use an ordinary one. (${state.why})`}
      </Notice>
    );
  }
  if (state.is === 'rebuilding') {
    return (
      <Notice kind="note" title="Sorting the logbook anew">
        {`${Math.round(state.share * 100)} % done. This happens once after an update.`}
      </Notice>
    );
  }
  return null;
}

/** The states in which no screen can be shown, and what to do about each. */
export function Closed({ state }: { state: LogbookState }) {
  return (
    <Screen title="Logbook">
      <Why state={state} />
    </Screen>
  );
}
