import type { ComponentType } from 'preact';
import { useCallback, useEffect, useState } from 'preact/hooks';
import { Button } from '../controls/Button.tsx';
import { Notice } from '../controls/Notice.tsx';
import { UndoPlace } from '../controls/Screen.tsx';
import { UndoBar } from '../controls/UndoBar.tsx';
import type { Settings } from '../journal/entries.ts';
import type { DueLine, Logbook, LogbookState } from '../logbook.ts';
import { Closed } from './Closed.tsx';
import { Door, type Undoable, UndoSlot } from './door.tsx';
import { Home } from './Home.tsx';
import { Remarks } from './Remarks.tsx';
import { sentenceOf } from './refusals.ts';
import { type Route, routeOf } from './route.ts';

type ScreenComponent = ComponentType<Record<string, string>>;
type Load = () => Promise<ScreenComponent>;

/** Every screen but the first is loaded when somebody goes there. */
const screens: Record<Exclude<Route['at'], 'home'>, Load> = {
  'new-bike': async () => (await import('./NewBike.tsx')).NewBike as ScreenComponent,
  bike: async () => (await import('./Bike.tsx')).Bike as ScreenComponent,
  bench: async () => (await import('./Bench.tsx')).Bench as ScreenComponent,
  plan: async () => (await import('./Plan.tsx')).Plan as ScreenComponent,
  fit: async () => (await import('./Fit.tsx')).Fit as ScreenComponent,
  shelf: async () => (await import('./Shelf.tsx')).Shelf as ScreenComponent,
  'new-part': async () => (await import('./PartForm.tsx')).NewPart as ScreenComponent,
  part: async () => (await import('./Part.tsx')).Part as ScreenComponent,
  'edit-part': async () => (await import('./PartForm.tsx')).EditPart as ScreenComponent,
  'change-part': async () => (await import('./ChangePart.tsx')).ChangePart as ScreenComponent,
  'new-joint': async () => (await import('./JointForm.tsx')).NewJoint as ScreenComponent,
  joint: async () => (await import('./Joint.tsx')).Joint as ScreenComponent,
  'edit-joint': async () => (await import('./JointForm.tsx')).EditJoint as ScreenComponent,
  seal: async () => (await import('./Seal.tsx')).Seal as ScreenComponent,
  release: async () => (await import('./Release.tsx')).Release as ScreenComponent,
  ride: async () => (await import('./Ride.tsx')).Ride as ScreenComponent,
  rechecks: async () => (await import('./Rechecks.tsx')).Rechecks as ScreenComponent,
  history: async () => (await import('./History.tsx')).History as ScreenComponent,
  sheet: async () => (await import('./Sheet.tsx')).BuildSheet as ScreenComponent,
  workings: async () => (await import('./Workings.tsx')).Workings as ScreenComponent,
  tools: async () => (await import('./Tools.tsx')).Tools as ScreenComponent,
  settings: async () => (await import('./Settings.tsx')).Settings as ScreenComponent,
};

const loaded = new Map<string, ScreenComponent>();

/** What the screen an app is opened at shows first, read while its script is fetched. */
export async function readAhead(logbook: Logbook, route: Route): Promise<void> {
  const settings = logbook.readAhead('settings', {});
  if (route.at === 'bench') await logbook.readAhead('bench', { bikeId: route.bikeId });
  if (route.at === 'bike') await logbook.readAhead('bike', { bikeId: route.bikeId });
  if (route.at === 'home') await logbook.readAhead('bikes', undefined);
  await settings;
}

/** Asks for a screen before there is a logbook to show in it; both take their time, and neither needs the other. */
export async function preload({ at }: Route): Promise<void> {
  if (at !== 'home') loaded.set(at, await screens[at]());
}

function useScreen(at: Route['at']): ScreenComponent | 'loading' | 'failed' {
  const [, redraw] = useState(0);
  const [failed, setFailed] = useState<string>();
  const here = at === 'home' ? (Home as ScreenComponent) : loaded.get(at);
  useEffect(() => {
    if (here || at === 'home') return;
    let current = true;
    screens[at]().then(
      (screen) => {
        loaded.set(at, screen);
        if (current) redraw((count) => count + 1);
      },
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
  /** Fell due while the page was open, until somebody has seen it. */
  fellDue?: { lines: DueLine[]; seen(): void };
  /** The phone's clock moved against its own running. */
  clockMoved?: { byMs: number; shift(): void; leave(): void };
}

export interface AppProps {
  logbook: Logbook;
  beside: Beside;
}

/** The frame: which screen, the undo bar over all of them, and the states in which none can be shown. */
export function App({ logbook, beside }: AppProps) {
  const [route, setRoute] = useState(() => routeOf(location.hash));
  const [state, setState] = useState<LogbookState>(logbook.state());
  const [undoable, setUndoable] = useState<Undoable>();
  const [said, setSaid] = useState<string>();
  useEffect(() => {
    const onHash = () => {
      setRoute(routeOf(location.hash));
      setSaid(undefined);
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
      const { theme } = await logbook.read('settings', {});
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
      if ('refused' in result) setSaid(sentenceOf(result));
    } catch {
      setSaid('Not undone: the logbook could not be reached. Correct the entry in the history.');
    }
  }, [logbook, undoable]);

  const Screen = useScreen(route.at);
  if (state.is !== 'open') return <Closed state={state} />;
  const bar = undoable && (
    <UndoBar
      key={undoable.savedAtMs}
      agoMs={logbook.now() - undoable.savedAtMs}
      text={undoable.words}
      onUndo={undo}
      onGone={() => setUndoable(undefined)}
    />
  );
  const { at, ...names } = route as Route & Record<string, string>;
  return (
    <Door.Provider value={logbook}>
      <UndoSlot.Provider value={setUndoable}>
        <Remarks beside={beside} atBench={at === 'bench'} />
        {said && (
          <Notice kind="error" title="Undo">
            {said}
          </Notice>
        )}
        <UndoPlace.Provider value={bar}>
          {Screen === 'failed' ? (
            <Notice
              kind="error"
              title="This page could not be loaded"
              action={<Button href="#/home">To the start</Button>}
            >
              Go to the start and try again. What is recorded is safe.
            </Notice>
          ) : Screen === 'loading' ? (
            <p class="app-loading" role="status">
              One moment…
            </p>
          ) : (
            <Screen key={JSON.stringify(names)} {...names} />
          )}
        </UndoPlace.Provider>
      </UndoSlot.Provider>
    </Door.Provider>
  );
}
