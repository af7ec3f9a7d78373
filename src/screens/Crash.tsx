import { Component, type ComponentChildren } from 'preact';
import { Button } from '../controls/Button.tsx';
import { Notice } from '../controls/frames/Notice.tsx';
import { Screen } from '../controls/frames/Screen.tsx';
import { draftsRead, forgetDraft } from './draft.ts';

interface CrashState {
  failed?: boolean;
}

/** Holds a screen that cannot be drawn, so that the way to the others stays open. Keyed by the screen. */
export class Crash extends Component<{ children: ComponentChildren }, CrashState> {
  static override getDerivedStateFromError(): CrashState {
    return { failed: true };
  }

  override render() {
    if (!this.state.failed) return this.props.children;
    const keys = draftsRead();
    const discard = () => {
      for (const key of keys) forgetDraft(key);
      location.reload();
    };
    return (
      <Screen title="Not shown" back="#/home">
        <Notice
          kind="error"
          title="This page could not be shown"
          action={
            <>
              <Button href="#/home">Home</Button>
              {keys.length > 0 && <Button onPress={discard}>Discard what was typed here</Button>}
            </>
          }
        >
          {keys.length > 0
            ? 'What is recorded is safe. An unsaved form may be the cause: reload the page, and if that does not help, discard it.'
            : 'What is recorded is safe. Go home, or reload the page.'}
        </Notice>
      </Screen>
    );
  }
}
