import { useCallback, useEffect, useLayoutEffect, useState } from 'preact/hooks';
import { Button } from '../controls/Button.tsx';
import { Notice } from '../controls/frames/Notice.tsx';
import { Screen as Card, UndoPlace } from '../controls/frames/Screen.tsx';
import { UndoBar } from '../controls/frames/UndoBar.tsx';
import type { Settings } from '../journal/entries.ts';
import type { DueLine, Logbook, LogbookState } from '../logbook.ts';
import { Closed } from './Closed.tsx';
import { Crash } from './Crash.tsx';
import { Door, type Undoable, UndoSlot } from './door.tsx';
import { forgetDraftsRead } from './draft.ts';
import { Remarks } from './Remarks.tsx';
import { type Route, routeOf } from './route.ts';
import { type Safety, SafetyDoor } from './safety.tsx';
import { loadedScreen, loadScreen, type ScreenComponent } from './scripts.ts';

function useScreen(at: Route['at']): ScreenComponent | 'loading' | 'failed' {
  const [, redraw] = useState(0);
  const [failed, setFailed] = useState<string>();
  const here = loadedScreen(at);
  useEffect(() => {
    if (here) return;
    let current = true;
    loadScreen(at).then(
      () => current && redraw((count) => count + 1),
      () => current && setFailed(at),
    );
    return () => {
      current = false;
    };
  }, [at, here]);
  return here ?? (failed === at ? 'failed' : 'loading');
}

/** The phone's own bars take the colour of the bench, also when the theme is not the phone's. */
function paintFrame(theme: Settings['theme']): void {
  for (const meta of document.querySelectorAll<HTMLMetaElement>('meta[name="theme-color"]')) {
    const dark = theme === 'as-the-phone' ? meta.media.includes('dark') : theme === 'dark';
    meta.content = dark ? '#0f1214' : '#cdc2ac';
  }
}

/** What runs beside the screens and has something to say. */
export interface Beside {
  /** A newer version of the app lies ready. */
  update?: { takeOver(): void };
  /** Asks the server for a newer version; resolves to whether one was found. */
  lookForUpdate?: () => Promise<boolean>;
  /** Fell due while the page was open, until it is dismissed. */
  fellDue?: { lines: DueLine[]; seen(): void };
  /** Entries that were there are no more: what is said of it. */
  missing?: { title: string; text: string } | undefined;
  /** The phone's clock moved against its own running. */
  clockMoved?: { byMs: number; shift(): void; leave(): void };
}

export interface AppProps {
  logbook: Logbook;
  safety: Safety;
  /** Names who is to be told what runs beside the screens. */
  watchBeside(listener: (beside: Beside) => void): void;
}

/** The frame: which screen, the undo bar over all of them, and the states in which none can be shown. */
export function App({ logbook, safety, watchBeside }: AppProps) {
  const [beside, setBeside] = useState<Beside>({});
  useLayoutEffect(() => watchBeside(setBeside), [watchBeside]);
  const [route, setRoute] = useState(() => routeOf(location.hash));
  const [state, setState] = useState<LogbookState>(logbook.state());
  const [undoable, setUndoable] = useState<Undoable>();
  const [notice, setNotice] = useState<string>();
  useEffect(() => {
    const onHash = () => {
      forgetDraftsRead();
      setRoute(routeOf(location.hash));
      setNotice(undefined);
      scrollTo(0, 0);
    };
    addEventListener('hashchange', onHash);
    const stop = logbook.onState(setState);
    setState(logbook.state());
    return () => {
      removeEventListener('hashchange', onHash);
      stop();
    };
  }, [logbook]);

  useEffect(() => {
    const dress = async () => {
      const { theme } = logbook.peek('settings', {}) ?? (await logbook.read('settings', {}));
      if (theme === 'as-the-phone') delete document.documentElement.dataset['theme'];
      else document.documentElement.dataset['theme'] = theme;
      paintFrame(theme);
    };
    const dressAgain = () => void dress().catch(() => {});
    dressAgain();
    return logbook.watch(dressAgain);
  }, [logbook]);

  const undo = useCallback(async () => {
    if (!undoable) return;
    setUndoable(undefined);
    try {
      const result = await logbook.run({ type: 'undo', entryIds: undoable.entryIds });
      if ('refused' in result) setNotice((await import('../words/refusals.ts')).sentenceOf(result));
    } catch {
      setNotice('Not undone: the logbook could not be reached. Correct the entry in the history.');
    }
  }, [logbook, undoable]);

  const Screen = useScreen(route.at);
  if (state.is !== 'open')
    return (
      <Door.Provider value={logbook}>
        <SafetyDoor.Provider value={safety}>
          <Closed state={state} beside={beside} />
        </SafetyDoor.Provider>
      </Door.Provider>
    );
  const bar = undoable && (
    <UndoBar
      key={undoable.savedAtMs}
      agoMs={() => logbook.now() - undoable.savedAtMs}
      text={undoable.words}
      correctHref={undoable.correctHref}
      onUndo={undo}
      onGone={() => setUndoable(undefined)}
    />
  );
  const { at, ...names } = route as Route & Record<string, string>;
  return (
    <Door.Provider value={logbook}>
      <SafetyDoor.Provider value={safety}>
        <UndoSlot.Provider value={setUndoable}>
          <Remarks beside={beside} atBench={at === 'bench'} />
          {notice && (
            <Notice kind="error" title="Undo">
              {notice}
            </Notice>
          )}
          <UndoPlace.Provider value={bar}>
            {Screen === 'failed' ? (
              <Card title="Not loaded" back="#/home">
                <Notice
                  kind="error"
                  title="This page could not be loaded"
                  action={<Button href="#/home">Home</Button>}
                >
                  Go home and try again. What is recorded is safe.
                </Notice>
              </Card>
            ) : Screen === 'loading' ? (
              <p role="status">One moment…</p>
            ) : (
              <Crash key={location.hash}>
                <Screen key={JSON.stringify(names)} {...names} />
              </Crash>
            )}
          </UndoPlace.Provider>
        </UndoSlot.Provider>
      </SafetyDoor.Provider>
    </Door.Provider>
  );
}
